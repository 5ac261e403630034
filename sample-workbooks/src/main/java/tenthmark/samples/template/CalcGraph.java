package tenthmark.samples.template;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.Point;
import com.sun.star.awt.Rectangle;
import com.sun.star.beans.XPropertySet;
import com.sun.star.chart.ChartLegendPosition;
import com.sun.star.chart.ErrorBarStyle;
import com.sun.star.chart.X3DDisplay;
import com.sun.star.chart.XAxisXSupplier;
import com.sun.star.chart.XAxisYSupplier;
import com.sun.star.chart.XDiagram;
import com.sun.star.chart2.Symbol;
import com.sun.star.chart2.SymbolStyle;
import com.sun.star.chart2.XChartDocument;
import com.sun.star.chart2.XChartType;
import com.sun.star.chart2.XChartTypeContainer;
import com.sun.star.chart2.XCoordinateSystemContainer;
import com.sun.star.chart2.XDataSeries;
import com.sun.star.chart2.XDataSeriesContainer;
import com.sun.star.chart2.data.XDataProvider;
import com.sun.star.chart2.data.XDataSequence;
import com.sun.star.chart2.data.XDataSink;
import com.sun.star.chart2.data.XLabeledDataSequence;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.drawing.FillStyle;
import com.sun.star.drawing.LineStyle;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XTableCharts;
import com.sun.star.table.XTableChartsSupplier;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.Workbook;
import tenthmark.samples.plan.Places;

/**
 * Draws a graph into a workbook that is open in a real Calc: one series of points whose error bars
 * are cell ranges, and one of the line between its two ends.
 */
final class CalcGraph {

  private static final String NAME = "Graph";
  private static final int WIDTH = 15000;
  private static final int HEIGHT = 11000;
  private static final int GAP = 400;
  private static final int INK = 0x1F3A5F;
  private static final int RED = 0xA01C1C;
  private static final int PALE = 0xD9DEE5;
  private static final int THIN = 30;
  private static final int DISC = 8;

  private final Office office;
  private final Graph graph;
  private final Places places;
  private final XSpreadsheet sheet;
  private final XTableCharts charts;
  private final String sheetName;

  private CalcGraph(Office office, Workbook workbook, Graph graph, Places places) throws Exception {
    this.office = office;
    this.graph = graph;
    this.places = places;
    this.sheetName = places.sheet(graph.points() + "." + graph.x().key());
    this.sheet =
        queryInterface(XSpreadsheet.class, workbook.document().getSheets().getByName(sheetName));
    this.charts = queryInterface(XTableChartsSupplier.class, sheet).getCharts();
  }

  static void draw(Graph graph, Places places, Workbook workbook, Office office) throws Exception {
    new CalcGraph(office, workbook, graph, places).draw();
  }

  private void draw() throws Exception {
    // A chart needs some range to get a provider of cells; its series are replaced below.
    charts.addNewByName(
        NAME, rectangle(), new CellRangeAddress[] {range(pointsOf(graph.y().key()))}, false, false);
    Object chart =
        queryInterface(XEmbeddedObjectSupplier.class, charts.getByName(NAME)).getEmbeddedObject();
    XDiagram diagram = scatter(chart);
    XChartDocument document = queryInterface(XChartDocument.class, chart);
    XDataSeriesContainer series = emptied(document);
    addPoints(series, document.getDataProvider());
    addLine(series, document.getDataProvider());
    nameAxes(diagram);
    queryInterface(XPropertySet.class, chart).setPropertyValue("HasLegend", true);
    XPropertySet legend =
        queryInterface(
            XPropertySet.class,
            queryInterface(com.sun.star.chart.XChartDocument.class, chart).getLegend());
    legend.setPropertyValue("Alignment", ChartLegendPosition.BOTTOM);
    legend.setPropertyValue("FillStyle", FillStyle.NONE);
    legend.setPropertyValue("LineStyle", LineStyle.NONE);
    queryInterface(X3DDisplay.class, diagram)
        .getWall()
        .setPropertyValue("FillStyle", FillStyle.NONE);
  }

  private Rectangle rectangle() throws Exception {
    String first = pointsOf(graph.x().key()).split(":", -1)[0];
    int titleRow = Integer.parseInt(first.replaceAll("\\D", "")) - 2;
    Point corner =
        (Point)
            queryInterface(XPropertySet.class, sheet.getCellRangeByName(graph.at() + titleRow))
                .getPropertyValue("Position");
    return new Rectangle(corner.X + GAP, corner.Y, WIDTH, HEIGHT);
  }

  private static XDiagram scatter(Object chart) throws Exception {
    XDiagram diagram =
        queryInterface(
            XDiagram.class,
            queryInterface(XMultiServiceFactory.class, chart)
                .createInstance("com.sun.star.chart.XYDiagram"));
    queryInterface(com.sun.star.chart.XChartDocument.class, chart).setDiagram(diagram);
    return diagram;
  }

  private static XDataSeriesContainer emptied(XChartDocument document) throws Exception {
    XChartType type =
        queryInterface(
                XChartTypeContainer.class,
                queryInterface(XCoordinateSystemContainer.class, document.getFirstDiagram())
                    .getCoordinateSystems()[0])
            .getChartTypes()[0];
    XDataSeriesContainer series = queryInterface(XDataSeriesContainer.class, type);
    for (XDataSeries first : series.getDataSeries()) {
      series.removeDataSeries(first);
    }
    return series;
  }

  private void addPoints(XDataSeriesContainer all, XDataProvider cells) throws Exception {
    XPropertySet points = series(all, cells, graph.points());
    Symbol disc = new Symbol();
    disc.Style = SymbolStyle.STANDARD;
    disc.StandardSymbol = DISC;
    disc.Size = new com.sun.star.awt.Size(130, 130);
    disc.FillColor = INK;
    disc.BorderColor = INK;
    points.setPropertyValue("Symbol", disc);
    points.setPropertyValue("LineStyle", LineStyle.NONE);
    points.setPropertyValue("Color", INK);
    points.setPropertyValue("ErrorBarX", bars(cells, "x", graph.xUncertainty().key()));
    points.setPropertyValue("ErrorBarY", bars(cells, "y", graph.yUncertainty().key()));
  }

  private void addLine(XDataSeriesContainer all, XDataProvider cells) throws Exception {
    XPropertySet line = series(all, cells, graph.line());
    line.setPropertyValue("LineStyle", LineStyle.SOLID);
    line.setPropertyValue("LineWidth", THIN);
    line.setPropertyValue("Color", RED);
  }

  private XPropertySet series(XDataSeriesContainer all, XDataProvider cells, String table)
      throws Exception {
    XDataSeries series =
        queryInterface(XDataSeries.class, office.service("com.sun.star.chart2.DataSeries"));
    String values = table + "." + graph.y().key();
    XLabeledDataSequence y = sequence(cells, "values-y", values);
    y.setLabel(data(cells, "label", values + ".heading"));
    queryInterface(XDataSink.class, series)
        .setData(
            new XLabeledDataSequence[] {
              sequence(cells, "values-x", table + "." + graph.x().key()), y
            });
    all.addDataSeries(series);
    return queryInterface(XPropertySet.class, series);
  }

  private XPropertySet bars(XDataProvider cells, String axis, String column) throws Exception {
    Object bars = office.service("com.sun.star.chart2.ErrorBar");
    XPropertySet properties = queryInterface(XPropertySet.class, bars);
    properties.setPropertyValue("ErrorBarStyle", ErrorBarStyle.FROM_DATA);
    properties.setPropertyValue("ShowPositiveError", true);
    properties.setPropertyValue("ShowNegativeError", true);
    properties.setPropertyValue("LineColor", INK);
    String sizes = graph.points() + "." + column;
    queryInterface(XDataSink.class, bars)
        .setData(
            new XLabeledDataSequence[] {
              sequence(cells, "error-bars-" + axis + "-positive", sizes),
              sequence(cells, "error-bars-" + axis + "-negative", sizes)
            });
    return properties;
  }

  private XLabeledDataSequence sequence(XDataProvider cells, String role, String key)
      throws Exception {
    XLabeledDataSequence sequence =
        queryInterface(
            XLabeledDataSequence.class,
            office.service("com.sun.star.chart2.data.LabeledDataSequence"));
    sequence.setValues(data(cells, role, key));
    return sequence;
  }

  private XDataSequence data(XDataProvider cells, String role, String key) throws Exception {
    XDataSequence data =
        cells.createDataSequenceByRangeRepresentation(
            "$" + places.sheet(key) + "." + Places.fixed(places.address(key)));
    queryInterface(XPropertySet.class, data).setPropertyValue("Role", role);
    return data;
  }

  private void nameAxes(XDiagram diagram) throws Exception {
    XPropertySet properties = queryInterface(XPropertySet.class, diagram);
    properties.setPropertyValue("HasXAxisTitle", true);
    properties.setPropertyValue("HasYAxisTitle", true);
    properties.setPropertyValue("HasXAxisGrid", true);
    XAxisXSupplier x = queryInterface(XAxisXSupplier.class, diagram);
    XAxisYSupplier y = queryInterface(XAxisYSupplier.class, diagram);
    queryInterface(XPropertySet.class, x.getXAxisTitle())
        .setPropertyValue("String", graph.x().heading());
    queryInterface(XPropertySet.class, y.getYAxisTitle())
        .setPropertyValue("String", graph.y().heading());
    x.getXMainGrid().setPropertyValue("LineColor", PALE);
    y.getYMainGrid().setPropertyValue("LineColor", PALE);
  }

  private String pointsOf(String column) {
    return places.address(graph.points() + "." + column);
  }

  private CellRangeAddress range(String address) throws Exception {
    return queryInterface(XCellRangeAddressable.class, sheet.getCellRangeByName(address))
        .getRangeAddress();
  }
}
