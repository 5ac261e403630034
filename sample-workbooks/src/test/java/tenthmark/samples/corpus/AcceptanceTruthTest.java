package tenthmark.samples.corpus;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.apache.poi.ss.formula.eval.NotImplementedException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is said about the workbooks of the acceptance set agrees with what POI computes in them.
 * Cells that POI cannot compute (LINEST, the LAB functions, and what follows from them) are
 * counted.
 */
class AcceptanceTruthTest {

  private static final String SET = "acceptance";
  private static final double EXACT = 1e-9;

  static List<Drawing> drawings() {
    return Family.ofSet(SET).stream().flatMap(family -> family.drawings().stream()).toList();
  }

  /** A number with what the sheet shows of it, a text, or nothing where POI cannot tell. */
  private record Computed(Double number, String text, String shown) {

    static final Computed UNKNOWN = new Computed(null, null, null);

    boolean known() {
      return shown != null;
    }
  }

  @Test
  void hasTwentyFourWorkbooksInFourLanguagesByThreePrograms() {
    Map<String, Long> languages =
        drawings().stream()
            .collect(
                Collectors.groupingBy(
                    drawing -> drawing.language().code(), TreeMap::new, Collectors.counting()));

    assertThat(languages)
        .containsExactly(
            Map.entry("de", 6L), Map.entry("en", 8L), Map.entry("es", 5L), Map.entry("fr", 5L));
    assertThat(drawings().stream().map(Drawing::name)).doesNotHaveDuplicates();
    assertThat(drawings().stream().map(drawing -> drawing.writer().program()).distinct())
        .containsExactlyInAnyOrder("poi", "calc", "gnumeric");
  }

  @ParameterizedTest
  @MethodSource("drawings")
  void agreesWithWhatPoiComputes(Drawing drawing) throws Exception {
    Map<String, Computed> cells = computed(drawing);

    everyNumberHasOnePlace(drawing, cells);
    statedNumbersAreTheNumbers(drawing, cells);
    uncertaintiesAreTheirContributions(drawing, cells);
    recordsAreRounded(drawing, cells);
    reasonsStandThere(drawing, cells);
  }

  @Test
  void fewCellsCannotBeComputedByPoi() throws Exception {
    Map<String, Long> unknown = new TreeMap<>();
    for (Drawing drawing : drawings()) {
      long count = computed(drawing).values().stream().filter(cell -> !cell.known()).count();
      if (count > 0) {
        unknown.put(drawing.name(), count);
      }
    }

    assertThat(unknown)
        .isEqualTo(
            Map.of(
                "acceptance-bearing-torque", 9L,
                "acceptance-bremsscheibe-abkuehlung", 2L,
                "acceptance-pile-interne", 6L,
                "acceptance-speichenton", 6L));
  }

  private static void everyNumberHasOnePlace(Drawing drawing, Map<String, Computed> cells) {
    Map<String, Set<String>> roles = new TreeMap<>();
    for (Stated record : drawing.records()) {
      if (!isText(record, cells)) {
        add(roles, place(record, record.value()), "value of " + record.quantity());
      }
      uncertainty(record).ifPresent(cell -> add(roles, place(record, cell), "uncertainty"));
      record.contributions().forEach((kind, cell) -> add(roles, place(record, cell), kind));
      record.parameters().forEach(cell -> add(roles, place(record, cell), "parameter"));
    }
    for (Other other : drawing.others()) {
      CorpusFile.places(other.sheet(), other.range())
          .forEach(cell -> add(roles, cell, other.is() + " " + other.range()));
    }
    Set<String> numbers =
        cells.keySet().stream()
            .filter(cell -> cells.get(cell).text() == null)
            .filter(cell -> drawing.records().stream().noneMatch(each -> isText(each, cell, cells)))
            .collect(Collectors.toCollection(TreeSet::new));

    assertThat(roles.keySet()).isEqualTo(numbers);
    assertThat(roles).allSatisfy((cell, each) -> assertThat(each).as(cell).hasSize(1));
    Set<String> values = new HashSet<>();
    assertThat(drawing.records())
        .allSatisfy(each -> assertThat(values.add(place(each, each.value()))).isTrue());
  }

  private static void add(Map<String, Set<String>> roles, String cell, String role) {
    roles.computeIfAbsent(cell, key -> new TreeSet<>()).add(role);
  }

  /** A sentence, or a result as text that POI cannot compute: its uncertainty has no cell. */
  private static boolean isText(Stated record, Map<String, Computed> cells) {
    return isText(record, place(record, record.value()), cells);
  }

  private static boolean isText(Stated record, String cell, Map<String, Computed> cells) {
    return place(record, record.value()).equals(cell)
        && (cells.get(cell).text() != null
            || !cells.get(cell).known() && record.uncertainty().orElse("") instanceof BigDecimal);
  }

  private static void statedNumbersAreTheNumbers(Drawing drawing, Map<String, Computed> cells) {
    for (Stated record : drawing.records()) {
      Computed value = cells.get(place(record, record.value()));
      record
          .number()
          .ifPresent(
              stated -> {
                if (value.number() != null) {
                  assertThat(value.number())
                      .as(record.toString())
                      .isCloseTo(
                          stated.doubleValue(), within(0.5 * stated.ulp().doubleValue() + EXACT));
                } else if (value.text() != null) {
                  assertThat(value.text().replace(',', '.'))
                      .as(record.toString())
                      .contains(stated.toPlainString());
                }
              });
    }
  }

  private static void uncertaintiesAreTheirContributions(
      Drawing drawing, Map<String, Computed> cells) {
    for (Stated record : drawing.records()) {
      double[] parts =
          record.contributions().values().stream()
              .map(cell -> cells.get(place(record, cell)))
              .filter(Computed::known)
              .mapToDouble(Computed::number)
              .toArray();
      if (parts.length > 0 && parts.length == record.contributions().size()) {
        Computed told = cells.get(place(record, uncertainty(record).orElseThrow()));
        double expected =
            drawing.combine() == Combine.STRAIGHT
                ? DoubleStream.of(parts).sum()
                : Math.sqrt(DoubleStream.of(parts).map(part -> part * part).sum());
        assertThat(told.number()).as(record.toString()).isCloseTo(expected, within(EXACT));
      }
    }
  }

  /**
   * Common practice, no source: an uncertainty is shown to one digit, or to two if the first is a
   * 1, and the value to the same place.
   */
  private static void recordsAreRounded(Drawing drawing, Map<String, Computed> cells) {
    for (Stated record : drawing.records()) {
      Computed value = cells.get(place(record, record.value()));
      uncertainty(record)
          .map(cell -> cells.get(place(record, cell)))
          .filter(Computed::known)
          .ifPresent(uncertainty -> isRounded(record, value, uncertainty));
    }
  }

  private static void isRounded(Stated record, Computed value, Computed uncertainty) {
    BigDecimal shown = new BigDecimal(uncertainty.shown());
    BigDecimal digits = shown.scale() > 0 ? shown : shown.stripTrailingZeros();
    assertThat(digits.unscaledValue().intValue()).as(record + " ± " + shown).isBetween(1, 19);
    assertThat(shown.doubleValue())
        .as(record + " ± " + shown)
        .isCloseTo(uncertainty.number(), within(0.5 * shown.ulp().doubleValue() + EXACT));
    if (value.known()) {
      assertThat(new BigDecimal(value.shown()).scale())
          .as(record + " shows " + value.shown())
          .isEqualTo(shown.scale());
    }
  }

  private static void reasonsStandThere(Drawing drawing, Map<String, Computed> cells) {
    for (Stated record : drawing.records()) {
      if (record.kind() == Kind.MEASURED) {
        assertThat(record.rationale()).as(record.toString()).isPresent();
      }
      record
          .rationale()
          .filter(place -> !place.matches("comment .*|box"))
          .ifPresent(
              cell ->
                  assertThat(cells.get(place(record, cell)).text())
                      .as(record.toString())
                      .isNotBlank());
    }
  }

  private static Optional<String> uncertainty(Stated record) {
    return record.uncertainty().filter(String.class::isInstance).map(String.class::cast);
  }

  private static String place(Stated record, String cell) {
    return CorpusFile.place(record.sheet(), cell);
  }

  private static Map<String, Computed> computed(Drawing drawing) throws IOException {
    Map<String, Computed> cells = new LinkedHashMap<>();
    DataFormatter formatter = new DataFormatter(Locale.ROOT);
    try (Workbook workbook = drawing.finished()) {
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() != CellType.BLANK) {
              cells.put(
                  sheet.getSheetName() + "!" + cell.getAddress().formatAsString(),
                  computed(cell, evaluator, formatter));
            }
          }
        }
      }
    }
    return cells;
  }

  private static Computed computed(Cell cell, FormulaEvaluator evaluator, DataFormatter formatter) {
    CellValue value;
    try {
      value = evaluator.evaluate(cell);
    } catch (NotImplementedException beyondPoi) {
      return Computed.UNKNOWN;
    }
    String shown = formatter.formatCellValue(cell, evaluator);
    return switch (value.getCellType()) {
      case NUMERIC -> new Computed(value.getNumberValue(), null, shown);
      case STRING -> new Computed(null, value.getStringValue(), shown);
      default -> throw new IllegalStateException(cell.getAddress() + " shows " + shown);
    };
  }
}
