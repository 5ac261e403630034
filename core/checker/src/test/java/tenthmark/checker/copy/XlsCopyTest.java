package tenthmark.checker.copy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.poi.hssf.model.HSSFFormulaParser;
import org.apache.poi.hssf.record.chart.LinkedDataRecord;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Name;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.report.Contents;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Limits;

/** The findings sheet in front of an .xls workbook. Students and numbers are invented. */
class XlsCopyTest {

  private static final Path SAVED = Path.of("src/test/resources/saved-by-calc");

  @TempDir Path folder;

  private static HSSFWorkbook open(byte[] file) throws IOException {
    return new HSSFWorkbook(new ByteArrayInputStream(file));
  }

  private static FileReport nothingFound(Path file) {
    return FileReport.checked(file, Contents.NONE, List.of());
  }

  /** All that a student put in, with references spelt out by the sheets that they lead to. */
  private static List<String> content(HSSFWorkbook workbook) {
    FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
    List<String> content = new ArrayList<>();
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      HSSFSheet sheet = workbook.getSheetAt(i);
      if (!sheet.getSheetName().equals("Findings")) {
        String name = sheet.getSheetName();
        content.add(name + " " + workbook.getSheetVisibility(i));
        content.add(name + " prints " + workbook.getPrintArea(i));
        content.add(name + " repeats " + sheet.getRepeatingRows() + sheet.getRepeatingColumns());
        content.add(name + " is split " + sheet.getPaneInformation());
        content.add(name + " has merged " + sheet.getMergedRegions());
        cells(sheet).map(cell -> name + " " + shown(cell, evaluator)).forEach(content::add);
        formats(sheet).map(format -> name + " colours " + format).forEach(content::add);
        lists(sheet).map(list -> name + " allows " + list).forEach(content::add);
        links(workbook, sheet).map(link -> name + " draws " + link).forEach(content::add);
      }
    }
    workbook.getAllNames().stream().map(name -> shown(name, workbook)).forEach(content::add);
    return content;
  }

  private static Stream<Cell> cells(HSSFSheet sheet) {
    return StreamSupport.stream(sheet.spliterator(), false)
        .flatMap(row -> StreamSupport.stream(row.spliterator(), false));
  }

  private static String shown(Cell cell, FormulaEvaluator evaluator) {
    boolean formula = cell.getCellType() == CellType.FORMULA;
    return String.join(
        " | ",
        cell.getAddress().toString(),
        cell.toString(),
        cell.getCellStyle().getDataFormatString(),
        formula ? cell.getCachedFormulaResultType().toString() : "",
        formula ? recalculated(cell, evaluator) : "");
  }

  /** POI takes the first sheet for one that was deleted, whatever that is. */
  private static String recalculated(Cell cell, FormulaEvaluator evaluator) {
    if (cell.getCellFormula().contains("#REF!")) {
      return "#REF!";
    }
    try {
      return evaluator.evaluate(cell).formatAsString();
    } catch (RuntimeException unknown) {
      return unknown.getClass().getName();
    }
  }

  private static String shown(Name name, HSSFWorkbook workbook) {
    int owner = name.getSheetIndex();
    String sheet = owner < 0 ? "the workbook" : workbook.getSheetName(owner);
    String meaning = name.isFunctionName() ? "a function" : name.getRefersToFormula();
    return name.getNameName() + " of " + sheet + " is " + meaning;
  }

  private static Stream<String> formats(HSSFSheet sheet) {
    var formats = sheet.getSheetConditionalFormatting();
    return Stream.iterate(0, i -> i + 1)
        .limit(formats.getNumConditionalFormattings())
        .map(formats::getConditionalFormattingAt)
        .map(format -> List.of(format.getFormattingRanges()) + format.getRule(0).getFormula1());
  }

  private static Stream<String> lists(HSSFSheet sheet) {
    return sheet.getDataValidations().stream()
        .map(
            list ->
                list.getRegions().getCellRangeAddress(0)
                    + " "
                    + list.getValidationConstraint().getFormula1());
  }

  /** What the charts on a sheet draw. */
  private static Stream<String> links(HSSFWorkbook workbook, HSSFSheet sheet) {
    return sheet.getSheet().getRecords().stream()
        .filter(LinkedDataRecord.class::isInstance)
        .map(link -> ((LinkedDataRecord) link).getFormulaOfLink())
        .filter(formula -> formula.length > 0)
        .map(formula -> HSSFFormulaParser.toFormulaString(workbook, formula));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sheets-and-charts.xls",
        "native-formulas.xls",
        "faulty-lab-table.xls",
        "unions-and-lines.xls",
        "lab-table.xls"
      })
  void isInFrontOfAWorkbookThatIsAsItWas(String name) throws Exception {
    Path file = SAVED.resolve(name);
    // Found by fuzzing: a formula with a name failed the check of the whole file.
    assertThat(FileChecker.load().check(file).problem()).isEmpty();
    List<String> sheets = new ArrayList<>(List.of("Findings"));
    List<String> before;
    try (HSSFWorkbook original = open(Files.readAllBytes(file))) {
      original.forEach(sheet -> sheets.add(sheet.getSheetName()));
      before = content(original);
    }

    try (HSSFWorkbook copy =
        open(
            AnnotatedCopy.of(
                FileChecker.load().check(file), CheckerTexts.english(), Limits.DEFAULT))) {
      assertThat(copy).extracting(sheet -> sheet.getSheetName()).isEqualTo(sheets);
      assertThat(content(copy)).isEqualTo(before);
    }
  }

  @Test
  void isTheSheetThatIsShownAndTheOnlyOneSelected() throws Exception {
    try (HSSFWorkbook copy =
        open(
            AnnotatedCopy.of(
                nothingFound(SAVED.resolve("sheets-and-charts.xls")),
                CheckerTexts.english(),
                Limits.DEFAULT))) {
      assertThat(copy.getActiveSheetIndex()).isZero();
      assertThat(copy.getFirstVisibleTab()).isZero();
      assertThat(copy.getSelectedTabs()).containsExactly(0);
    }
  }

  /** What the resource is there for, so that the comparison above has something to compare. */
  @Test
  void theWorkbookWithChartsHasReferencesAcrossSheetsOfEveryKind() throws Exception {
    try (HSSFWorkbook original = open(Files.readAllBytes(SAVED.resolve("sheets-and-charts.xls")))) {
      assertThat(content(original))
          .contains(
              "Summary draws 'Wheel, turns'!$B$2:$B$6",
              "Bench draws Bench!$A$2:$A$6",
              "Summary prints Summary!$A$1:$B$8",
              "factor of Summary is Bench!$A$2",
              "factor of Wheel, turns is Bench!$A$3",
              "stretches of the workbook is Bench!$B$2:$B$6")
          .anyMatch(line -> line.startsWith("Summary B7 | MAX(Bench!A2:A6)-MIN('Wheel, turns'"))
          .anyMatch(line -> line.startsWith("Bench colours"))
          .anyMatch(line -> line.startsWith("Summary allows"));
      assertThat(original.getActiveSheetIndex()).isEqualTo(1);
    }
  }

  /** References that Calc does not write: over several sheets, to another file, to a lost sheet. */
  @Test
  void isInFrontOfRarerReferences() throws Exception {
    Path file = folder.resolve("ada.xls");
    try (HSSFWorkbook workbook = new HSSFWorkbook();
        HSSFWorkbook other = new HSSFWorkbook();
        OutputStream target = Files.newOutputStream(file)) {
      other.createSheet("Spokes").createRow(0).createCell(0).setCellValue(291.3);
      workbook.linkExternalWorkbook("spokes.xls", other);
      for (int i = 0; i < 4; i++) {
        workbook.createSheet("Turn " + i).createRow(0).createCell(0).setCellValue(i + 1.5);
      }
      HSSFSheet last = workbook.createSheet("All");
      List<String> formulas =
          List.of(
              "SUM('Turn 0:Turn 2'!A1)",
              "[spokes.xls]Spokes!A1*2",
              "'Turn 1'!A1+'Turn 3'!A1",
              "All!B1");
      for (String formula : formulas) {
        last.createRow(last.getPhysicalNumberOfRows()).createCell(0).setCellFormula(formula);
      }
      workbook.removeSheetAt(3);
      workbook.setSheetHidden(1, true);
      workbook.write(target);
    }

    try (HSSFWorkbook original = open(Files.readAllBytes(file));
        HSSFWorkbook copy =
            open(AnnotatedCopy.of(nothingFound(file), CheckerTexts.english(), Limits.DEFAULT))) {
      assertThat(copy.getSheetName(0)).isEqualTo("Findings");
      assertThat(content(copy))
          .isEqualTo(content(original))
          .anyMatch(
              line ->
                  line.startsWith("All A1 | SUM(''Turn 0':Turn 2'!A1) | General | NUMERIC | 7.5"))
          .anyMatch(line -> line.startsWith("All A2 | [spokes.xls]Spokes!A1*2 |"))
          .anyMatch(line -> line.startsWith("All A3 | 'Turn 1'!A1+#REF!"));
    }
  }
}
