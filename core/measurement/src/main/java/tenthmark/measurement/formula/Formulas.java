package tenthmark.measurement.formula;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Reads formulas and keeps those lately used, because Calc asks for the same ones at each
 * recalculation. Safe for several threads.
 */
public final class Formulas {

  private static final int KEPT = 10_000;

  private final Functions functions = new Functions();
  private final Map<String, Formula> ofCells = recent();
  private final Map<String, Formula> withNames = recent();
  private final Map<Elsewhere, Formula> ofNames = recent();

  /** A formula read from another cell than the one for which it was written. */
  private record Elsewhere(String text, Displacement displacement) {}

  /**
   * The formula of a cell, as Calc shows it or a file stores it.
   *
   * @throws FormulaException if it cannot be read
   */
  public Formula inCell(String text) {
    return kept(ofCells, text, unread -> FormulaParser.readCell(unread, functions));
  }

  /**
   * A formula in which every word that is not a function is the name of an input.
   *
   * @throws FormulaException if it cannot be read
   */
  public Formula withNames(String text) {
    return kept(withNames, text, unread -> FormulaParser.readNames(unread, functions));
  }

  /**
   * What a name stands for, as seen from the cell that uses it.
   *
   * @throws FormulaException if it cannot be read
   */
  Formula named(NamedFormula name, CellAddress user) {
    return kept(
        ofNames,
        new Elsewhere(name.text(), Displacement.of(name, user)),
        unread -> FormulaParser.readElsewhere(unread.text(), functions, unread.displacement()));
  }

  /** The functions that can be computed, in upper case. */
  public Set<String> names() {
    return functions.names();
  }

  private static <K> Formula kept(Map<K, Formula> read, K unread, Function<K, Formula> reader) {
    synchronized (read) {
      return read.computeIfAbsent(unread, reader);
    }
  }

  private static <K> Map<K, Formula> recent() {
    return new LinkedHashMap<>(16, 0.75f, true) {
      @Override
      protected boolean removeEldestEntry(Map.Entry<K, Formula> eldest) {
        return size() > KEPT;
      }
    };
  }
}
