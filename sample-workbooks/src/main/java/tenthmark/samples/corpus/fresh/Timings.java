package tenthmark.samples.corpus.fresh;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.samples.corpus.Draw;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Kind;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Clocks and light gates. */
@AutoService(Family.class)
public final class Timings implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(spinDown(), plank(), bremsfeder(), pruebas(), diary());
  }

  /** Symbols, the units in the row below; a logarithm and its line. */
  private static Drawing spinDown() {
    Drawing drawing =
        Draw.en("spin-down", "units-under-symbols", "spin-down of a wheel", Writer.CALC_ODS);
    Page page = drawing.page("run 2");
    page.rows(
        """
        1 | Spin-down of a front wheel on its ball bearings
        2 | Corin Haddow and Ji-won Bae, Tuesday, bench 6 (both invented, data too)
        4 | t | Δt | T | ΔT | ω | Δω | ln ω | Δ(ln ω)
        5 | s | s | s | s | rad/s | rad/s | – | –
        6 | 0.0 | 0.5 | 0.402 | 0.004 | =2*PI()/C6 :: 0.00 | =E6*D6/C6 :: 0.00 | =LN(E6) :: 0.000 | =D6/C6 :: 0.000
        7 | 20.0 | 0.5 | 0.504 | 0.004 | =2*PI()/C7 :: 0.00 | =E7*D7/C7 :: 0.00 | =LN(E7) :: 0.000 | =D7/C7 :: 0.000
        8 | 40.0 | 0.5 | 0.624 | 0.004 | =2*PI()/C8 :: 0.00 | =E8*D8/C8 :: 0.00 | =LN(E8) :: 0.000 | =D8/C8 :: 0.000
        9 | 60.0 | 0.5 | 0.787 | 0.004 | =2*PI()/C9 :: 0.00 | =E9*D9/C9 :: 0.00 | =LN(E9) :: 0.000 | =D9/C9 :: 0.000
        10 | 80.0 | 0.5 | 0.975 | 0.004 | =2*PI()/C10 :: 0.00 | =E10*D10/C10 :: 0.00 | =LN(E10) :: 0.000 | =D10/C10 :: 0.000
        11 | 100.0 | 0.5 | 1.226 | 0.004 | =2*PI()/C11 :: 0.000 | =E11*D11/C11 :: 0.000 | =LN(E11) :: 0.000 | =D11/C11 :: 0.000
        12 | 120.0 | 0.5 | 1.519 | 0.004 | =2*PI()/C12 :: 0.000 | =E12*D12/C12 :: 0.000 | =LN(E12) :: 0.000 | =D12/C12 :: 0.000
        13 | t from the kitchen clock, somebody calls and somebody looks: half a second. T is one turn past the light gate: it shows thousandths, but its paper flag flutters and two turns in a row differ by up to 4 of them.
        15 | slope of ln ω against t | | | =SLOPE(G6:G12,A6:A12) :: 0.00000 | ± | =INDEX(LINEST(G6:G12,A6:A12,TRUE,TRUE),2,1) :: 0.00000 | 1/s
        16 | time constant τ | | | =-1/D15 :: 0.0 | ± | =D16*F15/ABS(D15) :: 0.0 | s
        17 | half of the speed is gone after | | | =D16*LN(2) :: 0.0 | ± | =F16*LN(2) :: 0.0 | s
        """);
    page.bold("A1,A4:H4").merge("A15:C15", "A16:C16", "A17:C17");
    page.measured("t", "s", "A6:A12").uncertainty("B6:B12").because("A13");
    page.measured("T", "s", "C6:C12").uncertainty("D6:D12").because("A13");
    page.calculated("ω", "rad/s", "E6:E12").uncertainty("F6:F12");
    page.calculated("ln ω", "", "G6:G12").uncertainty("H6:H12");
    page.record(Kind.SLOPE, "slope", "1/s", "D15").uncertainty("F15");
    page.calculated("time constant τ", "s", "D16").uncertainty("F16");
    page.calculated("half of the speed is gone", "s", "D17").uncertainty("F17");
    return drawing;
  }

  /** One uncertainty for all in a sentence, its number only inside the formulas. */
  private static Drawing plank() {
    Drawing drawing =
        Draw.en("plank", "sentence-for-all", "wheel rolling down a plank", Writer.POI_XLSX);
    Page page = drawing.page("Sheet1");
    page.rows(
        """
        1 | LAB 4 - a wheel rolls down a plank
        2 | Name: Odalys Merriweather (invented) | | | Partner: none
        4 | From mark to mark | 1.800 | m | give or take | 0.003 | m
        5 | (tape: 1 mm at each end, and 1 mm because it sags in the middle)
        6 | Δt = 0.2 s for all the times below. It is my thumb on the phone, start and stop together.
        8 | Books under the end | Time t (s) | Average speed (m/s) | ± (m/s) | Acceleration (m/s²) | ± (m/s²)
        9 | 1 | 3.9 | =$B$4/B9 :: 0.00 | =C9*(0.2/B9+$E$4/$B$4) :: 0.00 | =2*$B$4/B9^2 :: 0.00 | =E9*(2*0.2/B9+$E$4/$B$4) :: 0.00
        10 | 2 | 2.8 | =$B$4/B10 :: 0.00 | =C10*(0.2/B10+$E$4/$B$4) :: 0.00 | =2*$B$4/B10^2 :: 0.00 | =E10*(2*0.2/B10+$E$4/$B$4) :: 0.00
        11 | 3 | 2.2 | =$B$4/B11 :: 0.00 | =C11*(0.2/B11+$E$4/$B$4) :: 0.00 | =2*$B$4/B11^2 :: 0.00 | =E11*(2*0.2/B11+$E$4/$B$4) :: 0.00
        12 | 4 | 1.9 | =$B$4/B12 :: 0.00 | =C12*(0.2/B12+$E$4/$B$4) :: 0.00 | =2*$B$4/B12^2 :: 0.0 | =E12*(2*0.2/B12+$E$4/$B$4) :: 0.0
        14 | The wheel starts from rest, so s = ½ a t². More books, more acceleration, as it should be.
        """);
    page.bold("A8:F8");
    page.measured("From mark to mark", "m", "B4").uncertainty("E4").because("A5");
    page.other(Role.COUNT, "A9:A12");
    page.measured("Time t", "s", "B9:B12").uncertaintyOf(0.2).because("A6");
    page.calculated("Average speed", "m/s", "C9:C12").uncertainty("D9:D12");
    page.calculated("Acceleration", "m/s²", "E9:E12").uncertainty("F9:F12");
    return drawing;
  }

  /** Squares of periods against masses, the line under the graph's data. */
  private static Drawing bremsfeder() {
    Drawing drawing =
        Draw.de("feder-t-quadrat", "squared-column", "spring of a brake caliper", Writer.CALC_XLSX);
    Page page = drawing.page("Schwingung");
    page.rows(
        """
        1 | Rückholfeder einer Bremszange als Pendel
        2 | Protokoll: Jannes Uhlenbrock (erfunden), Zahlen erfunden
        3 | Zehn Schwingungen gestoppt, T ist ein Zehntel davon. Fehler beim Stoppen: 0,2 s auf zehn Schwingungen (Reaktion am Anfang und am Ende je 0,1 s). Massenstücke auf der Laborwaage geprüft, sie weichen bis 1 g ab.
        5 | Nr. | m in g | Fehler m in g | 10 T in s | Fehler 10 T in s | T in s | Fehler T in s | T² in s² | Fehler T² in s²
        6 | 1 | 200 | 1.0 | 5.9 | 0.2 | =D6/10 :: 0.00 | =E6/10 :: 0.00 | =F6^2 :: 0.00 | =2*F6*G6 :: 0.00
        7 | 2 | 300 | 1.0 | 7.1 | 0.2 | =D7/10 :: 0.00 | =E7/10 :: 0.00 | =F7^2 :: 0.00 | =2*F7*G7 :: 0.00
        8 | 3 | 400 | 1.0 | 8.2 | 0.2 | =D8/10 :: 0.00 | =E8/10 :: 0.00 | =F8^2 :: 0.00 | =2*F8*G8 :: 0.00
        9 | 4 | 500 | 1.0 | 9.0 | 0.2 | =D9/10 :: 0.00 | =E9/10 :: 0.00 | =F9^2 :: 0.00 | =2*F9*G9 :: 0.00
        10 | 5 | 600 | 1.0 | 9.9 | 0.2 | =D10/10 :: 0.00 | =E10/10 :: 0.00 | =F10^2 :: 0.00 | =2*F10*G10 :: 0.00
        12 | Ausgleichsgerade T² = A·m + B
        13 | Steigung A | =SLOPE(H6:H10,B6:B10) :: 0.00000 | s²/g
        14 | Fehler von A | =INDEX(LINEST(H6:H10,B6:B10,TRUE,TRUE),2,1) :: 0.00000 | s²/g
        15 | Achsenabschnitt B | =INTERCEPT(H6:H10,B6:B10) :: 0.000 | s²
        16 | Fehler von B | =INDEX(LINEST(H6:H10,B6:B10,TRUE,TRUE),2,2) :: 0.000 | s²
        18 | Federkonstante D = 4π²/A | =4*PI()^2/B13/1000 :: 0.0 | N/m
        19 | Fehler von D | =B18*B14/B13 :: 0.0 | N/m
        """);
    page.draw("B6", "200.0\n300.0\n400.0\n500.0\n600.0");
    page.bold("A1,A5:I5,A12").graph("E12:I26", "T² gegen m", "B6:B10", "H6:H10");
    page.other(Role.INDEX, "A6:A10");
    page.measured("m", "g", "B6:B10").uncertainty("C6:C10").because("A3");
    page.measured("10 T", "s", "D6:D10").uncertainty("E6:E10").because("A3");
    page.calculated("T", "s", "F6:F10").uncertainty("G6:G10");
    page.calculated("T²", "s²", "H6:H10").uncertainty("I6:I10");
    page.record(Kind.SLOPE, "Steigung A", "s²/g", "B13").uncertainty("B14");
    page.record(Kind.INTERCEPT, "Achsenabschnitt B", "s²", "B15").uncertainty("B16");
    page.calculated("Federkonstante D", "N/m", "B18").uncertainty("B19");
    return drawing;
  }

  /** A sheet for each trial, and one that collects them. */
  private static Drawing pruebas() {
    Drawing drawing =
        Draw.es("tres-pruebas", "sheet-per-trial", "braking distance", Writer.CALC_XLSX);
    String form =
        """
        1 | Prueba de frenado n.º %s
        2 | Beltrán Uriarte (inventado; medidas inventadas)
        4 | Velocidad al empezar | %s | km/h
        5 | su error | 0.5 | km/h
        6 | El cuentakilómetros enseña medios km/h y no se lee entre ellos.
        8 | Distancia hasta pararse | %s | m
        9 | su error | 0.10 | m
        10 | Cinta métrica, 1 cm en cada extremo; los otros 8 cm porque la marca de la rueda no empieza de golpe.
        12 | Velocidad en m/s | =B4/3.6 :: 0.00 | m/s
        13 | su error | =B5/3.6 :: 0.00 | m/s
        14 | Frenado a = v²/(2d) | =B12^2/(2*B8) :: 0.0 | m/s²
        15 | su error | =B14*(2*B13/B12+B9/B8) :: 0.0 | m/s²
        """;
    String[][] trials = {{"1", "18.0", "3.55"}, {"2", "20.5", "4.75"}, {"3", "23.0", "5.91"}};
    for (String[] trial : trials) {
      Page page = drawing.page("Prueba " + trial[0]);
      page.rows(form.formatted((Object[]) trial)).bold("A1");
      page.measured("Velocidad al empezar", "km/h", "B4").uncertainty("B5").because("A6");
      page.measured("Distancia hasta pararse", "m", "B8").uncertainty("B9").because("A10");
      page.calculated("Velocidad", "m/s", "B12").uncertainty("B13");
      page.calculated("Frenado a", "m/s²", "B14").uncertainty("B15");
    }
    Page page = drawing.page("Resumen");
    page.rows(
        """
        1 | Resumen de las tres pruebas
        3 | Prueba | a (m/s²) | Error de a (m/s²)
        4 | 1 | ='Prueba 1'!B14 :: 0.0 | ='Prueba 1'!B15 :: 0.0
        5 | 2 | ='Prueba 2'!B14 :: 0.0 | ='Prueba 2'!B15 :: 0.0
        6 | 3 | ='Prueba 3'!B14 :: 0.0 | ='Prueba 3'!B15 :: 0.0
        7 | Promedio | =AVERAGE(B4:B6) :: 0.0 | =SUM(C4:C6)/3 :: 0.0
        9 | El error del promedio es la suma de los tres errores entre 3.
        """);
    page.bold("A1,A3:C3").other(Role.INDEX, "A4:A6");
    page.calculated("a", "m/s²", "B4:B6").uncertainty("C4:C6");
    page.calculated("Promedio", "m/s²", "B7").uncertainty("C7").because("A9");
    return drawing;
  }

  /** A line a day, with dates. */
  private static Drawing diary() {
    Drawing drawing = Draw.en("slow-puncture", "diary", "slow puncture", Writer.GNUMERIC_ODS);
    Page page = drawing.page("tyre diary");
    page.rows(
        """
        1 | Slow puncture: how fast does my rear tyre go soft?
        2 | a diary by Tamsin Achterberg (there is no such person and no such tyre)
        3 | air pressure outside, weather station | 1.013 | bar, taken as exact
        5 | date | day | what the gauge says / bar | give or take / bar | with the outside air / bar | give or take / bar | its natural logarithm | give or take
        6 | 2026-03-02 | 0 | 3.50 | 0.02 | =C6+$B$3 :: 0.00 | =D6 :: 0.00 | =LN(E6) :: 0.000 | =F6/E6 :: 0.000
        7 | 2026-03-05 | 3 | 3.35 | 0.02 | =C7+$B$3 :: 0.00 | =D7 :: 0.00 | =LN(E7) :: 0.000 | =F7/E7 :: 0.000
        8 | 2026-03-09 | 7 | 3.16 | 0.02 | =C8+$B$3 :: 0.00 | =D8 :: 0.00 | =LN(E8) :: 0.000 | =F8/E8 :: 0.000
        9 | 2026-03-12 | 10 | 3.04 | 0.02 | =C9+$B$3 :: 0.00 | =D9 :: 0.00 | =LN(E9) :: 0.000 | =F9/E9 :: 0.000
        10 | 2026-03-16 | 14 | 2.84 | 0.02 | =C10+$B$3 :: 0.00 | =D10 :: 0.00 | =LN(E10) :: 0.000 | =F10/E10 :: 0.000
        11 | 2026-03-21 | 19 | 2.66 | 0.02 | =C11+$B$3 :: 0.00 | =D11 :: 0.00 | =LN(E11) :: 0.000 | =F11/E11 :: 0.000
        13 | give or take 0.02: the gauge shows hundredths, the last one flickers by one, and another hundredth hisses out when I push it on
        15 | rate of loss per day | =-SLOPE(G6:G11,B6:B11) :: 0.00000 | give or take | =INDEX(LINEST(G6:G11,B6:B11,TRUE,TRUE),2,1) :: 0.00000
        16 | days until half of it is gone | =LN(2)/B15 :: 0.0 | give or take | =B16*D15/B15 :: 0.0
        """);
    page.bold("A1,A5:H5");
    page.other(Role.CONSTANT, "B3").other(Role.DATE, "A6:A11").other(Role.RAW, "B6:B11");
    page.measured("what the gauge says", "bar", "C6:C11").uncertainty("D6:D11").because("A13");
    page.calculated("with the outside air", "bar", "E6:E11").uncertainty("F6:F11");
    page.calculated("natural logarithm", "", "G6:G11").uncertainty("H6:H11");
    page.record(Kind.SLOPE, "rate of loss", "1/day", "B15").uncertainty("D15");
    page.calculated("days until half of it is gone", "day", "B16").uncertainty("D16");
    return drawing;
  }
}
