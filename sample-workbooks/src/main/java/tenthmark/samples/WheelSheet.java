package tenthmark.samples;

import java.util.List;
import tenthmark.samples.book.SampleBook;
import tenthmark.samples.book.SheetWriter;
import tenthmark.samples.book.Styles;

/**
 * The moment of inertia of a wheel that hangs by its rim and swings: a calculated result, with the
 * uncertainties of its inputs carried through the formula in the cell. The wheel is a physical
 * pendulum, so its moment about the rim is m g r T^2 / (4 pi^2).
 */
final class WheelSheet {

  private WheelSheet() {}

  static void write(SampleBook book) {
    Styles styles = book.styles();
    SheetWriter sheet = book.sheet("Wheel", 32, 13, 14, 14, 14, 46);
    sheet.put("A1", "Wheel: moment of inertia about its rim", styles.title());
    book.headings(
        sheet, 3, List.of("Quantity", "Symbol", "Value", "Unit", "Uncertainty", "Rationale"));
    book.row(
        sheet,
        4,
        List.of(
            "Wheel, mass",
            "m",
            1.128,
            "kg",
            "=LAB_DISPLAY(0.001,C4,0.2,2)",
            "The balance maker's specification: 0.2 % of the reading and two counts."));
    book.row(
        sheet,
        5,
        List.of(
            "Wheel, rim to axle",
            "r",
            0.31125,
            "m",
            "=LAB_READING(0.001,\"fine\",2)",
            "A quarter of a millimetre judged at both ends of the tape."));
    book.row(
        sheet,
        6,
        List.of(
            "Wheel, time of ten swings",
            "t",
            "=" + BenchWorkbook.RECORDS + "!C15",
            "s",
            "=" + BenchWorkbook.RECORDS + "!M15",
            "From the records: reaction and the stopwatch display."));

    sheet.put("A8", "What follows", styles.title());
    book.row(sheet, 9, List.of("Acceleration of free fall", "g", 9.81, "m/s^2"));
    book.row(sheet, 10, List.of("One swing", "T", "=C6/10", "s"));
    book.row(
        sheet,
        11,
        List.of(
            "Moment of inertia",
            "I",
            "=C4*C9*C5*C10^2/(4*PI()^2)",
            "kg m^2",
            "=LAB_CARRY(C11,C4:C6,E4:E6)"));
    sheet.put("F11", "=LAB_RESULT(C11,E11,D11)", styles.result());

    sheet.put("A13", "Where its uncertainty comes from", styles.title());
    book.headings(
        sheet,
        14,
        List.of("Input", "Value", "Uncertainty", "Sensitivity", "Contribution", "Share"));
    sheet.putMatrix("A15:F18", "=LAB_CARRYTABLE(C11,C4:C6,E4:E6)", styles.cell());

    sheet.put("A20", "Other ways to the same", styles.title());
    book.row(sheet, 21, List.of("In quadrature", "=LAB_CARRY(C11,C4:C6,E4:E6,\"quadrature\")"));
    sheet.putMatrix("A22:B23", "=LAB_EXTREMES(C11,C4:C6,E4:E6)", styles.cell());
    sheet.putMatrix("A24:B27", "=LAB_SIMULATE(C11,C4:C6,E4:E6)", styles.cell());
  }
}
