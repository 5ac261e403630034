package tenthmark.addin.table;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import tenthmark.addin.OfficeLocale;
import tenthmark.addin.wording.DialogTexts;
import tenthmark.measurement.recording.ContributionKind;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Sentences;

/**
 * The words of a record table in one language. The checker knows the headings, and the functions
 * the kinds of contributions, in each.
 */
record TableWords(Language language) {

  /** The words in every language, for a table that was begun in another office. */
  static Stream<TableWords> inEveryLanguage() {
    return Arrays.stream(Language.values()).map(TableWords::new);
  }

  String heading(Column column) {
    return say(column.name());
  }

  /** The kind of the contribution whose size stands in a column. */
  String kind(Column contribution) {
    return ContributionKind.valueOf(contribution.name()).word(texts());
  }

  String rationale() {
    return say("RATIONALE");
  }

  /** What stands behind a text in place of a number. */
  String noNumber() {
    return say("NO_NUMBER");
  }

  private String say(String word) {
    String key = "table." + word.toLowerCase(Locale.ROOT).replace('_', '-');
    return texts().say(key);
  }

  private Sentences texts() {
    return DialogTexts.in(new OfficeLocale(language, DecimalSign.POINT));
  }
}
