package tenthmark.measurement.recording;

/** Where a contribution to an uncertainty comes from. */
public enum ContributionKind {
  /** Judging a position on a scale. */
  READING,
  /** The object itself: a soft edge, a part that is not round. */
  PHYSICAL,
  /** The instrument, as its maker specifies it. */
  INSTRUMENT,
  /** The scatter of repeated readings. */
  REPEAT,
  /** Starting and stopping a watch by hand. */
  TIMING
}
