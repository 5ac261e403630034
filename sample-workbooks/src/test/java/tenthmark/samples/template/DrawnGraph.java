package tenthmark.samples.template;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.beans.XPropertySet;
import com.sun.star.chart.ErrorBarStyle;
import com.sun.star.chart.XAxisXSupplier;
import com.sun.star.chart.XAxisYSupplier;
import com.sun.star.chart2.XChartDocument;
import com.sun.star.chart2.XChartType;
import com.sun.star.chart2.XChartTypeContainer;
import com.sun.star.chart2.XCoordinateSystemContainer;
import com.sun.star.chart2.XDataSeries;
import com.sun.star.chart2.XDataSeriesContainer;
import com.sun.star.chart2.data.XDataSequence;
import com.sun.star.chart2.data.XDataSource;
import com.sun.star.chart2.data.XLabeledDataSequence;
import com.sun.star.chart2.data.XNumericalDataSequence;
import com.sun.star.container.XIndexAccess;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.table.XTableChartsSupplier;
import java.util.Map;
import java.util.TreeMap;
import tenthmark.addin.office.Workbook;

/**
 * The only graph on a sheet of a workbook that is open in a real Calc.
 *
 * @param chart the chart as Calc offers it
 */
record DrawnGraph(Object chart) {

  static DrawnGraph on(String sheet, Workbook workbook) throws Exception {
    XIndexAccess charts =
        queryInterface(
            XIndexAccess.class,
            queryInterface(
                    XTableChartsSupplier.class, workbook.document().getSheets().getByName(sheet))
                .getCharts());
    if (charts.getCount() != 1) {
      throw new IllegalStateException(charts.getCount() + " charts on " + sheet);
    }
    return new DrawnGraph(
        queryInterface(XEmbeddedObjectSupplier.class, charts.getByIndex(0)).getEmbeddedObject());
  }

  /** What a series draws: cell ranges by what they are for, as in {@code values-x}. */
  Map<String, String> ranges(int series) throws Exception {
    Map<String, String> ranges = new TreeMap<>();
    sequences(series)
        .forEach((role, data) -> ranges.put(role, data.getSourceRangeRepresentation()));
    return ranges;
  }

  /** The numbers that a series draws. */
  double[] numbers(int series, String role) throws Exception {
    return queryInterface(XNumericalDataSequence.class, sequences(series).get(role))
        .getNumericalData();
  }

  int seriesCount() throws Exception {
    return allSeries().length;
  }

  String chartType() throws Exception {
    return type().getChartType();
  }

  String xTitle() throws Exception {
    return title(queryInterface(XAxisXSupplier.class, diagram()).getXAxisTitle());
  }

  String yTitle() throws Exception {
    return title(queryInterface(XAxisYSupplier.class, diagram()).getYAxisTitle());
  }

  private static String title(Object title) throws Exception {
    return (String) queryInterface(XPropertySet.class, title).getPropertyValue("String");
  }

  private Object diagram() {
    return queryInterface(com.sun.star.chart.XChartDocument.class, chart).getDiagram();
  }

  private XChartType type() throws Exception {
    return queryInterface(
            XChartTypeContainer.class,
            queryInterface(
                    XCoordinateSystemContainer.class,
                    queryInterface(XChartDocument.class, chart).getFirstDiagram())
                .getCoordinateSystems()[0])
        .getChartTypes()[0];
  }

  private XDataSeries[] allSeries() throws Exception {
    return queryInterface(XDataSeriesContainer.class, type()).getDataSeries();
  }

  private Map<String, XDataSequence> sequences(int index) throws Exception {
    XDataSeries series = allSeries()[index];
    Map<String, XDataSequence> all = new TreeMap<>();
    add(series, all);
    for (String bars : new String[] {"ErrorBarX", "ErrorBarY"}) {
      Object own = queryInterface(XPropertySet.class, series).getPropertyValue(bars);
      XPropertySet properties = queryInterface(XPropertySet.class, own);
      if (properties != null
          && properties.getPropertyValue("ErrorBarStyle").equals(ErrorBarStyle.FROM_DATA)) {
        add(own, all);
      }
    }
    return all;
  }

  private static void add(Object source, Map<String, XDataSequence> all) throws Exception {
    for (XLabeledDataSequence sequence :
        queryInterface(XDataSource.class, source).getDataSequences()) {
      XDataSequence values = sequence.getValues();
      all.put((String) queryInterface(XPropertySet.class, values).getPropertyValue("Role"), values);
    }
  }
}
