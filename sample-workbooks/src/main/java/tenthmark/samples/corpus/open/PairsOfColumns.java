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

/** Each quantity has a column of values and one of uncertainties beside it. */
@AutoService(Family.class)
public final class PairsOfColumns implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(dynamo(), spokes(), tensiometre(), llanta());
  }

  private static Drawing dynamo() {
    Drawing drawing =
        new Drawing(
            "dynamo-innenwiderstand",
            "pairs-of-columns",
            "dynamo circuit",
            Language.GERMAN,
            Writer.POI_XLSX);
    Page page = drawing.page("Messung");
    page.draw(
        "A1",
        """
        Widerstand am Nabendynamo
        Jule K., Samir B. | | | | Datum: | 2026-04-21

        Nr. | U / V | ΔU / V | I / mA | ΔI / mA | R / Ω | ΔR / Ω
        1 | 1.52 | 0.02 | 126 | 2 | =B5/D5*1000 :: 0.0 | =F5*(C5/B5+E5/D5) :: 0.0
        2 | 2.38 | 0.03 | 198 | 3 | =B6/D6*1000 :: 0.0 | =F6*(C6/B6+E6/D6) :: 0.0
        3 | 3.31 | 0.04 | 275 | 4 | =B7/D7*1000 :: 0.0 | =F7*(C7/B7+E7/D7) :: 0.0
        4 | 4.42 | 0.05 | 369 | 5 | =B8/D8*1000 :: 0.0 | =F8*(C8/B8+E8/D8) :: 0.0
        Mittel | | | | | =AVERAGE(F5:F8) :: 0.0 | =AVERAGE(G5:G8) :: 0.0

        ΔU: Anzeige des Voltmeters, 0,8 % vom Messwert + 1 Digit laut Datenblatt
        ΔI: Anzeige des Amperemeters, 1 % vom Messwert + 1 Digit laut Datenblatt
        ΔR: relative Unsicherheiten addiert (ungünstigster Fall)
        """);
    page.bold("A1,A4:G4,A9");
    page.other(Role.DATE, "F2").other(Role.INDEX, "A5:A8");
    page.measured("U", "V", "B5:B8").uncertainty("C5:C8").because("A11");
    page.measured("I", "mA", "D5:D8").uncertainty("E5:E8").because("A12");
    page.calculated("R", "Ω", "F5:F8").number("12.1", "12.0", "12.0", "12.0").uncertainty("G5:G8");
    page.record(Kind.MEAN, "R", "Ω", "F9").number("12.0").uncertainty("G9");
    return drawing;
  }

  /** One heading for the pair, merged over both columns. */
  private static Drawing spokes() {
    Drawing drawing =
        new Drawing(
            "spoke-tones",
            "one-heading-per-pair",
            "spoke resonance",
            Language.ENGLISH,
            Writer.GNUMERIC_XLSX);
    Page page = drawing.page("Spokes");
    page.draw(
        "A1",
        """
        Plucked spokes: speed of the wave
        Team: Noor, Callum

        Spoke | f, Δf / Hz | | L, ΔL / cm | | v, Δv / (m/s)
        A | 412 | 3 | 28.2 | 0.1 | =2*D5/100*B5 :: 0 | =F5*(C5/B5+E5/D5) :: 0
        B | 398 | 3 | 29.0 | 0.1 | =2*D6/100*B6 :: 0 | =F6*(C6/B6+E6/D6) :: 0
        C | 436 | 4 | 26.4 | 0.1 | =2*D7/100*B7 :: 0 | =F7*(C7/B7+E7/D7) :: 0
        D | 455 | 4 | 25.1 | 0.1 | =2*D8/100*B8 :: 0 | =F8*(C8/B8+E8/D8) :: 0

        v = 2 L f for the lowest tone of a string that is held at both ends
        Δf is half the width of the peak on the phone's spectrum.
        ΔL: steel rule in mm, 0.5 mm at the nipple and 0.5 mm at the hub.
        """);
    page.bold("A1,A4:F4").merge("B4:C4", "D4:E4", "F4:G4");
    page.measured("f", "Hz", "B5:B8").uncertainty("C5:C8").because("A11");
    page.measured("L", "cm", "D5:D8").uncertainty("E5:E8").because("A12");
    page.calculated("v", "m/s", "F5:F8").number("232", "231", "230", "228").uncertainty("G5:G8");
    return drawing;
  }

  private static Drawing tensiometre() {
    Drawing drawing =
        new Drawing(
            "tensiometre-etalonnage",
            "pairs-of-columns",
            "spoke tension meter",
            Language.FRENCH,
            Writer.CALC_XLSX);
    Page page = drawing.page("Étalonnage");
    page.draw(
        "A1",
        """
        Étalonnage du tensiomètre de rayons
        Binôme : Aïcha et Léo

        m (kg) | Δm (kg) | d (mm) | Δd (mm) | T (N) | ΔT (N)
        20.0 | 0.1 | 1.85 | 0.05 | =A5*9.81 :: 0 | =B5*9.81 :: 0
        40.0 | 0.1 | 1.42 | 0.05 | =A6*9.81 :: 0 | =B6*9.81 :: 0
        60.0 | 0.1 | 1.13 | 0.05 | =A7*9.81 :: 0 | =B7*9.81 :: 0
        80.0 | 0.1 | 0.92 | 0.05 | =A8*9.81 :: 0 | =B8*9.81 :: 0

        Justifications :
        m : pesée des masses avec le peson numérique de l'atelier, notice ± 0,1 kg
        d : déviation lue au comparateur (0,01 mm) ; en reposant l'appareil on retrouve la valeur à 0,05 mm près
        T = m g avec g = 9,81 N/kg
        """);
    page.bold("A1,A4:F4,A10").graph("H3:N17", "Déviation et charge", "A5:A8", "C5:C8");
    page.measured("m", "kg", "A5:A8").uncertainty("B5:B8").because("A11");
    page.measured("d", "mm", "C5:C8").uncertainty("D5:D8").because("A12");
    page.calculated("T", "N", "E5:E8").number("196", "392", "589", "785").uncertainty("F5:F8");
    return drawing;
  }

  /** The uncertainties are named u(x), and T is a temperature. */
  private static Drawing llanta() {
    Drawing drawing =
        new Drawing(
            "llanta-calentamiento",
            "pairs-of-columns",
            "brake heat",
            Language.SPANISH,
            Writer.POI_XLS);
    Page page = drawing.page("Llanta");
    page.draw(
        "A1",
        """
        Calentamiento de la llanta al frenar en el rodillo
        Grupo 3 (Inés, Mateo)

        t (s) | u(t) (s) | T (°C) | u(T) (°C) | Motivo
        60 | 1 | 24.6 | 0.5 | cronómetro a mano; termómetro de contacto, ± 0,5 °C según el fabricante
        120 | 1 | 29.1 | 0.5 | igual
        180 | 1 | 33.3 | 0.5 | igual
        240 | 1 | 37.8 | 0.5 | igual
        300 | 1 | 42.1 | 0.5 | igual

        Rapidez media de calentamiento
        r = | =(C9-C5)/(A9-A5) :: 0.000 | °C/s
        u(r) = | =(D9+D5)/(A9-A5)+B12*(B9+B5)/(A9-A5) :: 0.000 | °C/s
        """);
    page.bold("A1,A4:E4,A11");
    page.measured("t", "s", "A5:A9").uncertainty("B5:B9").because("E5:E9");
    page.measured("T", "°C", "C5:C9").uncertainty("D5:D9").because("E5:E9");
    page.calculated("r", "°C/s", "B12").number("0.073").uncertainty("B13");
    return drawing;
  }
}
