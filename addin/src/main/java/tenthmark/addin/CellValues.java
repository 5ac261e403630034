package tenthmark.addin;

import com.sun.star.uno.AnyConverter;
import java.util.Arrays;
import java.util.List;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellBlock;

/** Values as Calc hands them over, and as it takes them. */
final class CellValues {

  /** A not-a-number whose payload is the code of #N/A, as Calc marks errors inside a matrix. */
  private static final double NOT_AVAILABLE = Double.longBitsToDouble(0x7ff8_0000_0000_7fffL);

  private CellValues() {}

  /** An argument as a value. */
  static Value fromCalc(Object argument) {
    if (argument instanceof Double number) {
      return Value.of(number);
    }
    if (argument instanceof String text) {
      return Value.of(text);
    }
    if (argument instanceof Object[][] rows) {
      return new Value.Table(Arrays.stream(rows).map(CellValues::row).toList());
    }
    if (argument instanceof CellBlock block) {
      return new Value.Reference(block);
    }
    if (argument == null || AnyConverter.isVoid(argument)) {
      return Value.BLANK;
    }
    throw new IllegalStateException("Calc passed a " + argument.getClass().getName());
  }

  private static List<Value> row(Object[] cells) {
    return Arrays.stream(cells).map(CellValues::fromCalc).toList();
  }

  /** A result; blank is an empty text. Nothing (void) would show as an empty cell, not an error. */
  static Object toCalc(Value result) {
    if (result instanceof Value.Numeric numeric) {
      return numeric.number();
    }
    if (result instanceof Value.Text text) {
      return text.text();
    }
    if (result instanceof Value.Blank) {
      return "";
    }
    if (result instanceof Value.Fault) {
      return NOT_AVAILABLE;
    }
    throw new IllegalStateException("not a result for a cell: " + result);
  }
}
