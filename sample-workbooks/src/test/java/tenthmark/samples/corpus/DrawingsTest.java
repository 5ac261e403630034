package tenthmark.samples.corpus;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The workbooks of the sets that were held back are correct and their truths are true. Apache POI
 * recalculates them; nothing of the checker takes part.
 */
class DrawingsTest {

  /** How far a carried uncertainty may be from what finite steps give. */
  private static final double SECOND_ORDER = 0.06;

  /** Such as 12.3 ± 0.5, or 12.3(5). */
  private static final String RECORD = "\\d( ± |\\()\\d";

  static Stream<Drawing> drawings() {
    return Stream.of("later", "fresh", "last", "finale")
        .flatMap(set -> Family.ofSet(set).stream())
        .flatMap(family -> family.drawings().stream());
  }

  /** LAB functions are not POI's: what needs them is looked at in files that Calc has saved. */
  static Stream<Drawing> drawingsOfPlainFormulas() {
    return drawings().filter(drawing -> !new Recalculated(drawing).hasLabFunctions());
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void everyNumberIsAccountedForAndNothingElse(Drawing drawing) {
    Recalculated book = new Recalculated(drawing);
    Set<String> stated = new HashSet<>();
    for (Stated record : drawing.records()) {
      stated.add(record.sheet() + "!" + record.value());
      record.uncertainty().ifPresent(each -> add(stated, record, each));
      record.contributions().values().forEach(each -> add(stated, record, each));
      record.parameters().forEach(each -> add(stated, record, each));
    }
    List<String> others = new ArrayList<>();
    for (Other other : drawing.others()) {
      Cells.of(other.range()).forEach(each -> others.add(other.sheet() + "!" + each));
    }
    assertThat(others).doesNotHaveDuplicates().doesNotContainAnyElementsOf(stated);
    Set<String> all = new HashSet<>(stated);
    all.addAll(others);
    assertThat(all).containsAll(book.numbers());
    all.removeAll(book.numbers());
    assertThat(all).allSatisfy(cell -> assertThat(book.text(cell)).containsPattern(RECORD));
  }

  private static void add(Set<String> stated, Stated record, Object cell) {
    if (cell instanceof String address) {
      stated.add(Recalculated.full(record, address));
    }
  }

  @ParameterizedTest
  @MethodSource("drawingsOfPlainFormulas")
  void theNumbersStatedComeOut(Drawing drawing) {
    Recalculated book = new Recalculated(drawing);
    for (Stated record : drawing.records()) {
      String value = Recalculated.full(record, record.value());
      if (record.number().isEmpty() || !book.isNumber(value)) {
        continue;
      }
      BigDecimal number = record.number().get();
      double place = Math.pow(10, -number.scale());
      assertThat(book.number(value))
          .as("%s %s", drawing.name(), value)
          .isCloseTo(number.doubleValue(), within(0.5001 * place));
    }
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void textsThatAreRecordsHoldTheirNumbers(Drawing drawing) {
    Recalculated book = new Recalculated(drawing);
    for (Stated record : drawing.records()) {
      String value = Recalculated.full(record, record.value());
      if (!book.isNumber(value) && !book.hasLabFunctions()) {
        BigDecimal number = record.number().orElseThrow();
        BigDecimal uncertainty = new BigDecimal(record.uncertainty().orElseThrow().toString());
        String best = number.toPlainString();
        assertThat(book.text(value).replace(',', '.'))
            .containsAnyOf(
                best + " ± " + uncertainty.stripTrailingZeros().toPlainString(),
                best + "(" + uncertainty.movePointRight(number.scale()).toBigInteger() + ")");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("drawingsOfPlainFormulas")
  void uncertaintiesOfResultsAreThoseOfTheirInputs(Drawing drawing) {
    Recalculated book = new Recalculated(drawing);
    book.holdInputs(drawing);
    for (Stated result : drawing.records()) {
      String value = Recalculated.full(result, result.value());
      if (result.kind() != Kind.CALCULATED || !book.isNumber(value)) {
        continue;
      }
      double stated = book.uncertainty(result);
      double carried = book.carried(drawing, value);
      assertThat(stated)
          .as("%s %s", drawing.name(), value)
          .isCloseTo(carried, within(SECOND_ORDER * carried));
    }
  }

  @ParameterizedTest
  @MethodSource("drawingsOfPlainFormulas")
  void contributionsAddUp(Drawing drawing) {
    Recalculated book = new Recalculated(drawing);
    for (Stated record : drawing.records()) {
      if (record.contributions().isEmpty()) {
        continue;
      }
      boolean straight = drawing.combine() == Combine.STRAIGHT;
      double sum =
          record.contributions().values().stream()
              .mapToDouble(each -> book.number(Recalculated.full(record, each)))
              .map(part -> straight ? part : part * part)
              .sum();
      assertThat(book.uncertainty(record))
          .as("%s %s", drawing.name(), record.value())
          .isCloseTo(straight ? sum : Math.sqrt(sum), within(1e-9));
    }
  }

  @ParameterizedTest
  @MethodSource("drawingsOfPlainFormulas")
  void uncertaintiesShowOneDigitOrTwoIfTheFirstIsOneAndValuesEndAtTheirPlace(Drawing drawing) {
    Recalculated book = new Recalculated(drawing);
    for (Stated record : drawing.records()) {
      String value = Recalculated.full(record, record.value());
      if (!book.isNumber(value)) {
        continue;
      }
      String shown =
          record.uncertainty().orElseThrow() instanceof String cell
              ? book.shown(Recalculated.full(record, cell))
              : null;
      if (shown == null) {
        continue;
      }
      assertThat(shown.replaceFirst("^[0.]*", ""))
          .as("%s %s ± %s", drawing.name(), value, shown)
          .matches("1?\\.?\\d");
      double uncertainty = book.uncertainty(record);
      assertThat(Double.parseDouble(shown))
          .as("%s %s ± %s is %s", drawing.name(), value, shown, uncertainty)
          .isCloseTo(uncertainty, within(0.35 * uncertainty));
      if (firstDigit(uncertainty) == 1) {
        assertThat(shown.replaceFirst("^[0.]*", ""))
            .as("%s %s ± %s", drawing.name(), value, shown)
            .matches("1\\.?\\d|2\\.?0");
      }
      assertThat(decimals(book.shown(value)))
          .as("%s %s: %s ± %s", drawing.name(), value, book.shown(value), shown)
          .isEqualTo(decimals(shown));
    }
  }

  private static int firstDigit(double uncertainty) {
    return String.format(Locale.ROOT, "%.6e", uncertainty).charAt(0) - '0';
  }

  private static int decimals(String shown) {
    int point = shown.indexOf('.');
    return point < 0 ? 0 : shown.length() - point - 1;
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void everyMeasuredUncertaintyHasAReasonWhereTheTruthSays(Drawing drawing) {
    Recalculated book = new Recalculated(drawing);
    for (Stated record : drawing.records()) {
      if (record.kind() != Kind.MEASURED && record.rationale().isEmpty()) {
        continue;
      }
      String reason = record.rationale().orElseThrow();
      if (reason.startsWith("comment ")) {
        assertThat(book.comment(record.sheet() + "!" + reason.substring(8))).isNotBlank();
      } else if (!reason.equals("box")) {
        assertThat(book.text(Recalculated.full(record, reason)))
            .as("%s %s", drawing.name(), record.value())
            .isNotBlank();
      }
    }
  }

  /** A drawing as POI calculates it. */
  private static final class Recalculated {

    /** Some formats hold the unit or a sign. */
    private static final Pattern SHOWN = Pattern.compile("-?\\d+(\\.\\d+)?");

    private final DataFormatter formatter = new DataFormatter(Locale.ROOT);
    private final Workbook workbook;
    private final boolean lab;
    private final FormulaEvaluator evaluator;

    Recalculated(Drawing drawing) {
      // Families draw anew at each call, and finishing evaluates what no LAB function is part of.
      workbook = drawing.finished();
      rewriteFunctionsThatPoiLacks();
      lab = formulas().anyMatch(formula -> formula.contains("LAB"));
      evaluator = workbook.getCreationHelper().createFormulaEvaluator();
    }

    /**
     * The uncertainties of a straight line in functions that POI has: Taylor, An Introduction to
     * Error Analysis, 2nd edition, 8.15 to 8.17 (from memory).
     */
    private void rewriteFunctionsThatPoiLacks() {
      String scatter = "SQRT((DEVSQ($1)-SLOPE($1,$2)^2*DEVSQ($2))/(COUNT($2)-2))";
      String slope = scatter + "/SQRT(DEVSQ($2))";
      String line = "\\(LINEST\\(([^,]+),([^,]+),TRUE,TRUE\\),2,";
      String best = "\\(LINEST\\(([^,]+),([^,]+),TRUE,TRUE\\),1,";
      for (Cell cell : cells()) {
        if (cell.getCellType() == CellType.FORMULA) {
          String formula = cell.getCellFormula();
          String rewritten =
              formula
                  .replaceAll("INDEX" + line + "1\\)", "(" + slope + ")")
                  .replaceAll("INDEX" + line + "2\\)", "(" + slope + "*SQRT(SUMSQ($2)/COUNT($2)))")
                  .replaceAll("INDEX" + best + "1\\)", "SLOPE($1,$2)")
                  .replaceAll("INDEX" + best + "2\\)", "INTERCEPT($1,$2)")
                  .replaceAll("LINEST\\(([^,)]+),([^,)]+)\\)", "SLOPE($1,$2)")
                  .replaceAll("STEYX\\(([^,]+),([^,)]+)\\)", scatter)
                  .replaceAll("RSQ(\\([^)]+\\))", "CORREL$1^2");
          if (!rewritten.equals(formula)) {
            cell.setCellFormula(rewritten);
          }
        }
      }
    }

    private List<Cell> cells() {
      List<Cell> cells = new ArrayList<>();
      workbook.forEach(sheet -> sheet.forEach(row -> row.forEach(cells::add)));
      return cells;
    }

    private Stream<String> formulas() {
      return cells().stream()
          .filter(cell -> cell.getCellType() == CellType.FORMULA)
          .map(Cell::getCellFormula);
    }

    boolean hasLabFunctions() {
      return lab;
    }

    static String full(Stated record, String address) {
      return address.contains("!") ? address : record.sheet() + "!" + address;
    }

    Cell cell(String full) {
      int mark = full.indexOf('!');
      CellReference place = new CellReference(full.substring(mark + 1));
      return workbook
          .getSheet(full.substring(0, mark))
          .getRow(place.getRow())
          .getCell(place.getCol());
    }

    Set<String> numbers() {
      Set<String> numbers = new HashSet<>();
      for (Cell cell : cells()) {
        String full = cell.getSheet().getSheetName() + "!" + cell.getAddress().formatAsString();
        if (cell.getCellType() != CellType.BLANK && isNumber(full)) {
          numbers.add(full);
        }
      }
      return numbers;
    }

    boolean isNumber(String full) {
      Cell cell = cell(full);
      if (lab && cell.getCellType() == CellType.FORMULA) {
        return true;
      }
      CellValue value = evaluator.evaluate(cell);
      return value != null && value.getCellType() == CellType.NUMERIC;
    }

    double number(String full) {
      CellValue value = evaluator.evaluate(cell(full));
      assertThat(value).as(full).isNotNull();
      assertThat(value.getCellType()).as(full).isEqualTo(CellType.NUMERIC);
      return value.getNumberValue();
    }

    String text(String full) {
      Cell cell = cell(full);
      assertThat(cell).as(full).isNotNull();
      CellValue value = evaluator.evaluate(cell);
      assertThat(value).as(full).isNotNull();
      assertThat(value.getCellType()).as(full).isEqualTo(CellType.STRING);
      return value.getStringValue();
    }

    String comment(String full) {
      return cell(full).getCellComment().getString().getString();
    }

    String shown(String full) {
      Matcher number = SHOWN.matcher(formatter.formatCellValue(cell(full), evaluator));
      assertThat(number.find()).as(full).isTrue();
      return number.group();
    }

    double uncertainty(Stated record) {
      return record.uncertainty().orElseThrow() instanceof String address
          ? number(full(record, address))
          : Double.parseDouble(record.uncertainty().get().toString());
    }

    /** Means and lines become inputs themselves and no longer follow their readings. */
    void holdInputs(Drawing drawing) {
      for (Stated input : drawing.records()) {
        String place = full(input, input.value());
        Cell cell = cell(place);
        if (input.kind() != Kind.CALCULATED
            && cell.getCellType() == CellType.FORMULA
            && isNumber(place)) {
          double value = number(place);
          cell.removeFormula();
          cell.setCellValue(value);
        }
      }
      forget();
    }

    /** The uncertainty of a cell by moving each input up and down by its own. */
    double carried(Drawing drawing, String result) {
      List<Double> shares = new ArrayList<>();
      for (Stated input : drawing.records()) {
        String cell = full(input, input.value());
        if (input.kind() != Kind.CALCULATED && isNumber(cell) && input.uncertainty().isPresent()) {
          shares.add(share(cell, uncertainty(input), result));
        }
      }
      return drawing.combine() == Combine.STRAIGHT
          ? shares.stream().mapToDouble(Math::abs).sum()
          : Math.sqrt(shares.stream().mapToDouble(each -> each * each).sum());
    }

    private double share(String input, double step, String result) {
      double value = number(input);
      Cell cell = cell(input);
      double up = with(cell, value + step, result);
      double down = with(cell, value - step, result);
      cell.setCellValue(value);
      forget();
      return (up - down) / 2;
    }

    private double with(Cell cell, double value, String result) {
      cell.setCellValue(value);
      forget();
      return number(result);
    }

    private void forget() {
      evaluator.clearAllCachedResultValues();
    }
  }

  @Test
  void namesAreTheirOwn() {
    assertThat(drawings().map(Drawing::name)).doesNotHaveDuplicates().hasSizeGreaterThan(23);
  }
}
