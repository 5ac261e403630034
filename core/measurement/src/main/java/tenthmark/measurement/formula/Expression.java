package tenthmark.measurement.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A formula as a tree. */
public sealed interface Expression {

  /** The expressions that it is made of, in the order of the formula. */
  default List<Expression> parts() {
    return List.of();
  }

  /** The same made of other expressions, as many as it is made of. */
  default Expression with(List<Expression> parts) {
    return this;
  }

  /** A number written in the formula; a logical value is 1 or 0. */
  record Constant(double value) implements Expression {}

  /** A text written in the formula. */
  record Text(String text) implements Expression {}

  /**
   * An array written in the formula.
   *
   * @param rows of one length, of constants and texts
   */
  record Array(List<List<Expression>> rows) implements Expression {

    /** Copies the rows. */
    public Array {
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /** An argument left empty between two separators. */
  record Omitted() implements Expression {}

  /** What a formula refers to. */
  sealed interface Reference extends Expression {

    /**
     * The cells as seen from a sheet.
     *
     * @throws FormulaException for a name, which may stand for anything
     */
    CellRange range(String ownSheet);
  }

  /**
   * One cell.
   *
   * @param sheet the sheet's name, or null for the sheet of the formula
   */
  record CellReference(String sheet, int column, int row) implements Reference {

    /** The cell as seen from a sheet. */
    public CellAddress from(String ownSheet) {
      return new CellAddress(sheet == null ? ownSheet : sheet, column, row);
    }

    @Override
    public CellRange range(String ownSheet) {
      return CellRange.of(from(ownSheet));
    }
  }

  /**
   * A rectangle of cells.
   *
   * @param sheet the sheet's name, or null for the sheet of the formula
   */
  record RangeReference(String sheet, int left, int top, int right, int bottom)
      implements Reference {

    @Override
    public CellRange range(String ownSheet) {
      return new CellRange(sheet == null ? ownSheet : sheet, left, top, right, bottom);
    }
  }

  /**
   * A name: of a formula in a document, or of an input in a formula of names.
   *
   * @param sheet the sheet on which the name holds, or null for that of the formula
   */
  record Name(String sheet, String name) implements Reference {

    /** A name as seen from the formula's own sheet. */
    public Name(String name) {
      this(null, name);
    }

    @Override
    public CellRange range(String ownSheet) {
      throw FormulaException.of("formula.name", name);
    }
  }

  /** The cells that two ranges have in common. */
  record Intersection(Expression left, Expression right) implements Reference {

    @Override
    public CellRange range(String ownSheet) {
      return ((Reference) left)
          .range(ownSheet)
          .common(((Reference) right).range(ownSheet))
          .orElseThrow(() -> FormulaException.ofError("formula.no.common"));
    }

    @Override
    public List<Expression> parts() {
      return List.of(left, right);
    }

    @Override
    public Expression with(List<Expression> parts) {
      if (parts.stream().allMatch(Reference.class::isInstance)) {
        return new Intersection(parts.get(0), parts.get(1));
      }
      throw FormulaException.of("formula.union");
    }
  }

  /** Ranges that are taken together. */
  record Union(List<Expression> parts) implements Expression {

    @Override
    public Expression with(List<Expression> others) {
      return new Union(others);
    }
  }

  /** The same value with the other sign. */
  record Negative(Expression operand) implements Expression {

    @Override
    public List<Expression> parts() {
      return List.of(operand);
    }

    @Override
    public Expression with(List<Expression> parts) {
      return new Negative(parts.get(0));
    }
  }

  /**
   * Operators of one precedence, worked off from the left, so that a sum of thousands of terms is
   * not thousands of levels deep.
   */
  record Chain(Expression first, List<Link> rest) implements Expression {

    @Override
    public List<Expression> parts() {
      return Stream.concat(Stream.of(first), rest.stream().map(Link::operand)).toList();
    }

    @Override
    public Expression with(List<Expression> parts) {
      List<Link> links = new ArrayList<>();
      for (int i = 0; i < rest.size(); i++) {
        links.add(new Link(rest.get(i).operator(), parts.get(i + 1)));
      }
      return new Chain(parts.get(0), links);
    }
  }

  /** One operator of a chain with the operand on its right. */
  record Link(Binary operator, Expression operand) {}

  /** A comparison, whose sides may be texts. */
  record Compared(Expression left, Binary operator, Expression right) implements Expression {

    @Override
    public List<Expression> parts() {
      return List.of(left, right);
    }

    @Override
    public Expression with(List<Expression> parts) {
      return new Compared(parts.get(0), operator, parts.get(1));
    }
  }

  /** A call of a function that the engine knows. */
  record Call(Function function, List<Expression> arguments) implements Expression {

    @Override
    public List<Expression> parts() {
      return arguments;
    }

    @Override
    public Expression with(List<Expression> parts) {
      return new Call(function, parts);
    }
  }

  /**
   * A call of a function that the engine does not know.
   *
   * @param name in upper case, without the prefix that a file format puts before it
   */
  record ForeignCall(String name, List<Expression> arguments) implements Expression {

    @Override
    public List<Expression> parts() {
      return arguments;
    }

    @Override
    public Expression with(List<Expression> parts) {
      return new ForeignCall(name, parts);
    }
  }

  /** Two texts joined to one. */
  record Joined(Expression left, Expression right) implements Expression {

    @Override
    public List<Expression> parts() {
      return List.of(left, right);
    }

    @Override
    public Expression with(List<Expression> parts) {
      return new Joined(parts.get(0), parts.get(1));
    }
  }
}
