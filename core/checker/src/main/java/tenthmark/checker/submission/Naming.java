package tenthmark.checker.submission;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How a course's submissions are named.
 *
 * @param patterns the first that fits a path says what it tells
 */
public record Naming(List<PathPattern> patterns) {

  /** Of a course that does not say: a path tells nothing. */
  public static final Naming NONE = new Naming(List.of());

  /** Of a file: no longer than those of the time, so that the 2 of "Lab 3.2 b" is none. */
  private static final Pattern ENDING = Pattern.compile("\\.(?:[a-zA-Z][a-zA-Z0-9]{1,7}|7z)$");

  private static final Map<String, Naming> PRESETS = new LinkedHashMap<>();

  static {
    PRESETS.put(
        "underscore-separated",
        of(
            "{last}_{first}_{id}_attempt_{time}_{any}",
            "{last}_{first}_{id}_attempt_{attempt}_{any}",
            "{last}_{first}_{id}_{time}_{any}",
            "{last}_{first}_{id}_{any}"));
    PRESETS.put(
        "folder-per-student",
        of(
            "{last}_{first}_{id}/{any}",
            "{name}_{id}/{any}",
            "{name} ({id})/{any}",
            "{id}/{any}",
            "{name}/{any}"));
  }

  /** Copies the patterns. */
  public Naming {
    patterns = List.copyOf(patterns);
  }

  /**
   * Reads patterns.
   *
   * @throws IllegalArgumentException with a line that says what is wrong with one
   */
  public static Naming of(String... patterns) {
    return new Naming(Stream.of(patterns).map(PathPattern::of).toList());
  }

  /** Namings that many courses meet, by a word that describes them. */
  public static Map<String, Naming> presets() {
    return PRESETS;
  }

  /**
   * What the path of a submission says about it.
   *
   * @param base how many steps of the path lead to what was handed in: those of the folder that was
   *     named, or of the archive that the file lies in. The patterns are tried from there inwards;
   *     if none fits, from there outwards.
   */
  public Label read(Path path, int base) {
    int last = path.getNameCount() - 1;
    int first = Math.min(base, last);
    IntStream outwards = IntStream.rangeClosed(1, first).map(back -> first - back);
    return read(path, IntStream.rangeClosed(first, last))
        .or(() -> read(path, outwards))
        .orElse(Label.NONE);
  }

  private Optional<Label> read(Path path, IntStream starts) {
    List<String> ends = starts.mapToObj(start -> steps(path, start)).toList();
    return patterns.stream()
        .flatMap(pattern -> ends.stream().flatMap(end -> pattern.read(end).stream()))
        .findFirst();
  }

  /** The steps from one on, without the endings of the file and of archives. */
  private static String steps(Path path, int start) {
    return IntStream.range(start, path.getNameCount())
        .mapToObj(step -> ENDING.matcher(path.getName(step).toString()).replaceFirst(""))
        .collect(Collectors.joining("/"));
  }
}
