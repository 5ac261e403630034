package tenthmark.measurement.wording;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The name of an error as files and an English Calc have it. In other languages Calc shows another,
 * which is the one that a student looks up.
 *
 * @param english for instance {@code #VALUE!} or {@code Err:502}
 */
public record ErrorName(String english) {

  private static final Pattern CODE = Pattern.compile("Err:(\\d+)");

  private static final Map<String, String> KEYS =
      Map.of(
          "#DIV/0!", "error.shown.DIVISION",
          "#NUM!", "error.shown.NUMBER",
          "#VALUE!", "error.shown.VALUE",
          "#REF!", "error.shown.REFERENCE",
          "#NAME?", "error.shown.NAME",
          "#N/A", "error.shown.MISSING");

  /** What a cell shows; a name that is not known stays as it is. */
  public Message shown() {
    Matcher code = CODE.matcher(english);
    if (code.matches()) {
      return Message.of("error.shown.code", code.group(1));
    }
    return KEYS.containsKey(english) ? Message.of(KEYS.get(english)) : Message.verbatim(english);
  }
}
