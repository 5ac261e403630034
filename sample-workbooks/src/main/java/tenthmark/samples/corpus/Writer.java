package tenthmark.samples.corpus;

import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The program that saves a drawing last, and the format it saves. */
public enum Writer {
  POI_XLSX("poi", "xlsx"),
  POI_XLS("poi", "xls"),
  /** Formulas without the values that they gave. */
  POI_XLSX_WITHOUT_VALUES("poi", "xlsx"),
  CALC_ODS("calc", "ods"),
  CALC_XLSX("calc", "xlsx"),
  CALC_XLS("calc", "xls"),
  GNUMERIC_ODS("gnumeric", "ods"),
  GNUMERIC_XLSX("gnumeric", "xlsx"),
  GNUMERIC_XLS("gnumeric", "xls");

  private final String program;
  private final String format;

  Writer(String program, String format) {
    this.program = program;
    this.format = format;
  }

  public String program() {
    return program;
  }

  /** The ending of the finished file. */
  public String format() {
    return format;
  }

  /** Where the raw file waits for its program: the script that makes the corpus walks these. */
  String folder() {
    return program + "-" + format;
  }

  /** Calc and Gnumeric get .xlsx and save what they like. */
  String rawFormat() {
    return this == POI_XLS ? "xls" : "xlsx";
  }

  boolean storesValues() {
    return this == POI_XLSX || this == POI_XLS;
  }

  Workbook newWorkbook() {
    return this == POI_XLS ? new HSSFWorkbook() : new XSSFWorkbook();
  }
}
