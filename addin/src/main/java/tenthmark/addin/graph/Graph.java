package tenthmark.addin.graph;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.awt.Rectangle;
import com.sun.star.awt.Size;
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
import com.sun.star.drawing.LineDash;
import com.sun.star.drawing.LineStyle;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XTableCharts;
import com.sun.star.uno.Exception;
import com.sun.star.uno.XInterface;
import java.util.Locale;
import tenthmark.addin.document.SheetCells;
import tenthmark.addin.menu.Workplace;

/** A scatter graph on a sheet, whose series and error bars are cells. */
final class Graph {

  private static final int INK = 0x1F3A5F;
  private static final int RED = 0xA01C1C;
  private static final int GREEN = 0x2F6B3A;
  private static final int PALE = 0xD9DEE5;
  private static final int THIN = 30;
  private static final int DISC = 8;

  private final Workplace workplace;
  private final Object chart;
  private final XDataProvider cells;
  private final XDataSeriesContainer all;

  private Graph(Workplace workplace, Object chart, XDataSeriesContainer all) {
    this.workplace = workplace;
    this.chart = chart;
    this.cells = queryInterface(XChartDocument.class, chart).getDataProvider();
    this.all = all;
  }

  /** An empty one. */
  static Graph on(SheetCells sheet, Rectangle place, XCellRange some, Workplace workplace)
      throws Exception {
    XTableCharts charts = sheet.charts();
    String name = unused(charts);
    // A chart needs some range to get a provider of cells; its series are replaced.
    CellRangeAddress range = queryInterface(XCellRangeAddressable.class, some).getRangeAddress();
    charts.addNewByName(name, place, new CellRangeAddress[] {range}, false, false);
    Object chart =
        queryInterface(XEmbeddedObjectSupplier.class, charts.getByName(name)).getEmbeddedObject();
    XDiagram scatter =
        queryInterface(
            XDiagram.class,
            queryInterface(XMultiServiceFactory.class, chart)
                .createInstance("com.sun.star.chart.XYDiagram"));
    queryInterface(com.sun.star.chart.XChartDocument.class, chart).setDiagram(scatter);
    return new Graph(workplace, chart, emptied(chart));
  }

  private static String unused(XTableCharts charts) {
    int number = 1;
    while (charts.hasByName("Graph " + number)) {
      number++;
    }
    return "Graph " + number;
  }

  private static XDataSeriesContainer emptied(Object chart) throws Exception {
    XChartType type =
        queryInterface(
                XChartTypeContainer.class,
                queryInterface(
                        XCoordinateSystemContainer.class,
                        queryInterface(XChartDocument.class, chart).getFirstDiagram())
                    .getCoordinateSystems()[0])
            .getChartTypes()[0];
    XDataSeriesContainer series = queryInterface(XDataSeriesContainer.class, type);
    for (XDataSeries first : series.getDataSeries()) {
      series.removeDataSeries(first);
    }
    return series;
  }

  /** Adds points; the series is returned for its error bars. */
  XPropertySet points(XCellRange x, XCellRange y, XCellRange label) throws Exception {
    XPropertySet points = series(x, y, label);
    Symbol disc = new Symbol();
    disc.Style = SymbolStyle.STANDARD;
    disc.StandardSymbol = DISC;
    disc.Size = new Size(150, 150);
    disc.FillColor = INK;
    disc.BorderColor = INK;
    points.setPropertyValue("Symbol", disc);
    points.setPropertyValue("LineStyle", LineStyle.NONE);
    points.setPropertyValue("Color", INK);
    return points;
  }

  /** Gives a series error bars. */
  void bars(XPropertySet series, String axis, XCellRange sizes) throws Exception {
    Object bars = service("com.sun.star.chart2.ErrorBar");
    XPropertySet properties = queryInterface(XPropertySet.class, bars);
    properties.setPropertyValue("ErrorBarStyle", ErrorBarStyle.FROM_DATA);
    properties.setPropertyValue("ShowPositiveError", true);
    properties.setPropertyValue("ShowNegativeError", true);
    properties.setPropertyValue("LineColor", INK);
    queryInterface(XDataSink.class, bars)
        .setData(
            new XLabeledDataSequence[] {
              sequence("error-bars-" + axis + "-positive", sizes),
              sequence("error-bars-" + axis + "-negative", sizes)
            });
    series.setPropertyValue("ErrorBar" + axis.toUpperCase(Locale.ROOT), properties);
  }

  /** Adds the fitted line. */
  void line(XCellRange x, XCellRange y, XCellRange label) throws Exception {
    XPropertySet line = series(x, y, label);
    line.setPropertyValue("LineStyle", LineStyle.SOLID);
    line.setPropertyValue("LineWidth", THIN);
    line.setPropertyValue("Color", RED);
  }

  /** Adds a line that is only possible. */
  void dashed(XCellRange x, XCellRange y, XCellRange label) throws Exception {
    XPropertySet line = series(x, y, label);
    LineDash dash = new LineDash();
    dash.Dashes = 1;
    dash.DashLen = 250;
    dash.Distance = 150;
    line.setPropertyValue("LineDash", dash);
    line.setPropertyValue("LineStyle", LineStyle.DASH);
    line.setPropertyValue("LineWidth", THIN);
    line.setPropertyValue("Color", GREEN);
  }

  private XPropertySet series(XCellRange x, XCellRange y, XCellRange label) throws Exception {
    XDataSeries series =
        queryInterface(XDataSeries.class, service("com.sun.star.chart2.DataSeries"));
    XLabeledDataSequence values = sequence("values-y", y);
    values.setLabel(data("label", label));
    queryInterface(XDataSink.class, series)
        .setData(new XLabeledDataSequence[] {sequence("values-x", x), values});
    all.addDataSeries(series);
    return queryInterface(XPropertySet.class, series);
  }

  private XLabeledDataSequence sequence(String role, XCellRange range) throws Exception {
    XLabeledDataSequence sequence =
        queryInterface(
            XLabeledDataSequence.class, service("com.sun.star.chart2.data.LabeledDataSequence"));
    sequence.setValues(data(role, range));
    return sequence;
  }

  private XDataSequence data(String role, XCellRange range) throws Exception {
    String name =
        (String) queryInterface(XPropertySet.class, range).getPropertyValue("AbsoluteName");
    XDataSequence data = cells.createDataSequenceByRangeRepresentation(name);
    queryInterface(XPropertySet.class, data).setPropertyValue("Role", role);
    return data;
  }

  /** Names the axes. */
  void axes(String x, String y) throws Exception {
    XDiagram diagram = queryInterface(com.sun.star.chart.XChartDocument.class, chart).getDiagram();
    XPropertySet properties = queryInterface(XPropertySet.class, diagram);
    properties.setPropertyValue("HasXAxisTitle", true);
    properties.setPropertyValue("HasYAxisTitle", true);
    properties.setPropertyValue("HasXAxisGrid", true);
    XAxisXSupplier right = queryInterface(XAxisXSupplier.class, diagram);
    XAxisYSupplier up = queryInterface(XAxisYSupplier.class, diagram);
    queryInterface(XPropertySet.class, right.getXAxisTitle()).setPropertyValue("String", x);
    queryInterface(XPropertySet.class, up.getYAxisTitle()).setPropertyValue("String", y);
    right.getXMainGrid().setPropertyValue("LineColor", PALE);
    up.getYMainGrid().setPropertyValue("LineColor", PALE);
    queryInterface(X3DDisplay.class, diagram)
        .getWall()
        .setPropertyValue("FillStyle", FillStyle.NONE);
  }

  /** Shows what each series is below the graph, or nothing. */
  void legend(boolean shown) throws Exception {
    XPropertySet properties = queryInterface(XPropertySet.class, chart);
    properties.setPropertyValue("HasLegend", shown);
    if (shown) {
      XPropertySet legend =
          queryInterface(
              XPropertySet.class,
              queryInterface(com.sun.star.chart.XChartDocument.class, chart).getLegend());
      legend.setPropertyValue("Alignment", ChartLegendPosition.BOTTOM);
      legend.setPropertyValue("FillStyle", FillStyle.NONE);
      legend.setPropertyValue("LineStyle", LineStyle.NONE);
    }
  }

  private Object service(String name) throws Exception {
    return workplace.service(XInterface.class, name);
  }
}
