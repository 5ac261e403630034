package tenthmark.samples.mistakes;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import tenthmark.checker.course.Course;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.Severity;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;

/** A correct workbook into which mistakes are planted, without the values stored with formulas. */
final class Subject {

  private static final Catalogue FUNCTIONS = Catalogue.load();
  private static final RuleCatalogue RULES = RuleCatalogue.load();

  /** A finding as far as it can be told whether the correct workbook has it too. */
  private record Blame(CellAddress cell, String rule) {
    static Blame of(Finding finding) {
      return new Blame(finding.cell(), finding.rule().id());
    }
  }

  private final String name;
  private final Truth truth;
  private final Workbook workbook;
  private final Evaluation evaluation;
  private final Set<Blame> before = new HashSet<>();

  private Subject(String name, Truth truth, Workbook workbook) {
    this.name = name;
    this.truth = truth;
    this.workbook = workbook;
    this.evaluation = Evaluation.of(workbook, FUNCTIONS);
    check(workbook).forEach(finding -> before.add(Blame.of(finding)));
  }

  static Subject read(Path truth) {
    String name = truth.getFileName().toString().replace(".truth.yaml", "");
    Path file =
        Stream.of(".xlsx", ".xls", ".ods")
            .map(suffix -> truth.resolveSibling(name + suffix))
            .filter(Files::exists)
            .findFirst()
            .orElseThrow();
    try {
      return new Subject(name, Truth.read(truth), withoutStored(WorkbookFile.read(file)));
    } catch (UnreadableFileException problem) {
      throw new AssertionError(file.toString(), problem);
    }
  }

  /** What is planted changes values downstream, which a program would have stored anew. */
  private static Workbook withoutStored(Workbook workbook) {
    Map<CellAddress, Optional<Content>> contents = new LinkedHashMap<>();
    workbook.sheets().stream()
        .flatMap(sheet -> sheet.cells())
        .forEach(
            cell -> {
              if (cell.content() instanceof Content.Formula formula) {
                contents.put(
                    cell.address(),
                    Optional.of(
                        new Content.Formula(
                            formula.written(), formula.text(), Optional.empty(), formula.array())));
              }
            });
    return workbook.with(contents);
  }

  private static List<Finding> check(Workbook workbook) {
    return RULES.check(Inspection.of(workbook, FUNCTIONS, Course.PLAIN)).stream()
        .flatMap(Finding::apart)
        .toList();
  }

  String name() {
    return name;
  }

  String layout() {
    return truth.layout();
  }

  /** The records of certain kinds. */
  Stream<Stated> records(String... kinds) {
    return truth.records().stream().filter(record -> record.is(kinds));
  }

  Stream<Stated> records() {
    return truth.records().stream();
  }

  /** The cells that are something other than records. */
  Stream<CellAddress> others(String is) {
    return truth.others().entrySet().stream()
        .filter(other -> other.getValue().equals(is))
        .map(Map.Entry::getKey);
  }

  Optional<Content> content(CellAddress cell) {
    return workbook.at(cell).map(Cell::content);
  }

  /** The number in a cell, as it is recalculated. */
  Optional<Double> number(CellAddress cell) {
    return evaluation.number(cell);
  }

  /** A number that is typed in. */
  Optional<Double> typed(CellAddress cell) {
    return content(cell)
        .filter(Content.Number.class::isInstance)
        .map(content -> ((Content.Number) content).value());
  }

  /** The formula in a cell; none for one of an array, of which a part alone cannot be changed. */
  Optional<String> formula(CellAddress cell) {
    return content(cell)
        .filter(Content.Formula.class::isInstance)
        .map(content -> (Content.Formula) content)
        .filter(formula -> formula.array().isEmpty())
        .map(Content.Formula::text);
  }

  Optional<String> text(CellAddress cell) {
    return content(cell)
        .filter(Content.Text.class::isInstance)
        .map(content -> ((Content.Text) content).text());
  }

  /** All cells with a formula of its own. */
  Stream<CellAddress> formulas() {
    return workbook.sheets().stream()
        .filter(sheet -> !sheet.hidden())
        .flatMap(sheet -> sheet.cells())
        .map(Cell::address)
        .filter(cell -> formula(cell).isPresent());
  }

  /** The ranges of several cells that a formula refers to. */
  List<CellRange> ranges(CellAddress cell) {
    return workbook.at(cell).map(evaluation::references).orElse(List.of()).stream()
        .filter(range -> range.height() * range.width() > 1)
        .toList();
  }

  /** The cells with content that a formula refers to. */
  List<CellAddress> precedents(CellAddress cell) {
    return workbook.at(cell).map(evaluation::precedents).orElse(List.of()).stream()
        .map(Cell::address)
        .toList();
  }

  /** Whether two cells in the same row or column hold copies of a formula, this one included. */
  boolean isAmongCopies(CellAddress cell) {
    return copies(cell, 0, 1) + copies(cell, 0, -1) >= 2
        || copies(cell, 1, 0) + copies(cell, -1, 0) >= 2;
  }

  private int copies(CellAddress cell, int right, int down) {
    Cell own = workbook.at(cell).orElseThrow();
    int count = 0;
    Optional<Cell> next = shifted(cell, right, down);
    while (next.isPresent() && evaluation.areCopies(own, next.get())) {
      count++;
      next = shifted(next.get().address(), right, down);
    }
    return count;
  }

  private Optional<Cell> shifted(CellAddress cell, int right, int down) {
    int column = cell.column() + right;
    int row = cell.row() + down;
    return column < 0 || row < 0
        ? Optional.empty()
        : workbook.at(new CellAddress(cell.sheet(), column, row));
  }

  /** What the formula of a changed cell gives. */
  Optional<Double> after(Planted planted, CellAddress cell) {
    return Evaluation.of(workbook.with(planted.contents()), FUNCTIONS).number(cell);
  }

  /** What the checker says of the workbook with a mistake. */
  Outcome outcome(Mistake mistake, Planted planted) {
    Workbook spoilt = workbook.with(planted.contents());
    List<Finding> fresh =
        check(spoilt).stream().filter(finding -> !before.contains(Blame.of(finding))).toList();
    boolean placed = fresh.stream().anyMatch(finding -> planted.places().contains(finding.cell()));
    boolean named =
        fresh.stream()
            .anyMatch(
                finding ->
                    planted.places().contains(finding.cell())
                        && mistake.rules().contains(finding.rule().id()));
    List<Finding> besides =
        fresh.stream()
            .filter(finding -> finding.rule().severity() != Severity.NOTE)
            .filter(finding -> !planted.places().contains(finding.cell()))
            .toList();
    Set<CellAddress> explained = besides.isEmpty() ? Set.of() : followers(spoilt, planted);
    List<Finding> wrong =
        besides.stream().filter(finding -> !explained.contains(finding.cell())).toList();
    return new Outcome(named, placed, fresh, wrong);
  }

  /**
   * The right places, all that is computed from what was changed, and the records with a part among
   * them: an uncertainty that was typed in follows from those of the inputs as well.
   */
  private Set<CellAddress> followers(Workbook spoilt, Planted planted) {
    Evaluation changed = Evaluation.of(spoilt, FUNCTIONS);
    Set<CellAddress> explained = new LinkedHashSet<>(planted.places());
    explained.addAll(planted.contents().keySet());
    int size = 0;
    while (explained.size() > size) {
      size = explained.size();
      records()
          .filter(record -> record.places().stream().anyMatch(explained::contains))
          .forEach(record -> explained.addAll(record.places()));
      Set<CellAddress> ends = Set.copyOf(explained);
      spoilt.sheets().stream()
          .flatMap(sheet -> sheet.cells())
          .map(Cell::address)
          .filter(cell -> changed.dependsOn(cell, ends))
          .forEach(explained::add);
    }
    return explained;
  }

  /**
   * What became of a planted mistake.
   *
   * @param named whether a rule that names it found it at the right place
   * @param placed whether anything was found there
   * @param fresh what the correct workbook does not have
   * @param wrong those among them that blame what has nothing to do with it
   */
  record Outcome(boolean named, boolean placed, List<Finding> fresh, List<Finding> wrong) {}
}
