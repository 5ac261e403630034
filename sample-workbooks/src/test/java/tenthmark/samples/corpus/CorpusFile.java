package tenthmark.samples.corpus;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;
import org.snakeyaml.engine.v2.schema.Schema;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.formula.CellAddress;

/** A workbook of the corpus: its truth, and what a spreadsheet program stored or POI computes. */
record CorpusFile(Path workbook, Map<String, Object> truth) {

  static final Path FOLDER = Path.of("corpus");

  /** Numbers stay texts, with the places that are written. */
  private static final Schema AS_WRITTEN = new FailsafeSchema();

  private static final String TRUTH = ".truth.yaml";

  static List<CorpusFile> all() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .filter(file -> file.toString().endsWith(TRUTH))
          .sorted()
          .map(CorpusFile::of)
          .toList();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  @SuppressWarnings("unchecked")
  private static CorpusFile of(Path file) {
    String name = file.getFileName().toString();
    String start = file.toString().substring(0, file.toString().length() - TRUTH.length());
    Path workbook =
        Stream.of(".xlsx", ".xls", ".ods")
            .map(ending -> Path.of(start + ending))
            .filter(Files::exists)
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no workbook for " + name));
    try {
      String text = Files.readString(file);
      return new CorpusFile(
          workbook,
          (Map<String, Object>)
              new Load(LoadSettings.builder().setLabel(name).setSchema(AS_WRITTEN).build())
                  .loadFromString(text));
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  @SuppressWarnings("unchecked")
  List<Map<String, Object>> records() {
    return (List<Map<String, Object>>) truth.get("records");
  }

  @SuppressWarnings("unchecked")
  List<Map<String, Object>> others() {
    return (List<Map<String, Object>>) truth.get("others");
  }

  String layout() {
    return (String) truth.get("layout");
  }

  String language() {
    return (String) truth.get("language");
  }

  String program() {
    return (String) truth.get("written-by");
  }

  /** Numbers and texts of all cells, by sheet and address. */
  Map<String, Object> contents() throws Exception {
    return contents(workbook);
  }

  static Map<String, Object> contents(Path file) throws Exception {
    return file.toString().endsWith(".ods") ? stored(file) : storedOrComputed(file.toFile());
  }

  private static Map<String, Object> stored(Path file) throws Exception {
    Map<String, Object> contents = new LinkedHashMap<>();
    WorkbookFile.read(file).sheets().stream()
        .flatMap(tenthmark.checker.workbook.Sheet::cells)
        .forEach(
            cell ->
                plain(cell.content())
                    .ifPresent(content -> contents.put(place(cell.address()), content)));
    return contents;
  }

  private static String place(CellAddress address) {
    return address.sheet()
        + "!"
        + CellReference.convertNumToColString(address.column())
        + (address.row() + 1);
  }

  private static Optional<Object> plain(Content content) {
    if (content instanceof Content.Number number) {
      return Optional.of(number.value());
    }
    if (content instanceof Content.Text text) {
      return text.text().isBlank() ? Optional.empty() : Optional.of(text.text());
    }
    if (content instanceof Content.Formula formula) {
      return formula.stored().flatMap(CorpusFile::plain);
    }
    throw new IllegalStateException("neither number nor text: " + content);
  }

  private static Map<String, Object> storedOrComputed(File file) throws IOException {
    Map<String, Object> contents = new LinkedHashMap<>();
    try (Workbook workbook = WorkbookFactory.create(file, null, true)) {
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            content(cell, evaluator)
                .ifPresent(
                    content ->
                        contents.put(
                            sheet.getSheetName() + "!" + cell.getAddress().formatAsString(),
                            content));
          }
        }
      }
    }
    return contents;
  }

  private static Optional<Object> content(Cell cell, FormulaEvaluator evaluator) {
    CellType type = cell.getCellType();
    if (type == CellType.FORMULA) {
      boolean stored = !(cell instanceof XSSFCell inXlsx) || inXlsx.getCTCell().isSetV();
      type = stored ? cell.getCachedFormulaResultType() : evaluator.evaluateFormulaCell(cell);
    }
    return switch (type) {
      case NUMERIC -> Optional.of(cell.getNumericCellValue());
      case STRING ->
          cell.getStringCellValue().isBlank()
              ? Optional.empty()
              : Optional.of(cell.getStringCellValue());
      case ERROR -> throw new IllegalStateException(cell.getAddress() + " shows an error");
      default -> Optional.empty();
    };
  }

  /** Where a cell that the truth names is, with its sheet. */
  static String place(String sheet, String cell) {
    return cell.contains("!") ? cell : sheet + "!" + cell;
  }

  static List<String> places(String sheet, String range) {
    List<String> places = new ArrayList<>();
    for (String cell : Cells.of(range)) {
      places.add(place(sheet, cell));
    }
    return places;
  }

  @Override
  public String toString() {
    return workbook.getFileName().toString();
  }
}
