package tenthmark.checker.reading.formula;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tenthmark.measurement.formula.Binary;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Expression;
import tenthmark.measurement.formula.FormulaException;

/** What a formula's tree says of the cells in it: which multiply, which divide, which are added. */
final class Terms {

  /** What changes a number's sign or its last digits only. */
  private static final Set<String> SHAPING = Set.of("ABS", "ROUND", "ROUNDUP", "ROUNDDOWN");

  private static final int MOST_CELLS = 400;

  /**
   * A part of a number over that number, as in a relative uncertainty.
   *
   * @param part the cell above the stroke
   * @param whole the cell below it
   */
  record Ratio(CellAddress part, CellAddress whole) {}

  private final String sheet;

  /** The terms of formulas on a sheet. */
  Terms(String sheet) {
    this.sheet = sheet;
  }

  /** A formula without what merely rounds it or drops its sign. */
  static Expression bare(Expression tree) {
    if (tree instanceof Expression.Negative negative) {
      return bare(negative.operand());
    }
    if (tree instanceof Expression.Call call
        && SHAPING.contains(call.function().name())
        && !call.arguments().isEmpty()) {
      return bare(call.arguments().get(0));
    }
    return tree instanceof Expression.Chain chain && chain.rest().isEmpty()
        ? bare(chain.first())
        : tree;
  }

  /** The single cell that an expression is, if it is one. */
  Optional<CellAddress> cell(Expression tree) {
    return bare(tree) instanceof Expression.CellReference reference
        ? Optional.of(reference.from(sheet))
        : Optional.empty();
  }

  /** The cells of a reference; none of a name or of too large a range. */
  List<CellAddress> cells(Expression.Reference reference) {
    try {
      CellRange range = reference.range(sheet);
      return (long) range.height() * range.width() > MOST_CELLS ? List.of() : range.cells();
    } catch (FormulaException unknown) {
      return List.of();
    }
  }

  /** Every cell that an expression names. */
  List<CellAddress> all(Expression tree) {
    List<CellAddress> cells = new ArrayList<>();
    collect(tree, cells);
    return cells;
  }

  private void collect(Expression tree, List<CellAddress> cells) {
    if (tree instanceof Expression.Reference reference) {
      cells.addAll(cells(reference));
      return;
    }
    tree.parts().forEach(part -> collect(part, cells));
  }

  /** The parts over wholes anywhere in a formula. */
  List<Ratio> ratios(Expression tree) {
    List<Ratio> ratios = new ArrayList<>();
    ratios(tree, ratios);
    return ratios;
  }

  private void ratios(Expression tree, List<Ratio> ratios) {
    if (tree instanceof Expression.Chain chain && isProduct(chain)) {
      ratios(chain, ratios);
    }
    tree.parts().forEach(part -> ratios(part, ratios));
  }

  private void ratios(Expression.Chain chain, List<Ratio> ratios) {
    List<List<CellAddress>> above = new ArrayList<>();
    List<List<CellAddress>> below = new ArrayList<>();
    above.add(addends(chain.first()));
    for (Expression.Link link : chain.rest()) {
      (link.operator() == Binary.DIVIDE ? below : above).add(addends(link.operand()));
    }
    for (List<CellAddress> parts : above) {
      for (List<CellAddress> wholes : below) {
        for (int i = 0; parts.size() == wholes.size() && i < parts.size(); i++) {
          ratios.add(new Ratio(parts.get(i), wholes.get(i)));
        }
      }
    }
  }

  /** The single cells that multiply a whole product. */
  List<CellAddress> factors(Expression.Chain product) {
    List<CellAddress> factors = new ArrayList<>();
    cell(product.first()).ifPresent(factors::add);
    product.rest().stream()
        .filter(link -> link.operator() == Binary.MULTIPLY)
        .forEach(link -> cell(link.operand()).ifPresent(factors::add));
    return factors;
  }

  /** The cells of the one sum, straight or in quadrature, that is a factor of a product. */
  List<CellAddress> addedFactor(Expression.Chain product) {
    List<Expression> operands = new ArrayList<>(List.of(product.first()));
    product.rest().stream()
        .filter(link -> link.operator() == Binary.MULTIPLY)
        .forEach(link -> operands.add(link.operand()));
    return operands.stream()
        .map(operand -> addends(withoutRoot(operand)))
        .filter(cells -> cells.size() > 1)
        .findFirst()
        .orElse(List.of());
  }

  /** The sum of squares under a root as the sum of what is squared. */
  private static Expression withoutRoot(Expression tree) {
    Expression bare = bare(tree);
    if (!(bare instanceof Expression.Call call)
        || !call.function().name().equals("SQRT")
        || !(bare(call.arguments().get(0)) instanceof Expression.Chain sum)
        || !isSum(sum)) {
      return bare;
    }
    return sum.with(
        sum.parts().stream()
            .map(part -> bare(part) instanceof Expression.Chain power ? power.first() : part)
            .toList());
  }

  /** The cells that an expression adds up, be it one; none where it does more. */
  private List<CellAddress> addends(Expression tree) {
    Expression bare = bare(tree);
    if (bare instanceof Expression.Chain chain && isSum(chain)) {
      return chain.parts().stream().flatMap(part -> cell(part).stream()).toList();
    }
    return cell(bare).map(List::of).orElse(List.of());
  }

  /**
   * The two expressions whose sum, or difference, a formula halves; the mean of two cells is half
   * their sum.
   */
  static Optional<Set<Expression>> halved(Expression tree, Binary operator) {
    Expression bare = bare(tree);
    if (operator == Binary.ADD && bare instanceof Expression.Call call) {
      boolean mean = call.function().name().equals("AVERAGE");
      return mean ? two(call.arguments()) : Optional.empty();
    }
    if (!(bare instanceof Expression.Chain product) || !isHalf(product)) {
      return Optional.empty();
    }
    return bare(product.first()) instanceof Expression.Chain sum
            && sum.rest().size() == 1
            && sum.rest().get(0).operator() == operator
        ? two(sum.parts())
        : Optional.empty();
  }

  private static Optional<Set<Expression>> two(List<Expression> parts) {
    Set<Expression> two = new HashSet<>(parts);
    return parts.size() == 2 && two.size() == 2 ? Optional.of(two) : Optional.empty();
  }

  private static boolean isHalf(Expression.Chain product) {
    if (product.rest().size() != 1) {
      return false;
    }
    Expression.Link link = product.rest().get(0);
    return link.equals(new Expression.Link(Binary.DIVIDE, new Expression.Constant(2)))
        || link.equals(new Expression.Link(Binary.MULTIPLY, new Expression.Constant(0.5)));
  }

  static boolean isProduct(Expression.Chain chain) {
    return chain.rest().stream()
        .allMatch(link -> link.operator() == Binary.MULTIPLY || link.operator() == Binary.DIVIDE);
  }

  static boolean isSum(Expression.Chain chain) {
    return chain.rest().stream()
        .allMatch(link -> link.operator() == Binary.ADD || link.operator() == Binary.SUBTRACT);
  }
}
