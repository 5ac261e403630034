package tenthmark.checker.corpora;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.Sheet;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;

/** Reads and recalculates the spreadsheets of others; what is found is printed as tables. */
class CorporaTest {

  /** As measured on 25 November 2026; a change may not make it worse. */
  private static final int FILES = 138;

  private static final int READ = 124;
  private static final int FORMULAS = 202;
  private static final double AGREEING = 1;

  private static final Catalogue FUNCTIONS = Catalogue.load();

  @TempDir static Path folder;

  private static List<Path> files;

  private final PrintStream out = System.out;

  @BeforeAll
  static void unpack() throws IOException {
    files = Corpus.unpackedTo(folder);
  }

  private static Optional<Workbook> read(Path file) {
    try {
      return Optional.of(WorkbookFile.read(file));
    } catch (UnreadableFileException refused) {
      return Optional.empty();
    }
  }

  @Test
  void eachIsReadOrRefusedInOneLine() throws Exception {
    Map<String, List<String>> refused = new TreeMap<>();
    int read = 0;
    for (Path file : files) {
      byte[] before = Files.readAllBytes(file);
      try {
        WorkbookFile.read(file);
        read++;
      } catch (UnreadableFileException line) {
        refused
            .computeIfAbsent(line.getMessage(), key -> new ArrayList<>())
            .add(file.getFileName().toString());
      }
      assertThat(file).hasBinaryContent(before);
    }

    out.println("files " + files.size() + ", read " + read + ", refused:");
    refused.forEach((line, names) -> out.println("  " + names.size() + " " + line + " " + names));
    assertThat(files).hasSize(FILES);
    assertThat(read).isGreaterThanOrEqualTo(READ);
    assertThat(refused.keySet()).allSatisfy(line -> assertThat(line).doesNotContain("\n"));
  }

  @Test
  void noneMakesTheCheckerFail() {
    FileChecker checker = FileChecker.load();
    for (Path file : files) {
      assertThat(checker.check(file).problem().orElse(""))
          .as(file.toString())
          .doesNotContain("the checker failed", "memory", "takes longer");
    }
  }

  @Test
  void formulasRecalculateToTheStoredValues() {
    Map<String, List<String>> classes = new TreeMap<>();
    int formulas = 0;
    int agreeing = 0;
    int compared = 0;
    for (Path file : files) {
      Optional<Workbook> workbook = read(file);
      if (workbook.isEmpty()) {
        continue;
      }
      Evaluation evaluation = Evaluation.of(workbook.get(), FUNCTIONS);
      boolean calculated = formulas(workbook.get()).stream().anyMatch(CorporaTest::hasResult);
      for (Cell cell : formulas(workbook.get())) {
        formulas++;
        String comparison =
            calculated
                ? comparison(cell, evaluation)
                : "the program that wrote the file stored zero for each formula";
        if (comparison.startsWith("agrees") || comparison.startsWith("differs")) {
          compared++;
        }
        if (comparison.startsWith("agrees")) {
          agreeing++;
        }
        classes
            .computeIfAbsent(comparison, key -> new ArrayList<>())
            .add(file.getFileName() + " " + cell.address());
      }
    }

    out.println("formulas " + formulas + ", compared " + compared + ", agreeing " + agreeing);
    classes.forEach(
        (kind, cells) ->
            out.println("  " + cells.size() + " " + kind + ", for instance " + cells.get(0)));
    assertThat(formulas).isGreaterThanOrEqualTo(FORMULAS);
    assertThat(agreeing / (double) compared).isGreaterThanOrEqualTo(AGREEING);
  }

  private static List<Cell> formulas(Workbook workbook) {
    return workbook.sheets().stream()
        .flatMap(Sheet::cells)
        .filter(cell -> cell.content() instanceof Content.Formula)
        .toList();
  }

  private static boolean hasResult(Cell cell) {
    Optional<Value> stored = Evaluation.stored(cell.content());
    return stored.isPresent() && !stored.get().equals(Value.of(0));
  }

  private static String comparison(Cell cell, Evaluation evaluation) {
    Content.Formula formula = (Content.Formula) cell.content();
    Optional<Value> stored = Evaluation.stored(formula);
    Outcome outcome = evaluation.at(cell.address());
    if (outcome instanceof Outcome.NotCheckable unknown) {
      return "not checkable: "
          + (unknown.origin().equals(cell.address())
              ? CheckerTexts.english().say(unknown.reason())
              : "it depends on such a cell");
    }
    if (stored.isEmpty()) {
      return "no value stored";
    }
    if (evaluation.changesByItself(cell.address())) {
      return "changes by itself";
    }
    Value value = ((Outcome.Known) outcome).value();
    if (same(stored.get(), value)) {
      return "agrees";
    }
    return "differs: =" + formula.text() + " stored " + stored.get() + " recalculated " + value;
  }

  private static boolean same(Value one, Value other) {
    if (one instanceof Value.Numeric a && other instanceof Value.Numeric b) {
      double scale = Math.max(Math.abs(a.number()), Math.abs(b.number()));
      return Math.abs(a.number() - b.number()) <= 1e-9 * scale;
    }
    return one.equals(other) || isEmpty(one) && isEmpty(other);
  }

  private static boolean isEmpty(Value value) {
    return value.equals(Value.BLANK) || value.equals(Value.of(""));
  }

  /** Our reader of .xlsx against the one of Apache POI 5.5.1, which builds the whole document. */
  @Test
  void cellsAreThoseThatPoiReads() throws Exception {
    // POI takes a well compressed table of styles for an attack; these files are known.
    ZipSecureFile.setMinInflateRatio(0);
    int cells = 0;
    for (Path file : files) {
      Optional<Workbook> workbook =
          file.toString().matches(".*\\.(xlsx|xlsm|xltx|xltm)")
                  && !file.toString().contains("strict")
              ? read(file)
              : Optional.empty();
      if (workbook.isEmpty()) {
        continue;
      }
      try (XSSFWorkbook poi = new XSSFWorkbook(file.toFile())) {
        cells += compare(workbook.get(), poi, file);
      }
    }
    out.println("cells of .xlsx files compared with POI's reading: " + cells);
    assertThat(cells).isPositive();
  }

  private static int compare(Workbook workbook, XSSFWorkbook poi, Path file) {
    int cells = 0;
    for (var any : poi) {
      XSSFSheet sheet = (XSSFSheet) any;
      for (Row row : sheet) {
        for (org.apache.poi.ss.usermodel.Cell cell : row) {
          Optional<Content> ours =
              workbook
                  .at(
                      new CellAddress(
                          sheet.getSheetName(), cell.getColumnIndex(), cell.getRowIndex()))
                  .map(Cell::content);
          assertThat(ours.map(CorporaTest::plain).orElse(""))
              .as(file + " " + cell.getAddress())
              .isEqualTo(plain(cell));
          cells++;
        }
      }
    }
    return cells;
  }

  private static String plain(Content content) {
    if (content instanceof Content.Number number) {
      return String.valueOf(number.value());
    }
    if (content instanceof Content.Text text) {
      return text.text();
    }
    if (content instanceof Content.Logical logical) {
      return String.valueOf(logical.value());
    }
    return content instanceof Content.Error error
        ? error.name()
        : "=" + ((Content.Formula) content).written();
  }

  private static String plain(org.apache.poi.ss.usermodel.Cell cell) {
    return switch (cell.getCellType()) {
      case NUMERIC -> String.valueOf(cell.getNumericCellValue());
      case STRING -> cell.getStringCellValue();
      case BOOLEAN -> String.valueOf(cell.getBooleanCellValue());
      case FORMULA -> "=" + cell.getCellFormula();
      case ERROR ->
          org.apache.poi.ss.usermodel.FormulaError.forInt(cell.getErrorCellValue()).getString();
      default -> "";
    };
  }
}
