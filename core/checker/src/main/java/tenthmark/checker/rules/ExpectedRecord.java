package tenthmark.checker.rules;

import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.checker.record.MeasurementRecord;

/** A record of a quantity that the course expects. */
public record ExpectedRecord(ExpectedQuantity quantity, MeasurementRecord measurement) {}
