package tenthmark.samples.corpus.later;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Uncertainties in percent of the value. */
@AutoService(Family.class)
public final class Relative implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(freinage(), dinamo());
  }

  /** A column of percentages beside the absolute ones. */
  private static Drawing freinage() {
    Drawing drawing =
        new Drawing(
            "freinage-energie",
            "relative-and-absolute",
            "braking",
            Language.FRENCH,
            Writer.POI_XLS);
    Page page = drawing.page("Freinage");
    Rows.draw(
        page,
        """
        1 | Freinage : énergie dissipée et force moyenne
        2 | Polycopié de P. Lestrange, rempli ; tout est inventé
        4 | Grandeur | Symbole | Valeur | Unité | Inc. relative (%) | Inc. absolue | Origine
        5 | masse du cycliste et du vélo | m | 84.0 | kg | 0.5 | =C5*E5/100 :: 0.0 | pèse-personne, notice : 0,5 %
        6 | vitesse avant | v1 | 6.10 | m/s | 2 | =C6*E6/100 :: 0.00 | compteur : sa circonférence réglée à 2 % près
        7 | vitesse après | v2 | 3.05 | m/s | 2 | =C7*E7/100 :: 0.00 | le même compteur
        8 | distance de freinage | d | 7.25 | m | 0.4 | =C8*E8/100 :: 0.00 | décamètre, 1 cm à chaque bout et 1 cm pour la trace
        10 | Résultats
        11 | énergie perdue | E | =C5*(C6^2-C7^2)/2/1000 :: 0.00 | kJ | =100*F11/C11 :: 0 | =((C6^2-C7^2)/2*F5+C5*C6*F6+C5*C7*F7)/1000 :: 0.00 | différentielle, valeurs absolues
        12 | force moyenne | F | =1000*C11/C8 :: 0 | N | =E11+E8 :: 0 | =C12*E12/100 :: 0 | pourcentages ajoutés
        """);
    page.bold("A1,A4:G4,A10");
    page.measured("masse m", "kg", "C5").uncertainty("F5").parameter("E5").because("G5");
    page.measured("vitesse avant v1", "m/s", "C6").uncertainty("F6").parameter("E6").because("G6");
    page.measured("vitesse après v2", "m/s", "C7").uncertainty("F7").parameter("E7").because("G7");
    page.measured("distance de freinage d", "m", "C8")
        .uncertainty("F8")
        .parameter("E8")
        .because("G8");
    page.calculated("énergie perdue E", "kJ", "C11")
        .number("1.17")
        .uncertainty("F11")
        .parameter("E11");
    page.calculated("force moyenne F", "N", "C12")
        .number("162")
        .uncertainty("F12")
        .parameter("E12");
    return drawing;
  }

  /** One percentage for everything that was measured. */
  private static Drawing dinamo() {
    Drawing drawing =
        new Drawing(
            "dinamo-dos-por-ciento",
            "one-percentage",
            "dynamo circuit",
            Language.SPANISH,
            Writer.GNUMERIC_XLSX);
    Page page = drawing.page("dinamo");
    Rows.draw(
        page,
        """
        1 | Dinamo: todo medido con el mismo polímetro
        2 | Irune Zabal (inventada)
        3 | Error de U y de I: | 2% | de cada medida (el peor caso del manual: 1,5 % y los dígitos)
        5 | vueltas/min | U (V) | I (A) | R (Ω) | error R (Ω) | P (W) | error P (W)
        6 | 60 | 1.52 | 0.101 | =B6/C6 :: 0.0 | =D6*2*$B$3 :: 0.0 | =B6*C6 :: 0.000 | =F6*2*$B$3 :: 0.000
        7 | 80 | 2.04 | 0.136 | =B7/C7 :: 0.0 | =D7*2*$B$3 :: 0.0 | =B7*C7 :: 0.000 | =F7*2*$B$3 :: 0.000
        8 | 100 | 2.48 | 0.165 | =B8/C8 :: 0.0 | =D8*2*$B$3 :: 0.0 | =B8*C8 :: 0.000 | =F8*2*$B$3 :: 0.000
        9 | 120 | 3.05 | 0.203 | =B9/C9 :: 0.0 | =D9*2*$B$3 :: 0.0 | =B9*C9 :: 0.00 | =F9*2*$B$3 :: 0.00
        10 | 140 | 3.51 | 0.234 | =B10/C10 :: 0.0 | =D10*2*$B$3 :: 0.0 | =B10*C10 :: 0.00 | =F10*2*$B$3 :: 0.00
        11 | 160 | 3.97 | 0.265 | =B11/C11 :: 0.0 | =D11*2*$B$3 :: 0.0 | =B11*C11 :: 0.00 | =F11*2*$B$3 :: 0.00
        13 | las vueltas las da un metrónomo, sin error
        """);
    page.bold("A5:G5");
    page.other(Role.CONSTANT, "A6:A11");
    page.measured("U", "V", "B6:B11")
        .uncertaintyOf(0.0304, 0.0408, 0.0496, 0.061, 0.0702, 0.0794)
        .parameter("B3")
        .because("C3");
    page.measured("I", "A", "C6:C11")
        .uncertaintyOf(0.00202, 0.00272, 0.0033, 0.00406, 0.00468, 0.0053)
        .parameter("B3")
        .because("C3");
    page.calculated("R", "Ω", "D6:D11")
        .number("15.0", "15.0", "15.0", "15.0", "15.0", "15.0")
        .uncertainty("E6:E11");
    page.calculated("P", "W", "F6:F11")
        .number("0.154", "0.277", "0.409", "0.62", "0.82", "1.05")
        .uncertainty("G6:G11");
    return drawing;
  }
}
