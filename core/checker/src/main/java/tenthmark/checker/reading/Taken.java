package tenthmark.checker.reading;

import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.measurement.wording.Message;

/** What a cell was taken for. */
public sealed interface Taken {

  /** A part of a record: a number, or a text such as its unit. */
  record Part(MeasurementRecord record, Field field) implements Taken {}

  /** A heading or label that names a part of the records beside it. */
  record Heading(Field field) implements Taken {}

  /** The text that says why the uncertainties of records are what they are. */
  record Reason() implements Taken {}

  /** A number that is no part of a record. */
  record Other(NumberRole role) implements Taken {}

  /**
   * A number that the checker can make nothing of, or a heading that it does not understand.
   *
   * @param why a sentence that names what was not understood
   */
  record NotRead(Message why) implements Taken {}
}
