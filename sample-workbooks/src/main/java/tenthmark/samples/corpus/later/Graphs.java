package tenthmark.samples.corpus.later;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Kind;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Points and their straight line. */
@AutoService(Family.class)
public final class Graphs implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(ressort(), discharge());
  }

  /** The line's numbers in a block beside the points, the reasons in a text box. */
  private static Drawing ressort() {
    Drawing drawing =
        new Drawing(
            "ressort-levier",
            "points-and-line-block",
            "spring-loaded brake lever",
            Language.FRENCH,
            Writer.CALC_XLSX);
    Page page = drawing.page("Ressort");
    Rows.draw(
        page,
        """
        1 | Ressort de rappel d'un levier de frein
        2 | Apolline Grandjean, assistante (inventée, mesures aussi)
        4 | x / mm | u(x) / mm | F / N | u(F) / N | | Droite F = k·x + b | valeur | incertitude
        5 | 5.0 | 0.5 | 4.1 | 0.3 | | k / (N/mm) | =SLOPE(C5:C10,A5:A10) :: 0.000 | =INDEX(LINEST(C5:C10,A5:A10,TRUE,TRUE),2,1) :: 0.000
        6 | 10.0 | 0.5 | 7.9 | 0.3 | | b / N | =INTERCEPT(C5:C10,A5:A10) :: 0.00 | =INDEX(LINEST(C5:C10,A5:A10,TRUE,TRUE),2,2) :: 0.00
        7 | 15.0 | 0.5 | 12.2 | 0.3 | | R² | =RSQ(C5:C10,A5:A10) :: 0.0000
        8 | 20.0 | 0.5 | 15.9 | 0.3
        9 | 25.0 | 0.5 | 20.1 | 0.3 | | k / (N/m) | =1000*G5 :: 0 | =1000*H5 :: 0
        10 | 30.0 | 0.5 | 23.8 | 0.3 | | points | =COUNT(A5:A10) :: 0
        """);
    page.bold("A1,A4:D4,F4:H4").graph("A13:F28", "Force du ressort", "A5:A10", "C5:C10");
    page.box(
        "G13:L18",
        "u(x) : réglet en mm, un quart de division aux deux bouts. u(F) : dynamomètre gradué en newtons,"
            + " 0,1 N de lecture et 0,2 N de frottement du crochet.");
    page.measured("x", "mm", "A5:A10").uncertainty("B5:B10").becauseOfBox();
    page.measured("F", "N", "C5:C10").uncertainty("D5:D10").becauseOfBox();
    page.record(Kind.SLOPE, "k", "N/mm", "G5").number("0.793").uncertainty("H5");
    page.record(Kind.INTERCEPT, "b", "N", "G6").number("0.12").uncertainty("H6");
    page.calculated("k", "N/m", "G9").number("793").uncertainty("H9");
    page.other(Role.STATISTIC, "G7").other(Role.COUNT, "G10");
    return drawing;
  }

  /** A logarithm against time; the line's numbers in lines below. */
  private static Drawing discharge() {
    Drawing drawing =
        new Drawing(
            "discharge",
            "points-and-lines-below",
            "capacitor of a rear light",
            Language.ENGLISH,
            Writer.GNUMERIC_ODS);
    Page page = drawing.page("Sheet1");
    Rows.draw(
        page,
        """
        1 | rear light runs out (capacitor), made up numbers
        2 | Kit Fennimore, Thursday group
        4 | t (s), all ±0.2 | U (V) | dU (V) | ln U | d ln U
        5 | 0.0 | 5.02 | 0.02 | =LN(B5) :: 0.000 | =C5/B5 :: 0.000
        6 | 20.0 | 3.57 | 0.02 | =LN(B6) :: 0.000 | =C6/B6 :: 0.000
        7 | 40.0 | 2.58 | 0.02 | =LN(B7) :: 0.000 | =C7/B7 :: 0.000
        8 | 60.0 | 1.83 | 0.02 | =LN(B8) :: 0.000 | =C8/B8 :: 0.000
        9 | 80.0 | 1.33 | 0.02 | =LN(B9) :: 0.000 | =C9/B9 :: 0.000
        10 | 100.0 | 0.94 | 0.02 | =LN(B10) :: 0.00 | =C10/B10 :: 0.00
        12 | t is ±0.2 s because I press the lap button by hand, U is 1 digit of the meter and 1 digit because it runs down while you look
        14 | slope (1/s) | =SLOPE(D5:D10,A5:A10) :: 0.00000
        15 | error of slope (1/s) | =STEYX(D5:D10,A5:A10)/SQRT(DEVSQ(A5:A10)) :: 0.00000
        16 | intercept | =INTERCEPT(D5:D10,A5:A10) :: 0.000
        17 | error of intercept | =INDEX(LINEST(D5:D10,A5:A10,TRUE,TRUE),2,2) :: 0.000
        18 | tau (s) | =-1/B14 :: 0.0
        19 | error of tau (s) | =B18*B15/ABS(B14) :: 0.0
        20 | U at the start (V) | =EXP(B16) :: 0.00
        21 | error of it (V) | =B20*B17 :: 0.00
        """);
    page.bold("A4:E4");
    page.measured("t", "s", "A5:A10").uncertaintyOf(0.2).because("A12");
    page.measured("U", "V", "B5:B10").uncertainty("C5:C10").because("A12");
    page.calculated("ln U", "", "D5:D10")
        .number("1.613", "1.273", "0.948", "0.604", "0.285", "-0.06")
        .uncertainty("E5:E10");
    page.record(Kind.SLOPE, "slope", "1/s", "B14").number("-0.01669").uncertainty("B15");
    page.record(Kind.INTERCEPT, "intercept", "", "B16").number("1.611").uncertainty("B17");
    page.calculated("tau", "s", "B18").number("59.9").uncertainty("B19");
    page.calculated("U at the start", "V", "B20").number("5.01").uncertainty("B21");
    return drawing;
  }
}
