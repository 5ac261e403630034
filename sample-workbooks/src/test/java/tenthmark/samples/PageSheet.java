package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.node.Code;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import tenthmark.checker.evaluation.Evaluation;
import tenthmark.checker.evaluation.Outcome;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.formula.CellAddress;

/**
 * A piece of a sheet as a page shows it, and the formulas that are shown with it. A page writes
 * them in three ways:
 *
 * <ul>
 *   <li>a table whose columns are headed by letters and whose rows begin with their numbers: the
 *       cells; one with a formula reads {@code `=A1/2` → 3};
 *   <li>a table headed Formula and Gives: formulas that refer to the cells of the last such table
 *       under the same heading;
 *   <li>a block of code marked {@code calc}: a formula that gives several rows and columns, and
 *       under it what it gives, line by line, cells parted by {@code |}.
 * </ul>
 */
final class PageSheet {

  private static final int FREE_COLUMN = 60;
  private static final int FREE_ROW = 200;
  private static final Pattern ARROW = Pattern.compile("→");
  private static final Pattern OUTSIDE_QUOTES =
      Pattern.compile(";(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)");

  private static final Pattern OTHER_SHEET = Pattern.compile("\\b([A-Z][a-z]+)\\.([A-Z])");

  private record Example(String formula, List<List<String>> result, CellReference at) {}

  private final XSSFWorkbook workbook;
  private final Sheet sheet;
  private final List<Example> examples = new ArrayList<>();

  private PageSheet(XSSFWorkbook workbook) {
    this.workbook = workbook;
    this.sheet = workbook.getSheetAt(0);
  }

  /** The sheets of a page that shows their cells itself, in order. */
  static List<PageSheet> of(MarkdownPage page) {
    return of(
        page,
        () -> {
          XSSFWorkbook empty = new XSSFWorkbook();
          empty.createSheet();
          return empty;
        });
  }

  /** The sheets of a page about a workbook: its formulas stand in the first sheet of a copy. */
  static List<PageSheet> of(MarkdownPage page, Supplier<XSSFWorkbook> copies) {
    List<PageSheet> sheets = new ArrayList<>(List.of(new PageSheet(copies.get())));
    MarkdownPage.children(page.document())
        .forEach(
            block -> {
              if (block instanceof Heading || isCells(block)) {
                sheets.add(new PageSheet(copies.get()));
              }
              sheets.get(sheets.size() - 1).take(block);
            });
    return sheets;
  }

  /** How many formulas a page shows with what they give. */
  static long shown(MarkdownPage page) {
    return of(page).stream().mapToInt(sheet -> sheet.examples.size()).sum();
  }

  /** How many formulas a page shows. */
  static long formulas(MarkdownPage page) {
    return page.code().stream().filter(code -> code.startsWith("=")).count()
        + page.blocks("calc").size();
  }

  private void take(Node block) {
    if (isCells(block)) {
      rows(block).skip(1).forEach(this::putRow);
    } else if (block instanceof TableBlock && headings(block).startsWith("Formula Gives")) {
      rows(block).skip(1).forEach(this::putFormula);
    } else if (block instanceof FencedCodeBlock code && "calc".equals(code.getInfo())) {
      List<String> lines = code.getLiteral().lines().toList();
      put(lines.get(0), lines.stream().skip(1).map(PageSheet::cells).toList(), free());
    }
  }

  private static boolean isCells(Node block) {
    return block instanceof TableBlock && headings(block).startsWith(" A");
  }

  private static String headings(Node table) {
    return String.join(
        " ", rows(table).findFirst().orElseThrow().stream().map(MarkdownPage::text).toList());
  }

  private static Stream<List<Node>> rows(Node table) {
    return MarkdownPage.children(table)
        .flatMap(MarkdownPage::children)
        .map(row -> MarkdownPage.children(row).toList());
  }

  private static List<String> cells(String line) {
    return Pattern.compile("\\|").splitAsStream(line).map(String::strip).toList();
  }

  private void putRow(List<Node> row) {
    int number = Integer.parseInt(MarkdownPage.text(row.get(0))) - 1;
    for (int column = 1; column < row.size(); column++) {
      putCell(row.get(column), new CellReference(number, column - 1));
    }
  }

  private void putCell(Node cell, CellReference at) {
    String text = MarkdownPage.text(cell);
    if (cell.getFirstChild() instanceof Code code) {
      String[] parts = ARROW.split(text.substring(code.getLiteral().length()), 2);
      assertThat(parts).as("%s gives what?", code.getLiteral()).hasSize(2);
      put(code.getLiteral(), List.of(List.of(parts[1].strip())), at);
    } else if (isNumber(text)) {
      cell(at).setCellValue(Double.parseDouble(text));
    } else if (!text.isEmpty()) {
      cell(at).setCellValue(text);
    }
  }

  private void putFormula(List<Node> row) {
    put(MarkdownPage.text(row.get(0)), List.of(List.of(MarkdownPage.text(row.get(1)))), free());
  }

  private CellReference free() {
    return new CellReference(FREE_ROW + 20 * examples.size(), FREE_COLUMN);
  }

  private void put(String formula, List<List<String>> result, CellReference at) {
    examples.add(new Example(formula, result, at));
    String text = stored(formula);
    int width = result.stream().mapToInt(List::size).max().orElseThrow();
    if (result.size() == 1 && width == 1) {
      cell(at).setCellFormula(text);
    } else {
      sheet.setArrayFormula(
          text,
          new CellRangeAddress(
              at.getRow(), at.getRow() + result.size() - 1, at.getCol(), at.getCol() + width - 1));
    }
  }

  /** A formula as a file holds it, with commas and {@code Sheet!A1}. */
  private static String stored(String formula) {
    String commas = OUTSIDE_QUOTES.matcher(formula.substring(1)).replaceAll(",");
    return OTHER_SHEET.matcher(commas).replaceAll("$1!$2");
  }

  private Cell cell(CellReference at) {
    Row row = sheet.getRow(at.getRow());
    return (row == null ? sheet.createRow(at.getRow()) : row).createCell(at.getCol());
  }

  /** Calculates the sheet as the checker does, and says what the page has otherwise. */
  List<String> differences(Path folder) throws Exception {
    Evaluation evaluation = Evaluation.of(Saved.read(workbook, folder), Catalogue.load());
    List<String> differences = new ArrayList<>();
    for (Example example : examples) {
      List<List<String>> given = given(example, evaluation);
      if (!given.equals(example.result())) {
        differences.add(example.formula() + " gives " + given + ", not " + example.result());
      }
    }
    return differences;
  }

  /** What a formula gives, cell by cell, with as many decimals as the page shows. */
  private List<List<String>> given(Example example, Evaluation evaluation) {
    List<List<String>> given = new ArrayList<>();
    for (List<String> row : example.result()) {
      List<String> cells = new ArrayList<>();
      for (String expected : row) {
        int column = example.at().getCol() + cells.size();
        int line = example.at().getRow() + given.size();
        cells.add(
            shown(evaluation.at(new CellAddress(sheet.getSheetName(), column, line)), expected));
      }
      given.add(cells);
    }
    return given;
  }

  private static String shown(Outcome outcome, String like) {
    if (!(outcome instanceof Outcome.Known known)) {
      return outcome.toString();
    }
    Value value = known.value();
    if (value instanceof Value.Numeric numeric) {
      BigDecimal number = BigDecimal.valueOf(numeric.number());
      return isNumber(like)
          ? number.setScale(new BigDecimal(like).scale(), RoundingMode.HALF_UP).toString()
          : number.toString();
    }
    if (value instanceof Value.Text text) {
      return text.text();
    }
    return value instanceof Value.Fault fault ? fault.reason() : "";
  }

  private static boolean isNumber(String text) {
    return text.matches("-?\\d+(\\.\\d+)?");
  }
}
