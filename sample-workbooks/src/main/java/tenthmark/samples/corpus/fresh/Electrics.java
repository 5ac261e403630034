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

/** Volts and amperes. */
@AutoService(Family.class)
public final class Electrics implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(bobine(), condensador(), nabendynamo(), roller());
  }

  /** The notation u(x), quadrature, a line and its resistance. */
  private static Drawing bobine() {
    Drawing drawing =
        Draw.fr("bobine-ohm", "u-of-x-columns", "coil of a bottle dynamo", Writer.CALC_XLSX)
            .inQuadrature();
    Page page = drawing.page("Mesures");
    page.rows(
        """
        1 | Résistance de la bobine d'une dynamo bouteille
        2 | Binôme : Solenn Kervadec, Idriss Amrani (inventés)
        4 | I [mA] | u(I) [mA] | U [V] | u(U) [V] | R [Ω] | u(R) [Ω]
        5 | 20.1 | 0.3 | 0.95 | 0.02 | =1000*C5/A5 :: 0.0 | =E5*SQRT((D5/C5)^2+(B5/A5)^2) :: 0.0
        6 | 40.3 | 0.3 | 1.89 | 0.02 | =1000*C6/A6 :: 0.0 | =E6*SQRT((D6/C6)^2+(B6/A6)^2) :: 0.0
        7 | 60.0 | 0.3 | 2.83 | 0.02 | =1000*C7/A7 :: 0.0 | =E7*SQRT((D7/C7)^2+(B7/A7)^2) :: 0.0
        8 | 80.2 | 0.3 | 3.76 | 0.02 | =1000*C8/A8 :: 0.0 | =E8*SQRT((D8/C8)^2+(B8/A8)^2) :: 0.0
        9 | 100.4 | 0.3 | 4.73 | 0.02 | =1000*C9/A9 :: 0.0 | =E9*SQRT((D9/C9)^2+(B9/A9)^2) :: 0.0
        11 | Incertitudes-types. u(I) : notice du multimètre, calibre 200 mA. u(U) : notice, calibre 20 V, et le dernier chiffre qui bouge.
        13 | Régression U = R·I | R [Ω] | =1000*SLOPE(C5:C9,A5:A9) :: 0.00 | u(R) [Ω] | =1000*INDEX(LINEST(C5:C9,A5:A9,TRUE,TRUE),2,1) :: 0.00
        14 | | corrélation r | =CORREL(A5:A9,C5:C9) :: 0.00000
        """);
    page.bold("A1,A4:F4").graph("A17:F32", "U en fonction de I", "A5:A9", "C5:C9");
    page.measured("I", "mA", "A5:A9").uncertainty("B5:B9").because("A11");
    page.measured("U", "V", "C5:C9").uncertainty("D5:D9").because("A11");
    page.calculated("R", "Ω", "E5:E9")
        .number("47.3", "46.9", "47.2", "46.9", "47.1")
        .uncertainty("F5:F9");
    page.record(Kind.SLOPE, "R", "Ω", "C13").uncertainty("E13");
    page.other(Role.STATISTIC, "C14");
    return drawing;
  }

  /** Charge and discharge beside each other; the meter's rule makes the uncertainties. */
  private static Drawing condensador() {
    Drawing drawing =
        Draw.es(
            "condensador-luz",
            "charge-and-discharge",
            "capacitor of a rear light",
            Writer.GNUMERIC_XLSX);
    Page page = drawing.page("Condensador");
    page.rows(
        """
        1 | Condensador de la luz trasera
        2 | Ainhoa Berrueta y Simón Galdós; ni ellos ni sus datos existen
        3 | El polímetro, según su hoja: 0,5 % de la lectura más 0,02 V (dos dígitos). El metrónomo da el tiempo sin error.
        5 | | Carga | | Descarga
        6 | Tiempo (s) | V (V) | ΔV (V) | V (V) | ΔV (V) | ln(V) | Δln(V)
        7 | 10 | 2.01 | =0.005*B7+0.02 :: 0.00 | 4.18 | =0.005*D7+0.02 :: 0.00 | =LN(D7) :: 0.000 | =E7/D7 :: 0.000
        8 | 20 | 3.21 | =0.005*B8+0.02 :: 0.00 | 2.52 | =0.005*D8+0.02 :: 0.00 | =LN(D8) :: 0.000 | =E8/D8 :: 0.000
        9 | 30 | 3.93 | =0.005*B9+0.02 :: 0.00 | 1.54 | =0.005*D9+0.02 :: 0.00 | =LN(D9) :: 0.000 | =E9/D9 :: 0.000
        10 | 40 | 4.36 | =0.005*B10+0.02 :: 0.00 | 0.93 | =0.005*D10+0.02 :: 0.00 | =LN(D10) :: 0.00 | =E10/D10 :: 0.00
        11 | 50 | 4.61 | =0.005*B11+0.02 :: 0.00 | 0.56 | =0.005*D11+0.02 :: 0.00 | =LN(D11) :: 0.00 | =E11/D11 :: 0.00
        13 | De la recta de la descarga:
        14 | pendiente = | =SLOPE(F7:F11,A7:A11) :: 0.00000 | ± | =STEYX(F7:F11,A7:A11)/SQRT(DEVSQ(A7:A11)) :: 0.00000 | s⁻¹
        15 | τ = | =-1/B14 :: 0.00 | ± | =B15*D14/ABS(B14) :: 0.00 | s
        """);
    page.merge("B5:C5", "D5:G5").bold("A1,B5,D5,A6:G6");
    page.other(Role.CONSTANT, "A7:A11");
    page.measured("V", "V", "B7:B11").uncertainty("C7:C11").because("A3");
    page.measured("V", "V", "D7:D11").uncertainty("E7:E11").because("A3");
    page.calculated("ln(V)", "", "F7:F11").uncertainty("G7:G11");
    page.record(Kind.SLOPE, "pendiente", "1/s", "B14").uncertainty("D14");
    page.calculated("τ", "s", "B15").uncertainty("D15");
    return drawing;
  }

  /** Percentages only. */
  private static Drawing nabendynamo() {
    Drawing drawing =
        Draw.de(
            "nabendynamo-prozente", "percent-only", "efficiency of a hub dynamo", Writer.POI_XLS);
    Page page = drawing.page("Wirkungsgrad");
    page.rows(
        """
        1 | Wirkungsgrad eines Nabendynamos
        2 | Vorlage der Assistenz (Ruprecht Allgaier, erfunden), ausgefüllt von Gruppe 7
        4 | Messgröße | Wert | Einheit | relativer Fehler | woher
        5 | Drehmoment M an der Felge | 0.42 | N·m | 5% | Federwaage zittert um ein Zwanzigstel
        6 | Drehfrequenz n | 2.00 | 1/s | 1% | Tacho, so steht es in der Anleitung
        7 | Spannung U an der Lampe | 5.85 | V | 1% | Anleitung des Messgeräts
        8 | Strom I durch die Lampe | 0.482 | A | 2% | Anleitung des Messgeräts
        10 | Rechnung (Produkte und Quotienten: relative Fehler addiert)
        11 | hineingesteckt P₁ = 2π·n·M | =2*PI()*B6*B5 :: 0.0 | W | =D5+D6 :: 0%
        12 | herausgeholt P₂ = U·I | =B7*B8 :: 0.00 | W | =D7+D8 :: 0%
        13 | Wirkungsgrad η = P₂/P₁ | =B12/B11 :: 0.00 | | =D11+D12 :: 0%
        """);
    page.bold("A1,A4:E4,A10");
    page.measured("Drehmoment M", "N·m", "B5").uncertaintyOf(0.021).parameter("D5").because("E5");
    page.measured("Drehfrequenz n", "1/s", "B6").uncertaintyOf(0.02).parameter("D6").because("E6");
    page.measured("Spannung U", "V", "B7").uncertaintyOf(0.0585).parameter("D7").because("E7");
    page.measured("Strom I", "A", "B8").uncertaintyOf(0.00964).parameter("D8").because("E8");
    page.calculated("P₁", "W", "B11").number("5.3").uncertaintyOf(0.316673).parameter("D11");
    page.calculated("P₂", "W", "B12").number("2.82").uncertaintyOf(0.084591).parameter("D12");
    page.calculated("Wirkungsgrad η", "", "B13")
        .number("0.53")
        .uncertaintyOf(0.0480824)
        .parameter("D13");
    return drawing;
  }

  /** A row of uncertainties between the headings and the readings. */
  private static Drawing roller() {
    Drawing drawing =
        Draw.en("roller-dynamo", "uncertainty-row-on-top", "dynamo on a roller", Writer.CALC_XLS);
    Page page = drawing.page("Roller");
    page.rows(
        """
        1 | Dynamo on the roller: electrical power against speed
        2 | Instructor: Philippa Stannard (invented), template v3
        4 | run | speed (turns/min) | voltage (V) | current (mA) | power (mW) | uncertainty of power (mW)
        5 | uncertainty | 2 | 0.02 | 1.0
        6 | 1 | 60 | 1.51 | 75.0 | =C6*D6 :: 0 | =E6*($C$5/C6+$D$5/D6) :: 0
        7 | 2 | 90 | 2.26 | 113.0 | =C7*D7 :: 0 | =E7*($C$5/C7+$D$5/D7) :: 0
        8 | 3 | 120 | 2.98 | 148.0 | =C8*D8 :: 0 | =E8*($C$5/C8+$D$5/D8) :: 0
        9 | 4 | 150 | 3.75 | 187.0 | =C9*D9 :: 0 | =E9*($C$5/C9+$D$5/D9) :: 0
        10 | 5 | 180 | 4.49 | 224.0 | =C10*D10 :: 0 | =E10*($C$5/C10+$D$5/D10) :: 0
        11 | why | stroboscope dial, one mark is 2 | last two digits flicker | last digit jumps by one, meter good to about 1 on this range | relative uncertainties add
        """);
    page.bold("A1,A4:F4").other(Role.INDEX, "A6:A10");
    page.measured("speed", "turns/min", "B6:B10").uncertainty("B5").because("B11");
    page.measured("voltage", "V", "C6:C10").uncertainty("C5").because("C11");
    page.measured("current", "mA", "D6:D10").uncertainty("D5").because("D11");
    page.calculated("power", "mW", "E6:E10")
        .number("113", "255", "441", "701", "1006")
        .uncertainty("F6:F10");
    return drawing;
  }
}
