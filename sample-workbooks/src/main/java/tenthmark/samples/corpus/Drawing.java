package tenthmark.samples.corpus;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.book.SampleBook;

/** A workbook being drawn, together with the truth about its numbers. */
public final class Drawing {

  private final String name;
  private final String layout;
  private final String topic;
  private final Language language;
  private final Writer writer;
  private final Workbook workbook;
  private final Catalogue catalogue = Catalogue.load();
  private final List<Page> pages = new ArrayList<>();
  private Combine combine = Combine.STRAIGHT;

  /**
   * A new drawing.
   *
   * @param name of the file, without its ending
   * @param layout one word for the family of layouts
   * @param topic what was measured, in English
   */
  public Drawing(String name, String layout, String topic, Language language, Writer writer) {
    this.name = name;
    this.layout = layout;
    this.topic = topic;
    this.language = language;
    this.writer = writer;
    this.workbook = writer.newWorkbook();
    if (workbook instanceof XSSFWorkbook book) {
      // POI does not know the LAB functions; a real Calc computes them.
      book.setCellFormulaValidation(false);
      book.getProperties().getCoreProperties().setDescription(SampleBook.CAUTION);
    } else if (workbook instanceof HSSFWorkbook book) {
      book.createInformationProperties();
      book.getSummaryInformation().setComments(SampleBook.CAUTION);
    }
  }

  /** Its uncertainties are roots of sums of squares. */
  public Drawing inQuadrature() {
    combine = Combine.QUADRATURE;
    return this;
  }

  /** A new sheet. */
  public Page page(String sheet) {
    Page page = new Page(workbook.createSheet(sheet), catalogue);
    pages.add(page);
    return page;
  }

  /** A sheet that is drawn already. */
  public Page drawn(String sheet) {
    return pages.stream()
        .filter(page -> page.sheetName().equals(sheet))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(name + " has no sheet " + sheet));
  }

  public String name() {
    return name;
  }

  public String layout() {
    return layout;
  }

  public String topic() {
    return topic;
  }

  public Language language() {
    return language;
  }

  public Writer writer() {
    return writer;
  }

  public Combine combine() {
    return combine;
  }

  /** As it stands, nothing computed. */
  public Workbook workbook() {
    return workbook;
  }

  List<Stated> records() {
    return pages.stream().flatMap(page -> page.stated().stream()).toList();
  }

  List<Other> others() {
    return pages.stream().flatMap(page -> page.others().stream()).toList();
  }

  /** The finished workbook, with values if its writer stores them. */
  Workbook finished() {
    pages.forEach(Page::fitWidths);
    if (writer.storesValues()) {
      workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
    }
    return workbook;
  }
}
