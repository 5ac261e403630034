package tenthmark.samples;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.workbook.Cell;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.UnreadableFileException;
import tenthmark.checker.workbook.Workbook;
import tenthmark.checker.workbook.WorkbookFile;
import tenthmark.measurement.formula.CellAddress;

/** Workbooks as files, and what the checker says about them. */
public final class Saved {

  public static final Path WORKBOOKS = Path.of("workbooks");

  private Saved() {}

  /** What a user types: everything but the values of formulas. */
  public static Map<CellAddress, Object> inputs(Path file) throws UnreadableFileException {
    return WorkbookFile.read(file).sheets().stream()
        .flatMap(sheet -> sheet.cells())
        .collect(Collectors.toMap(Cell::address, cell -> input(cell.content())));
  }

  private static Object input(Content content) {
    return content instanceof Content.Formula formula ? "=" + formula.text() : content;
  }

  /** What a user would type of a workbook that is not saved yet. */
  public static Map<CellAddress, Object> inputs(XSSFWorkbook workbook, Path folder)
      throws Exception {
    return inputs(file(workbook, folder));
  }

  /** A workbook as the checker reads it. */
  static Workbook read(XSSFWorkbook workbook, Path folder) throws Exception {
    return WorkbookFile.read(file(workbook, folder));
  }

  private static Path file(XSSFWorkbook workbook, Path folder) throws IOException {
    Path file = folder.resolve("written.xlsx");
    try (workbook;
        OutputStream out = Files.newOutputStream(file)) {
      workbook.write(out);
    }
    return file;
  }

  /** What is to be put right in a file, as in {@code H5 length-one-end}. */
  public static List<String> findings(FileChecker checker, Path file) {
    FileReport report = checker.check(file);
    if (report.problem().isPresent()) {
      throw new IllegalStateException(report.problem().get());
    }
    return report.toMend().stream()
        .map(finding -> finding.cell().place() + " " + finding.rule().id())
        .toList();
  }
}
