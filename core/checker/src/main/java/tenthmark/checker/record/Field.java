package tenthmark.checker.record;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tenthmark.checker.reading.words.Role;
import tenthmark.checker.reading.words.Vocabulary;
import tenthmark.measurement.wording.Message;

/** A part of a measurement record. */
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
  RESULT,
  /** The name of the instrument that was read. */
  APPARATUS;

  /** The fields that hold the size of a contribution to the uncertainty. */
  public static final List<Field> CONTRIBUTIONS =
      List.of(READING, PHYSICAL, INSTRUMENT, TIMING, REPEAT);

  /** The part that a role of the vocabulary is, if it is one. */
  public static Optional<Field> of(Role role) {
    return Arrays.stream(values()).filter(field -> field.name().equals(role.name())).findFirst();
  }

  /** The role that the vocabulary has words for. */
  public Role role() {
    return Role.valueOf(name());
  }

  /** The English word, by which a profile names it. */
  public String word() {
    return Vocabulary.word(role());
  }

  /** The word that a sentence uses. */
  public Message inWords() {
    return Message.of("field." + name().toLowerCase(Locale.ROOT).replace('_', '.'));
  }
}
