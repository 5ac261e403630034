package tenthmark.samples.mistakes;

import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * One kind of mistake.
 *
 * @param name in plain words
 * @param family what it has to do with
 * @param rules any of which names it rightly
 * @param sites all places of a workbook where it can be made, and how
 */
record Mistake(
    String name, String family, Set<String> rules, Function<Subject, Stream<Planted>> sites) {}
