package tenthmark.checker.record;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/** A part of a measurement record, and the words by which a column heading names it. */
public enum Field {
  QUANTITY,
  SYMBOL,
  VALUE,
  UNIT,
  DIVISION,
  SPACING,
  ENDS,
  RESOLUTION,
  HAND_TIMING,
  REACTION,
  CYCLES,
  READING,
  PHYSICAL,
  INSTRUMENT,
  TIMING,
  REPEAT,
  UNCERTAINTY,
  RATIONALE,
  /** Where some give their reasons; it heads columns of other tables as well. */
  REMARK,
  RESULT;

  /** The fields that hold the size of a contribution to the uncertainty. */
  public static final List<Field> CONTRIBUTIONS =
      List.of(READING, PHYSICAL, INSTRUMENT, TIMING, REPEAT);

  private static final Set<Field> TELLING =
      Set.of(UNCERTAINTY, DIVISION, RESOLUTION, RATIONALE, PHYSICAL, REPEAT);

  /** The words of each field in every language. */
  static Map<Field, List<String>> words() {
    return Arrays.stream(values())
        .collect(
            Collectors.toMap(
                Function.identity(),
                field ->
                    Arrays.stream(Language.values())
                        .flatMap(language -> field.words(language).stream())
                        .toList()));
  }

  private List<String> words(Language language) {
    Sentences headings = Sentences.of(Field.class, "headings", language, DecimalSign.POINT);
    return List.of(headings.say(key()).split(", "));
  }

  /** Whether a column of this field tells measurements from other lists with values. */
  boolean isTelling() {
    return TELLING.contains(this);
  }

  /** The English word, by which a profile names it. */
  public String word() {
    return words(Language.ENGLISH).get(0);
  }

  /** The word that a sentence uses. */
  public Message inWords() {
    return Message.of("field." + key());
  }

  private String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '.');
  }
}
