package tenthmark.checker.rules;

import com.google.auto.service.AutoService;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.evaluation.NativeFunctions;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.wording.Message;

/** A range that ends one row before its data do, or a line that leaves out a point. */
@AutoService(Rule.class)
public final class RangeShort implements Rule {

  private static final int FEWEST = 3;

  /** Functions of a whole series; a line may be fitted to a part of one on purpose. */
  private static final Set<String> OF_SERIES =
      Stream.of(Set.of("SUM", "AVERAGE", "MEDIAN", "COUNT"), NativeFunctions.SPREADS)
          .flatMap(Set::stream)
          .collect(Collectors.toUnmodifiableSet());

  private static final Set<String> OF_LINE = Set.of("SLOPE", "INTERCEPT", "LINEST", "STEYX");

  private static final Set<String> BESIDE = Set.of("SQRT", "ROUND");

  private static final RuleDeclaration DECLARATION =
      new RuleDeclaration("range-short", Severity.WARNING);

  @Override
  public RuleDeclaration declaration() {
    return DECLARATION;
  }

  @Override
  public List<Finding> check(Inspection inspection) {
    return Stream.of(ofSeries(inspection), ofCopies(inspection), ofLines(inspection))
        .flatMap(findings -> findings)
        .toList();
  }

  /** Of calculated values one may be left out on purpose, so that it is only asked about. */
  private static Stream<Finding> ofCopies(Inspection inspection) {
    return inspection
        .formulas()
        .filter(cell -> isOfSeries((Content.Formula) cell.content()))
        .filter(cell -> !isCopiedDown(cell, inspection))
        .flatMap(
            cell ->
                inspection.evaluation().references(cell).stream()
                    .filter(RangeShort::isLong)
                    .flatMap(range -> copyLeftOut(range, inspection).stream())
                    .filter(missed -> !missed.equals(cell.address()))
                    .limit(1)
                    .map(missed -> note(cell, missed)));
  }

  /** The copy next to a range that holds copies of one formula and nothing else. */
  private static Optional<CellAddress> copyLeftOut(CellRange range, Inspection inspection) {
    Optional<Sheet> sheet = inspection.workbook().sheet(range.sheet());
    List<Cell> cells = sheet.stream().flatMap(found -> found.cells(range)).toList();
    boolean copies =
        cells.size() == range.height()
            && cells.stream()
                .allMatch(cell -> inspection.evaluation().areCopies(cells.get(0), cell));
    return !copies
        ? Optional.empty()
        : Stream.of(range.bottom() + 1, range.top() - 1)
            .filter(row -> row >= 0)
            .flatMap(row -> sheet.get().at(range.left(), row).stream())
            .filter(cell -> inspection.evaluation().areCopies(cells.get(0), cell))
            .map(Cell::address)
            .filter(cell -> !isOfAnotherRange(cell, range, inspection))
            .findFirst();
  }

  /** Points may be left out on purpose, so that a line is only asked about, once for its ranges. */
  private static Stream<Finding> ofLines(Inspection inspection) {
    Set<List<CellRange>> told = new HashSet<>();
    return inspection
        .formulas()
        .filter(
            cell ->
                ((Content.Formula) cell.content()).functions().stream().anyMatch(OF_LINE::contains))
        .flatMap(
            cell ->
                inspection.evaluation().references(cell).stream()
                    .filter(RangeShort::isLong)
                    .distinct()
                    .collect(Collectors.collectingAndThen(Collectors.toList(), Stream::of))
                    .filter(ranges -> ranges.size() == 2)
                    .filter(told::add)
                    .flatMap(ranges -> pointLeftOut(ranges, inspection).stream())
                    .map(missed -> note(cell, missed)));
  }

  /** The cell of y in the row next to both ranges, if a further point stands there. */
  private static Optional<CellAddress> pointLeftOut(List<CellRange> ranges, Inspection inspection) {
    CellRange one = ranges.get(0);
    CellRange other = ranges.get(1);
    Optional<Sheet> sheet = inspection.workbook().sheet(one.sheet());
    return sheet.isEmpty() || one.top() != other.top() || one.bottom() != other.bottom()
        ? Optional.empty()
        : Stream.of(one.bottom() + 1, one.top() - 1)
            .filter(
                row ->
                    Stream.of(one, other)
                        .allMatch(
                            range -> isSameKind(sheet.get(), range.left(), range.bottom(), row)))
            .map(row -> new CellAddress(one.sheet(), one.left(), row))
            .findFirst();
  }

  /** Whether a further cell of a column holds what the last one of the range does. */
  private static boolean isSameKind(Sheet sheet, int column, int last, int next) {
    Optional<Cell> inside = sheet.at(column, last);
    Optional<Cell> outside = sheet.at(column, next);
    return inside.isPresent()
        && outside.isPresent()
        && inside.get().content().getClass() == outside.get().content().getClass()
        && (inside.get().content() instanceof Content.Number
            || inside.get().content() instanceof Content.Formula);
  }

  private static Finding note(Cell cell, CellAddress missed) {
    Finding finding = finding(cell, missed);
    return DECLARATION
        .withSeverity(Severity.NOTE)
        .finding(finding.cell(), finding.found(), Message.of("range-short.point", missed.place()));
  }

  private static Stream<Finding> ofSeries(Inspection inspection) {
    Set<CellAddress> recorded = inspection.recordPlaces();
    return inspection
        .formulas()
        .filter(
            cell -> inspection.evaluation().references(cell).stream().anyMatch(RangeShort::isLong))
        .filter(cell -> isOfSeries((Content.Formula) cell.content()))
        .filter(cell -> !isCopiedDown(cell, inspection))
        .flatMap(
            cell ->
                inspection.evaluation().references(cell).stream()
                    .filter(range -> !recorded.contains(range.first()))
                    .flatMap(range -> missed(range, inspection).stream())
                    .filter(missed -> !missed.equals(cell.address()))
                    .limit(1)
                    .map(missed -> finding(cell, missed)));
  }

  private static boolean isLong(CellRange range) {
    return range.width() == 1 && range.height() >= FEWEST;
  }

  private static boolean isOfSeries(Content.Formula formula) {
    List<String> functions = formula.functions();
    return functions.stream().anyMatch(OF_SERIES::contains)
        && functions.stream().allMatch(name -> OF_SERIES.contains(name) || BESIDE.contains(name));
  }

  /** A window that moves down with its formula takes only a part each time. */
  private static boolean isCopiedDown(Cell cell, Inspection inspection) {
    CellAddress place = cell.address();
    return inspection.workbook().sheet(place.sheet()).stream()
        .flatMap(
            sheet ->
                Stream.of(place.row() - 1, place.row() + 1)
                    .flatMap(row -> sheet.at(place.column(), row).stream()))
        .anyMatch(other -> inspection.evaluation().areCopies(cell, other));
  }

  /** The number next to a range that goes on with its series. */
  private static Optional<CellAddress> missed(CellRange range, Inspection inspection) {
    Optional<Sheet> sheet = inspection.workbook().sheet(range.sheet());
    if (!isLong(range) || sheet.isEmpty()) {
      return Optional.empty();
    }
    List<Cell> cells = sheet.get().cells(range).toList();
    boolean typed =
        cells.size() == range.height()
            && cells.stream().allMatch(cell -> cell.content() instanceof Content.Number);
    return !typed
        ? Optional.empty()
        : Stream.of(
                goesOn(sheet.get(), range, range.bottom(), range.bottom() + 1),
                goesOn(sheet.get(), range, range.top(), range.top() - 1))
            .flatMap(Optional::stream)
            .filter(next -> !isOfAnotherRange(next, range, inspection))
            .findFirst();
  }

  /** The cell in the next row, if that row is filled as the last one of the range is. */
  private static Optional<CellAddress> goesOn(Sheet sheet, CellRange range, int last, int next) {
    boolean number =
        sheet
            .at(range.left(), next)
            .filter(cell -> cell.content() instanceof Content.Number)
            .isPresent();
    return number && shape(sheet, last).equals(shape(sheet, next))
        ? Optional.of(new CellAddress(sheet.name(), range.left(), next))
        : Optional.empty();
  }

  /** What kind of content stands where in a row; texts count by their words without numbers. */
  private static List<String> shape(Sheet sheet, int row) {
    return sheet.row(row).stream()
        .filter(cell -> !(cell.content() instanceof Content.Formula))
        .map(
            cell ->
                cell.address().column()
                    + (cell.content() instanceof Content.Text text
                        ? text.text().replaceAll("\\d+", "#")
                        : cell.content().getClass().getSimpleName()))
        .toList();
  }

  private static boolean isOfAnotherRange(
      CellAddress next, CellRange range, Inspection inspection) {
    return inspection
        .formulas()
        .flatMap(cell -> inspection.evaluation().references(cell).stream())
        .filter(other -> other.height() > 1 && other.contains(next))
        .anyMatch(other -> !other.contains(range.first()) || other.bottom() < range.bottom());
  }

  private static Finding finding(Cell cell, CellAddress missed) {
    return DECLARATION.finding(
        cell.address(),
        Message.of("range-short.found", ((Content.Formula) cell.content()).shown(), missed.place()),
        Message.of("range-short.expected", missed.place()));
  }
}
