package tenthmark.samples.corpus.later;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Kind;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Series of repeats with mean and spread: along a row, or down a column. */
@AutoService(Family.class)
public final class Repeats implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(periodoRueda(), rampe());
  }

  /** Five trials in a row, their statistics behind them, headings in two rows. */
  private static Drawing periodoRueda() {
    Drawing drawing =
        new Drawing(
            "periodo-rueda",
            "repeats-along-a-row",
            "wheel timing",
            Language.SPANISH,
            Writer.POI_XLS);
    Page page = drawing.page("Práctica 5");
    Rows.draw(
        page,
        """
        1 | Práctica 5: periodo de la rueda con un contrapeso
        2 | Guion de R. Ibarlucea (inventado, como los datos)
        3 | Vueltas contadas en cada medida | 10
        4 | Reacción del que cronometra (s) | 0.2
        6 | Contrapeso | Tiempo de diez vueltas t (s) | | | | | Media (s) | Desv. típica (s) | Error de la media (s) | Error total (s) | Periodo T (s) | Error de T (s)
        7 | | 1 | 2 | 3 | 4 | 5
        8 | en el buje | 12.31 | 12.44 | 12.18 | 12.37 | 12.25 | =AVERAGE(B8:F8) :: 0.0 | =STDEV(B8:F8) :: 0.00 | =H8/SQRT(5) :: 0.00 | =I8+$B$4 :: 0.0 | =G8/$B$3 :: 0.00 | =J8/$B$3 :: 0.00
        9 | a media altura | 14.02 | 13.87 | 14.11 | 13.95 | 14.06 | =AVERAGE(B9:F9) :: 0.0 | =STDEV(B9:F9) :: 0.00 | =H9/SQRT(5) :: 0.00 | =I9+$B$4 :: 0.0 | =G9/$B$3 :: 0.00 | =J9/$B$3 :: 0.00
        10 | en la llanta | 17.63 | 17.48 | 17.71 | 17.55 | 17.60 | =AVERAGE(B10:F10) :: 0.0 | =STDEV(B10:F10) :: 0.00 | =H10/SQRT(5) :: 0.00 | =I10+$B$4 :: 0.0 | =G10/$B$3 :: 0.00 | =J10/$B$3 :: 0.00
        12 | El error total es el de la media más la reacción al parar el cronómetro (0,2 s); al arrancar se cuenta «tres, dos, uno» y no añade nada.
        """);
    page.merge("A6:A7", "B6:F6", "G6:G7", "H6:H7", "I6:I7", "J6:J7", "K6:K7", "L6:L7");
    page.bold("A1,A6:L6");
    page.other(Role.COUNT, "B3").other(Role.INDEX, "B7:F7").other(Role.RAW, "B8:F10");
    page.other(Role.STATISTIC, "H8:H10");
    page.record(Kind.MEAN, "tiempo de diez vueltas t", "s", "G8:G10")
        .number("12.31", "14.00", "17.59")
        .uncertainty("J8:J10")
        .contribution("repeat", "I8:I10")
        .contribution("timing", "B4")
        .because("A12");
    page.calculated("Periodo T", "s", "K8:K10")
        .number("1.23", "1.40", "1.76")
        .uncertainty("L8:L10");
    return drawing;
  }

  /** Six trials down a column for each height, their statistics below. */
  private static Drawing rampe() {
    Drawing drawing =
        new Drawing(
            "rampe",
            "repeats-down-a-column",
            "inclined plane roll",
            Language.GERMAN,
            Writer.GNUMERIC_XLSX);
    Page page = drawing.page("Tabelle1");
    Rows.draw(
        page,
        """
        1 | Felge rollt die Rampe runter
        2 | Thore Wessling, alles erfunden
        3 | Strecke s | 1.500 | m | ± | 0.002 | m | Bandmaß: an jedem Ende 0,5 mm abgelesen, und der Bügel vom Start ist 1 mm breit
        4 | Lichtschranke | 0.001 | s | letzte Stelle
        6 | | h = 2 cm | h = 4 cm | h = 6 cm
        7 | Messung 1, t in s | 4.213 | 2.975 | 2.431
        8 | Messung 2 | 4.198 | 2.961 | 2.445
        9 | Messung 3 | 4.231 | 2.990 | 2.418
        10 | Messung 4 | 4.205 | 2.968 | 2.440
        11 | Messung 5 | 4.240 | 2.983 | 2.424
        12 | Messung 6 | 4.190 | 2.957 | 2.436
        13 | Mittelwert von t in s | =AVERAGE(B7:B12) :: 0.000 | =AVERAGE(C7:C12) :: 0.000 | =AVERAGE(D7:D12) :: 0.000
        14 | Standardabweichung | =STDEV(B7:B12) :: 0.000 | =STDEV(C7:C12) :: 0.000 | =STDEV(D7:D12) :: 0.000
        15 | durch Wurzel 6 | =B14/SQRT(6) :: 0.000 | =C14/SQRT(6) :: 0.000 | =D14/SQRT(6) :: 0.000
        16 | Fehler von t in s | =B15+$B$4 :: 0.000 | =C15+$B$4 :: 0.000 | =D15+$B$4 :: 0.000
        17 | a = 2s/t² in m/s² | =2*$B$3/B13^2 :: 0.0000 | =2*$B$3/C13^2 :: 0.0000 | =2*$B$3/D13^2 :: 0.000
        18 | Fehler von a in m/s² | =B17*($E$3/$B$3+2*B16/B13) :: 0.0000 | =C17*($E$3/$B$3+2*C16/C13) :: 0.0000 | =D17*($E$3/$B$3+2*D16/D13) :: 0.000
        20 | Fehler von t: Streuung vom Mittelwert plus die letzte Stelle von der Lichtschranke.
        """);
    page.bold("A1,B6:D6");
    page.other(Role.RAW, "B7:D12").other(Role.STATISTIC, "B14:D14");
    page.measured("Strecke s", "m", "B3").uncertainty("E3").because("G3");
    page.record(Kind.MEAN, "t", "s", "B13:D13")
        .number("4.213", "2.972", "2.432")
        .uncertainty("B16:D16")
        .contribution("repeat", "B15:D15")
        .contribution("instrument", "B4")
        .because("A20");
    page.calculated("a", "m/s²", "B17:D17")
        .number("0.1690", "0.3396", "0.507")
        .uncertainty("B18:D18");
    return drawing;
  }
}
