package tenthmark.checker.evaluation;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Sentences;

/**
 * The language and the decimal sign that LAB functions write in while a workbook is recalculated:
 * English, until a stored text shows that the student's office has others.
 */
final class OfficeWording {

  /** Every one that an office can have. */
  static final List<Sentences> ALL =
      Arrays.stream(Language.values()).flatMap(OfficeWording::withEitherSign).toList();

  private Sentences sentences = Sentences.english();

  private static Stream<Sentences> withEitherSign(Language language) {
    return Arrays.stream(DecimalSign.values()).map(sign -> Sentences.in(language, sign));
  }

  Sentences sentences() {
    return sentences;
  }

  void become(Sentences other) {
    sentences = other;
  }
}
