package tenthmark.checker.evaluation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;

/**
 * Formulas that name columns of a table, against Apache POI 5.5.1's own reading of such references.
 * Students and numbers are invented.
 */
class NamedTablesTest {

  private static final CellAddress BESIDE = new CellAddress("Bench", 5, 2);
  private static final CellAddress ELSEWHERE = new CellAddress("Wheel", 0, 0);

  @TempDir Path folder;

  private final XSSFWorkbook file = new XSSFWorkbook();

  /** A table at B2:D6, with headings and totals, and one of headings only beside it. */
  @BeforeEach
  void tables() {
    XSSFSheet bench = file.createSheet("Bench");
    file.createSheet("Wheel").createRow(0);
    bench.createRow(0);
    row(bench.createRow(1), "Force", "Stretch [mm]", "Turn's #");
    row(bench.createRow(2), 10, 12.1, 1);
    row(bench.createRow(3), 20, 24.3, 2);
    row(bench.createRow(4), 30, 36.2, 3);
    row(bench.createRow(5), 60, 72.6, 6);
    XSSFTable table = bench.createTable(area("B2:D6"));
    table.setName("Pulls");
    table.setDisplayName("Pulls");
    table.getCTTable().setTotalsRowCount(1);
    row(bench.createRow(8), "x", "y", "z");
    row(bench.createRow(9), 1, 2, 3);
    XSSFTable other = bench.createTable(area("B9:D10"));
    other.setName("Short");
    other.setDisplayName("Short");
  }

  private static AreaReference area(String cells) {
    return new AreaReference(cells, SpreadsheetVersion.EXCEL2007);
  }

  private static void row(XSSFRow row, Object... cells) {
    for (int i = 0; i < cells.length; i++) {
      XSSFCell cell = row.createCell(i + 1);
      if (cells[i] instanceof Number number) {
        cell.setCellValue(number.doubleValue());
      } else {
        cell.setCellValue((String) cells[i]);
      }
    }
  }

  private XSSFCell cell(CellAddress place) {
    return file.getSheet(place.sheet()).getRow(place.row()).createCell(place.column());
  }

  private Workbook saved() throws Exception {
    Path saved = folder.resolve("tables.xlsx");
    try (OutputStream target = Files.newOutputStream(saved)) {
      file.write(target);
    } catch (IOException impossible) {
      throw new IllegalStateException(impossible);
    }
    return WorkbookFile.read(saved);
  }

  private Outcome outcome(CellAddress place, String formula) throws Exception {
    cell(place).getCTCell().addNewF().setStringValue(formula);
    return Evaluation.of(saved(), Catalogue.load()).at(place);
  }

  private Value byPoi(CellAddress place, String formula) {
    XSSFCell cell = cell(place);
    cell.setCellFormula(formula);
    CellValue value = file.getCreationHelper().createFormulaEvaluator().evaluate(cell);
    return switch (value.getCellType()) {
      case NUMERIC -> Value.of(value.getNumberValue());
      case STRING -> Value.of(value.getStringValue());
      default -> new Value.Fault(value.formatAsString());
    };
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "SUM(Pulls[Force])",
        "sum(pulls[force])",
        "SUM(Pulls[])",
        "SUM(Pulls[#Data])",
        "SUM(Pulls[#All])",
        "COUNTA(Pulls[#Headers])",
        "SUM(Pulls[#Totals])",
        "Pulls[[#Totals],[Force]]",
        "Pulls[[#Headers],[Force]]",
        "SUM(Pulls[[#Data],[#Totals],[Force]])",
        "COUNTA(Pulls[[#Headers],[#Data],[Force]])",
        "SUM(Pulls[[Force]:[Turn''s '#]])",
        "MAX(Pulls[Turn''s '#])",
        "SUM(Pulls[[#All],[Force]:[Turn''s '#]])",
        "SUM(Short[x],Pulls[Force])",
        "\"Pulls[Force] \"&SUM(Short[[x]:[z]])",
        "SUM(Short[#Totals])"
      })
  void giveWhatPoiGives(String formula) throws Exception {
    for (CellAddress place : List.of(BESIDE, ELSEWHERE)) {
      Value expected = byPoi(place, formula);
      assertThat(outcome(place, formula)).isEqualTo(new Outcome.Known(expected));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Pulls[[#This Row],[Force]]*2",
        "SUM(Pulls[[#This Row],[Force]:[Turn''s '#]])",
        "Pulls[[#This Row],[Force]]/SUM(Pulls[Force])"
      })
  void giveWhatPoiGivesForTheirRow(String formula) throws Exception {
    Value expected = byPoi(BESIDE, formula);

    assertThat(outcome(BESIDE, formula)).isEqualTo(new Outcome.Known(expected));
  }

  // ECMA-376, part 1, 18.17.2.3: apostrophes before brackets, which POI does not read;
  // from memory: the short form of a row, with which Excel shows what it stores at length
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Pulls[Stretch '[mm']] | $C$3:$C$5",
        "SUM(Pulls[[Force]:[Stretch '[mm']]]) | SUM($B$3:$C$5)",
        "Pulls[@Force] | $B3",
        "Pulls[@[Stretch '[mm']]] | $C3",
        "SUM(Pulls[@[Force]:[Turn''s '#]]) | SUM($B3:$D3)",
        "SUM(Pulls[@]) | SUM($B3:$D3)",
        "Pulls[ [#This Row], [Force] ] | $B3",
        "SUM(Pulls[Force],'Pulls[Force]'!A1) | SUM($B$3:$B$5,'Pulls[Force]'!A1)"
      })
  void areReadAsTheRangesThatTheyStandFor(String written, String ranges) throws Exception {
    cell(BESIDE).getCTCell().addNewF().setStringValue(written);

    assertThat(saved().at(BESIDE).orElseThrow().content())
        .isEqualTo(new Content.Formula(written, ranges, Optional.empty(), Optional.empty()));
  }

  @Test
  void areAnErrorInARowThatTheTableDoesNotHave() throws Exception {
    assertThat(outcome(new CellAddress("Bench", 5, 0), "Pulls[[#This Row],[Force]]"))
        .isEqualTo(new Outcome.Known(new Value.Fault("#VALUE!")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "SUM(Pulls[Mass])",
        "SUM(Nowhere[Force])",
        "SUM(Pulls[[#Sums],[Force]])",
        "SUM([1]!Pulls[Force])"
      })
  void areNotCheckableWhereTheyLeadNowhere(String formula) throws Exception {
    assertThat(outcome(BESIDE, formula)).isInstanceOf(Outcome.NotCheckable.class);
  }

  @Test
  void mayStandInNamesAndInFormulasWrittenOnceForSeveralCells() throws Exception {
    var name = file.createName();
    name.setNameName("forces");
    name.setRefersToFormula("Pulls[Force]");
    XSSFSheet bench = file.getSheet("Bench");
    for (int row = 2; row < 5; row++) {
      var formula = bench.getRow(row).createCell(5).getCTCell().addNewF();
      formula.setT(org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellFormulaType.SHARED);
      formula.setSi(0);
      if (row == 2) {
        formula.setRef("F3:F5");
        formula.setStringValue("Pulls[[#This Row],[Force]]+D3");
      }
    }
    cell(ELSEWHERE).getCTCell().addNewF().setStringValue("SUM(forces)+SUM(Bench!F3:F5)");

    // 10 + 20 + 30 = 60 and 60 + 1 + 2 + 3 = 66
    assertThat(Evaluation.of(saved(), Catalogue.load()).at(ELSEWHERE))
        .isEqualTo(new Outcome.Known(Value.of(126)));
  }
}
