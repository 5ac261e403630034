package tenthmark.measurement.formula;

import java.util.List;
import java.util.Set;

/**
 * A formula that has been read.
 *
 * @param text as it was written
 * @param tree its meaning
 * @param references everything that it refers to, in order
 * @param functions the functions that it calls, in upper case
 */
public record Formula(
    String text, Expression tree, List<Expression.Reference> references, Set<String> functions) {}
