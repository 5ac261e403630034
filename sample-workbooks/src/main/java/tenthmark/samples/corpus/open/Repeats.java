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

/** Series of repeats with their mean and their spread. */
@AutoService(Family.class)
public final class Repeats implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(bille(), radios(), naben(), pitch());
  }

  private static Drawing bille() {
    Drawing drawing =
        new Drawing(
            "bille-huit-chutes",
            "repeats",
            "bottle cage viscosity",
            Language.FRENCH,
            Writer.CALC_XLSX);
    Page page = drawing.page("Chutes");
    page.draw(
        "A1",
        """
        Bille dans le sirop du bidon : huit chutes

        n° | t (s)
        1 | 8.52
        2 | 8.71
        3 | 8.44
        4 | 8.63
        5 | 8.58
        6 | 8.49
        7 | 8.66
        8 | 8.57

        nombre de mesures n | =COUNT(B4:B11)
        moyenne de t (s) | =AVERAGE(B4:B11) :: 0.0
        écart type s (s) | =STDEV(B4:B11) :: 0.00
        s/√n (s) | =B15/SQRT(B13) :: 0.00
        réaction au chronomètre (s) | 0.20
        incertitude totale (s) | =B16+B17 :: 0.0
        Le même pouce pour toutes les chutes : la réaction ne diminue pas avec n, on l'ajoute telle quelle.
        """);
    page.bold("A1,A3:B3,A14,A18");
    page.other(Role.INDEX, "A4:A11")
        .other(Role.RAW, "B4:B11")
        .other(Role.COUNT, "B13")
        .other(Role.STATISTIC, "B15");
    page.record(Kind.MEAN, "t", "s", "B14")
        .number("8.575")
        .uncertainty("B18")
        .contribution("repeat", "B16")
        .contribution("timing", "B17")
        .because("A19");
    return drawing;
  }

  /** Each series is a row. */
  private static Drawing radios() {
    Drawing drawing =
        new Drawing(
            "radios-cinco-pulsaciones",
            "repeats-in-rows",
            "spoke pitch",
            Language.SPANISH,
            Writer.GNUMERIC_XLSX);
    Page page = drawing.page("Tonos");
    page.draw(
        "A1",
        """
        Tono de tres radios, cinco pulsaciones de cada uno

        Radio | f1 (Hz) | f2 (Hz) | f3 (Hz) | f4 (Hz) | f5 (Hz) | media (Hz) | desv. típica (Hz) | incertidumbre (Hz)
        A | 402 | 405 | 399 | 407 | 402 | =AVERAGE(B4:F4) :: 0.0 | =STDEV(B4:F4) :: 0.0 | =H4/SQRT(5) :: 0.0
        B | 431 | 428 | 433 | 430 | 428 | =AVERAGE(B5:F5) :: 0.0 | =STDEV(B5:F5) :: 0.0 | =H5/SQRT(5) :: 0.0
        C | 377 | 381 | 374 | 379 | 379 | =AVERAGE(B6:F6) :: 0.0 | =STDEV(B6:F6) :: 0.0 | =H6/SQRT(5) :: 0.0

        Incertidumbre: desviación típica dividida por la raíz de 5. La resolución del analizador (0,1 Hz) no cuenta a su lado.
        """);
    page.bold("A1,A3:I3");
    page.other(Role.RAW, "B4:F6").other(Role.STATISTIC, "H4:H6");
    page.record(Kind.MEAN, "f media", "Hz", "G4:G6")
        .number("403.0", "430.0", "378.0")
        .uncertainty("I4:I6")
        .because("A8");
    return drawing;
  }

  private static Drawing naben() {
    Drawing drawing =
        new Drawing(
            "naben-auslauf",
            "repeats",
            "bearing friction",
            Language.GERMAN,
            Writer.POI_XLSX_WITHOUT_VALUES);
    Page page = drawing.page("Auslauf");
    page.draw(
        "A1",
        """
        Auslaufzeit des Vorderrads mit zwei Naben
        Gruppe Süd

        Versuch | Nabe A | Nabe B
        | t / s | t / s
        1 | 64.2 | 81.5
        2 | 66.0 | 79.9
        3 | 63.1 | 82.4
        4 | 65.3 | 80.6
        5 | 64.9 | 81.1
        Mittelwert | =AVERAGE(B6:B10) :: 0.0 | =AVERAGE(C6:C10) :: 0.0
        Standardabweichung | =STDEV(B6:B10) :: 0.0 | =STDEV(C6:C10) :: 0.0
        Δt = s/√n | =B12/SQRT(COUNT(B6:B10)) :: 0.0 | =C12/SQRT(COUNT(C6:C10)) :: 0.0

        Die Reaktionszeit beim Stoppen steckt schon in der Streuung.
        Unterschied B − A in s | =C11-B11 :: 0.0
        Unsicherheit dazu in s | =B13+C13 :: 0.0
        """);
    page.bold("A1,A4:C5,A11:C11");
    page.other(Role.INDEX, "A6:A10").other(Role.RAW, "B6:C10").other(Role.STATISTIC, "B12:C12");
    page.record(Kind.MEAN, "t Nabe A", "s", "B11").number("64.7").uncertainty("B13").because("A15");
    page.record(Kind.MEAN, "t Nabe B", "s", "C11").number("81.1").uncertainty("C13").because("A15");
    page.calculated("Unterschied", "s", "B16").number("16.4").uncertainty("B17");
    return drawing;
  }

  private static Drawing pitch() {
    Drawing drawing =
        new Drawing(
            "chain-pitch-repeats", "repeats", "chain stretch", Language.ENGLISH, Writer.CALC_ODS);
    Page page = drawing.page("Pitch");
    page.draw(
        "A1",
        """
        Pitch of a new chain, ten links
        Student: Lowri Pugh

        Link | Pitch (mm)
        1 | 12.71
        2 | 12.69
        3 | 12.72
        4 | 12.70
        5 | 12.68
        6 | 12.71
        7 | 12.73
        8 | 12.70
        9 | 12.69
        10 | 12.71

        Mean (mm) | =AVERAGE(B5:B14) :: 0.00
        Std. dev. (mm) | =STDEV(B5:B14) :: 0.000
        Std. dev. of the mean (mm) | =B17/SQRT(10) :: 0.000
        Caliper (mm) | 0.05
        Uncertainty (mm) | =B18+B19 :: 0.00
        Accepted value (mm) | 12.70
        Percent error | =(B16-B21)/B21*100 :: 0.00
        The caliper's own 0.05 mm does not average out, so it is added to the spread of the mean.
        """);
    page.bold("A1,A4:B4,A16,A20");
    page.other(Role.INDEX, "A5:A14")
        .other(Role.RAW, "B5:B14")
        .other(Role.STATISTIC, "B17")
        .other(Role.ACCEPTED, "B21")
        .other(Role.COMPARISON, "B22");
    page.record(Kind.MEAN, "Pitch", "mm", "B16")
        .number("12.704")
        .uncertainty("B20")
        .contribution("repeat", "B18")
        .contribution("instrument", "B19")
        .because("A23");
    return drawing;
  }
}
