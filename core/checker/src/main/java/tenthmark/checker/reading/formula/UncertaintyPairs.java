package tenthmark.checker.reading.formula;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.evaluation.Call;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.reading.block.TypedCell;
import tenthmark.checker.reading.block.TypedSheet;
import tenthmark.measurement.catalogue.FunctionRole;
import tenthmark.measurement.formula.Binary;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Expression;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Formulas;

/**
 * Which cell is the uncertainty of which value, as far as formulas tell it without any word: u =
 * V·(u₁/x₁ + u₂/x₂) where V is calculated from x₁ and x₂; u as V but with u₁ for x₁; the scatter of
 * the series that V is the mean of; half the difference of two numbers beside their middle; the
 * root of a count; what LAB functions are given. Formulas that are copies say the same. In u =
 * V·(r₁ + r₂) the parts are relative uncertainties.
 */
public final class UncertaintyPairs {

  private static final Set<String> LOGARITHMS = Set.of("LN", "LOG10", "LOG");

  /** A relative uncertainty is smaller. */
  private static final double MOST_OF_ITSELF = 0.5;

  /** Half of what lies between the two ends of something is its radius, not its uncertainty. */
  private static final double MOST_OF_MIDDLE = 0.1;

  private static final int MOST_FORMULAS = 20_000;

  private final Evaluation evaluation;
  private final Formulas reader = new Formulas();
  private final Map<CellAddress, TypedCell> cells = new HashMap<>();
  private final Map<CellAddress, Expression> formulas = new LinkedHashMap<>();
  private final Map<CellAddress, Set<CellAddress>> behind = new HashMap<>();
  private final Map<CellAddress, List<CellAddress>> users = new HashMap<>();
  private final Map<CellAddress, CellAddress> values = new LinkedHashMap<>();
  private final Map<CellAddress, CellAddress> uncertainties = new HashMap<>();
  private final Map<CellAddress, CellAddress> parts = new HashMap<>();
  private final Set<CellAddress> shared = new HashSet<>();
  private final Set<CellAddress> contributions = new HashSet<>();
  private final Set<CellAddress> extremes = new HashSet<>();
  private final Deque<CellAddress> open = new ArrayDeque<>();

  /** The pairs of the visible sheets of a workbook. */
  public UncertaintyPairs(List<TypedSheet> sheets, Evaluation evaluation) {
    this.evaluation = evaluation;
    for (TypedSheet sheet : sheets) {
      sheet.cells().forEach(this::read);
    }
    formulas.keySet().forEach(this::uses);
    formulas.forEach(this::byFunction);
    formulas.forEach(this::relative);
    formulas.forEach(this::ofParts);
    series();
    halfRanges();
    follow();
    totals();
    follow();
    copies();
    follow();
    values.keySet().forEach(this::parts);
  }

  /** Whether a cell is added up, with others, to an uncertainty. */
  public boolean isContribution(CellAddress cell) {
    return contributions.contains(cell);
  }

  private void parts(CellAddress total) {
    CellAddress origin = total;
    while (formulas.containsKey(origin) && Sums.isMerelyReference(cells.get(origin).cell())) {
      origin = behind(origin).iterator().next();
    }
    if (formulas.containsKey(origin) && Sums.isSum(cells.get(origin).cell())) {
      List<CellAddress> parts = behind(origin).stream().filter(cells::containsKey).toList();
      boolean own =
          parts.stream()
              .noneMatch(part -> values.containsKey(part) || uncertainties.containsKey(part));
      if (own) {
        contributions.addAll(parts);
      }
    }
  }

  /** The value that a cell is the uncertainty of. */
  public Optional<CellAddress> value(CellAddress uncertainty) {
    return Optional.ofNullable(values.get(uncertainty));
  }

  /** The uncertainty of a value. */
  public Optional<CellAddress> uncertainty(CellAddress value) {
    return Optional.ofNullable(uncertainties.get(value));
  }

  /** All pairs: the value by its uncertainty. */
  public Map<CellAddress, CellAddress> all() {
    return java.util.Collections.unmodifiableMap(values);
  }

  private void read(TypedCell cell) {
    if (!cell.isNumber()) {
      return;
    }
    cells.put(cell.address(), cell);
    if (cell.isFormula() && !cell.isOfMatrix() && formulas.size() < MOST_FORMULAS) {
      try {
        formulas.put(
            cell.address(), Terms.bare(reader.inCell(cell.formula().orElseThrow().text()).tree()));
      } catch (FormulaException unreadable) {
        // Its cell says nothing here; what it means for the results the rules say.
        formulas.remove(cell.address());
      }
    }
  }

  private void uses(CellAddress cell) {
    Set<CellAddress> named = new LinkedHashSet<>(terms(cell).all(formulas.get(cell)));
    behind.put(cell, named);
    named.forEach(of -> users.computeIfAbsent(of, none -> new ArrayList<>()).add(cell));
  }

  private static Terms terms(CellAddress cell) {
    return new Terms(cell.sheet());
  }

  private Set<CellAddress> behind(CellAddress cell) {
    return behind.getOrDefault(cell, Set.of());
  }

  private List<CellAddress> users(CellAddress cell) {
    return users.getOrDefault(cell, List.of());
  }

  private double size(CellAddress cell) {
    return Math.abs(cells.get(cell).number());
  }

  private boolean isSmaller(CellAddress uncertainty, CellAddress value) {
    return cells.containsKey(uncertainty)
        && cells.containsKey(value)
        && (size(uncertainty) < size(value) || size(value) == 0);
  }

  private void pair(CellAddress uncertainty, CellAddress value) {
    boolean free =
        !values.containsKey(uncertainty)
            && !uncertainties.containsKey(value)
            && !uncertainties.containsKey(uncertainty)
            && !values.containsKey(value)
            && !uncertainty.equals(value);
    if (free && cells.containsKey(uncertainty) && cells.containsKey(value)) {
      values.put(uncertainty, value);
      uncertainties.put(value, uncertainty);
      open.add(uncertainty);
    }
  }

  /** One uncertainty that formulas take for several values belongs to each of them. */
  private void share(CellAddress uncertainty, CellAddress value) {
    boolean another = values.containsKey(uncertainty) && !values.get(uncertainty).equals(value);
    if (another && !uncertainties.containsKey(value) && !values.containsKey(value)) {
      uncertainties.put(value, uncertainty);
      shared.add(uncertainty);
    } else {
      pair(uncertainty, value);
    }
  }

  /** Whether a cell is the uncertainty of several values. */
  public boolean isShared(CellAddress uncertainty) {
    return shared.contains(uncertainty);
  }

  private void byFunction(CellAddress cell, Expression tree) {
    for (Call call : evaluation.calls(cells.get(cell).cell())) {
      if (call.is(FunctionRole.CARRIED)) {
        call.range("result").filter(range -> isOne(range)).ifPresent(v -> pair(cell, v.first()));
        call.range("inputs")
            .ifPresent(
                inputs -> call.range("uncertainties").ifPresent(sizes -> pairs(sizes, inputs)));
      }
    }
    if (isProduct(tree)) {
      terms(cell)
          .ratios(tree)
          .forEach(ratio -> users(ratio.whole()).forEach(user -> logarithm(cell, ratio, user)));
    }
    if (tree instanceof Expression.Call call && call.function().name().equals("SQRT")) {
      terms(cell)
          .cell(call.arguments().get(0))
          .filter(cells::containsKey)
          .filter(count -> isCount(cells.get(count)))
          .ifPresent(count -> pair(cell, count));
    }
  }

  private static boolean isProduct(Expression tree) {
    return tree instanceof Expression.Chain chain && Terms.isProduct(chain);
  }

  /** The relative uncertainty of a number is the one of its logarithm. */
  private void logarithm(CellAddress cell, Terms.Ratio ratio, CellAddress user) {
    boolean logarithm =
        formulas.get(user) instanceof Expression.Call call
            && LOGARITHMS.contains(call.function().name())
            && terms(user).cell(call.arguments().get(0)).filter(ratio.whole()::equals).isPresent();
    if (logarithm && isSmaller(ratio.part(), ratio.whole())) {
      pair(cell, user);
      pair(ratio.part(), ratio.whole());
    }
  }

  private static boolean isCount(TypedCell cell) {
    boolean counted =
        !cell.isFormula() || NativeFunctions.of(cell.cell()).stream().allMatch("SUM"::equals);
    return counted && cell.number() > 1 && cell.number() == Math.rint(cell.number());
  }

  private static boolean isOne(CellRange range) {
    return range.height() == 1 && range.width() == 1;
  }

  private void pairs(CellRange sizes, CellRange inputs) {
    if (sizes.height() == inputs.height() && sizes.width() == inputs.width()) {
      List<CellAddress> of = inputs.cells();
      List<CellAddress> is = sizes.cells();
      for (int i = 0; i < of.size(); i++) {
        pair(is.get(i), of.get(i));
      }
    }
  }

  /** An uncertainty that is a sum of relative ones, times the value that it is of. */
  private void relative(CellAddress cell, Expression tree) {
    List<Terms.Ratio> ratios = terms(cell).ratios(tree);
    for (CellAddress value : behind(cell)) {
      if (!formulas.containsKey(value) || value.equals(cell)) {
        continue;
      }
      List<Terms.Ratio> fitting =
          ratios.stream()
              .filter(ratio -> behind(value).contains(ratio.whole()))
              .filter(ratio -> !behind(value).contains(ratio.part()))
              .filter(ratio -> !ratio.part().equals(value))
              .filter(ratio -> isSmaller(ratio.part(), ratio.whole()))
              .toList();
      if (!fitting.isEmpty() && isSmaller(cell, value)) {
        fitting.forEach(ratio -> share(ratio.part(), ratio.whole()));
        pair(cell, value);
      }
    }
  }

  /** A value times the sum of relative uncertainties, one for each cell that it is computed of. */
  private void ofParts(CellAddress cell, Expression tree) {
    if (!(tree instanceof Expression.Chain chain) || !Terms.isProduct(chain)) {
      return;
    }
    List<CellAddress> added = terms(cell).addedFactor(chain);
    for (CellAddress value : terms(cell).factors(chain)) {
      List<CellAddress> inputs =
          behind(value).stream()
              .filter(cells::containsKey)
              .filter(of -> !of.equals(value))
              .toList();
      boolean fits =
          formulas.containsKey(value)
              && added.size() > 1
              && added.size() == inputs.size()
              && added.stream().allMatch(part -> isPart(part) && !behind(value).contains(part));
      if (fits && isSmaller(cell, value)) {
        for (int i = 0; i < added.size(); i++) {
          parts.putIfAbsent(added.get(i), inputs.get(i));
        }
        pair(cell, value);
      }
    }
  }

  private boolean isPart(CellAddress cell) {
    return cells.containsKey(cell) && size(cell) < MOST_OF_ITSELF;
  }

  /** The value that a cell is the relative uncertainty of. */
  public Optional<CellAddress> valueOfPart(CellAddress relative) {
    return Optional.ofNullable(parts.get(relative));
  }

  /** The scatter of a series beside its mean. */
  private void series() {
    Map<CellRange, CellAddress> means = new HashMap<>();
    for (CellAddress cell : formulas.keySet()) {
      if (NativeFunctions.of(cells.get(cell).cell()).equals(List.of("AVERAGE"))) {
        evaluation.references(cells.get(cell).cell()).stream()
            .filter(range -> !isOne(range))
            .forEach(range -> means.putIfAbsent(range, cell));
      }
    }
    for (CellAddress cell : formulas.keySet()) {
      if (Spreads.isOfSpread(cells.get(cell).cell(), evaluation)) {
        spreadOver(cell).stream()
            .flatMap(range -> Optional.ofNullable(means.get(range)).stream())
            .findFirst()
            .ifPresent(mean -> pair(cell, mean));
      }
    }
  }

  /** Half of what lies between two numbers, beside their middle. */
  private void halfRanges() {
    Map<Set<Expression>, CellAddress> middles = new HashMap<>();
    formulas.forEach(
        (cell, tree) ->
            Terms.halved(tree, Binary.ADD).ifPresent(of -> middles.putIfAbsent(of, cell)));
    formulas.forEach(
        (cell, tree) ->
            Terms.halved(tree, Binary.SUBTRACT)
                .flatMap(
                    ends -> Optional.ofNullable(middles.get(ends)).or(() -> between(cell, ends)))
                .filter(middle -> middle.sheet().equals(cell.sheet()))
                .filter(middle -> size(cell) < MOST_OF_MIDDLE * size(middle))
                .ifPresent(middle -> pair(cell, middle)));
  }

  /** The best value that stands between the least and the greatest, by place and by size. */
  private Optional<CellAddress> between(CellAddress cell, Set<Expression> ends) {
    List<CellAddress> two =
        ends.stream()
            .flatMap(end -> terms(cell).cell(end).stream())
            .filter(cells::containsKey)
            .toList();
    if (two.size() != 2 || !two.get(0).sheet().equals(two.get(1).sheet())) {
      return Optional.empty();
    }
    CellAddress one = two.get(0);
    CellAddress other = two.get(1);
    CellAddress middle =
        new CellAddress(
            one.sheet(), (one.column() + other.column()) / 2, (one.row() + other.row()) / 2);
    boolean beside =
        one.row() == other.row() && Math.abs(one.column() - other.column()) == 2
            || one.column() == other.column() && Math.abs(one.row() - other.row()) == 2;
    if (!beside || !cells.containsKey(middle)) {
      return Optional.empty();
    }
    double best = cells.get(middle).number();
    double least = Math.min(cells.get(one).number(), cells.get(other).number());
    double greatest = Math.max(cells.get(one).number(), cells.get(other).number());
    if (best <= least || best >= greatest) {
      return Optional.empty();
    }
    extremes.addAll(two);
    return Optional.of(middle);
  }

  /** Whether a cell is the least or the greatest that a value beside it may be. */
  public boolean isExtreme(CellAddress cell) {
    return extremes.contains(cell);
  }

  /** The series that a spread, or what it is computed from, refers to. */
  private List<CellRange> spreadOver(CellAddress cell) {
    List<CellRange> ranges = new ArrayList<>(evaluation.references(cells.get(cell).cell()));
    behind(cell).stream()
        .filter(formulas::containsKey)
        .forEach(of -> ranges.addAll(evaluation.references(cells.get(of).cell())));
    return ranges.stream().filter(range -> !isOne(range)).toList();
  }

  /** What is computed from uncertainties as another is from their values. */
  private void follow() {
    while (!open.isEmpty()) {
      CellAddress part = open.pop();
      CellAddress value = values.get(part);
      if (value == null) {
        continue;
      }
      if (formulas.containsKey(part) && formulas.containsKey(value)) {
        likeness(part, value).filter(this::fits).ifPresent(alike -> alike.forEach(this::pair));
      }
      for (CellAddress user : users(part)) {
        for (CellAddress of : users(value)) {
          if (!of.equals(user) && !values.containsKey(user) && !uncertainties.containsKey(of)) {
            likeness(user, of)
                .filter(this::fits)
                .ifPresent(
                    alike -> {
                      alike.forEach(this::pair);
                      pair(user, of);
                    });
          }
        }
      }
    }
  }

  private Optional<Map<CellAddress, CellAddress>> likeness(CellAddress one, CellAddress other) {
    return Likeness.of(values, formulas.get(one), terms(one), formulas.get(other), terms(other));
  }

  /** Whether cells that stand for each other are pairs, or may be. */
  private boolean fits(Map<CellAddress, CellAddress> alike) {
    return alike.entrySet().stream()
        .allMatch(
            pair ->
                pair.getValue().equals(values.get(pair.getKey()))
                    || !values.containsKey(pair.getKey())
                        && !uncertainties.containsKey(pair.getValue())
                        && isSmaller(pair.getKey(), pair.getValue()));
  }

  /** A sum of a paired uncertainty and of others that belong to no value is that value's. */
  private void totals() {
    for (CellAddress total : formulas.keySet()) {
      if (values.containsKey(total)
          || uncertainties.containsKey(total)
          || !Sums.isSum(cells.get(total).cell())) {
        continue;
      }
      List<CellAddress> summed = behind(total).stream().filter(cells::containsKey).toList();
      List<CellAddress> paired = summed.stream().filter(values::containsKey).toList();
      boolean others = summed.stream().noneMatch(uncertainties::containsKey);
      if (paired.size() == 1 && summed.size() > 1 && others) {
        CellAddress value = values.get(paired.get(0));
        if (summed.stream().allMatch(part -> isSmaller(part, value)) && isSmaller(total, value)) {
          values.remove(paired.get(0));
          uncertainties.remove(value);
          pair(total, value);
        }
      }
    }
  }

  /** Formulas that are copies of an uncertainty's say of their own neighbours what it says. */
  private void copies() {
    Map<String, List<CellAddress>> alike = new HashMap<>();
    formulas
        .keySet()
        .forEach(
            cell ->
                evaluation
                    .relativeForm(cells.get(cell).cell())
                    .ifPresent(
                        form ->
                            alike
                                .computeIfAbsent(cell.sheet() + form, none -> new ArrayList<>())
                                .add(cell)));
    for (List<CellAddress> copies : alike.values()) {
      copies.stream()
          .filter(values::containsKey)
          .filter(cell -> values.get(cell).sheet().equals(cell.sheet()))
          .findFirst()
          .ifPresent(model -> copies.forEach(copy -> copy(model, copy)));
    }
  }

  private void copy(CellAddress model, CellAddress copy) {
    CellAddress value = values.get(model);
    int column = copy.column() + value.column() - model.column();
    int row = copy.row() + value.row() - model.row();
    if (column >= 0 && row >= 0) {
      pair(copy, new CellAddress(copy.sheet(), column, row));
    }
  }
}
