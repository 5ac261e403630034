package tenthmark.checker.reading.formula;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.measurement.formula.Binary;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.Expression;

/**
 * Compares two formulas term by term: an uncertainty that is carried through a sum or a factor is
 * computed as its value is, with each value's uncertainty in the value's place.
 */
final class Likeness {

  /** A mean may be given the mean or the largest of the uncertainties. */
  private static final Set<String> OF_SERIES = Set.of("AVERAGE", "MAX", "MEDIAN");

  private final Map<CellAddress, CellAddress> known;
  private final Terms first;
  private final Terms second;
  private final Map<CellAddress, CellAddress> pairs = new LinkedHashMap<>();

  private Likeness(Map<CellAddress, CellAddress> known, Terms first, Terms second) {
    this.known = known;
    this.first = first;
    this.second = second;
  }

  /**
   * The cells that stand at the same places of two formulas; empty if these are not alike.
   *
   * @param known cells of the first formula that stand for ones of the second, in sums wherever
   *     they stand
   */
  static Optional<Map<CellAddress, CellAddress>> of(
      Map<CellAddress, CellAddress> known,
      Expression one,
      Terms first,
      Expression other,
      Terms second) {
    Likeness likeness = new Likeness(known, first, second);
    return likeness.alike(one, other) && !likeness.pairs.isEmpty()
        ? Optional.of(likeness.pairs)
        : Optional.empty();
  }

  private boolean alike(Expression one, Expression other) {
    Expression left = linear(one);
    Expression right = linear(other);
    if (left instanceof Expression.Reference a && right instanceof Expression.Reference b) {
      return references(a, b);
    }
    if (left instanceof Expression.Chain a && right instanceof Expression.Chain b) {
      return chains(a, b);
    }
    if (left instanceof Expression.Call a && right instanceof Expression.Call b) {
      boolean same =
          a.function().name().equals(b.function().name())
              || OF_SERIES.contains(a.function().name()) && OF_SERIES.contains(b.function().name());
      return same && parts(a.arguments(), b.arguments());
    }
    return left.parts().isEmpty() && left.equals(right);
  }

  private boolean references(Expression.Reference one, Expression.Reference other) {
    List<CellAddress> a = first.cells(one);
    List<CellAddress> b = second.cells(other);
    if (a.isEmpty() || a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (!a.get(i).equals(b.get(i))) {
        pairs.put(a.get(i), b.get(i));
      }
    }
    return true;
  }

  private boolean parts(List<Expression> one, List<Expression> other) {
    if (one.size() != other.size()) {
      return false;
    }
    for (int i = 0; i < one.size(); i++) {
      if (!alike(one.get(i), other.get(i))) {
        return false;
      }
    }
    return true;
  }

  private boolean chains(Expression.Chain one, Expression.Chain other) {
    List<Expression> parts = Terms.isSum(one) ? inOrder(one.parts(), other.parts()) : one.parts();
    if (!parts(parts, other.parts())) {
      return false;
    }
    for (int i = 0; i < one.rest().size(); i++) {
      if (unsigned(one.rest().get(i).operator()) != unsigned(other.rest().get(i).operator())) {
        return false;
      }
    }
    return true;
  }

  /** Addends, those first that stand for the other sum's first. */
  private List<Expression> inOrder(List<Expression> addends, List<Expression> others) {
    List<Expression> left = new ArrayList<>(addends);
    List<Expression> ordered = new ArrayList<>();
    for (Expression other : others) {
      Optional<CellAddress> of = second.cell(other);
      Expression next =
          left.stream()
              .filter(part -> first.cell(part).map(known::get).equals(of) && of.isPresent())
              .findFirst()
              .orElse(null);
      ordered.add(next);
      left.remove(next);
    }
    ordered.replaceAll(part -> part == null && !left.isEmpty() ? left.remove(0) : part);
    ordered.removeIf(java.util.Objects::isNull);
    ordered.addAll(left);
    return ordered;
  }

  /** Uncertainties are added where values are subtracted. */
  private static Binary unsigned(Binary operator) {
    return operator == Binary.SUBTRACT ? Binary.ADD : operator;
  }

  /** Without the numbers that are added to it, which are exact. */
  private static Expression linear(Expression tree) {
    Expression bare = Terms.bare(tree);
    if (!(bare instanceof Expression.Chain chain) || !Terms.isSum(chain)) {
      return bare;
    }
    List<Expression> addends = new ArrayList<>();
    chain.parts().stream()
        .filter(part -> !(part instanceof Expression.Constant))
        .forEach(addends::add);
    if (addends.isEmpty() || addends.size() == chain.parts().size()) {
      return bare;
    }
    Expression start = Terms.bare(addends.get(0));
    return addends.size() == 1
        ? start
        : new Expression.Chain(
            start,
            addends.subList(1, addends.size()).stream()
                .map(addend -> new Expression.Link(Binary.ADD, addend))
                .toList());
  }
}
