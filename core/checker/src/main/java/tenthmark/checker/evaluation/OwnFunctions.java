package tenthmark.checker.evaluation;

import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import org.apache.poi.ss.formula.functions.Rept;
import org.apache.poi.ss.formula.functions.Substitute;
import org.apache.poi.ss.formula.udf.UDFFinder;
import tenthmark.checker.workbook.FormulaText;
import tenthmark.measurement.line.LinearFit;

/** Functions of the spreadsheet that POI lacks or that the checker calculates otherwise. */
final class OwnFunctions implements UDFFinder {

  /** Before the name of a built-in function, which POI would not let a finder replace. */
  private static final String MARK = "OWN_";

  private static final DoubleUnaryOperator AS_IT_IS = DoubleUnaryOperator.identity();

  /** All arguments of these are arrays. */
  private static final Map<String, FreeRefFunction> LINES =
      Map.of(
          "LINEST",
          new LineEstimate("LINEST", AS_IT_IS, AS_IT_IS),
          "LOGEST",
          new LineEstimate("LOGEST", OwnFunctions::logarithm, Math::exp),
          "TREND",
          new LineValues("TREND", AS_IT_IS, AS_IT_IS),
          "GROWTH",
          new LineValues("GROWTH", OwnFunctions::logarithm, Math::exp),
          "STEYX",
          new LineScatter("STEYX", LinearFit::residualDeviation),
          "RSQ",
          new LineScatter("RSQ", LinearFit::determination));

  private static final Map<String, FreeRefFunction> EVERYWHERE =
      joined(
          LINES,
          Map.of(
              "REPT", BoundedText.of(new Rept()),
              "SUBSTITUTE", BoundedText.of(new Substitute()),
              "TEXTJOIN", BoundedText::join));

  private static final Map<String, FreeRefFunction> IN_ARRAYS =
      joined(
          Map.of("IF", new ArrayIf()),
          cellByCell(
              "ABS",
              "ACOS",
              "ASIN",
              "ATAN",
              "ATAN2",
              "COS",
              "COSH",
              "DEGREES",
              "EXP",
              "INT",
              "LN",
              "LOG",
              "LOG10",
              "MOD",
              "POWER",
              "RADIANS",
              "ROUND",
              "ROUNDDOWN",
              "ROUNDUP",
              "SIGN",
              "SIN",
              "SINH",
              "SQRT",
              "TAN",
              "TANH"));

  private static Map<String, FreeRefFunction> cellByCell(String... names) {
    return Stream.of(names)
        .collect(Collectors.toUnmodifiableMap(Function.identity(), CellByCell::of));
  }

  private static Map<String, FreeRefFunction> joined(
      Map<String, FreeRefFunction> one, Map<String, FreeRefFunction> other) {
    return Stream.of(one, other)
        .flatMap(functions -> functions.entrySet().stream())
        .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  private static double logarithm(double y) {
    if (y <= 0) {
      throw NotCheckableException.of("reason.line.logarithm");
    }
    return Math.log(y);
  }

  /** Whether all arguments of a function of this name, with its mark, are arrays. */
  static boolean takesArrays(String marked) {
    return marked.startsWith(MARK) && LINES.containsKey(marked.substring(MARK.length()));
  }

  /** A formula with the marks by which POI's parser asks the finder. */
  static String marked(String formula, FormulaType type) {
    String upper = formula.toUpperCase(Locale.ROOT);
    return EVERYWHERE.keySet().stream().anyMatch(upper::contains) || type == FormulaType.ARRAY
        ? FormulaText.renameCalls(formula, name -> markedName(name, type))
        : formula;
  }

  private static String markedName(String name, FormulaType type) {
    String upper = name.toUpperCase(Locale.ROOT);
    return EVERYWHERE.containsKey(upper)
            || type == FormulaType.ARRAY && IN_ARRAYS.containsKey(upper)
        ? MARK + upper
        : name;
  }

  @Override
  public FreeRefFunction findFunction(String name) {
    String upper = name.toUpperCase(Locale.ROOT);
    if (!upper.startsWith(MARK)) {
      return EVERYWHERE.get(upper);
    }
    String own = upper.substring(MARK.length());
    return EVERYWHERE.getOrDefault(own, IN_ARRAYS.get(own));
  }
}
