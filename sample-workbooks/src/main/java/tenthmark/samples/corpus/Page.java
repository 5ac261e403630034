package tenthmark.samples.corpus;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.CreationHelper;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.samples.book.SheetWriter;

/** A sheet being drawn, and what its numbers are. */
public final class Page {

  private static final int CHARACTER = 256;
  private static final int NARROWEST = 9;
  private static final int WIDEST = 26;

  private final Sheet sheet;
  private final Workbook workbook;
  private final SheetWriter writer;
  private final Map<String, CellStyle> formats = new HashMap<>();
  private final Map<String, BigDecimal> typed = new HashMap<>();
  private final List<Records> records = new ArrayList<>();
  private final List<Other> others = new ArrayList<>();

  Page(Sheet sheet, Catalogue catalogue) {
    this.sheet = sheet;
    this.workbook = sheet.getWorkbook();
    this.writer = new SheetWriter(sheet, catalogue);
  }

  /**
   * Draws a block of cells: a line for each row, cells between bars, each as {@link Drawn} has it.
   * What is empty stays as it is.
   */
  public Page draw(String corner, String block) {
    CellReference place = new CellReference(corner);
    List<String> rows = block.lines().toList();
    for (int row = 0; row < rows.size(); row++) {
      String[] cells = rows.get(row).split("\\|", -1);
      for (int column = 0; column < cells.length; column++) {
        put(place.getRow() + row, place.getCol() + column, cells[column].strip());
      }
    }
    return this;
  }

  /** Draws rows that begin with their number, as a sheet shows it; rows left out stay blank. */
  public Page rows(String block) {
    for (String line : block.lines().filter(each -> !each.isBlank()).toList()) {
      int bar = line.indexOf('|');
      draw("A" + line.substring(0, bar).strip(), line.substring(bar + 1));
    }
    return this;
  }

  private void put(int row, int column, String written) {
    if (written.isEmpty()) {
      return;
    }
    String address = new CellReference(row, column).formatAsString(false);
    Drawn drawn = Drawn.of(written, row + 1);
    if (drawn.content() instanceof BigDecimal number) {
      typed.put(address, number);
    }
    writer.put(address, content(drawn), format(drawn.format()));
  }

  private static Object content(Drawn drawn) {
    return drawn.content() instanceof LocalDate date
        ? DateUtil.getExcelDate(date)
        : drawn.content();
  }

  private CellStyle format(String format) {
    return formats.computeIfAbsent(
        format,
        numbers -> {
          CellStyle style = workbook.createCellStyle();
          style.setDataFormat(workbook.createDataFormat().getFormat(numbers));
          return style;
        });
  }

  /** One cell out of each range. */
  public Page merge(String... ranges) {
    for (String range : ranges) {
      sheet.addMergedRegion(CellRangeAddress.valueOf(range));
    }
    return this;
  }

  /** Bold type. */
  public Page bold(String ranges) {
    Map<CellStyle, CellStyle> bold = new HashMap<>();
    for (String address : Cells.of(ranges)) {
      Cell cell = cell(address);
      cell.setCellStyle(bold.computeIfAbsent(cell.getCellStyle(), this::bold));
    }
    return this;
  }

  private CellStyle bold(CellStyle plain) {
    CellStyle style = workbook.createCellStyle();
    style.cloneStyleFrom(plain);
    var font = workbook.createFont();
    font.setBold(true);
    style.setFont(font);
    return style;
  }

  /** A comment on a cell. */
  public Page comment(String address, String text) {
    CreationHelper helper = workbook.getCreationHelper();
    CellReference place = new CellReference(address);
    ClientAnchor anchor = helper.createClientAnchor();
    anchor.setCol1(place.getCol() + 1);
    anchor.setCol2(place.getCol() + 4);
    anchor.setRow1(place.getRow());
    anchor.setRow2(place.getRow() + 4);
    Comment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
    comment.setString(helper.createRichTextString(text));
    cell(address).setCellComment(comment);
    return this;
  }

  /** A text box over a range; in .xlsx only. */
  public Page box(String range, String text) {
    ((XSSFSheet) sheet)
        .createDrawingPatriarch()
        .createTextbox(over(range))
        .setText(new XSSFRichTextString(text));
    return this;
  }

  /** A name for a cell or a range of this sheet. */
  public Page name(String name, String range) {
    CellRangeAddress cells = CellRangeAddress.valueOf(range);
    String first =
        new CellReference(cells.getFirstRow(), cells.getFirstColumn(), true, true).formatAsString();
    String last =
        new CellReference(cells.getLastRow(), cells.getLastColumn(), true, true).formatAsString();
    Name named = workbook.createName();
    named.setNameName(name);
    named.setRefersToFormula(
        "'" + sheet.getSheetName() + "'!" + (first.equals(last) ? first : first + ":" + last));
    return this;
  }

  /** A graph of points over a range; in .xlsx only. */
  public Page graph(String range, String title, String x, String y) {
    XSSFSheet drawn = (XSSFSheet) sheet;
    XSSFChart chart = drawn.createDrawingPatriarch().createChart(over(range));
    chart.setTitleText(title);
    XDDFValueAxis across = chart.createValueAxis(AxisPosition.BOTTOM);
    XDDFValueAxis up = chart.createValueAxis(AxisPosition.LEFT);
    XDDFDataSource<Double> xs =
        XDDFDataSourcesFactory.fromNumericCellRange(drawn, CellRangeAddress.valueOf(x));
    XDDFNumericalDataSource<Double> ys =
        XDDFDataSourcesFactory.fromNumericCellRange(drawn, CellRangeAddress.valueOf(y));
    XDDFScatterChartData data =
        (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, across, up);
    data.setStyle(ScatterStyle.LINE_MARKER);
    XDDFScatterChartData.Series series = (XDDFScatterChartData.Series) data.addSeries(xs, ys);
    series.setTitle(title, null);
    series.setMarkerStyle(MarkerStyle.CIRCLE);
    chart.plot(data);
    return this;
  }

  private static XSSFClientAnchor over(String range) {
    CellRangeAddress cells = CellRangeAddress.valueOf(range);
    return new XSSFClientAnchor(
        0,
        0,
        0,
        0,
        cells.getFirstColumn(),
        cells.getFirstRow(),
        cells.getLastColumn() + 1,
        cells.getLastRow() + 1);
  }

  /** These cells hold measured values. */
  public Records measured(String quantity, String unit, String values) {
    return record(Kind.MEASURED, quantity, unit, values);
  }

  /** These cells hold results of calculations. */
  public Records calculated(String quantity, String unit, String values) {
    return record(Kind.CALCULATED, quantity, unit, values);
  }

  /** These cells hold values of some kind, with or without an uncertainty. */
  public Records record(Kind kind, String quantity, String unit, String values) {
    Records stated = new Records(sheet.getSheetName(), kind, quantity, unit, values);
    records.add(stated);
    return stated;
  }

  /** These numbers are no parts of a record. */
  public Page other(Role role, String ranges) {
    for (String range : ranges.split(",", -1)) {
      others.add(new Other(sheet.getSheetName(), range, role));
    }
    return this;
  }

  /** Takes a cell's content away. */
  public Page erase(String address) {
    cell(address).setBlank();
    return this;
  }

  String sheetName() {
    return sheet.getSheetName();
  }

  List<Stated> stated() {
    return records.stream()
        .flatMap(each -> each.stated(cell -> Optional.ofNullable(typed.get(cell))).stream())
        .toList();
  }

  List<Other> others() {
    return others;
  }

  /** Columns as wide as their short texts. */
  void fitWidths() {
    Map<Integer, Integer> widths = new HashMap<>();
    for (Row row : sheet) {
      for (Cell cell : row) {
        widths.merge(cell.getColumnIndex(), cell.toString().length() + 1, Page::wider);
      }
    }
    widths.forEach(
        (column, width) -> sheet.setColumnWidth(column, Math.max(NARROWEST, width) * CHARACTER));
  }

  private static int wider(int soFar, int length) {
    return length > WIDEST ? soFar : Math.max(soFar, length);
  }

  private Cell cell(String address) {
    CellReference place = new CellReference(address);
    Row row = sheet.getRow(place.getRow());
    if (row == null) {
      row = sheet.createRow(place.getRow());
    }
    return row.getCell(place.getCol(), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
  }
}
