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

/** Headings in two or three rows, merged over what they belong to. */
@AutoService(Family.class)
public final class HeadingsInSeveralRows implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(ramp(), lampe(), rayons(), plano());
  }

  private static Drawing ramp() {
    Drawing drawing =
        new Drawing(
            "ramp-two-row-heading",
            "two-row-headings",
            "inclined plane roll",
            Language.ENGLISH,
            Writer.POI_XLS);
    Page page = drawing.page("Ramp");
    page.draw(
        "A1",
        """
        Front wheel rolling down the loading ramp
        Recorded by Isla; timed by Marcus

        Trial | Time from line to line | | Distance | | Mean speed
        | t (s) | ± | d (cm) | ± | v (cm/s) | ±
        1 | 6.4 | 0.2 | 251.5 | 0.4 | =D6/B6 :: 0.0 | =F6*(C6/B6+E6/D6) :: 0.0
        2 | 6.1 | 0.2 | 251.5 | 0.4 | =D7/B7 :: 0.0 | =F7*(C7/B7+E7/D7) :: 0.0
        3 | 6.6 | 0.2 | 251.5 | 0.4 | =D8/B8 :: 0.0 | =F8*(C8/B8+E8/D8) :: 0.0

        Where the uncertainties come from
        Time: started and stopped by hand, 0.2 s for the thumb.
        Distance: tape in mm, 0.05 cm at each end, and the chalk lines are 0.3 cm wide.
        """);
    page.bold("A1,A4:G5,A10").merge("B4:C4", "D4:E4", "F4:G4", "A4:A5");
    page.other(Role.INDEX, "A6:A8");
    page.measured("t", "s", "B6:B8").uncertainty("C6:C8").because("A11");
    page.measured("d", "cm", "D6:D8").uncertainty("E6:E8").because("A12");
    page.calculated("v", "cm/s", "F6:F8").number("39.3", "41.2", "38.1").uncertainty("G6:G8");
    return drawing;
  }

  private static Drawing lampe() {
    Drawing drawing =
        new Drawing(
            "lampe-brennweite",
            "two-row-headings",
            "lamp optics",
            Language.GERMAN,
            Writer.CALC_XLSX);
    Page page = drawing.page("Linse");
    page.draw(
        "A1",
        """
        Brennweite der Linse aus dem Scheinwerfer
        Protokoll: Mira und Anton, Tisch 2

        | Gegenstandsweite | | Bildweite | | Brennweite |
        Nr. | g in cm | Δg in cm | b in cm | Δb in cm | f in cm | Δf in cm
        1 | 30.0 | 0.2 | 15.2 | 0.3 | =B6*D6/(B6+D6) :: 0.00 | =F6^2*(C6/B6^2+E6/D6^2) :: 0.00
        2 | 25.0 | 0.2 | 16.9 | 0.3 | =B7*D7/(B7+D7) :: 0.00 | =F7^2*(C7/B7^2+E7/D7^2) :: 0.00
        3 | 20.0 | 0.2 | 20.3 | 0.3 | =B8*D8/(B8+D8) :: 0.00 | =F8^2*(C8/B8^2+E8/D8^2) :: 0.00
        4 | 15.0 | 0.2 | 30.6 | 0.4 | =B9*D9/(B9+D9) :: 0.00 | =F9^2*(C9/B9^2+E9/D9^2) :: 0.00
        | | | | Mittelwert: | =AVERAGE(F6:F9) :: 0.00 | =AVERAGE(G6:G9) :: 0.00

        Aufdruck auf der Fassung: | | | | | 10.0 | cm
        Abweichung vom Aufdruck: | | | | | =(F10-F12)/F12*100 :: 0.0 | %

        Δg: Marken auf der optischen Bank, 0,1 cm an Lampe und Linse. Δb: dazu der Bereich, in dem das Bild scharf aussieht.
        """);
    page.bold("A1,B4:G4,A5:G5").merge("B4:C4", "D4:E4", "F4:G4");
    page.other(Role.INDEX, "A6:A9").other(Role.ACCEPTED, "F12").other(Role.COMPARISON, "F13");
    page.measured("Gegenstandsweite", "cm", "B6:B9").uncertainty("C6:C9").because("A15");
    page.measured("Bildweite", "cm", "D6:D9").uncertainty("E6:E9").because("A15");
    page.calculated("Brennweite", "cm", "F6:F9")
        .number("10.09", "10.08", "10.07", "10.07")
        .uncertainty("G6:G9");
    page.record(Kind.MEAN, "Brennweite", "cm", "F10").number("10.08").uncertainty("G10");
    return drawing;
  }

  /** The units stand in a row of their own. */
  private static Drawing rayons() {
    Drawing drawing =
        new Drawing(
            "rayons-unites-dessous",
            "units-row",
            "spoke pitch",
            Language.FRENCH,
            Writer.GNUMERIC_XLS);
    Page page = drawing.page("Rayons");
    page.draw(
        "A1",
        """
        Hauteur du son et longueur du rayon
        Noms : Inès D., Paul R.

        Rayon | Longueur | Incertitude | Fréquence | Incertitude | Longueur × fréquence | Incertitude
        | cm | cm | Hz | Hz | m/s | m/s
        court | 25.4 | 0.1 | 452 | 4 | =B6*D6/100 :: 0.0 | =F6*(C6/B6+E6/D6) :: 0.0
        moyen | 27.6 | 0.1 | 415 | 4 | =B7*D7/100 :: 0.0 | =F7*(C7/B7+E7/D7) :: 0.0
        long | 29.2 | 0.1 | 391 | 4 | =B8*D8/100 :: 0.0 | =F8*(C8/B8+E8/D8) :: 0.0

        Longueur : mètre ruban au mm, 0,05 cm à chaque bout.
        Fréquence : largeur du pic sur l'analyseur du téléphone.
        """);
    page.bold("A1,A4:G4");
    page.measured("Longueur", "cm", "B6:B8").uncertainty("C6:C8").because("A10");
    page.measured("Fréquence", "Hz", "D6:D8").uncertainty("E6:E8").because("A11");
    page.calculated("Longueur × fréquence", "m/s", "F6:F8")
        .number("114.8", "114.5", "114.2")
        .uncertainty("G6:G8");
    return drawing;
  }

  /** Names, symbols and units in three rows. */
  private static Drawing plano() {
    Drawing drawing =
        new Drawing(
            "plano-tres-filas",
            "three-row-headings",
            "inclined plane roll",
            Language.SPANISH,
            Writer.CALC_ODS);
    Page page = drawing.page("Plano inclinado");
    page.draw(
        "A1",
        """
        Rueda que baja por un plano inclinado
        Mesa 5, profesora: M. Olmos (invento del curso)

        | Altura | | Recorrido | | Tiempo | | Aceleración |
        Ensayo | h | Δh | L | ΔL | t | Δt | a | Δa
        | cm | cm | cm | cm | s | s | cm/s² | cm/s²
        1 | 4.0 | 0.1 | 120.0 | 0.3 | 3.2 | 0.2 | =2*D7/F7^2 :: 0 | =H7*(E7/D7+2*G7/F7) :: 0
        2 | 6.0 | 0.1 | 120.0 | 0.3 | 2.6 | 0.2 | =2*D8/F8^2 :: 0 | =H8*(E8/D8+2*G8/F8) :: 0
        3 | 8.0 | 0.1 | 120.0 | 0.3 | 2.3 | 0.2 | =2*D9/F9^2 :: 0 | =H9*(E9/D9+2*G9/F9) :: 0

        Altura y recorrido: regla en mm (0,05 cm por extremo); en el recorrido, además, 0,2 cm por la marca de tiza.
        Tiempo: a mano, 0,2 s de reacción.
        """);
    page.bold("A1,B4:I4,A5:I5").merge("B4:C4", "D4:E4", "F4:G4", "H4:I4");
    page.other(Role.INDEX, "A7:A9");
    page.measured("Altura", "cm", "B7:B9").uncertainty("C7:C9").because("A11");
    page.measured("Recorrido", "cm", "D7:D9").uncertainty("E7:E9").because("A11");
    page.measured("Tiempo", "s", "F7:F9").uncertainty("G7:G9").because("A12");
    page.calculated("Aceleración", "cm/s²", "H7:H9").number("23", "36", "45").uncertainty("I7:I9");
    return drawing;
  }
}
