package tenthmark.checker.plain;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.util.CellUtil;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;
import tenthmark.checker.workbook.XlsxDocument;
import tenthmark.measurement.catalogue.Value;

/**
 * Changes cells in a copy of an .xlsx or .xlsm file. Formulas go out unparsed, because POI refuses
 * the dots of stored LAB names.
 */
final class PlainXlsx {

  private PlainXlsx() {}

  static byte[] of(Path source, List<CellChange> changes) throws IOException {
    ByteArrayOutputStream copy = new ByteArrayOutputStream();
    try (XSSFWorkbook workbook = XlsxDocument.open(source)) {
      changes.forEach(change -> apply(change, workbook));
      workbook.write(copy);
    }
    return copy.toByteArray();
  }

  private static void apply(CellChange change, XSSFWorkbook workbook) {
    XSSFSheet sheet = workbook.getSheet(change.cell().sheet());
    XSSFCell cell =
        (XSSFCell)
            CellUtil.getCell(CellUtil.getRow(change.cell().row(), sheet), change.cell().column());
    if (!change.keepsFormula()) {
      removeFormula(cell, workbook);
    }
    set(cell, change.value());
  }

  private static void removeFormula(XSSFCell cell, XSSFWorkbook workbook) {
    CTCell stored = cell.getCTCell();
    if (stored.isSetF()) {
      stored.unsetF();
    }
    if (stored.isSetCm()) {
      stored.unsetCm();
    }
    if (workbook.getCalculationChain() != null) {
      int index = workbook.getSheetIndex(cell.getSheet());
      long sheet = workbook.getCTWorkbook().getSheets().getSheetArray(index).getSheetId();
      workbook.getCalculationChain().removeItem((int) sheet, cell.getReference());
    }
  }

  private static void set(XSSFCell cell, Value value) {
    if (value instanceof Value.Numeric number) {
      cell.setCellValue(number.number());
    } else if (value instanceof Value.Text text) {
      cell.setCellValue(text.text());
    } else if (value instanceof Value.Fault fault) {
      error(fault.reason())
          .ifPresentOrElse(cell::setCellErrorValue, () -> cell.setCellValue(fault.reason()));
    } else {
      cell.setCellValue("");
    }
  }

  /** An error that a file can hold; POI's own ones have negative codes. */
  private static Optional<FormulaError> error(String name) {
    return Arrays.stream(FormulaError.values())
        .filter(known -> known != FormulaError._NO_ERROR && known.getString().equals(name))
        .filter(known -> known.getCode() >= 0)
        .findFirst();
  }
}
