package tenthmark.samples.corpus.open;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Writer;

/** Uncertainties in percent of the value. */
@AutoService(Family.class)
public final class RelativeUncertainties implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(leistung(), phare());
  }

  private static Drawing leistung() {
    Drawing drawing =
        new Drawing(
            "dynamo-prozent",
            "relative-percent",
            "dynamo circuit",
            Language.GERMAN,
            Writer.CALC_XLSX);
    Page page = drawing.page("Leistung");
    page.draw(
        "A1",
        """
        Leistung des Dynamos, mit relativen Unsicherheiten gerechnet

        U in V | δU in % | I in mA | δI in % | P in W | δP in % | ΔP in W
        2.05 | 1.5 | 171 | 2.0 | =A4*C4/1000 :: 0.000 | =B4+D4 :: 0.0 | =E4*F4/100 :: 0.000
        3.10 | 1.3 | 259 | 1.8 | =A5*C5/1000 :: 0.00 | =B5+D5 :: 0.0 | =E5*F5/100 :: 0.00
        4.20 | 1.2 | 351 | 1.7 | =A6*C6/1000 :: 0.00 | =B6+D6 :: 0.0 | =E6*F6/100 :: 0.00

        δU und δI stammen aus den Datenblättern der Messgeräte (Prozent vom Messwert und 1 Digit, zusammengefasst).
        """);
    page.bold("A1,A3:G3");
    page.measured("U", "V", "A4:A6")
        .uncertaintyOf(0.03075, 0.0403, 0.0504)
        .parameter("B4:B6")
        .because("A8");
    page.measured("I", "mA", "C4:C6")
        .uncertaintyOf(3.42, 4.662, 5.967)
        .parameter("D4:D6")
        .because("A8");
    page.calculated("P", "W", "E4:E6")
        .number("0.351", "0.80", "1.47")
        .uncertainty("G4:G6")
        .parameter("F4:F6");
    return drawing;
  }

  private static Drawing phare() {
    Drawing drawing =
        new Drawing(
            "phare-pourcent",
            "relative-percent",
            "lamp optics",
            Language.FRENCH,
            Writer.GNUMERIC_XLSX);
    Page page = drawing.page("Phare");
    page.draw(
        "A1",
        """
        Éclairement du phare et distance

        Distance d (m) | inc. rel. | Éclairement E (lx) | inc. rel. | E·d² (lx·m²) | inc. rel.
        1.00 | 1% | 41.5 | 3% | =C4*A4^2 :: 0 | =2*B4+D4 :: 0%
        1.50 | 1% | 18.3 | 3% | =C5*A5^2 :: 0 | =2*B5+D5 :: 0%
        2.00 | 1% | 10.4 | 3% | =C6*A6^2 :: 0 | =2*B6+D6 :: 0%

        Distance : le filament n'est pas visible, on l'estime à 1 % près. Luxmètre : 3 % d'après la notice.
        """);
    page.bold("A1,A3:F3");
    page.measured("Distance", "m", "A4:A6")
        .uncertaintyOf(0.01, 0.015, 0.02)
        .parameter("B4:B6")
        .because("A8");
    page.measured("Éclairement", "lx", "C4:C6")
        .uncertaintyOf(1.245, 0.549, 0.312)
        .parameter("D4:D6")
        .because("A8");
    page.calculated("E·d²", "lx·m²", "E4:E6")
        .number("42", "41", "42")
        .uncertaintyOf(2.075, 2.05875, 2.08)
        .parameter("F4:F6");
    return drawing;
  }
}
