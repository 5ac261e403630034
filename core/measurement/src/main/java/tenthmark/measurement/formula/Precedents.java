package tenthmark.measurement.formula;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import tenthmark.measurement.formula.Expression.CellReference;
import tenthmark.measurement.formula.Expression.Name;
import tenthmark.measurement.formula.Expression.RangeReference;
import tenthmark.measurement.formula.Expression.Reference;

/**
 * The cells that a result is computed from, followed back to its inputs. An input ends the descent,
 * even if it holds a formula. What no input changes is computed once and is then constant. Nothing
 * here recurses from cell to cell, so that a chain may be as long as a sheet.
 */
final class Precedents {

  private static final int MOST_CELLS = 200_000;

  /** Functions whose references are not in the formula's text. */
  private static final Set<String> HIDING = Set.of("INDIRECT", "OFFSET", "MULTIPLE.OPERATIONS");

  private final Cells cells;
  private final Formulas formulas;
  private final Set<CellAddress> inputs;
  private final String sheet;

  private final Set<CellAddress> reached = new HashSet<>();
  private final Map<CellAddress, Step> steps = new LinkedHashMap<>();
  private final Map<CellAddress, Operand<Double>> constants = new HashMap<>();
  private final Map<CellRange, Used> ranges = new HashMap<>();
  private final Map<String, Map<String, CellRange>> names = new HashMap<>();
  private int read;

  /** A cell whose formula lies between the inputs and the result. */
  record Step(CellAddress cell, Formula formula) {}

  /** The part of a range that holds anything. */
  private record Used(int height, int width) {}

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

  Precedents(Cells cells, Formulas formulas, CellAddress result, Set<CellAddress> inputs) {
    this.cells = cells;
    this.formulas = formulas;
    this.inputs = inputs;
    this.sheet = result.sheet();
    follow(result);
  }

  /** Whether an input was met on the way. */
  boolean reaches(CellAddress input) {
    return reached.contains(input);
  }

  /** The formulas that inputs change, each after those that it needs. */
  List<Step> steps() {
    return List.copyOf(steps.values());
  }

  /** What a cell that no input changes holds, as a number of the field. */
  <T> Operand<T> constant(CellAddress cell, Field<T> field) {
    return converted(constants.getOrDefault(cell, new Operand.Blank<>()), field);
  }

  /** A cell as a sentence names it. */
  String label(CellAddress cell) {
    return cell.sheet().equals(sheet) ? cell.place() : cell.toString();
  }

  /** The value of a formula, given what is known; a problem waits until the value is needed. */
  <T> Operand<T> compute(Step step, Field<T> field, Map<CellAddress, Operand<T>> known) {
    String own = step.cell().sheet();
    Evaluator<T> evaluator =
        new Evaluator<>(field, reference -> referred(reference, own, field, known));
    try {
      Operand<T> value = evaluator.operand(step.formula().tree());
      return value instanceof Operand.Number || value instanceof Operand.Text
          ? value
          : new Operand.Number<>(evaluator.numberIn(value));
    } catch (FormulaException problem) {
      return new Operand.Fault<>(problem.in(label(step.cell())));
    }
  }

  private <T> Operand<T> referred(
      Reference reference, String own, Field<T> field, Map<CellAddress, Operand<T>> known) {
    if (reference instanceof CellReference cell) {
      return held(cell.from(own), field, known);
    }
    CellRange range = rangeOf(reference, own);
    return range.width() * (long) range.height() == 1
        ? held(range.first(), field, known)
        : block(range, field, known);
  }

  private <T> Operand<T> held(
      CellAddress cell, Field<T> field, Map<CellAddress, Operand<T>> known) {
    Operand<T> value = known.get(cell);
    return value != null ? value : constant(cell, field);
  }

  private <T> Operand<T> block(
      CellRange range, Field<T> field, Map<CellAddress, Operand<T>> known) {
    Used used = ranges.get(range);
    List<List<Operand<T>>> rows = new ArrayList<>(used.height());
    for (int row = 0; row < used.height(); row++) {
      List<Operand<T>> held = new ArrayList<>(used.width());
      for (int column = 0; column < used.width(); column++) {
        held.add(
            held(
                new CellAddress(range.sheet(), range.left() + column, range.top() + row),
                field,
                known));
      }
      rows.add(held);
    }
    return new Operand.Block<>(range.height(), range.width(), rows);
  }

  private static <T> Operand<T> converted(Operand<Double> constant, Field<T> field) {
    if (constant instanceof Operand.Number<Double> number) {
      return new Operand.Number<>(field.constant(number.value()));
    }
    if (constant instanceof Operand.Text<Double> text) {
      return new Operand.Text<>(text.text());
    }
    if (constant instanceof Operand.Fault<Double> fault) {
      return new Operand.Fault<>(fault.problem());
    }
    return new Operand.Blank<>();
  }

  private void follow(CellAddress result) {
    Deque<Frame> open = new ArrayDeque<>();
    Set<CellAddress> path = new LinkedHashSet<>();
    enter(result, cells.at(result), open, path);
    while (!open.isEmpty()) {
      Frame frame = open.peek();
      if (frame.rest.hasNext()) {
        CellAddress cell = frame.rest.next();
        if (inputs.contains(cell)) {
          reached.add(cell);
          frame.depends = true;
        } else if (path.contains(cell)) {
          throw circle(path, cell);
        } else if (steps.containsKey(cell)) {
          frame.depends = true;
        } else if (!constants.containsKey(cell)) {
          enter(cell, cells.at(cell), open, path);
        }
      } else {
        open.pop();
        path.remove(frame.step.cell());
        finish(frame, open.peek());
      }
    }
  }

  private void enter(
      CellAddress cell, CellContent content, Deque<Frame> open, Set<CellAddress> path) {
    count(1);
    if (!(content instanceof CellContent.Formula formula)) {
      constants.put(cell, typedIn(content, cell));
      return;
    }
    try {
      Formula parsed = formulas.inCell(formula.text());
      open.push(new Frame(new Step(cell, parsed), precedents(parsed, cell.sheet())));
      path.add(cell);
    } catch (FormulaException problem) {
      constants.put(cell, new Operand.Fault<>(problem.in(label(cell))));
    }
  }

  private void finish(Frame frame, Frame parent) {
    Step step = frame.step;
    if (frame.depends) {
      steps.put(step.cell(), step);
      if (parent != null) {
        parent.depends = true;
      }
    } else {
      constants.put(step.cell(), computedOrShown(step));
    }
  }

  /** What the engine cannot compute but no input changes is taken as the document shows it. */
  private Operand<Double> computedOrShown(Step step) {
    Operand<Double> computed = compute(step, new Doubles(), Map.of());
    if (computed instanceof Operand.Fault
        && Collections.disjoint(step.formula().functions(), HIDING)) {
      OptionalDouble shown = cells.shown(step.cell());
      if (shown.isPresent()) {
        return new Operand.Number<>(shown.getAsDouble());
      }
    }
    return computed;
  }

  private Operand<Double> typedIn(CellContent content, CellAddress cell) {
    if (content instanceof CellContent.Number number) {
      return new Operand.Number<>(number.value());
    }
    if (content instanceof CellContent.Text text) {
      return new Operand.Text<>(text.text());
    }
    if (content instanceof CellContent.Fault fault) {
      return new Operand.Fault<>(
          new FormulaException("it holds the error " + fault.name() + ".").in(label(cell)));
    }
    return new Operand.Blank<>();
  }

  private List<CellAddress> precedents(Formula formula, String own) {
    List<CellAddress> precedents = new ArrayList<>();
    for (Reference reference : formula.references()) {
      if (reference instanceof CellReference cell) {
        precedents.add(cell.from(own));
      } else {
        precedents.addAll(filled(rangeOf(reference, own)));
      }
    }
    return precedents;
  }

  /** The cells of a range that hold anything; those without formula are constants at once. */
  private List<CellAddress> filled(CellRange range) {
    List<List<CellContent>> rows = cells.rows(range);
    int width = rows.stream().mapToInt(List::size).max().orElse(0);
    count(rows.size() * width);
    ranges.put(range, new Used(rows.size(), width));
    List<CellAddress> filled = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < rows.get(row).size(); column++) {
        CellContent content = rows.get(row).get(column);
        CellAddress cell = new CellAddress(range.sheet(), range.left() + column, range.top() + row);
        if (content instanceof CellContent.Formula || inputs.contains(cell)) {
          filled.add(cell);
        } else if (!(content instanceof CellContent.Empty)) {
          constants.putIfAbsent(cell, typedIn(content, cell));
        }
      }
    }
    return filled;
  }

  private CellRange rangeOf(Reference reference, String own) {
    return reference instanceof RangeReference range
        ? range.from(own)
        : named(((Name) reference).name(), own);
  }

  private CellRange named(String name, String own) {
    return names
        .computeIfAbsent(own, any -> new HashMap<>())
        .computeIfAbsent(name, unknown -> lookedUp(unknown, own));
  }

  private CellRange lookedUp(String name, String own) {
    Optional<CellRange> range = cells.named(name, own);
    return range.orElseThrow(
        () -> new FormulaException(name + " is not the name of a cell or range."));
  }

  private void count(int more) {
    read += more;
    if (read > MOST_CELLS) {
      throw new FormulaException("the result is computed from more than " + MOST_CELLS + " cells.");
    }
  }

  private FormulaException circle(Set<CellAddress> path, CellAddress again) {
    List<CellAddress> chain = new ArrayList<>(path);
    List<CellAddress> circle = chain.subList(chain.indexOf(again), chain.size());
    String shown = circle.stream().limit(8).map(this::label).collect(Collectors.joining(", "));
    return new FormulaException(
        "cells refer to each other in a circle: "
            + shown
            + (circle.size() > 8 ? ", ..., " : ", ")
            + label(again)
            + ".");
  }
}
