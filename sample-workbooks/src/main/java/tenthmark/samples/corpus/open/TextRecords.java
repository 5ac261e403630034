package tenthmark.samples.corpus.open;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Value, uncertainty and unit in one text. */
@AutoService(Family.class)
public final class TextRecords implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(rayons(), pump(), muelle());
  }

  private static Drawing rayons() {
    Drawing drawing =
        new Drawing(
            "rayons-en-texte", "text-records", "spoke resonance", Language.FRENCH, Writer.CALC_ODS);
    Page page = drawing.page("Cahier");
    page.draw(
        "A1",
        """
        Cahier de labo – rayons pincés

        Grandeur | Résultat | Pourquoi cette incertitude
        longueur libre L | 292,5 ± 0,5 mm | réglet, 0,25 mm à chaque bout
        diamètre du fil | 2,00 ± 0,05 mm | pied à coulisse
        fréquence f | 415 ± 4 Hz | demi-largeur du pic
        vitesse 2 L f | 243 ± 3 m/s | 0,17 % + 0,96 %

        Pics relevés (Hz) :
        essai 1 | 413
        essai 2 | 418
        essai 3 | 414
        essai 4 | 416
        essai 5 | 414
        moyenne | =AVERAGE(B10:B14) :: 0
        """);
    page.bold("A1,A3:C3");
    page.measured("longueur libre", "mm", "B4").number("292.5").uncertaintyOf(0.5).because("C4");
    page.measured("diamètre", "mm", "B5").number("2.00").uncertaintyOf(0.05).because("C5");
    page.measured("fréquence", "Hz", "B6").number("415").uncertaintyOf(4).because("C6");
    page.calculated("vitesse", "m/s", "B7").number("243").uncertaintyOf(3);
    page.other(Role.RAW, "B10:B14").other(Role.CALCULATED, "B15");
    return drawing;
  }

  private static Drawing pump() {
    Drawing drawing =
        new Drawing(
            "pump-log-text", "text-records", "tyre gas law", Language.ENGLISH, Writer.POI_XLSX);
    Page page = drawing.page("Log");
    page.draw(
        "A1",
        """
        Closed pump, pressed in steps (absolute pressure)

        Step | Pressure | Volume of air | Pressure × volume
        1 | 1.02 ± 0.02 bar | 118 ± 2 mL | 120 ± 4 bar mL
        2 | 1.24 ± 0.02 bar | 97 ± 2 mL | 120 ± 4 bar mL
        3 | 1.51 ± 0.02 bar | 80 ± 2 mL | 121 ± 5 bar mL
        4 | 1.98 ± 0.02 bar | 61 ± 2 mL | 121 ± 5 bar mL

        The gauge has 0.02 bar steps and its needle trembles by half a step to both sides.
        The piston's edge is round, so the volume is only good to 2 mL.
        Products: relative uncertainties added.
        """);
    page.bold("A1,A3:D3");
    page.other(Role.INDEX, "A4:A7");
    page.measured("Pressure", "bar", "B4:B7")
        .number("1.02", "1.24", "1.51", "1.98")
        .uncertaintyOf(0.02)
        .because("A9");
    page.measured("Volume", "mL", "C4:C7")
        .number("118", "97", "80", "61")
        .uncertaintyOf(2)
        .because("A10");
    page.calculated("Pressure × volume", "bar mL", "D4:D7")
        .number("120", "120", "121", "121")
        .uncertaintyOf(4, 4, 5, 5)
        .because("A11");
    return drawing;
  }

  private static Drawing muelle() {
    Drawing drawing =
        new Drawing(
            "muelle-anotado",
            "text-records",
            "spring-loaded brake lever",
            Language.SPANISH,
            Writer.GNUMERIC_ODS);
    Page page = drawing.page("Muelle");
    page.draw(
        "A1",
        """
        Muelle de retorno de la palanca (Elena y Bruno)

        Medida n.º | Alargamiento | Fuerza
        1 | x = (5,0 ± 0,5) mm | F = (1,40 ± 0,05) N
        2 | x = (10,0 ± 0,5) mm | F = (2,75 ± 0,05) N
        3 | x = (15,0 ± 0,5) mm | F = (4,15 ± 0,05) N
        Motivo: | dos lecturas en la regla, 0,25 mm cada una | media división del dinamómetro

        k = F/x, con la medida 3: | k = (0,277 ± 0,013) N/mm
        comprobación sin redondear | =4.15/15 :: 0.0000
        """);
    page.bold("A1,A3:C3");
    page.other(Role.INDEX, "A4:A6").other(Role.CALCULATED, "B10");
    page.measured("x", "mm", "B4:B6")
        .number("5.0", "10.0", "15.0")
        .uncertaintyOf(0.5)
        .because("B7");
    page.measured("F", "N", "C4:C6")
        .number("1.40", "2.75", "4.15")
        .uncertaintyOf(0.05)
        .because("C7");
    page.calculated("k", "N/mm", "B9").number("0.277").uncertaintyOf(0.013);
    return drawing;
  }
}
