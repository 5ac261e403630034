package tenthmark.checker.reading.words;

import java.util.Locale;

/** What a word says more closely about the role that a heading names. */
public enum Qualifier {
  /** A standard uncertainty or deviation. */
  STANDARD,
  /** Of all contributions together. */
  COMBINED,
  /** Times a coverage factor. */
  EXPANDED,
  /** In the unit of the value. */
  ABSOLUTE,
  /** As a part of the value. */
  RELATIVE,
  /** Of a mean, not of a single reading. */
  OF_MEAN,
  /** Read or determined, not given. */
  MEASURED,
  /** Judged, not calculated. */
  ESTIMATED;

  /** The key of its words in the vocabulary. */
  String key() {
    return "qualifier." + name().toLowerCase(Locale.ROOT).replace('_', '.');
  }
}
