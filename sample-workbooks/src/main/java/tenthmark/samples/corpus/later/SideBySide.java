package tenthmark.samples.corpus.later;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Two objects beside each other under merged headings, the quantities in rows. */
@AutoService(Family.class)
public final class SideBySide implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(dosRuedas(), zweiKurbeln());
  }

  private static Drawing dosRuedas() {
    Drawing drawing =
        new Drawing(
            "dos-ruedas",
            "side-by-side",
            "front and rear wheel",
            Language.SPANISH,
            Writer.CALC_XLSX);
    Page page = drawing.page("Ruedas");
    Rows.draw(
        page,
        """
        1 | Rueda delantera contra rueda trasera
        2 | Lander Goñi y June Astarloa (inventados)
        4 | Magnitud | Rueda delantera | | Rueda trasera | | Unidad | De dónde sale el error
        5 | | medida | error | medida | error
        6 | perímetro | 2105 | 3 | 2112 | 3 | mm | cinta métrica; medio milímetro por los dos extremos y 2,5 mm por la huella del neumático
        7 | masa | 1.24 | 0.02 | 1.86 | 0.02 | kg | báscula de 0,01 kg que duda en un dígito
        8 | diámetro de la llanta | 622.0 | 1.0 | 622.5 | 1.0 | mm | dos extremos a un cuarto de milímetro, y el borde es redondo
        9 | tiempo de 10 vueltas | 12.4 | 0.2 | 14.8 | 0.2 | s | reacción al parar el cronómetro
        10 | vueltas | 10 | | 10
        12 | periodo | =B9/B10 :: 0.00 | =C9/B10 :: 0.00 | =D9/D10 :: 0.00 | =E9/D10 :: 0.00 | s
        13 | momento de inercia (aro) | =B7*(B8/2000)^2 :: 0.000 | =B13*(C7/B7+2*C8/B8) :: 0.000 | =D7*(D8/2000)^2 :: 0.000 | =D13*(E7/D7+2*E8/D8) :: 0.000 | kg·m²
        """);
    page.merge("A4:A5", "B4:C4", "D4:E4", "F4:F5", "G4:G5").bold("A1,A4:G5");
    page.other(Role.COUNT, "B10,D10");
    both(page, "perímetro", "mm", 6);
    both(page, "masa", "kg", 7);
    both(page, "diámetro de la llanta", "mm", 8);
    both(page, "tiempo de 10 vueltas", "s", 9);
    page.calculated("periodo", "s", "B12,D12").number("1.24", "1.48").uncertainty("C12,E12");
    page.calculated("momento de inercia", "kg·m²", "B13,D13")
        .number("0.120", "0.180")
        .uncertainty("C13,E13");
    return drawing;
  }

  private static void both(Page page, String quantity, String unit, int row) {
    page.measured(quantity, unit, "B" + row + ",D" + row)
        .uncertainty("C" + row + ",E" + row)
        .because("G" + row);
  }

  private static Drawing zweiKurbeln() {
    Drawing drawing =
        new Drawing(
            "zwei-kurbeln",
            "side-by-side-with-contributions",
            "crank arms",
            Language.GERMAN,
            Writer.POI_XLSX_WITHOUT_VALUES);
    Page page = drawing.page("Kurbeln");
    Rows.draw(
        page,
        """
        1 | Linke und rechte Kurbel
        2 | Tutor: Henning Quast (erfunden), Werte erfunden
        4 | | Linke Kurbel | | | | Rechte Kurbel
        5 | Größe | Wert | Ablesung | Objekt | Summe | Wert | Ablesung | Objekt | Summe | Einheit | Bemerkung zur Unsicherheit
        6 | Länge Achse bis Pedal | 170.0 | 0.5 | 0.5 | =C6+D6 :: 0.0 | 170.5 | 0.5 | 0.5 | =G6+H6 :: 0.0 | mm | Lineal, zweimal 0,25 mm; Gewinderand 0,5 mm
        7 | Dicke am Ende | 14.35 | 0.05 | 0.05 | =C7+D7 :: 0.00 | 14.40 | 0.05 | 0.05 | =G7+H7 :: 0.00 | mm | Messschieber, Nonius 0,05 mm; Eloxal ungleichmäßig
        8 | Masse | 268.4 | 0.1 | 0.1 | =C8+D8 :: 0.0 | 271.9 | 0.1 | 0.1 | =G8+H8 :: 0.0 | g | letzte Stelle; Fettreste am Gewinde
        10 | Masse je Länge | =B8/B6 :: 0.000 | | | =B10*(E8/B8+E6/B6) :: 0.000 | =F8/F6 :: 0.000 | | | =F10*(I8/F8+I6/F6) :: 0.000 | g/mm | aus den Werten darüber
        12 | rechts minus links | | | | | =F10-B10 :: 0.00
        13 | höchstens erlaubt | | | | | =E10+I10 :: 0.00
        """);
    page.merge("B4:E4", "F4:I4").bold("A1,B4,F4,A5:K5");
    arms(page, "Länge", "mm", 6);
    arms(page, "Dicke", "mm", 7);
    arms(page, "Masse", "g", 8);
    page.calculated("Masse je Länge", "g/mm", "B10,F10")
        .number("1.579", "1.595")
        .uncertainty("E10,I10");
    page.other(Role.COMPARISON, "F12:F13");
    return drawing;
  }

  private static void arms(Page page, String quantity, String unit, int row) {
    page.measured(quantity, unit, "B" + row + ",F" + row)
        .uncertainty("E" + row + ",I" + row)
        .contribution("reading", "C" + row + ",G" + row)
        .contribution("physical", "D" + row + ",H" + row)
        .because("K" + row);
  }
}
