package tenthmark.checker.record;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Reads the headings of one workbook, each text once although it may stand in a row and a column.
 */
final class HeadingReader {

  private final HeadingWords words;
  private final Map<String, Optional<Heading>> headings = new HashMap<>();

  HeadingReader(HeadingWords words) {
    this.words = words;
  }

  /** The heading that a text is, if it is one. */
  Optional<Heading> heading(String text) {
    return headings.computeIfAbsent(text, unread -> Heading.read(unread, words));
  }
}
