package tenthmark.checker.evaluation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.IStabilityClassifier;
import org.apache.poi.ss.formula.WorkbookEvaluator;
import org.apache.poi.ss.formula.atp.AnalysisToolPak;
import org.apache.poi.ss.formula.eval.ErrorEval;
import org.apache.poi.ss.formula.eval.NotImplementedFunctionException;
import org.apache.poi.ss.formula.ptg.NameXPxg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.udf.AggregatingUDFFinder;
import org.apache.poi.ss.formula.udf.UDFFinder;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.OutOfTimeException;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.catalogue.ArgumentException;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorkbookConvention;
import tenthmark.measurement.explanation.Unknown;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellContent;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.Cells;
import tenthmark.measurement.formula.Effort;
import tenthmark.measurement.formula.FormulaException;
import tenthmark.measurement.formula.Formulas;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/**
 * A workbook recalculated: every formula once, after the cells that it refers to, whatever values
 * the file stores.
 */
public final class Evaluation {

  /** A cell that holds nothing. */
  private static final Recalculated BLANK = Recalculated.of(Value.BLANK);

  /** A cell whose precedents are still being followed; until then it shows nothing. */
  private static final Recalculated OPEN =
      new Recalculated(new Outcome.Known(Value.BLANK), Set.of(Trait.OPEN));

  private static final String DEPENDS = "reason.depends";

  /** What POI gives a cell that leads back to itself. */
  private static final Value CIRCLE = Values.single(ErrorEval.CIRCULAR_REF_ERROR);

  /** Cells of a circle that POI, which follows it by recursion, is let into. */
  private static final Value NO_SUCH_NAME = new Value.Fault("#NAME?");

  private static final int LONGEST_CIRCLE = 200;

  private final Workbook workbook;
  private final Cells cells;
  private final Catalogue catalogue;
  private final ModelWorkbook model;
  private final FormulaGraph graph;
  private final WorkbookEvaluator evaluator;
  private final Map<CellAddress, Recalculated> recalculated = new HashMap<>();
  private final Map<CellAddress, Message> sentences = new HashMap<>();
  private final Map<CellAddress, Message> doubts = new HashMap<>();
  private final OfficeWording wording = new OfficeWording();
  private final Map<CellAddress, List<Call>> calls = new HashMap<>();
  private Convention convention;

  private Evaluation(Workbook workbook, Catalogue catalogue) {
    this.workbook = workbook;
    this.cells = new ModelCells(workbook, this, Effort.ofOneCalculation());
    this.catalogue = catalogue;
    this.model =
        new ModelWorkbook(
            workbook,
            new AggregatingUDFFinder(functions(), new OwnFunctions(), AnalysisToolPak.instance));
    this.graph = new FormulaGraph(workbook, model);
    this.evaluator = new WorkbookEvaluator(model, IStabilityClassifier.TOTALLY_IMMUTABLE, null);
  }

  private UDFFinder functions() {
    return name ->
        catalogue
            .find(name)
            .map(
                function ->
                    new LabFunction(function, cells, this::convention, wording, sentences, doubts))
            .orElse(null);
  }

  /**
   * The convention that the workbook holds, which its functions follow; {@code bench} for none.
   *
   * @throws ArgumentException if it cannot be read
   */
  public Convention convention() {
    if (convention == null) {
      convention = WorkbookConvention.in(cells);
    }
    return convention;
  }

  /** Where the workbook holds its convention, if it does. */
  public Optional<CellRange> conventionCells() {
    return WorkbookConvention.range(cells);
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

  /** Recalculates another workbook with the same functions. */
  public Evaluation of(Workbook other) {
    return of(other, catalogue);
  }

  /** What a cell's value is now. */
  public Outcome at(CellAddress address) {
    OutOfTimeException.ifInterrupted();
    return known(address).outcome();
  }

  private Recalculated known(CellAddress address) {
    return recalculated.getOrDefault(address, BLANK);
  }

  /** The sentence that a LAB function in this cell gave about an argument that it refused. */
  public Optional<Message> sentence(CellAddress address) {
    return Optional.ofNullable(sentences.get(address));
  }

  /** The sentence of a LAB function in this cell about arguments that are hardly meant. */
  public Optional<Message> doubt(CellAddress address) {
    return Optional.ofNullable(doubts.get(address));
  }

  /** The word in the formula of a cell for which it shows #NAME?, if it can be told. */
  public Optional<Unknown> unknown(CellAddress address) {
    try {
      return cells.at(address) instanceof CellContent.Formula formula
          ? Unknown.in(new Formulas().inCell(formula.text()).tree(), address, cells, catalogue)
          : Optional.empty();
    } catch (FormulaException unreadable) {
      return Optional.empty();
    }
  }

  /**
   * Whether a program showed #NAME? for a word that nobody knows: a name that is not defined, or a
   * function that resembles one of ours. Any other function may be known elsewhere.
   */
  public boolean isMisspelt(Cell cell) {
    return stored(cell.content()).filter(NO_SUCH_NAME::equals).isPresent()
        && unknown(cell.address())
            .filter(word -> !word.isFunction() || word.meant().isPresent())
            .isPresent();
  }

  /** The value that the program which saved the file stored with a formula. */
  public static Optional<Value> stored(Content content) {
    return content instanceof Content.Formula formula
        ? formula.stored().map(Values::stored)
        : Optional.empty();
  }

  /**
   * Whether the error stored with a formula is handed on from a cell that it refers to, as Calc
   * does; where a LAB function gives text, recalculation gives a sentence instead.
   */
  public boolean followsError(Cell cell) {
    return stored(cell.content()).filter(Value.Fault.class::isInstance).isPresent()
        && precedents(cell).stream()
            .map(precedent -> at(precedent.address()))
            .anyMatch(
                outcome ->
                    outcome instanceof Outcome.Known known && known.value() instanceof Value.Fault);
  }

  /** Whether the value is another at each recalculation, as that of NOW is. */
  public boolean changesByItself(CellAddress address) {
    return known(address).is(Trait.CHANGING);
  }

  /** Whether the formula calls a LAB function or depends on a cell that does. */
  public boolean dependsOnLab(CellAddress address) {
    return known(address).is(Trait.THROUGH_LAB);
  }

  /** The calls of LAB functions in a cell's formula; none where it cannot be read. */
  public List<Call> calls(Cell cell) {
    return dependsOnLab(cell.address())
        ? calls.computeIfAbsent(cell.address(), address -> found(cell))
        : List.of();
  }

  private List<Call> found(Cell cell) {
    String sheet = cell.address().sheet();
    CallFinder finder =
        new CallFinder(
            catalogue,
            graph::meaning,
            token -> graph.ranges(new Ptg[] {token}, sheet),
            this::valueOf);
    return tokens(cell).map(finder::find).orElse(List.of());
  }

  private Value valueOf(CellRange range) {
    return at(range.first()) instanceof Outcome.Known known ? known.value() : Value.BLANK;
  }

  /** Whether two cells hold one formula as it is when copied from one to the other. */
  public boolean areCopies(Cell one, Cell other) {
    Optional<Ptg[]> first = tokens(one);
    Optional<Ptg[]> second = tokens(other);
    return first.isPresent()
        && second.isPresent()
        && first.get().length == second.get().length
        && relativeForm(first.get(), one).equals(relativeForm(second.get(), other));
  }

  private String relativeForm(Ptg[] tokens, Cell cell) {
    return RelativeForm.of(tokens, cell.address(), name -> model.defined(name).name());
  }

  /** The range that a name stands for; none for a name that is lost or that no one can follow. */
  public Optional<CellRange> namedRange(String name, String sheet) {
    try {
      return named(name, sheet);
    } catch (NotCheckableException lost) {
      return Optional.empty();
    }
  }

  /** A formula with its references as distances; the same for all copies of it. */
  public Optional<String> relativeForm(Cell cell) {
    return tokens(cell).map(tokens -> relativeForm(tokens, cell));
  }

  /**
   * The same token by token, each with what it is before a blank: {@code NumberPtg 9.81}; operands
   * come before what is done to them. Empty where there is no formula or none that can be read.
   */
  public List<String> relativeTokens(Cell cell) {
    return tokens(cell)
        .map(
            tokens ->
                RelativeForm.parts(tokens, cell.address(), name -> model.defined(name).name()))
        .orElse(List.of());
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

  /** The number in a cell, if its value is one. */
  public Optional<Double> number(CellAddress address) {
    return at(address) instanceof Outcome.Known known
            && known.value() instanceof Value.Numeric number
        ? Optional.of(number.number())
        : Optional.empty();
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
      List<Cell> precedents = new ArrayList<>();
      graph.precedents(cell).forEach(precedents::add);
      return precedents;
    } catch (NotCheckableException unreadable) {
      return List.of();
    }
  }

  /** Whether a cell is computed from one of certain cells, itself not counted. */
  public boolean dependsOn(CellAddress from, Set<CellAddress> others) {
    return behind(from, Set.of()).stream()
        .map(Cell::address)
        .anyMatch(cell -> others.contains(cell) && !cell.equals(from));
  }

  /**
   * A cell and the cells with content that it is computed from, as far as certain cells, which are
   * not among them.
   */
  public Collection<Cell> behind(CellAddress from, Set<CellAddress> ends) {
    Map<CellAddress, Cell> behind = new LinkedHashMap<>();
    Deque<Cell> open = new ArrayDeque<>();
    workbook.at(from).ifPresent(open::push);
    while (!open.isEmpty()) {
      Cell cell = open.pop();
      if (behind.putIfAbsent(cell.address(), cell) == null) {
        precedents(cell).stream()
            .filter(precedent -> !ends.contains(precedent.address()))
            .forEach(open::push);
      }
    }
    return behind.values();
  }

  /** The cells as the formula engine of the measurement module reads them. */
  public Cells cells() {
    return cells;
  }

  /** A formula whose precedents are being followed, and what it has from them so far. */
  private static final class Step {

    private final Cell cell;
    private final Set<Trait> traits = EnumSet.noneOf(Trait.class);
    private Iterator<Cell> precedents = Collections.emptyIterator();
    private Outcome uncheckable;

    private Step(Cell cell) {
      this.cell = cell;
    }
  }

  /** Walks down to the cells referred to first, without recursion, so that chains may be long. */
  private void evaluate(Cell start) {
    Deque<Step> open = new ArrayDeque<>();
    if (!recalculated.containsKey(start.address())) {
      enter(start, open);
    }
    while (!open.isEmpty()) {
      OutOfTimeException.ifInterrupted();
      Step step = open.peek();
      if (step.precedents.hasNext()) {
        meet(step.precedents.next(), step, open);
      } else {
        leave(step, open);
      }
    }
  }

  private void meet(Cell precedent, Step from, Deque<Step> open) {
    Recalculated known = recalculated.get(precedent.address());
    if (known == null) {
      enter(precedent, open);
    } else if (!known.is(Trait.OPEN)) {
      inherit(known, from);
    } else if (open.size() > LONGEST_CIRCLE) {
      from.traits.add(Trait.CIRCLING);
    }
  }

  private void enter(Cell cell, Deque<Step> open) {
    if (cell.content() instanceof Content.Formula) {
      recalculated.put(cell.address(), OPEN);
      open.push(step(cell));
    } else {
      recalculated.put(cell.address(), Recalculated.of(Values.stored(cell.content())));
    }
  }

  private Step step(Cell cell) {
    Step step = new Step(cell);
    try {
      step.precedents = graph.precedents(cell).iterator();
      Ptg[] tokens = model.tokens(cell.address(), (Content.Formula) cell.content());
      for (Ptg token : graph.withNames(tokens)) {
        if (FormulaGraph.isVolatile(token)) {
          step.traits.add(Trait.CHANGING);
        }
        if (isLab(token)) {
          step.traits.add(Trait.THROUGH_LAB);
        }
      }
    } catch (RuntimeException | StackOverflowError | LinkageError problem) {
      step.uncheckable = notCheckable(problem, cell);
    }
    return step;
  }

  private static void inherit(Recalculated precedent, Step step) {
    step.traits.addAll(precedent.traits());
    if (step.uncheckable == null
        && precedent.outcome() instanceof Outcome.NotCheckable uncheckable) {
      step.uncheckable = dependent(step.cell, uncheckable);
    }
  }

  private void leave(Step step, Deque<Step> open) {
    Recalculated done = new Recalculated(outcome(step), step.traits);
    recalculated.put(step.cell.address(), done);
    open.pop();
    if (!open.isEmpty()) {
      inherit(done, open.peek());
    }
  }

  private Outcome outcome(Step step) {
    if (step.traits.contains(Trait.CIRCLING)) {
      return new Outcome.Known(CIRCLE);
    }
    if (step.uncheckable != null) {
      return step.uncheckable;
    }
    try {
      return new Outcome.Known(calculated(step.cell));
    } catch (RuntimeException | StackOverflowError | LinkageError problem) {
      return notCheckable(problem, step.cell);
    }
  }

  /** Whatever POI or a function throws concerns this one cell; the next ones go on. */
  private static Outcome notCheckable(Throwable problem, Cell cell) {
    return new Outcome.NotCheckable(reason(problem), cell.address());
  }

  private static Outcome dependent(Cell cell, Outcome.NotCheckable behind) {
    String origin = place(behind.origin(), cell.address().sheet());
    return behind.reason().key().equals(DEPENDS)
        ? behind
        : new Outcome.NotCheckable(Message.of(DEPENDS, origin, behind.reason()), behind.origin());
  }

  /** In the wording that gives the stored text, if one does. */
  private Value calculated(Cell cell) {
    Value value = Values.single(evaluator.evaluate(model.cell(cell.address())));
    return isOtherText(cell, value) ? inOtherWording(cell).orElseGet(() -> again(cell)) : value;
  }

  private boolean isOtherText(Cell cell, Value value) {
    return value instanceof Value.Text
        && tokens(cell).filter(tokens -> Arrays.stream(tokens).anyMatch(this::isLab)).isPresent()
        && stored(cell.content())
            .filter(stored -> stored instanceof Value.Text && !stored.equals(value))
            .isPresent();
  }

  private Optional<Value> inOtherWording(Cell cell) {
    Optional<Value> stored = stored(cell.content());
    Sentences before = wording.sentences();
    for (Sentences other : OfficeWording.ALL) {
      wording.become(other);
      Optional<Value> value = Optional.of(again(cell));
      if (value.equals(stored)) {
        return value;
      }
    }
    wording.become(before);
    return Optional.empty();
  }

  private Value again(Cell cell) {
    EvaluationCell known = model.cell(cell.address());
    evaluator.notifyUpdateCell(known);
    return Values.single(evaluator.evaluate(known));
  }

  private boolean isLab(Ptg token) {
    return token instanceof NameXPxg name && catalogue.find(name.getNameName()).isPresent();
  }

  private static Message reason(Throwable problem) {
    for (Throwable cause = problem; cause != null; cause = cause.getCause()) {
      if (cause instanceof NotImplementedFunctionException unknown) {
        return NotCheckableException.unknownFunction(unknown.getFunctionName()).said();
      }
      if (cause instanceof NotCheckableException known) {
        return known.said();
      }
    }
    if (problem instanceof StackOverflowError) {
      return NotCheckableException.tooDeep().said();
    }
    return Message.of("reason.formula");
  }

  private static String place(CellAddress address, String from) {
    return address.sheet().equals(from) ? address.place() : address.toString();
  }
}
