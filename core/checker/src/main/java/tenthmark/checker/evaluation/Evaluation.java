package tenthmark.checker.evaluation;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.formula.IStabilityClassifier;
import org.apache.poi.ss.formula.WorkbookEvaluator;
import org.apache.poi.ss.formula.atp.AnalysisToolPak;
import org.apache.poi.ss.formula.eval.NotImplementedFunctionException;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.udf.AggregatingUDFFinder;
import org.apache.poi.ss.formula.udf.UDFFinder;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.FormulaText;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Cells;

/**
 * A workbook recalculated: every formula once, after the cells that it refers to, whatever values
 * the file stores.
 */
public final class Evaluation {

  private static final Outcome BLANK = new Outcome.Known(Value.BLANK);

  private final Catalogue catalogue;
  private final ModelWorkbook model;
  private final FormulaGraph graph;
  private final WorkbookEvaluator evaluator;
  private final Map<CellAddress, Outcome> outcomes = new HashMap<>();
  private final Map<CellAddress, String> sentences = new HashMap<>();
  private final Set<CellAddress> changing = new HashSet<>();
  private final Set<CellAddress> throughLab = new HashSet<>();

  private Evaluation(Workbook workbook, Catalogue catalogue) {
    this.catalogue = catalogue;
    this.model =
        new ModelWorkbook(
            workbook, new AggregatingUDFFinder(functions(workbook), AnalysisToolPak.instance));
    this.graph = new FormulaGraph(workbook, model);
    this.evaluator = new WorkbookEvaluator(model, IStabilityClassifier.TOTALLY_IMMUTABLE, null);
  }

  private UDFFinder functions(Workbook workbook) {
    Cells cells = new ModelCells(workbook, this);
    return name ->
        catalogue
            .find(name)
            .map(function -> new LabFunction(function, cells, sentences))
            .orElse(null);
  }

  /** The range that a name stands for as seen from a sheet, if it stands for one. */
  public Optional<CellRange> named(String name, String sheet) {
    return graph.named(name, sheet);
  }

  /** Recalculates a workbook with the functions of a catalogue. */
  public static Evaluation of(Workbook workbook, Catalogue catalogue) {
    Evaluation evaluation = new Evaluation(workbook, catalogue);
    workbook.sheets().stream().flatMap(Sheet::cells).forEach(evaluation::evaluate);
    return evaluation;
  }

  /** What a cell's value is now. */
  public Outcome at(CellAddress address) {
    return outcomes.getOrDefault(address, BLANK);
  }

  /** The sentence that a LAB function in this cell gave about an argument that it refused. */
  public Optional<String> sentence(CellAddress address) {
    return Optional.ofNullable(sentences.get(address));
  }

  /** The value that the program which saved the file stored with a formula. */
  public static Optional<Value> stored(Content content) {
    return content instanceof Content.Formula formula
        ? formula.stored().map(Values::stored)
        : Optional.empty();
  }

  /** Whether the value is another at each recalculation, as that of NOW is. */
  public boolean changesByItself(CellAddress address) {
    return changing.contains(address);
  }

  /** Whether the formula calls a LAB function or depends on a cell that does. */
  public boolean dependsOnLab(CellAddress address) {
    return throughLab.contains(address);
  }

  /** The calls of LAB functions in a cell's formula; none where it cannot be read. */
  public List<Call> calls(Cell cell) {
    String sheet = cell.address().sheet();
    CallFinder finder =
        new CallFinder(token -> graph.ranges(new Ptg[] {token}, sheet), this::valueOf);
    return tokens(cell).map(finder::find).orElse(List.of());
  }

  private Value valueOf(CellRange range) {
    return at(range.first()) instanceof Outcome.Known known ? known.value() : Value.BLANK;
  }

  /** A form of a cell's formula that is the same for copies of it in other cells. */
  public Optional<String> relativeForm(Cell cell) {
    return tokens(cell).map(tokens -> RelativeForm.of(tokens, cell.address()));
  }

  private Optional<Ptg[]> tokens(Cell cell) {
    try {
      return cell.content() instanceof Content.Formula formula
          ? Optional.of(model.tokens(cell.address(), formula))
          : Optional.empty();
    } catch (NotCheckableException unreadable) {
      return Optional.empty();
    }
  }

  /** The ranges that the formula of a cell refers to; none where it cannot be read. */
  public List<CellRange> references(Cell cell) {
    try {
      return graph.ranges(cell);
    } catch (NotCheckableException unreadable) {
      return List.of();
    }
  }

  /** The cells with content that the formula of a cell refers to; none where it is unreadable. */
  public List<Cell> precedents(Cell cell) {
    try {
      return graph.precedents(cell).toList();
    } catch (NotCheckableException unreadable) {
      return List.of();
    }
  }

  /** Walks down to the cells referred to first, without recursion, so that chains may be long. */
  private void evaluate(Cell start) {
    Deque<Cell> open = new ArrayDeque<>(List.of(start));
    Set<CellAddress> entered = new HashSet<>();
    while (!open.isEmpty()) {
      Cell cell = open.peek();
      if (outcomes.containsKey(cell.address())) {
        open.pop();
      } else if (entered.add(cell.address())) {
        precedents(cell).stream()
            .filter(precedent -> !outcomes.containsKey(precedent.address()))
            .filter(precedent -> !entered.contains(precedent.address()))
            .forEach(open::push);
      } else {
        open.pop();
        outcomes.put(cell.address(), outcome(cell));
      }
    }
  }

  private Outcome outcome(Cell cell) {
    if (!(cell.content() instanceof Content.Formula formula)) {
      return new Outcome.Known(Values.stored(cell.content()));
    }
    try {
      List<Cell> precedents = graph.precedents(cell).toList();
      mark(changing, cell, graph.isVolatile(cell), precedents);
      mark(throughLab, cell, callsLab(formula), precedents);
      return precedents.stream()
          .map(precedent -> outcomes.get(precedent.address()))
          .filter(Outcome.NotCheckable.class::isInstance)
          .map(Outcome.NotCheckable.class::cast)
          .findFirst()
          .<Outcome>map(behind -> dependent(cell, behind))
          .orElseGet(() -> new Outcome.Known(calculated(cell)));
    } catch (RuntimeException | StackOverflowError problem) {
      // Whatever POI or a function throws concerns this one cell; the next ones go on.
      return new Outcome.NotCheckable(reason(problem), cell.address());
    }
  }

  private static Outcome dependent(Cell cell, Outcome.NotCheckable behind) {
    String reason =
        "it depends on " + place(behind.origin(), cell.address().sheet()) + ": " + behind.reason();
    return new Outcome.NotCheckable(
        behind.reason().startsWith("it depends on") ? behind.reason() : reason, behind.origin());
  }

  private Value calculated(Cell cell) {
    return Values.single(evaluator.evaluate(model.cell(cell.address())));
  }

  private static void mark(
      Set<CellAddress> marked, Cell cell, boolean itself, List<Cell> precedents) {
    if (itself || precedents.stream().map(Cell::address).anyMatch(marked::contains)) {
      marked.add(cell.address());
    }
  }

  private boolean callsLab(Content.Formula formula) {
    return FormulaText.calls(formula.text()).stream()
        .anyMatch(name -> catalogue.find(name).isPresent());
  }

  private static String reason(Throwable problem) {
    for (Throwable cause = problem; cause != null; cause = cause.getCause()) {
      if (cause instanceof NotImplementedFunctionException unknown) {
        return NotCheckableException.unknownFunction(unknown.getFunctionName()).getMessage();
      }
      if (cause instanceof NotCheckableException known) {
        return known.getMessage();
      }
    }
    if (problem instanceof StackOverflowError) {
      return "the formula is nested too deeply for the checker";
    }
    return "the checker cannot calculate the formula (" + problem.getMessage() + ")";
  }

  private static String place(CellAddress address, String from) {
    return address.sheet().equals(from) ? address.place() : address.toString();
  }
}
