package tenthmark.checker.evaluation;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.functions.FreeRefFunction;
import org.apache.poi.ss.formula.functions.Rept;
import org.apache.poi.ss.formula.functions.Substitute;
import org.apache.poi.ss.formula.udf.UDFFinder;
import tenthmark.checker.workbook.FormulaText;

/** Functions of the spreadsheet that POI lacks or that the checker calculates otherwise. */
final class OwnFunctions implements UDFFinder {

  /** Before the name of a built-in function, which POI would not let a finder replace. */
  private static final String MARK = "OWN_";

  private static final Map<String, FreeRefFunction> EVERYWHERE =
      Map.of(
          "REPT",
          BoundedText.of(new Rept()),
          "SUBSTITUTE",
          BoundedText.of(new Substitute()),
          "TEXTJOIN",
          BoundedText::join,
          "LINEST",
          new LineEstimate());

  private static final Map<String, FreeRefFunction> IN_ARRAYS = Map.of("IF", new ArrayIf());

  private final Map<String, FreeRefFunction> marked = new HashMap<>();

  OwnFunctions() {
    EVERYWHERE.forEach((name, function) -> marked.put(MARK + name, function));
    IN_ARRAYS.forEach((name, function) -> marked.put(MARK + name, function));
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
    return marked.getOrDefault(upper, EVERYWHERE.get(upper));
  }
}
