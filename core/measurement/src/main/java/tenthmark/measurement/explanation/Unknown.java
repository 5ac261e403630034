package tenthmark.measurement.explanation;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.Cells;
import tenthmark.measurement.formula.Expression;
import tenthmark.measurement.formula.Expression.ForeignCall;
import tenthmark.measurement.formula.Expression.Name;

/**
 * A word in a formula that nobody knows, for which a cell shows #NAME?.
 *
 * @param word as it stands in the formula
 * @param isFunction whether it is called; otherwise it is used as a name
 * @param meant the LAB function that it may be meant for
 */
public record Unknown(String word, boolean isFunction, Optional<String> meant) {

  /**
   * The word that is the most likely reason: one that resembles a LAB function, a name that is not
   * defined, then any other function that is not known here.
   *
   * @param cell that holds the formula
   */
  public static Optional<Unknown> in(
      Expression formula, CellAddress cell, Cells cells, Catalogue catalogue) {
    return words(formula, cell, cells, catalogue)
        .min(
            Comparator.comparing(word -> word.meant().isPresent() ? 0 : word.isFunction() ? 2 : 1));
  }

  private static Stream<Unknown> words(
      Expression expression, CellAddress cell, Cells cells, Catalogue catalogue) {
    Stream<Unknown> inside =
        expression.parts().stream().flatMap(part -> words(part, cell, cells, catalogue));
    return Stream.concat(word(expression, cell, cells, catalogue).stream(), inside);
  }

  private static Optional<Unknown> word(
      Expression expression, CellAddress cell, Cells cells, Catalogue catalogue) {
    if (expression instanceof ForeignCall call && catalogue.find(call.name()).isEmpty()) {
      return Optional.of(function(call.name(), catalogue));
    }
    if (expression instanceof Name name) {
      String sheet = name.sheet() == null ? cell.sheet() : name.sheet();
      return cells.named(name.name(), sheet).isEmpty()
          ? Optional.of(new Unknown(name.name(), false, Optional.empty()))
          : Optional.empty();
    }
    return Optional.empty();
  }

  private static Unknown function(String name, Catalogue catalogue) {
    Optional<String> meant =
        catalogue
            .resembling(name)
            .map(WorksheetFunction::declaration)
            .map(known -> known.displayName());
    return new Unknown(name, true, meant);
  }
}
