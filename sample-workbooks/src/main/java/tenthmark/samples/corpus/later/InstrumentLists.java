package tenthmark.samples.corpus.later;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Records;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Instruments are listed once with step and tolerance; the records fetch both from the list. */
@AutoService(Family.class)
public final class InstrumentLists implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(rollversuch(), frenoCalor());
  }

  /** The list stands above the table, looked up by an abbreviation. */
  private static Drawing rollversuch() {
    Drawing drawing =
        new Drawing(
            "rollversuch",
            "instrument-list-above",
            "rolling wheel",
            Language.GERMAN,
            Writer.CALC_ODS);
    Page page = drawing.page("Protokoll");
    Rows.draw(
        page,
        """
        1 | Rollversuch: Geräteliste und Messwerte (erfunden)
        3 | Kürzel | Gerät | Teilung | Genauigkeit | Einheit
        4 | BM | Bandmaß | 1 | 0.5 | mm
        5 | MS | Messschieber | 0.05 | 0.05 | mm
        6 | SU | Stoppuhr | 0.01 | 0.2 | s
        7 | WA | Waage | 0.1 | 0.1 | g
        9 | Ablesung: beim Bandmaß ein Viertel der Teilung je Ende, sonst ein ganzer Schritt. Genauigkeit laut Beiblatt, bei der Stoppuhr die Reaktion der Hand.
        11 | Größe | Wert | Einheit | mit | Enden | Ablesung | Gerät | Gesamt | Begründung
        12 | Rollstrecke s | 3000.0 | mm | BM | 2 | =E12*VLOOKUP(D12,$A$4:$E$7,3,FALSE)/4 :: 0.0 | =VLOOKUP(D12,$A$4:$E$7,4,FALSE) :: 0.0 | =F12+G12 :: 0.0 | zwei Enden, Band liegt flach
        13 | Durchmesser der Achse d | 25.40 | mm | MS | | =VLOOKUP(D13,$A$4:$E$7,3,FALSE) :: 0.00 | =VLOOKUP(D13,$A$4:$E$7,4,FALSE) :: 0.00 | =F13+G13 :: 0.00 | Nonius, Schenkel eben
        14 | Laufzeit t | 8.4 | s | SU | | =VLOOKUP(D14,$A$4:$E$7,3,FALSE) :: 0.00 | =VLOOKUP(D14,$A$4:$E$7,4,FALSE) :: 0.0 | =F14+G14 :: 0.0 | von Hand gestoppt, Start durch eine Klappe
        15 | Masse des Rads m | 842.6 | g | WA | | =VLOOKUP(D15,$A$4:$E$7,3,FALSE) :: 0.0 | =VLOOKUP(D15,$A$4:$E$7,4,FALSE) :: 0.0 | =F15+G15 :: 0.0 | Anzeige ruhig
        17 | Ergebnis | Wert | Einheit | | | | | Gesamt
        18 | mittlere Geschwindigkeit v = s/t | =B12/1000/B14 :: 0.000 | m/s | | | | | =B18*(H12/B12+H14/B14) :: 0.000
        19 | mittlerer Impuls p = m·v | =B15/1000*B18 :: 0.000 | kg·m/s | | | | | =B19*(H15/B15+H18/B18) :: 0.000
        """);
    page.bold("A1,A3:E3,A11:I11,A17:H17");
    instrument(page, "Rollstrecke s", "mm", 12, 4).parameter("E12");
    instrument(page, "Durchmesser der Achse d", "mm", 13, 5);
    instrument(page, "Laufzeit t", "s", 14, 6);
    instrument(page, "Masse des Rads m", "g", 15, 7);
    page.calculated("mittlere Geschwindigkeit v", "m/s", "B18").number("0.357").uncertainty("H18");
    page.calculated("mittlerer Impuls p", "kg·m/s", "B19").number("0.301").uncertainty("H19");
    return drawing;
  }

  private static Records instrument(
      Page page, String quantity, String unit, int row, int instrument) {
    return page.measured(quantity, unit, "B" + row)
        .uncertainty("H" + row)
        .contribution("reading", "F" + row)
        .contribution("instrument", "G" + row)
        .parameter("C" + instrument)
        .parameter("D" + instrument)
        .because("I" + row);
  }

  /** The list has a sheet of its own, with the reasons. */
  private static Drawing frenoCalor() {
    Drawing drawing =
        new Drawing(
            "freno-calor",
            "instrument-list-on-another-sheet",
            "brake heat",
            Language.SPANISH,
            Writer.CALC_XLSX);
    Page tools = drawing.page("Aparatos");
    Rows.draw(
        tools,
        """
        1 | Aparatos, y por qué esos errores
        2 | aparato | mínima división | precisión | explicación
        3 | flexómetro | 1 | 0.5 | un cuarto de división en cada extremo; la cinta puede fallar medio milímetro
        4 | dinamómetro | 1 | 1 | la aguja baila una división; el fabricante da 1 N
        5 | termómetro | 0.1 | 0.2 | digital, último dígito; el fabricante da 0,2 °C
        """);
    tools.bold("A1,A2:D2");
    Page page = drawing.page("Medidas");
    Rows.draw(
        page,
        """
        1 | Freno de disco: del trabajo al calor (Oihan Basterra, datos inventados)
        3 | qué | cuánto | unidad | error de lectura | error del aparato | error total
        4 | radio del disco r | 80.0 | mm | =2*Aparatos!B3/4 :: 0.0 | =Aparatos!C3 :: 0.0 | =D4+E4 :: 0.0
        5 | fuerza de frenado F | 62 | N | =Aparatos!B4 :: 0 | =Aparatos!C4 :: 0 | =D5+E5 :: 0
        6 | temperatura al principio | 22.4 | °C | =Aparatos!B5 :: 0.0 | =Aparatos!C5 :: 0.0 | =D6+E6 :: 0.0
        7 | temperatura al final | 41.7 | °C | =Aparatos!B5 :: 0.0 | =Aparatos!C5 :: 0.0 | =D7+E7 :: 0.0
        8 | vueltas | 120 | | | | contadas
        10 | par M = F·r | =B5*B4/1000 :: 0.0 | N·m | | | =B10*(F5/B5+F4/B4) :: 0.0
        11 | subida de temperatura | =B7-B6 :: 0.0 | K | | | =F6+F7 :: 0.0
        12 | trabajo W = 2πnM | =2*PI()*B8*B10/1000 :: 0.00 | kJ | | | =B12*F10/B10 :: 0.00
        13 | capacidad calorífica W/ΔT | =1000*B12/B11 :: 0 | J/K | | | =B13*(F12/B12+F11/B11) :: 0
        """);
    page.bold("A1,A3:F3");
    fetched(page, "radio del disco r", "mm", 4, 3);
    fetched(page, "fuerza de frenado F", "N", 5, 4);
    fetched(page, "temperatura al principio", "°C", 6, 5);
    fetched(page, "temperatura al final", "°C", 7, 5);
    page.other(Role.COUNT, "B8");
    page.calculated("par M", "N·m", "B10").number("5.0").uncertainty("F10");
    page.calculated("subida de temperatura", "K", "B11").number("19.3").uncertainty("F11");
    page.calculated("trabajo W", "kJ", "B12").number("3.74").uncertainty("F12");
    page.calculated("capacidad calorífica", "J/K", "B13").number("194").uncertainty("F13");
    return drawing;
  }

  private static void fetched(Page page, String quantity, String unit, int row, int tool) {
    page.measured(quantity, unit, "B" + row)
        .uncertainty("F" + row)
        .contribution("reading", "D" + row)
        .contribution("instrument", "E" + row)
        .parameter("Aparatos!B" + tool)
        .parameter("Aparatos!C" + tool)
        .because("Aparatos!D" + tool);
  }
}
