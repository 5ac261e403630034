package tenthmark.measurement.functions;

import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.rounding.Decimals;
import tenthmark.measurement.rounding.PowerOfTen;
import tenthmark.measurement.wording.Message;

/** The doubt that two arguments may have changed places. */
final class Swapped {

  private static final int DIGITS_SHOWN = 4;

  private Swapped() {}

  /** An argument that should be the smaller one of two and is not. */
  static Message doubt(Parameter<?> size, double large, Parameter<?> whole, double small) {
    return Message.of("doubt.size", size.name(), shown(large), whole.name(), shown(small));
  }

  private static Message shown(double number) {
    return Message.figure(PowerOfTen.show(Decimals.shortest(number), DIGITS_SHOWN));
  }
}
