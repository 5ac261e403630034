package tenthmark.samples.corpus.open;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Results that stand far from the data, or on another sheet. */
@AutoService(Family.class)
public final class ResultsFar implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(axe(), disc());
  }

  private static Drawing axe() {
    Drawing drawing =
        new Drawing(
            "axe-trois-feuilles",
            "results-on-another-sheet",
            "axle density",
            Language.FRENCH,
            Writer.CALC_ODS);
    Page data = drawing.page("Mesures");
    data.draw(
        "A1",
        """
        Axe d'acier : de quoi est-il fait ?

        Grandeur | Valeur | Incertitude | Unité
        diamètre d | 5.96 | 0.02 | mm
        longueur L | 152.0 | 0.5 | mm
        masse m | 33.1 | 0.1 | g
        """);
    Page notes = drawing.page("Notes");
    notes.draw(
        "A1",
        """
        D'où viennent les incertitudes
        diamètre d : palmer, 0,01 mm à la lecture et 0,01 mm car l'axe n'est pas tout à fait rond
        longueur L : réglet, 0,25 mm à chaque bout
        masse m : dernier chiffre de la balance
        """);
    Page results = drawing.page("Bilan");
    results.draw(
        "A1",
        """
        Bilan

        V | =PI()/4*Mesures!B4^2*Mesures!B5/1000 :: 0.00 | ± | =B3*(2*Mesures!C4/Mesures!B4+Mesures!C5/Mesures!B5) :: 0.00 | cm³
        ρ | =Mesures!B6/B3 :: 0.00 | ± | =B4*(D3/B3+Mesures!C6/Mesures!B6) :: 0.00 | g/cm³

        ρ de l'acier (table) | 7.85 | | | g/cm³
        écart divisé par l'incertitude | =ABS(B4-B6)/D4 :: 0.0
        """);
    data.bold("A1,A3:D3");
    data.measured("diamètre", "mm", "B4").uncertainty("C4").because("Notes!A2");
    data.measured("longueur", "mm", "B5").uncertainty("C5").because("Notes!A3");
    data.measured("masse", "g", "B6").uncertainty("C6").because("Notes!A4");
    results.calculated("V", "cm³", "B3").number("4.24").uncertainty("D3");
    results.calculated("ρ", "g/cm³", "B4").number("7.81").uncertainty("D4");
    results.other(Role.ACCEPTED, "B6").other(Role.COMPARISON, "B7");
    return drawing;
  }

  private static Drawing disc() {
    Drawing drawing =
        new Drawing(
            "disc-results-far-right",
            "results-far",
            "brake heat",
            Language.ENGLISH,
            Writer.POI_XLS);
    Page page = drawing.page("Disc");
    page.draw(
        "A1",
        """
        Drag brake on the roller: temperature of the disc

        time (s) | T (°C) | ± (°C)
        0 | 19.8 | 0.3
        30 | 31.2 | 0.3
        60 | 42.9 | 0.3
        90 | 54.1 | 0.3
        120 | 65.8 | 0.3

        Thermocouple reader: 0.3 °C from its card, and the last digit was still.
        """);
    page.draw(
        "H30",
        """
        Mean heating rate | =(B8-B4)/(A8-A4) :: 0.000 | ± | =(C8+C4)/(A8-A4) :: 0.000 | °C/s
        Heat per second, with 320 J/K taken as exact | =320*I30 :: 0.0 | ± | =320*K30 :: 0.0 | W
        """);
    page.bold("A1,A3:C3,H30:H31");
    page.other(Role.RAW, "A4:A8");
    page.measured("T", "°C", "B4:B8").uncertainty("C4:C8").because("A10");
    page.calculated("heating rate", "°C/s", "I30").number("0.383").uncertainty("K30");
    page.calculated("Heat per second", "W", "I31").number("122.7").uncertainty("K31");
    return drawing;
  }
}
