package tenthmark.samples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tenthmark.checker.course.Course;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.Inspection;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.Severity;
import tenthmark.checker.unit.MeasurementUnit;
import tenthmark.checker.unit.UnitReader;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Limits;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.formula.CellAddress;

/** A workbook of the corpus beside what its drawer says is in it. */
final class CorpusWorkbook {

  private static final List<String> SUFFIXES = List.of(".xlsx", ".xls", ".ods");
  private static final double SAME = 1e-6;
  private static final Catalogue FUNCTIONS = Catalogue.load();
  private static final RuleCatalogue RULES = RuleCatalogue.load();

  private final String name;
  private final Map<String, Object> truth;
  private final Inspection inspection;
  private final Map<CellAddress, MeasurementRecord> records = new HashMap<>();
  private final List<Finding> blamed;
  private final List<String> misses = new ArrayList<>();
  private int read;
  private int right;

  private CorpusWorkbook(String name, Map<String, Object> truth, Inspection inspection) {
    this.name = name;
    this.truth = truth;
    this.inspection = inspection;
    for (MeasurementRecord measurement : inspection.records()) {
      measurement
          .place(Field.VALUE)
          .ifPresent(cell -> records.putIfAbsent(uniform(cell), measurement));
    }
    for (MeasurementRecord measurement : inspection.records()) {
      measurement
          .place(Field.RESULT)
          .ifPresent(cell -> records.putIfAbsent(uniform(cell), measurement));
    }
    this.blamed =
        RULES.check(inspection).stream()
            .filter(finding -> finding.rule().severity() != Severity.NOTE)
            .flatMap(Finding::apart)
            .toList();
    stated().forEach(this::compare);
    blamed.forEach(
        finding ->
            misses.add(
                name
                    + " "
                    + finding.cell()
                    + " BLAMED "
                    + finding.rule().id()
                    + ": "
                    + CheckerTexts.english().say(finding.found())
                    + "; "
                    + CheckerTexts.english().say(finding.expected())));
  }

  private static CellAddress uniform(CellAddress cell) {
    return new CellAddress(cell.sheet().toLowerCase(Locale.ROOT), cell.column(), cell.row());
  }

  /** Reads a truth file and the workbook beside it. */
  @SuppressWarnings("unchecked")
  static CorpusWorkbook read(Path truth) {
    String name = truth.getFileName().toString().replace(".truth.yaml", "");
    Path file =
        SUFFIXES.stream()
            .map(suffix -> truth.resolveSibling(name + suffix))
            .filter(Files::exists)
            .findFirst()
            .orElseThrow();
    try {
      Map<String, Object> stated =
          (Map<String, Object>)
              new Load(LoadSettings.builder().build()).loadFromString(Files.readString(truth));
      return new CorpusWorkbook(
          file.getFileName().toString(),
          stated,
          Inspection.of(WorkbookFile.read(file, Limits.DEFAULT), FUNCTIONS, Course.PLAIN));
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    } catch (UnreadableFileException problem) {
      throw new AssertionError(file.toString(), problem);
    }
  }

  String layout() {
    return (String) truth.get("layout");
  }

  int present() {
    return stated().size();
  }

  int read() {
    return read;
  }

  int right() {
    return right;
  }

  /** Findings that blame somebody: the workbook is correct. */
  List<Finding> falseFindings() {
    return blamed;
  }

  /** What was not read, or read otherwise than the drawer says, a line each. */
  List<String> misses() {
    return misses;
  }

  @SuppressWarnings("unchecked")
  private List<Map<String, Object>> stated() {
    return (List<Map<String, Object>>) truth.getOrDefault("records", List.of());
  }

  private void compare(Map<String, Object> stated) {
    String sheet = (String) stated.get("sheet");
    CellAddress value = cell(sheet, (String) stated.get("value"));
    MeasurementRecord found = records.get(uniform(value));
    if (found == null) {
      misses.add(name + " " + value + " NOT READ: " + stated);
      return;
    }
    read++;
    List<String> wrong = wrong(stated, found, sheet);
    if (wrong.isEmpty()) {
      right++;
    } else {
      misses.add(name + " " + value + " READ WRONG: " + wrong);
    }
  }

  @SuppressWarnings("unchecked")
  private List<String> wrong(Map<String, Object> stated, MeasurementRecord found, String sheet) {
    List<String> wrong = new ArrayList<>();
    String unit = String.valueOf(stated.getOrDefault("unit", ""));
    if (!sameUnit(unit, found.unit())) {
      wrong.add("unit " + found.unit() + " for " + unit);
    }
    number(stated.get("number"))
        .filter(
            number ->
                found
                    .number(Field.VALUE)
                    .filter(
                        n -> same(n, number) || found.isFormula(Field.VALUE) && rounds(n, stated))
                    .isEmpty())
        .ifPresent(number -> wrong.add("number " + found.number(Field.VALUE) + " for " + number));
    if (stated.containsKey("uncertainty")) {
      String text = String.valueOf(stated.get("uncertainty"));
      Optional<Double> size = size(sheet, text);
      Optional<Double> absolute = found.absoluteUncertainty();
      Optional<Double> shown =
          found.stated().flatMap(result -> result.text().uncertainty()).map(Number::doubleValue);
      boolean fits =
          size.isPresent()
              && (shown.filter(n -> same(n, size.get())).isPresent()
                  || found
                      .uncertainty()
                      .filter(n -> same(Math.abs(n), Math.abs(size.get())))
                      .isPresent()
                  || absolute
                      .filter(n -> same(n, Math.abs(size.get())) || roundsTo(n, text))
                      .isPresent());
      if (!fits) {
        wrong.add("uncertainty " + found.uncertainty() + " for " + text + " = " + size);
      }
    }
    ((Map<String, Object>) stated.getOrDefault("contributions", Map.of()))
        .forEach(
            (kind, cell) -> {
              Field field = Field.valueOf(kind.toUpperCase(Locale.ROOT));
              Optional<Double> size = size(sheet, String.valueOf(cell));
              if (size.isPresent()
                  && found.number(field).filter(n -> same(n, size.get())).isEmpty()) {
                wrong.add(kind + " " + found.number(field) + " for " + cell + " = " + size.get());
              }
            });
    return wrong;
  }

  /** Whether a size is, to the digits that are written, the one that a truth file states. */
  private static boolean roundsTo(double exact, String text) {
    return number(text)
        .filter(
            stated -> {
              double half = 0.5 * Math.pow(10, -new BigDecimal(text).scale());
              return Math.abs(exact - stated) <= half * (1 + SAME);
            })
        .isPresent();
  }

  /** A truth file states what a formula gives to the digits that its uncertainty asks for. */
  private static boolean rounds(double exact, Map<String, Object> stated) {
    BigDecimal written = new BigDecimal(String.valueOf(stated.get("number")));
    double half = 0.5 * Math.pow(10, -written.scale());
    return Math.abs(exact - written.doubleValue()) <= half * (1 + SAME);
  }

  private static boolean sameUnit(String stated, String found) {
    if (stated.equals(found) || stated.isEmpty() && (found.equals("1") || found.isEmpty())) {
      return true;
    }
    Optional<MeasurementUnit> one = UnitReader.STANDARD.read(stated).known();
    Optional<MeasurementUnit> other = UnitReader.STANDARD.read(found).known();
    return one.isPresent() && other.isPresent() && one.get().isSameAs(other.get());
  }

  /** The number that a truth file states, or that a cell which it names holds. */
  private Optional<Double> size(String sheet, String text) {
    if (text.matches("(?:.+!)?[A-Z]{1,2}\\d+")) {
      return inspection.evaluation().number(cell(sheet, text)).or(() -> typed(cell(sheet, text)));
    }
    return number(text.replace("%", "").strip());
  }

  private Optional<Double> typed(CellAddress cell) {
    return inspection
        .workbook()
        .at(cell)
        .flatMap(
            found ->
                found.content() instanceof tenthmark.checker.workbook.Content.Text text
                    ? tenthmark.checker.record.Amount.of(
                            new tenthmark.measurement.catalogue.Value.Text(text.text()))
                        .map(tenthmark.checker.record.Amount::number)
                    : Optional.empty());
  }

  private static Optional<Double> number(Object text) {
    try {
      return text == null ? Optional.empty() : Optional.of(Double.valueOf(String.valueOf(text)));
    } catch (NumberFormatException none) {
      return Optional.empty();
    }
  }

  private static boolean same(double one, double other) {
    return Math.abs(one - other) <= SAME * Math.max(Math.abs(one), Math.abs(other));
  }

  private static CellAddress cell(String sheet, String place) {
    String on = place.contains("!") ? place.substring(0, place.indexOf('!')) : sheet;
    String bare = place.substring(place.indexOf('!') + 1);
    int letters = 0;
    int column = 0;
    while (letters < bare.length() && Character.isLetter(bare.charAt(letters))) {
      column = column * 26 + bare.charAt(letters++) - 'A' + 1;
    }
    return new CellAddress(on, column - 1, Integer.parseInt(bare.substring(letters)) - 1);
  }
}
