package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tenthmark.measurement.formula.Expression.Name;
import tenthmark.measurement.formula.Expression.Reference;

/**
 * Puts what a document's names stand for in their places, as seen from the cell that uses them: a
 * name is a formula, and its relative references move with that cell.
 */
public final class Names {

  private static final int DEEPEST = 32;

  /** Each name twice the one before would make a formula of any size. */
  private static final int MOST = 1_000;

  private final Cells cells;
  private final Formulas formulas;

  /** The names of a document. */
  public Names(Cells cells, Formulas formulas) {
    this.cells = cells;
    this.formulas = formulas;
  }

  /**
   * The same expression without names.
   *
   * @param user the cell that holds it
   * @throws FormulaException if a name is not defined, or its formula cannot be read
   */
  public Expression replaced(Expression expression, CellAddress user) {
    return new Replacement(user).of(expression, user.sheet());
  }

  /** The cells that a name of the whole document stands for, if it is one and stands for cells. */
  public Optional<CellRange> range(String name) {
    try {
      Expression meaning = replaced(new Name(name), new CellAddress("", 0, 0));
      return meaning instanceof Reference reference
          ? Optional.of(reference.range(""))
          : Optional.empty();
    } catch (FormulaException unreadable) {
      return Optional.empty();
    }
  }

  /** A formula without names. */
  Formula replaced(Formula formula, CellAddress user) {
    return formula.references().stream().anyMatch(Names::holdName)
        ? Formula.of(formula.text(), replaced(formula.tree(), user))
        : formula;
  }

  private static boolean holdName(Expression expression) {
    return expression instanceof Name || expression.parts().stream().anyMatch(Names::holdName);
  }

  /** What replaces the names of one expression. */
  private final class Replacement {

    private final CellAddress user;
    private final List<String> open = new ArrayList<>();
    private int count;

    Replacement(CellAddress user) {
      this.user = user;
    }

    /** Names in a name are seen from where that was defined. */
    Expression of(Expression expression, String sheet) {
      if (expression instanceof Name name) {
        return meaning(name, name.sheet() == null ? sheet : name.sheet());
      }
      List<Expression> parts = expression.parts();
      List<Expression> replaced = new ArrayList<>(parts.size());
      boolean same = true;
      for (Expression part : parts) {
        Expression other = of(part, sheet);
        same &= other == part;
        replaced.add(other);
      }
      return same ? expression : expression.with(replaced);
    }

    private Expression meaning(Name name, String sheet) {
      NamedFormula named =
          cells
              .named(name.name(), sheet)
              .orElseThrow(() -> FormulaException.of("formula.name.none", name.name()));
      if (open.size() >= DEEPEST || ++count > MOST) {
        throw FormulaException.of("formula.names", open.isEmpty() ? name.name() : open.get(0));
      }
      open.add(name.name());
      Expression meaning = of(read(name, named), named.base().sheet());
      open.remove(open.size() - 1);
      return meaning;
    }

    private Expression read(Name name, NamedFormula named) {
      try {
        return formulas.named(named, user).tree();
      } catch (FormulaException unreadable) {
        throw FormulaException.of("formula.in.name", name.name(), unreadable.said());
      }
    }
  }
}
