package tenthmark.checker.record;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.formula.CellAddress;

/**
 * The slope of a line as it stands beside a graph, without headings: a word, the formula and the
 * unit, and in the same row or in one of the next its uncertainty. A slope with neither unit nor
 * uncertainty is a step of a calculation.
 */
final class SlopeRows {

  private static final Pattern SLOPE =
      Pattern.compile("(?:(?:LAB_)?SLOPE|LINEST)\\(.*", Pattern.CASE_INSENSITIVE);

  private static final Pattern UNCERTAIN =
      Pattern.compile("^(?:±|\\+/-|u\\s*\\(|[Δδσ]).*|.*\\b(?:std|s\\.?d|standard deviation)\\b.*");

  /** Rows below a slope in which its uncertainty is looked for. */
  private static final int BELOW = 4;

  private final Workbook workbook;
  private final Evaluation evaluation;
  private final Sheet sheet;
  private final Set<String> uncertainties;

  SlopeRows(Workbook workbook, Evaluation evaluation, Sheet sheet, HeadingWords words) {
    this.workbook = workbook;
    this.evaluation = evaluation;
    this.sheet = sheet;
    this.uncertainties = words.of(Field.UNCERTAINTY);
  }

  Optional<MeasurementRecord> read(int row) {
    List<Cell> cells = List.copyOf(sheet.row(row));
    return cells.stream()
        .filter(SlopeRows::isSlope)
        .findFirst()
        .flatMap(slope -> label(slope).map(label -> places(label, slope, cells)))
        .filter(places -> places.containsKey(Field.UNIT) || places.containsKey(Field.UNCERTAINTY))
        .map(
            places ->
                new MeasurementRecord(
                    workbook, evaluation, places, Map.of(), cells, Optional.empty()));
  }

  /** Whether the formula of a cell is the slope of a line. */
  static boolean isSlope(Cell cell) {
    return cell.content() instanceof Content.Formula formula
        && SLOPE.matcher(formula.text().strip()).matches();
  }

  private Map<Field, CellAddress> places(Cell label, Cell slope, List<Cell> row) {
    Map<Field, CellAddress> places = new EnumMap<>(Field.class);
    places.put(Field.QUANTITY, label.address());
    places.put(Field.VALUE, slope.address());
    row.stream()
        .filter(cell -> cell.address().column() > slope.address().column())
        .filter(cell -> text(cell).flatMap(Heading::unitAlone).isPresent())
        .findFirst()
        .ifPresent(unit -> places.put(Field.UNIT, unit.address()));
    uncertainty(label, slope, row).ifPresent(cell -> places.put(Field.UNCERTAINTY, cell.address()));
    return places;
  }

  private Optional<Cell> uncertainty(Cell label, Cell slope, List<Cell> row) {
    Optional<Cell> beside =
        row.stream()
            .filter(cell -> cell.address().column() > slope.address().column())
            .filter(cell -> evaluation.number(cell.address()).isPresent())
            .findFirst();
    return beside.or(
        () ->
            IntStream.rangeClosed(slope.address().row() + 1, slope.address().row() + BELOW)
                .mapToObj(sheet::row)
                .flatMap(cells -> cells.stream())
                .filter(cell -> cell.address().column() == slope.address().column())
                .filter(cell -> evaluation.number(cell.address()).isPresent())
                .filter(this::isUncertainty)
                .max(Comparator.comparing(cell -> names(cell, text(label).orElseThrow()))));
  }

  /** Whether the word beside a cell holds that of the slope, as the uncertainty of k does. */
  private boolean names(Cell cell, String quantity) {
    return label(cell)
        .flatMap(SlopeRows::text)
        .filter(words -> words.toLowerCase(Locale.ROOT).contains(quantity.toLowerCase(Locale.ROOT)))
        .isPresent();
  }

  private boolean isUncertainty(Cell cell) {
    return label(cell).flatMap(SlopeRows::text).filter(this::namesUncertainty).isPresent();
  }

  private boolean namesUncertainty(String text) {
    String words = HeadingWords.uniform(text);
    return UNCERTAIN.matcher(words).matches()
        || uncertainties.stream().anyMatch(word -> (" " + words + " ").contains(" " + word + " "));
  }

  /** The nearest text to the left in the row. */
  private Optional<Cell> label(Cell cell) {
    return sheet.row(cell.address().row()).stream()
        .filter(other -> other.address().column() < cell.address().column())
        .filter(other -> text(other).isPresent())
        .max(Comparator.comparing(other -> other.address().column()));
  }

  private static Optional<String> text(Cell cell) {
    return cell.content() instanceof Content.Text text && !text.text().isBlank()
        ? Optional.of(text.text().strip())
        : Optional.empty();
  }
}
