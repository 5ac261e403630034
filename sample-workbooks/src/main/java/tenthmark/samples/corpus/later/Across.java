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

/** Tables that lie on their side: quantities, objects or instants run across. */
@AutoService(Family.class)
public final class Across implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(tensiometro(), speichen(), refroidissement());
  }

  /** A column for each quantity; the reasons are comments on the values. */
  private static Drawing tensiometro() {
    Drawing drawing =
        new Drawing(
            "tensiometro", "quantity-a-column", "tension meter", Language.SPANISH, Writer.POI_XLSX);
    Page page = drawing.page("Tensiómetro");
    Rows.draw(
        page,
        """
        1 | Tensiómetro de tres puntos: ¿cuánto tira un radio?
        2 | Equipo: Amaia Larrinoa, Unai Beltza (inventados). Los motivos están en los comentarios.
        4 | | fuerza transversal | separación de los apoyos | flecha | tensión del radio
        5 | símbolo | F | b | δ | T = F·b/(4δ)
        6 | unidad | N | mm | mm | kN
        7 | valor | 30.0 | 100.0 | 0.75 | =B7*C7/(4*D7)/1000 :: 0.00
        8 | por lectura | 0.1 | 0.5 | 0.005
        9 | por el aparato | 0.3 | 0.1 | 0.005
        10 | por el objeto | 0.1 | 0.4 | 0.01
        11 | incertidumbre | =SUM(B8:B10) :: 0.0 | =SUM(C8:C10) :: 0.0 | =SUM(D8:D10) :: 0.00 | =E7*(B11/B7+C11/C7+D11/D7) :: 0.00
        """);
    page.bold("A1,B4:E4,A5:A11");
    page.comment(
        "B7",
        "Dinamómetro de 1 N por división (una décima), 1 % según el fabricante, y el gancho roza.");
    page.comment(
        "C7",
        "Regla leída a un cuarto de milímetro en los dos apoyos, que tienen el canto redondo.");
    page.comment(
        "D7",
        "Reloj comparador de 0,01 mm: media división y media de precisión; el radio no está del todo recto.");
    page.measured("fuerza transversal F", "N", "B7")
        .uncertainty("B11")
        .contribution("reading", "B8")
        .contribution("instrument", "B9")
        .contribution("physical", "B10")
        .becauseOfComment("B7");
    page.measured("separación de los apoyos b", "mm", "C7")
        .uncertainty("C11")
        .contribution("reading", "C8")
        .contribution("instrument", "C9")
        .contribution("physical", "C10")
        .becauseOfComment("C7");
    page.measured("flecha δ", "mm", "D7")
        .uncertainty("D11")
        .contribution("reading", "D8")
        .contribution("instrument", "D9")
        .contribution("physical", "D10")
        .becauseOfComment("D7");
    page.calculated("tensión del radio T", "kN", "E7").number("1.00").uncertainty("E11");
    return drawing;
  }

  /** A column for each spoke; a pair of rows for each quantity. */
  private static Drawing speichen() {
    Drawing drawing =
        new Drawing(
            "sechs-speichen",
            "object-a-column",
            "spokes compared",
            Language.GERMAN,
            Writer.GNUMERIC_XLS);
    Page page = drawing.page("Speichen");
    Rows.draw(
        page,
        """
        1 | Sechs Speichen im Vergleich
        2 | Versuch 4, Musterblatt (Werte erfunden)
        4 | Speiche Nr. | 1 | 2 | 3 | 4 | 5 | 6
        5 | L / mm | 288.0 | 290.5 | 264.0 | 262.5 | 292.0 | 286.0
        6 | ΔL / mm | 0.6 | 0.6 | 0.6 | 0.6 | 0.6 | 0.6
        7 | m / g | 7.11 | 7.18 | 6.52 | 6.47 | 7.21 | 7.07
        8 | Δm / g | 0.02 | 0.02 | 0.02 | 0.02 | 0.02 | 0.02
        9 | µ = m/L in g/m | =1000*B7/B5 :: 0.00 | =1000*C7/C5 :: 0.00 | =1000*D7/D5 :: 0.00 | =1000*E7/E5 :: 0.00 | =1000*F7/F5 :: 0.00 | =1000*G7/G5 :: 0.00
        10 | Δµ in g/m | =B9*(B6/B5+B8/B7) :: 0.00 | =C9*(C6/C5+C8/C7) :: 0.00 | =D9*(D6/D5+D8/D7) :: 0.00 | =E9*(E6/E5+E8/E7) :: 0.00 | =F9*(F6/F5+F8/F7) :: 0.00 | =G9*(G6/G5+G8/G7) :: 0.00
        12 | Begründung ΔL: zwei Enden zu je 0,25 mm, dazu 0,1 mm für den runden Bogen.
        13 | Begründung Δm: letzte Stelle der Waage und noch einmal so viel, weil sie schwankt.
        15 | Mittel von µ in g/m | =AVERAGE(B9:G9) :: 0.00
        16 | Fehler des Mittels in g/m | =AVERAGE(B10:G10) :: 0.00 | (Waage und Lineal sind bei allen dieselben)
        17 | Standardabweichung in g/m | =STDEV(B9:G9) :: 0.00
        """);
    page.bold("A1,A4:G4");
    page.other(Role.INDEX, "B4:G4").other(Role.STATISTIC, "B17");
    page.measured("L", "mm", "B5:G5").uncertainty("B6:G6").because("A12");
    page.measured("m", "g", "B7:G7").uncertainty("B8:G8").because("A13");
    page.calculated("µ", "g/m", "B9:G9")
        .number("24.69", "24.72", "24.70", "24.65", "24.69", "24.72")
        .uncertainty("B10:G10");
    page.record(Kind.MEAN, "Mittel von µ", "g/m", "B15")
        .number("24.69")
        .uncertainty("B16")
        .because("C16");
    return drawing;
  }

  /** Instants across; each row a step on the way to the straight line, with a graph. */
  private static Drawing refroidissement() {
    Drawing drawing =
        new Drawing(
            "refroidissement-frein",
            "time-across",
            "brake heat",
            Language.FRENCH,
            Writer.CALC_XLSX);
    Page page = drawing.page("Refroidissement");
    Rows.draw(
        page,
        """
        1 | Refroidissement d'un disque de frein
        2 | Relevé du thermocouple ; valeurs inventées (Soizic Le Dantec)
        4 | t (min) | 0 | 1 | 2 | 3 | 4 | 5 | 6 | 8 | 10
        5 | T (°C) | 92.0 | 79.3 | 68.4 | 60.1 | 52.8 | 47.3 | 42.2 | 35.4 | 30.5
        6 | ΔT (°C) | 1.0 | 1.0 | 1.0 | 1.0 | 1.0 | 1.0 | 1.0 | 1.0 | 1.0
        7 | θ = T − Ta (K) | =B5-$C$13 :: 0.0 | =C5-$C$13 :: 0.0 | =D5-$C$13 :: 0.0 | =E5-$C$13 :: 0.0 | =F5-$C$13 :: 0.0 | =G5-$C$13 :: 0.0 | =H5-$C$13 :: 0.0 | =I5-$C$13 :: 0.0 | =J5-$C$13 :: 0.0
        8 | Δθ (K) | =B6+$E$13 :: 0.0 | =C6+$E$13 :: 0.0 | =D6+$E$13 :: 0.0 | =E6+$E$13 :: 0.0 | =F6+$E$13 :: 0.0 | =G6+$E$13 :: 0.0 | =H6+$E$13 :: 0.0 | =I6+$E$13 :: 0.0 | =J6+$E$13 :: 0.0
        9 | ln θ | =LN(B7) :: 0.00 | =LN(C7) :: 0.00 | =LN(D7) :: 0.00 | =LN(E7) :: 0.00 | =LN(F7) :: 0.00 | =LN(G7) :: 0.00 | =LN(H7) :: 0.00 | =LN(I7) :: 0.00 | =LN(J7) :: 0.00
        10 | Δ(ln θ) | =B8/B7 :: 0.00 | =C8/C7 :: 0.00 | =D8/D7 :: 0.00 | =E8/E7 :: 0.00 | =F8/F7 :: 0.00 | =G8/G7 :: 0.00 | =H8/H7 :: 0.00 | =I8/I7 :: 0.00 | =J8/J7 :: 0.00
        12 | ΔT : le thermocouple est donné à 1 °C près. L'enregistreur donne t, pris comme exact.
        13 | Température de l'atelier | Ta = | 21.0 | ± | 0.5 | °C | thermomètre mural gradué en degrés, lu à la demi-division
        15 | pente de ln θ (1/min) | =SLOPE(B9:J9,B4:J4) :: 0.0000 | ± | =INDEX(LINEST(B9:J9,B4:J4,TRUE,TRUE),2,1) :: 0.0000
        16 | constante de temps τ (min) | =-1/B15 :: 0.000 | ± | =B16*D15/ABS(B15) :: 0.000
        """);
    page.bold("A1,A4:J4").graph("A18:H34", "ln θ en fonction de t", "B4:J4", "B9:J9");
    page.other(Role.RAW, "B4:J4");
    page.measured("T", "°C", "B5:J5").uncertainty("B6:J6").because("A12");
    page.measured("Température de l'atelier Ta", "°C", "C13").uncertainty("E13").because("G13");
    page.calculated("θ", "K", "B7:J7")
        .number("71.0", "58.3", "47.4", "39.1", "31.8", "26.3", "21.2", "14.4", "9.5")
        .uncertainty("B8:J8");
    page.calculated("ln θ", "", "B9:J9").uncertainty("B10:J10");
    page.record(Kind.SLOPE, "pente", "1/min", "B15").uncertainty("D15");
    page.calculated("constante de temps τ", "min", "B16").uncertainty("D16");
    return drawing;
  }
}
