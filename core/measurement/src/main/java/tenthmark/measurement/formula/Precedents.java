package tenthmark.measurement.formula;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tenthmark.measurement.formula.Expression.CellReference;
import tenthmark.measurement.formula.Expression.Reference;
import tenthmark.measurement.formula.KnownCells.Step;

/**
 * The cells that a result is computed from, followed back to its inputs. An input ends the descent,
 * even if it holds a formula. What no input changes is computed once and is then constant. Nothing
 * here recurses from cell to cell, so that a chain may be as long as a sheet.
 */
final class Precedents {

  private static final int MOST_CELLS = 200_000;

  private static final int SHOWN_OF_A_CIRCLE = 8;

  /** Functions whose references are not in the formula's text. */
  private static final Set<String> HIDING = Set.of("INDIRECT", "OFFSET", "MULTIPLE.OPERATIONS");

  private final Cells cells;
  private final Formulas formulas;
  private final Names names;
  private final Set<CellAddress> inputs;
  private final KnownCells known;

  private final Set<CellAddress> reached = new HashSet<>();
  private final Map<CellAddress, Step> steps = new LinkedHashMap<>();
  private final Deque<Frame> open = new ArrayDeque<>();
  private final Set<CellAddress> path = new LinkedHashSet<>();
  private int read;

  /** A formula whose references are being followed. */
  private static final class Frame {

    private final Step step;
    private final Iterator<CellAddress> rest;
    private boolean depends;

    private Frame(Step step, List<CellAddress> references) {
      this.step = step;
      this.rest = references.iterator();
    }
  }

  /**
   * Follows a cell.
   *
   * @param content what it holds
   */
  Precedents(
      Cells cells,
      Formulas formulas,
      CellAddress result,
      CellContent content,
      Set<CellAddress> inputs) {
    this.cells = cells;
    this.formulas = formulas;
    this.names = new Names(cells, formulas);
    this.inputs = inputs;
    this.known = new KnownCells(result.sheet());
    enter(result, content);
    while (!open.isEmpty()) {
      Frame frame = open.peek();
      if (frame.rest.hasNext()) {
        meet(frame.rest.next(), frame);
      } else {
        leave(frame);
      }
    }
  }

  /** The inputs that were met on the way. */
  Set<CellAddress> reached() {
    return Collections.unmodifiableSet(reached);
  }

  /** The formulas that inputs change, each after those that it needs. */
  List<Step> steps() {
    return List.copyOf(steps.values());
  }

  /** What no input changes. */
  KnownCells known() {
    return known;
  }

  private void meet(CellAddress cell, Frame from) {
    if (inputs.contains(cell)) {
      reached.add(cell);
      from.depends = true;
    } else if (path.contains(cell)) {
      throw circle(cell);
    } else if (steps.containsKey(cell)) {
      from.depends = true;
    } else if (!known.isConstant(cell)) {
      enter(cell, cells.at(cell));
    }
  }

  private void enter(CellAddress cell, CellContent content) {
    count(1);
    if (!(content instanceof CellContent.Formula formula)) {
      known.constant(cell, content);
      return;
    }
    try {
      Formula parsed = names.replaced(formulas.inCell(formula.text()), cell);
      CellAddress first = formula.array().map(CellRange::first).orElse(cell);
      open.push(new Frame(new Step(cell, parsed, first), precedents(parsed, cell.sheet())));
      path.add(cell);
    } catch (FormulaException problem) {
      known.constant(cell, known.fault(problem, cell));
    }
  }

  private void leave(Frame frame) {
    Step step = frame.step;
    open.pop();
    path.remove(step.cell());
    if (frame.depends) {
      steps.put(step.cell(), step);
      if (!open.isEmpty()) {
        open.peek().depends = true;
      }
    } else {
      known.constant(step.cell(), computedOrShown(step));
    }
  }

  /** What the engine cannot compute but no input changes is taken as the document shows it. */
  private Operand<Double> computedOrShown(Step step) {
    Operand<Double> computed = known.compute(step, new Doubles(), Map.of());
    if (computed instanceof Operand.Fault<Double> problem
        && Collections.disjoint(step.formula().functions(), HIDING)) {
      Optional<CellContent> shown = cells.shown(step.cell());
      if (shown.isPresent() && shown.get() instanceof CellContent.Number number) {
        return new Operand.Number<>(number.value());
      }
      if (shown.isPresent()
          && shown.get() instanceof CellContent.Fault fault
          && !problem.problem().isError()) {
        return known.fault(KnownCells.error(fault), step.cell());
      }
    }
    return computed;
  }

  private List<CellAddress> precedents(Formula formula, String own) {
    List<CellAddress> precedents = new ArrayList<>();
    for (Reference reference : formula.references()) {
      CellRange range = reference.range(own);
      requireSheet(range.sheet());
      if (reference instanceof CellReference) {
        precedents.add(range.first());
      } else {
        precedents.addAll(filled(range));
      }
    }
    return precedents;
  }

  /** The cells of a range that are to be followed; those without formula are known at once. */
  private List<CellAddress> filled(CellRange range) {
    List<List<CellContent>> rows = cells.rows(range);
    int width = rows.stream().mapToInt(List::size).max().orElse(0);
    count((long) rows.size() * width);
    known.filled(range, rows.size(), width);
    List<CellAddress> filled = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < rows.get(row).size(); column++) {
        CellContent content = rows.get(row).get(column);
        CellAddress cell = new CellAddress(range.sheet(), range.left() + column, range.top() + row);
        if (content instanceof CellContent.Formula || inputs.contains(cell)) {
          filled.add(cell);
        } else if (!(content instanceof CellContent.Empty)) {
          known.constant(cell, content);
        }
      }
    }
    return filled;
  }

  /** A sheet that does not exist would look as if it were empty. */
  private void requireSheet(String sheet) {
    if (!cells.hasSheet(sheet)) {
      throw FormulaException.of("formula.sheet", sheet);
    }
  }

  private void count(long more) {
    if (more > MOST_CELLS - read) {
      throw FormulaException.of("formula.many.cells", MOST_CELLS);
    }
    read += (int) more;
  }

  private FormulaException circle(CellAddress again) {
    List<CellAddress> chain = new ArrayList<>(path);
    List<CellAddress> circle = chain.subList(chain.indexOf(again), chain.size());
    String shown =
        circle.stream()
            .limit(SHOWN_OF_A_CIRCLE)
            .map(known::label)
            .collect(Collectors.joining(", "));
    return FormulaException.of(
        "formula.circle",
        shown + (circle.size() > SHOWN_OF_A_CIRCLE ? ", ..., " : ", ") + known.label(again));
  }
}
