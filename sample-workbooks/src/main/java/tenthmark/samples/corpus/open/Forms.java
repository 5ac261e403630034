package tenthmark.samples.corpus.open;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** A label to the left, the value to its right, the unit behind. */
@AutoService(Family.class)
public final class Forms implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(cage(), bremswaerme(), decharge(), palanca());
  }

  /** The uncertainty and the reason are lines of their own under the value. */
  private static Drawing cage() {
    Drawing drawing =
        new Drawing(
            "bottle-syrup-form",
            "form",
            "bottle cage viscosity",
            Language.ENGLISH,
            Writer.CALC_ODS);
    Page page = drawing.page("Syrup");
    page.draw(
        "A1",
        """
        A steel ball sinks in a squeeze bottle of syrup
        Worksheet of: Oluwaseun and Beth

        Diameter of the ball | 4.02 | mm
        uncertainty | 0.03 | mm
        why | micrometer reads 0.01 mm, but three spots differ by 0.02 mm

        Distance between the rings | 180 | mm
        uncertainty | 2 | mm
        why | rubber rings are 1 mm thick, one at each end

        Time of fall | 8.6 | s
        uncertainty | 0.2 | s
        why | thumb on the stopwatch

        Given
        Density of the steel | 7850 | kg/m³
        Density of the syrup | 1260 | kg/m³
        g | 9.81 | m/s²

        Speed | =B8/B12 :: 0.0 | mm/s
        uncertainty | =B21*(B9/B8+B13/B12) :: 0.0 | mm/s

        Viscosity | =(B17-B18)*B19*(B4/1000)^2/(18*B21/1000) :: 0.00 | Pa·s
        uncertainty | =B24*(2*B5/B4+B22/B21) :: 0.00 | Pa·s
        """);
    page.bold("A1,A16");
    page.measured("Diameter", "mm", "B4").uncertainty("B5").because("B6");
    page.measured("Distance", "mm", "B8").uncertainty("B9").because("B10");
    page.measured("Time", "s", "B12").uncertainty("B13").because("B14");
    page.other(Role.CONSTANT, "B17:B19");
    page.calculated("Speed", "mm/s", "B21").number("20.9").uncertainty("B22");
    page.calculated("Viscosity", "Pa·s", "B24").number("2.77").uncertainty("B25");
    return drawing;
  }

  private static Drawing bremswaerme() {
    Drawing drawing =
        new Drawing("bremswaerme-formular", "form", "brake heat", Language.GERMAN, Writer.POI_XLSX);
    Page page = drawing.page("Formular");
    page.draw(
        "B2",
        """
        Wie viel der Energie steckt in den Felgen?
        Name: | Tilda Berg | | | Kurs: | 1a

        Masse von Rad und Fahrerin m: | 86.0 | ± | 0.5 | kg | Personenwaage, Angabe des Herstellers
        Höhe der Abfahrt h: | 12.4 | ± | 0.2 | m | Bandmaß am Geländer, zweimal angelegt
        Masse beider Felgen M: | 1.62 | ± | 0.01 | kg | Küchenwaage, letzte Stelle
        Temperatur oben T1: | 18.6 | ± | 0.2 | °C | Kontaktfühler laut Datenblatt
        Temperatur unten T2: | 25.1 | ± | 0.2 | °C | wie oben

        Temperaturanstieg T2 − T1: | =C9-C8 :: 0.0 | ± | =E9+E8 :: 0.0 | K
        Lageenergie m g h: | =C5*9.81*C6/1000 :: 0.0 | ± | =C12*(E5/C5+E6/C6) :: 0.0 | kJ
        Wärme c M (T2 − T1): | =896*C7*C11/1000 :: 0.0 | ± | =C13*(E7/C7+E11/C11) :: 0.0 | kJ
        Anteil: | =C13/C12 :: 0.00 | ± | =C14*(E13/C13+E12/C12) :: 0.00

        c = 896 J/(kg·K) für Aluminium, g = 9,81 m/s²
        """);
    page.bold("B2");
    page.measured("Masse von Rad und Fahrerin", "kg", "C5").uncertainty("E5").because("G5");
    page.measured("Höhe", "m", "C6").uncertainty("E6").because("G6");
    page.measured("Masse beider Felgen", "kg", "C7").uncertainty("E7").because("G7");
    page.measured("Temperatur", "°C", "C8:C9").uncertainty("E8:E9").because("G8:G9");
    page.calculated("Temperaturanstieg", "K", "C11").number("6.5").uncertainty("E11");
    page.calculated("Lageenergie", "kJ", "C12").number("10.5").uncertainty("E12");
    page.calculated("Wärme", "kJ", "C13").number("9.4").uncertainty("E13");
    page.calculated("Anteil", "", "C14").number("0.90").uncertainty("E14");
    return drawing;
  }

  /** Values to the left, their uncertainties in a second form to the right. */
  private static Drawing decharge() {
    Drawing drawing =
        new Drawing(
            "decharge-fiche", "form", "battery discharge", Language.FRENCH, Writer.CALC_XLSX);
    Page page = drawing.page("Fiche");
    page.draw(
        "A1",
        """
        Fiche de mesure : accu de l'éclairage

        MESURES | | | | INCERTITUDES
        Tension moyenne U | 3.86 | V | | sur U | 0.02 | V | voltmètre : 0,3 % + 1 digit
        Courant I | 0.250 | A | | sur I | 0.004 | A | ampèremètre : 1 % + 1 digit, arrondi
        Durée t | 90 | min | | sur t | 1 | min | on n'a regardé l'heure qu'à la minute

        RÉSULTATS
        Charge Q = I t | =B5*B6/60 :: 0.000 | A·h | | sur Q | =B9*(F5/B5+F6/B6) :: 0.000 | A·h
        Énergie E = U Q | =B4*B9 :: 0.00 | W·h | | sur E | =B10*(F4/B4+F9/B9) :: 0.00 | W·h
        """);
    page.bold("A1,A3,E3,A8");
    page.measured("Tension", "V", "B4").uncertainty("F4").because("H4");
    page.measured("Courant", "A", "B5").uncertainty("F5").because("H5");
    page.measured("Durée", "min", "B6").uncertainty("F6").because("H6");
    page.calculated("Charge", "A·h", "B9").number("0.375").uncertainty("F9");
    page.calculated("Énergie", "W·h", "B10").number("1.45").uncertainty("F10");
    return drawing;
  }

  private static Drawing palanca() {
    Drawing drawing =
        new Drawing(
            "palanca-ficha", "form", "spring-loaded brake lever", Language.SPANISH, Writer.POI_XLS);
    Page page = drawing.page("Ficha");
    page.draw(
        "A1",
        """
        PALANCA DE FRENO
        Alumna: Carmen Rueda | | | fecha | 2026-02-18

        Brazo largo a = | 92.0 | mm
        Δa = | 1.0 | mm | (regla, 0,25 mm por extremo y 0,5 mm porque la palanca es curva)
        Brazo corto b = | 24.0 | mm
        Δb = | 0.5 | mm | (regla, 0,25 mm por extremo)
        Fuerza de la mano F = | 35.0 | N
        ΔF = | 0.5 | N | (dinamómetro, media división)

        Fuerza en el cable Fc = F·a/b = | =B8*B4/B6 :: 0 | N
        ΔFc = | =B11*(B5/B4+B7/B6+B9/B8) :: 0 | N
        """);
    page.bold("A1,A11,B11");
    page.other(Role.DATE, "E2");
    page.measured("Brazo largo", "mm", "B4").uncertainty("B5").because("D5");
    page.measured("Brazo corto", "mm", "B6").uncertainty("B7").because("D7");
    page.measured("Fuerza de la mano", "N", "B8").uncertainty("B9").because("D9");
    page.calculated("Fuerza en el cable", "N", "B11").number("134").uncertainty("B12");
    return drawing;
  }
}
