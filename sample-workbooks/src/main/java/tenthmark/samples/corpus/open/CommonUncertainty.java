package tenthmark.samples.corpus.open;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Kind;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Columns of values whose uncertainty is the same for all and is said once. */
@AutoService(Family.class)
public final class CommonUncertainty implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(dynamo(), bremsfeder());
  }

  /** The uncertainty stands in brackets in the heading. */
  private static Drawing dynamo() {
    Drawing drawing =
        new Drawing(
            "dynamo-heading-uncertainty",
            "common-in-heading",
            "dynamo circuit",
            Language.ENGLISH,
            Writer.POI_XLSX);
    Page page = drawing.page("Dynamo");
    page.draw(
        "A1",
        """
        Hub dynamo with a 12 Ω lamp
        Priya & Tom, bench 4 | | | 2026-05-12

        Run | U in V (±0.02 V) | I in A (±0.005 A) | P in W | ΔP in W
        1 | 1.53 | 0.128 | =B5*C5 :: 0.000 | =0.02*C5+B5*0.005 :: 0.000
        2 | 2.41 | 0.201 | =B6*C6 :: 0.000 | =0.02*C6+B6*0.005 :: 0.000
        3 | 3.36 | 0.279 | =B7*C7 :: 0.00 | =0.02*C7+B7*0.005 :: 0.00
        4 | 4.50 | 0.377 | =B8*C8 :: 0.00 | =0.02*C8+B8*0.005 :: 0.00

        Both meters are digital. Voltmeter 0.2 % + 1 digit, ammeter 1 % + 1 digit (manual); we took the value at the highest reading for all runs.
        """);
    page.bold("A1,A4:E4").graph("G4:M18", "P against U", "B5:B8", "D5:D8");
    page.other(Role.DATE, "D2").other(Role.INDEX, "A5:A8");
    page.measured("U", "V", "B5:B8").uncertaintyOf(0.02).because("A10");
    page.measured("I", "A", "C5:C8").uncertaintyOf(0.005).because("A10");
    page.calculated("P", "W", "D5:D8")
        .number("0.196", "0.484", "0.94", "1.70")
        .uncertainty("E5:E8");
    return drawing;
  }

  /** The uncertainties stand in a line above the table; the line's slope is the result. */
  private static Drawing bremsfeder() {
    Drawing drawing =
        new Drawing(
            "bremsfeder-zeile-darueber",
            "common-in-line-above",
            "spring-loaded brake lever",
            Language.GERMAN,
            Writer.CALC_ODS);
    Page page = drawing.page("Bremshebel");
    page.draw(
        "A1",
        """
        Rückstellfeder eines Bremshebels
        Gruppe 7: Lea, Emre, Finn

        Ablesefehler: Δs = | 0.5 | mm | (Lineal mit mm-Teilung, je 0,25 mm an beiden Enden)
        Kraftmesser: ΔF = | 0.05 | N | (halber Skalenteil, 0,1 N je Teilstrich)

        s / mm | F / N
        4.0 | 1.15
        8.0 | 2.20
        12.0 | 3.35
        16.0 | 4.40
        20.0 | 5.60

        Federkonstante aus der Steigung:
        D = | =SLOPE(B8:B12,A8:A12) :: 0.000 | N/mm
        ΔD = | =INDEX(LINEST(B8:B12,A8:A12,TRUE,TRUE),2,1) :: 0.000 | N/mm
        """);
    page.bold("A1,A7:B7");
    page.measured("s", "mm", "A8:A12").uncertainty("B4").because("D4");
    page.measured("F", "N", "B8:B12").uncertainty("B5").because("D5");
    page.record(Kind.SLOPE, "D", "N/mm", "B15").number("0.278").uncertainty("B16");
    return drawing;
  }
}
