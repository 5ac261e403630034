package tenthmark.samples.plan;

import java.util.Set;

/**
 * A column of a table.
 *
 * @param key by which rows and formulas name it
 * @param heading what stands above it
 * @param width in characters
 * @param given whether its contents stand in a copy to start from; a student types the others
 */
public record Column(String key, String heading, int width, boolean given) {

  private static final Set<String> CONTRIBUTIONS =
      Set.of("reading", "physical", "instrument", "timing", "repeat");

  /** Whether it holds one kind of contribution to a total. */
  boolean isContribution() {
    return CONTRIBUTIONS.contains(key);
  }

  /** A column that a student fills in. */
  public static Column typed(String key, String heading, int width) {
    return new Column(key, heading, width, false);
  }

  /** A column that is filled in from the start. */
  public static Column given(String key, String heading, int width) {
    return new Column(key, heading, width, true);
  }

  /** The same column under another heading. */
  public Column headed(String other) {
    return new Column(key, other, width, given);
  }
}
