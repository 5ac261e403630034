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

/** Logarithms of readings, and what follows from their slope. */
@AutoService(Family.class)
public final class Logarithms implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(standlight(), balancier());
  }

  private static Drawing standlight() {
    Drawing drawing =
        new Drawing(
            "standlight-ln", "logarithms", "battery discharge", Language.ENGLISH, Writer.CALC_XLS);
    Page page = drawing.page("Decay");
    page.draw(
        "A1",
        """
        Capacitor of the standing light: decay

        t (s) | U (V) | ΔU (V) | ln(U / V) | Δ ln(U / V)
        0 | 4.80 | 0.05 | =LN(B4) :: 0.000 | =C4/B4 :: 0.000
        60 | 3.92 | 0.05 | =LN(B5) :: 0.000 | =C5/B5 :: 0.000
        120 | 3.22 | 0.05 | =LN(B6) :: 0.000 | =C6/B6 :: 0.000
        180 | 2.63 | 0.05 | =LN(B7) :: 0.000 | =C7/B7 :: 0.000
        240 | 2.16 | 0.05 | =LN(B8) :: 0.00 | =C8/B8 :: 0.00

        ΔU: meter, 0.8 % + 1 digit at the start, kept for all rows. Times are the camera's, good to its frame.

        slope (1/s) | =SLOPE(D4:D8,A4:A8) :: 0.000000
        its uncertainty (1/s) | =SQRT((1/RSQ(D4:D8,A4:A8)-1)/3)*ABS(B12) :: 0.000000
        time constant (s) | =-1/B12 :: 0.0
        its uncertainty (s) | =B14*B13/ABS(B12) :: 0.0
        """);
    page.bold("A1,A3:E3");
    page.other(Role.RAW, "A4:A8");
    page.measured("U", "V", "B4:B8").uncertainty("C4:C8").because("A10");
    page.calculated("ln(U / V)", "", "D4:D8")
        .number("1.569", "1.366", "1.169", "0.967", "0.77")
        .uncertainty("E4:E8");
    page.record(Kind.SLOPE, "slope", "1/s", "B12").number("-0.003327").uncertainty("B13");
    page.calculated("time constant", "s", "B14").number("300.6").uncertainty("B15");
    return drawing;
  }

  private static Drawing balancier() {
    Drawing drawing =
        new Drawing(
            "balancier-log", "logarithms", "wheel timing", Language.FRENCH, Writer.POI_XLSX);
    Page page = drawing.page("Amortissement");
    page.draw(
        "A1",
        """
        Amortissement du balancier de roue

        oscillation n° | A (°) | ΔA (°) | lg(A/1°) | Δlg
        0 | 30.0 | 0.5 | =LOG10(B4) :: 0.000 | =C4/B4/LN(10) :: 0.000
        5 | 24.5 | 0.5 | =LOG10(B5) :: 0.000 | =C5/B5/LN(10) :: 0.000
        10 | 20.0 | 0.5 | =LOG10(B6) :: 0.000 | =C6/B6/LN(10) :: 0.000
        15 | 16.5 | 0.5 | =LOG10(B7) :: 0.000 | =C7/B7/LN(10) :: 0.000
        20 | 13.5 | 0.5 | =LOG10(B8) :: 0.000 | =C8/B8/LN(10) :: 0.000

        Rapporteur collé sur la jante (1°) : une demi-graduation, la valve passe vite.
        pente par oscillation | =SLOPE(D4:D8,A4:A8) :: 0.0000
        incertitude (droites extrêmes) | =(E4+E8)/(A8-A4) :: 0.0000
        """);
    page.bold("A1,A3:E3");
    page.other(Role.COUNT, "A4:A8");
    page.measured("A", "°", "B4:B8").uncertainty("C4:C8").because("A10");
    page.calculated("lg", "", "D4:D8")
        .number("1.477", "1.389", "1.301", "1.217", "1.130")
        .uncertainty("E4:E8");
    page.record(Kind.SLOPE, "pente", "", "B11").number("-0.0173").uncertainty("B12");
    return drawing;
  }
}
