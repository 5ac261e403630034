package tenthmark.checker.reading.words;

import java.util.Locale;

/** What a text mentions, wherever it stands in it. */
public enum Notion {
  /** Nothing, as a size: "none", "negligible". */
  NONE,
  /** The answer no. */
  NO,
  /** Wide marks on a scale. */
  WIDE,
  /** Fine marks on a scale. */
  FINE,
  /** A display with digits. */
  DIGITAL,
  /** A time that was taken by hand. */
  BY_HAND,
  /** A reading of one position, although it is a length. */
  ONE_POSITION,
  /** The name of a measuring instrument. */
  INSTRUMENT,
  /** A scale that is read once, against its own zero. */
  OWN_ZERO,
  /** Titles of tables whose values are given, not measured. */
  GIVEN,
  /** A number without unit, such as a logarithm. */
  PURE,
  /** That results agree. */
  AGREES,
  /** That results do not agree. */
  DISAGREES,
  /** What a reason for an uncertainty speaks of. */
  REASON,
  /** What stands in place of a reason and is none. */
  EMPTY_REASON,
  /** That something holds for all. */
  ALL,
  /** That units are told. */
  UNITS,
  /** Small words that join others and name nothing. */
  LINKING,
  /** The preposition before the whole of which something is a part. */
  OF,
  /** The preposition before what a rate is counted by. */
  PER,
  /** The last digit of a display. */
  LAST_DIGIT,
  /** Something that was counted and is exact. */
  EXACT,
  /** The preposition before a unit. */
  IN,
  /** How a name of a range of records begins. */
  RECORDS;

  /** The key of its words in the vocabulary. */
  String key() {
    return "notion." + name().toLowerCase(Locale.ROOT).replace('_', '.');
  }
}
