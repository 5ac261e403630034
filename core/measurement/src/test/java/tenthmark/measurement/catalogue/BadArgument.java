package tenthmark.measurement.catalogue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tenthmark.measurement.formula.CellBlock;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Grid;

/**
 * A call that one parameter refuses, made from the function's example, for every parameter of every
 * function in the catalogue.
 *
 * @param formula with the display name and semicolons
 * @param sentence what LAB_WHY says about a cell with this formula
 */
public record BadArgument(
    Declaration declaration, Parameter<?> parameter, String formula, String sentence) {

  /** A cell that no example uses. */
  public static final String CALL = "Y90";

  /** Bad for most kinds: an unknown word, a number that is too small, a blank cell and so on. */
  private static final List<String> CANDIDATES =
      List.of("\"nonsense\"", "-1", "Y99", "\"1 ± 2\"", "1E+300", "0.5", "5");

  private static final Catalogue CATALOGUE = Catalogue.load();

  /** One for each parameter; where no candidate is refused the sentence says what came instead. */
  public static Stream<BadArgument> ofEveryParameter() {
    return CATALOGUE.functions().stream().flatMap(BadArgument::of);
  }

  private static Stream<BadArgument> of(WorksheetFunction function) {
    int parameters = function.declaration().parameters().size();
    return IntStream.range(0, parameters).mapToObj(index -> of(function.declaration(), index));
  }

  private static BadArgument of(Declaration declaration, int index) {
    ExampleCall example = ExampleCall.of(declaration.example());
    Parameter<?> parameter = declaration.parameters().get(index);
    BadArgument last = null;
    for (String candidate : CANDIDATES) {
      String formula = call(declaration, example.arguments(), index, candidate);
      Grid grid = example.document().put(CALL, formula);
      last = new BadArgument(declaration, parameter, formula, why(grid));
      if (last.namesTheParameter(last.sentence())) {
        return last;
      }
    }
    return last;
  }

  private static String call(
      Declaration declaration, List<String> arguments, int index, String candidate) {
    List<String> changed = new ArrayList<>(arguments);
    changed.addAll(Collections.nCopies(Math.max(0, index + 1 - changed.size()), ""));
    changed.set(index, candidate);
    return "=" + declaration.displayName() + "(" + String.join(";", changed) + ")";
  }

  private static String why(Grid grid) {
    Value cell = new Value.Reference(new CellBlock(CellRange.of(Grid.address(CALL)), grid));
    Value said = CATALOGUE.find("LAB_WHY").orElseThrow().call(List.of(cell));
    return ((Value.Text) said).text();
  }

  /** Whether a sentence is about this function and this parameter. */
  public boolean namesTheParameter(String said) {
    return said.startsWith(declaration.displayName() + ": ")
        && said.matches("(?s).*\\b" + parameter.name() + "\\b.*");
  }

  @Override
  public String toString() {
    return formula;
  }
}
