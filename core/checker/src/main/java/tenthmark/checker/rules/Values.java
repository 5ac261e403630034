package tenthmark.checker.rules;

import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.rounding.PowerOfTen;
import tenthmark.measurement.wording.Message;

/** Values as findings show them. */
final class Values {

  private static final int DIGITS = 12;
  private static final int LONGEST = 60;

  private Values() {}

  static Message show(Value value) {
    if (value instanceof Value.Numeric number) {
      return Message.figure(PowerOfTen.show(Decimals.shortest(number.number()), DIGITS));
    }
    if (value instanceof Value.Text text) {
      String whole = text.text();
      return Message.of(
          "value.text", whole.length() > LONGEST ? whole.substring(0, LONGEST) + "..." : whole);
    }
    return value instanceof Value.Fault fault
        ? Message.verbatim(fault.reason())
        : Message.of("value.nothing");
  }
}
