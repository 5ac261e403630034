package tenthmark.addin.checking;

import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;

/**
 * The text of a comment of ours. Its first line holds a sum of all that follows, so that a comment
 * that somebody has changed can be told: that one is theirs.
 */
final class Marked {

  private static final String NAME = "Tenthmark checker";
  private static final Pattern OURS =
      Pattern.compile(
          Pattern.quote(NAME) + " \\[(?<sum>\\p{XDigit}{8})]\\R(?<text>.*)", Pattern.DOTALL);

  private Marked() {}

  static String of(String text) {
    return NAME + " [" + sum(text) + "]\n" + text;
  }

  /** Whether a comment is as we wrote it. */
  static boolean isOurs(String comment) {
    Matcher parts = OURS.matcher(comment);
    return parts.matches() && parts.group("sum").equals(sum(parts.group("text")));
  }

  /** Whether a comment began as ours and was changed. */
  static boolean isChanged(String comment) {
    return comment.startsWith(NAME + " [") && !isOurs(comment);
  }

  /** Programs that save a file may set lines and spaces otherwise. */
  private static String sum(String text) {
    CRC32 sum = new CRC32();
    sum.update(text.strip().replaceAll("\\s+", " ").getBytes(StandardCharsets.UTF_8));
    return "%08x".formatted(sum.getValue());
  }
}
