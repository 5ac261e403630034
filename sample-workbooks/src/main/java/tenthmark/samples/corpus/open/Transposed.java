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

/** Headings at the left, what belongs together in a column. */
@AutoService(Family.class)
public final class Transposed implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(wheel(), freilauf(), bateria());
  }

  private static Drawing wheel() {
    Drawing drawing =
        new Drawing(
            "wheel-periods-sideways",
            "transposed",
            "wheel timing",
            Language.ENGLISH,
            Writer.GNUMERIC_XLSX);
    Page page = drawing.page("Timing");
    page.draw(
        "A1",
        """
        A valve that swings the wheel: period of small swings
        Group of four: Ada, Ravi, Kit, Jo

        run | 1 | 2 | 3 | 4
        swings counted | 20 | 20 | 20 | 20
        time for all (s) | 36.4 | 36.9 | 36.1 | 36.6
        ± (s) | 0.2 | 0.2 | 0.2 | 0.2
        period T (s) | =B6/B5 :: 0.000 | =C6/C5 :: 0.000 | =D6/D5 :: 0.000 | =E6/E5 :: 0.000
        uncertainty of T (s) | =B7/B5 :: 0.000 | =C7/C5 :: 0.000 | =D7/D5 :: 0.000 | =E7/E5 :: 0.000
        timed by | Ada | Ravi | Kit | Jo

        The ± is our reaction: start and stop together came out at 0.2 s when we tried it on a metronome.
        """);
    page.bold("A1,A4:A10");
    page.other(Role.INDEX, "B4:E4").other(Role.COUNT, "B5:E5");
    page.measured("time", "s", "B6:E6").uncertainty("B7:E7").because("A12");
    page.calculated("period", "s", "B8:E8")
        .number("1.820", "1.845", "1.805", "1.830")
        .uncertainty("B9:E9");
    return drawing;
  }

  /** A quantity a column. */
  private static Drawing freilauf() {
    Drawing drawing =
        new Drawing(
            "freilauf-spalten",
            "record-columns",
            "freewheel counts",
            Language.GERMAN,
            Writer.POI_XLSX);
    Page page = drawing.page("Freilauf");
    page.draw(
        "A1",
        """
        Knattern des Freilaufs
        (ausgedachte Messung der Gruppe Ost)

        Größe | Rasten je Umdrehung | Umdrehungen | Laufzeit | Knatterfrequenz
        Zeichen | N | n | t | f
        Wert | 32 | 10 | 12.6 | =B6*C6/D6 :: 0.0
        Unsicherheit | gezählt | gezählt | 0.2 | =E6*D7/D6 :: 0.0
        Einheit | – | – | s | Hz
        Begründung | am offenen Freilauf gezählt | Marke am Ventil | von Hand gestoppt | aus N, n und t
        """);
    page.bold("A1,A4:A9,B4:E4");
    page.other(Role.COUNT, "B6:C6");
    page.measured("Laufzeit", "s", "D6").uncertainty("D7").because("D9");
    page.calculated("Knatterfrequenz", "Hz", "E6").number("25.4").uncertainty("E7").because("E9");
    return drawing;
  }

  private static Drawing bateria() {
    Drawing drawing =
        new Drawing(
            "bateria-por-filas",
            "transposed",
            "battery discharge",
            Language.SPANISH,
            Writer.CALC_XLS);
    Page page = drawing.page("Descarga");
    page.draw(
        "A1",
        """
        Descarga de la batería de la luz trasera

        Hora (h) | 0 | 1 | 2 | 3 | 4
        U (V) | 4.12 | 4.01 | 3.93 | 3.82 | 3.72
        ΔU (V) | 0.03 | 0.03 | 0.03 | 0.03 | 0.03

        ¿Por qué? El polímetro da 0,5 % + 1 dígito: 0,03 V en todo el intervalo.

        Caída por hora (pendiente) | =SLOPE(B4:F4,B3:F3) :: 0.000 | V/h
        incertidumbre de la pendiente | =INDEX(LINEST(B4:F4,B3:F3,TRUE,TRUE),2,1) :: 0.000 | V/h
        """);
    page.bold("A1,A3:A5");
    page.other(Role.RAW, "B3:F3");
    page.measured("U", "V", "B4:F4").uncertainty("B5:F5").because("A7");
    page.record(Kind.SLOPE, "Caída por hora", "V/h", "B9").number("-0.099").uncertainty("B10");
    return drawing;
  }
}
