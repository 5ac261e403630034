package tenthmark.samples.corpus.later;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** The values on one sheet, where their uncertainties come from on another. */
@AutoService(Family.class)
public final class SeparateSheets implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(speichenton(), viscosidad());
  }

  /** The second sheet has the contributions; the first fetches their sums. */
  private static Drawing speichenton() {
    Drawing drawing =
        new Drawing(
            "speichenton",
            "contributions-on-another-sheet",
            "spoke resonance",
            Language.GERMAN,
            Writer.CALC_XLSX);
    Page values = drawing.page("Werte");
    Rows.draw(
        values,
        """
        1 | Speichenton und Speichenspannung
        2 | Pauline Achterberg, HiWi (erfunden); alle Zahlen erfunden
        4 | Größe | Zeichen | Wert | ± | Einheit
        5 | freie Länge bis zur Kreuzung | l | 242 | =Fehler!F4 :: 0 | mm
        6 | Frequenz des Grundtons | f | 415 | =Fehler!F5 :: 0 | Hz
        7 | Masse der Speiche | m | 7.11 | =Fehler!F6 :: 0.00 | g
        8 | ganze Länge der Speiche | L | 288.0 | =Fehler!F7 :: 0.0 | mm
        10 | daraus
        11 | Masse je Länge m/L | µ | =1000*C7/C8 :: 0.00 | =C11*(D7/C7+D8/C8) :: 0.00 | g/m
        12 | Spannkraft 4·l²·f²·µ | F | =4*(C5/1000)^2*C6^2*C11/1000000 :: 0.00 | =C12*(2*D5/C5+2*D6/C6+D11/C11) :: 0.00 | kN
        """);
    values.bold("A1,A4:E4,A10");
    Page sources = drawing.page("Fehler");
    Rows.draw(
        sources,
        """
        1 | Woher die Unsicherheiten kommen (Beträge addiert)
        3 | Zeichen | Ablesung | Messgerät | Objekt | Einheit | Summe | Begründung
        4 | l | 0.5 | 0 | 1.5 | mm | =SUM(B4:D4) :: 0 | zwei Enden am Stahllineal zu je 0,25 mm; die Kreuzung klemmt auf 1,5 mm Breite
        5 | f | 1 | 1 | 0 | Hz | =SUM(B5:D5) :: 0 | Spitze im Spektrum auf 1 Hz; das Telefon gibt 1 Hz Auflösung an
        6 | m | 0.01 | 0.01 | 0 | g | =SUM(B6:D6) :: 0.00 | letzte Stelle und Angabe der Waage
        7 | L | 0.5 | 0 | 0.1 | mm | =SUM(B7:D7) :: 0.0 | zwei Enden zu je 0,25 mm; Bogen gerundet
        """);
    sources.bold("A1,A3:G3");
    source(values, "freie Länge l", "mm", 5);
    source(values, "Frequenz f", "Hz", 6);
    source(values, "Masse m", "g", 7);
    source(values, "ganze Länge L", "mm", 8);
    values.calculated("Masse je Länge µ", "g/m", "C11").number("24.69").uncertainty("D11");
    values.calculated("Spannkraft F", "kN", "C12").number("1.00").uncertainty("D12");
    sources.other(Role.CALCULATED, "F4:F7");
    return drawing;
  }

  private static void source(Page values, String quantity, String unit, int row) {
    int there = row - 1;
    values
        .measured(quantity, unit, "C" + row)
        .uncertainty("D" + row)
        .contribution("reading", "Fehler!B" + there)
        .contribution("instrument", "Fehler!C" + there)
        .contribution("physical", "Fehler!D" + there)
        .because("Fehler!G" + there);
  }

  /** The second sheet has the reasons as a list of sentences. */
  private static Drawing viscosidad() {
    Drawing drawing =
        new Drawing(
            "viscosidad-bidon",
            "reasons-on-another-sheet",
            "bottle viscosity",
            Language.SPANISH,
            Writer.POI_XLS);
    Page data = drawing.page("Datos");
    Rows.draw(
        data,
        """
        1 | Viscosidad de un jarabe para el bidón, con una bolita de rodamiento
        2 | Grupo B: Xabier Lekuona, Miren Iturbe (inventados)
        3 | magnitud | valor | incertidumbre | unidad
        4 | diámetro de la bolita D | 3.170 | 0.010 | mm
        5 | distancia de caída h | 100.0 | 1.0 | mm
        6 | tiempo de caída t | 28.6 | 0.4 | s
        7 | densidad del acero ρs | 7.80 | 0.05 | g/cm³
        8 | densidad del jarabe ρl | 1.40 | 0.02 | g/cm³
        9 | gravedad g (dada) | 9.80 | | m/s²
        11 | velocidad v = h/t | =B5/B6 :: 0.00 | =B11*(C5/B5+C6/B6) :: 0.00 | mm/s
        12 | viscosidad η = D²g(ρs-ρl)/18v | =(B4/1000)^2*B9*(B7-B8)*1000/(18*B11/1000) :: 0.0 | =B12*(2*C4/B4+(C7+C8)/(B7-B8)+C11/B11) :: 0.0 | Pa·s
        14 | valor de la etiqueta | 9.8 | | Pa·s
        15 | diferencia | =100*ABS(B12-B14)/B14 :: 0.0 | | %
        """);
    data.bold("A1,A3:D3");
    Rows.draw(
        drawing.page("Justificación"),
        """
        1 | De dónde sale cada incertidumbre
        3 | D: micrómetro de 0,01 mm, media división de lectura y otra media de juego.
        4 | h: dos marcas de rotulador, cada una leída con regla a un cuarto de milímetro y ancha otro cuarto; en total 1,0 mm.
        5 | t: dos pulsaciones a mano de 0,2 s cada una.
        6 | ρs: la tabla del fabricante de rodamientos da 7,75 a 7,85.
        7 | ρl: densímetro con divisiones de 0,02.
        """);
    data.measured("diámetro de la bolita D", "mm", "B4")
        .uncertainty("C4")
        .because("Justificación!A3");
    data.measured("distancia de caída h", "mm", "B5").uncertainty("C5").because("Justificación!A4");
    data.measured("tiempo de caída t", "s", "B6").uncertainty("C6").because("Justificación!A5");
    data.measured("densidad del acero ρs", "g/cm³", "B7")
        .uncertainty("C7")
        .because("Justificación!A6");
    data.measured("densidad del jarabe ρl", "g/cm³", "B8")
        .uncertainty("C8")
        .because("Justificación!A7");
    data.calculated("velocidad v", "mm/s", "B11").number("3.50").uncertainty("C11");
    data.calculated("viscosidad η", "Pa·s", "B12").number("10.0").uncertainty("C12");
    data.other(Role.CONSTANT, "B9").other(Role.ACCEPTED, "B14").other(Role.COMPARISON, "B15");
    return drawing;
  }
}
