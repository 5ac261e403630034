package tenthmark.samples.corpus.later;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Budgets of uncertainty: one for each quantity, or one for the result. */
@AutoService(Family.class)
public final class Budgets implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(reifenGas(), bilanPoignee());
  }

  /** A block for each quantity, the contributions under the value. */
  private static Drawing reifenGas() {
    Drawing drawing =
        new Drawing(
            "reifen-gasgesetz", "budget-blocks", "tyre gas law", Language.GERMAN, Writer.POI_XLS);
    Page page = drawing.page("Blatt 2");
    Rows.draw(
        page,
        """
        1 | Gasgesetz am Fahrradreifen
        2 | Blatt 2 aus dem Anfängerpraktikum, Messwerte erfunden
        3 | Unsicherheiten: einfache Summe der Beiträge
        5 | Druck kalt p1 (Überdruck)
        6 | Messwert | 2.40 | bar
        7 | Ablesung | 0.01 | bar | Teilung 0,1 bar, ein Zehntel geschätzt
        8 | Manometer | 0.04 | bar | Klasse 1 vom Endwert 4 bar
        9 | Ventil | 0.02 | bar | beim Aufsetzen entweicht etwas Luft
        10 | Unsicherheit | =SUM(B7:B9) :: 0.00 | bar
        12 | Druck warm p2 (Überdruck)
        13 | Messwert | 2.66 | bar
        14 | Ablesung | 0.01 | bar | Teilung 0,1 bar, ein Zehntel geschätzt
        15 | Manometer | 0.04 | bar | Klasse 1 vom Endwert 4 bar
        16 | Ventil | 0.02 | bar | beim Aufsetzen entweicht etwas Luft
        17 | Unsicherheit | =SUM(B14:B16) :: 0.00 | bar
        19 | Temperatur kalt T1
        20 | Messwert | 18.5 | °C
        21 | Ablesung | 0.1 | °C | Teilung 1 °C, ein Zehntel geschätzt
        22 | Thermometer | 0.5 | °C | Angabe des Herstellers
        23 | Unsicherheit | =SUM(B21:B22) :: 0.0 | °C
        25 | Temperatur warm T2
        26 | Messwert | 41.0 | °C
        27 | Ablesung | 0.1 | °C | Teilung 1 °C, ein Zehntel geschätzt
        28 | Thermometer | 0.5 | °C | Angabe des Herstellers
        29 | Unsicherheit | =SUM(B27:B28) :: 0.0 | °C
        31 | Luftdruck pL
        32 | Messwert | 1.013 | bar
        33 | Ablesung | 0.001 | bar | letzte Stelle der Anzeige
        34 | Barometer | 0.001 | bar | Angabe des Herstellers
        35 | Unsicherheit | =SUM(B33:B34) :: 0.000 | bar
        37 | Auswertung | Wert | Unsicherheit | Einheit
        38 | absoluter Druck kalt | =B6+B32 :: 0.00 | =B10+B35 :: 0.00 | bar
        39 | absoluter Druck warm | =B13+B32 :: 0.00 | =B17+B35 :: 0.00 | bar
        40 | absolute Temperatur kalt | =B20+273.15 :: 0.0 | =B23 :: 0.0 | K
        41 | absolute Temperatur warm | =B26+273.15 :: 0.0 | =B29 :: 0.0 | K
        42 | p/T kalt | =1000*B38/B40 :: 0.0 | =B42*(C38/B38+C40/B40) :: 0.0 | mbar/K
        43 | p/T warm | =1000*B39/B41 :: 0.0 | =B43*(C39/B39+C41/B41) :: 0.0 | mbar/K
        44 | Abweichung der Quotienten | =100*ABS(B42-B43)/B42 :: 0.0 | | %
        """);
    page.bold("A1,A5,A12,A19,A25,A31,A37:D37");
    block(page, "Druck kalt p1", "bar", 6, 3);
    block(page, "Druck warm p2", "bar", 13, 3);
    block(page, "Temperatur kalt T1", "°C", 20, 2);
    block(page, "Temperatur warm T2", "°C", 26, 2);
    block(page, "Luftdruck pL", "bar", 32, 2);
    page.calculated("absoluter Druck kalt", "bar", "B38").number("3.41").uncertainty("C38");
    page.calculated("absoluter Druck warm", "bar", "B39").number("3.67").uncertainty("C39");
    page.calculated("absolute Temperatur kalt", "K", "B40").number("291.65").uncertainty("C40");
    page.calculated("absolute Temperatur warm", "K", "B41").number("314.15").uncertainty("C41");
    page.calculated("p/T kalt", "mbar/K", "B42").number("11.7").uncertainty("C42");
    page.calculated("p/T warm", "mbar/K", "B43").number("11.7").uncertainty("C43");
    page.other(Role.COMPARISON, "B44");
    return drawing;
  }

  private static void block(Page page, String quantity, String unit, int row, int contributions) {
    var record =
        page.measured(quantity, unit, "B" + row)
            .uncertainty("B" + (row + contributions + 1))
            .contribution("reading", "B" + (row + 1))
            .contribution("instrument", "B" + (row + 2))
            .because("D" + (row + 1));
    if (contributions == 3) {
      record.contribution("physical", "B" + (row + 3));
    }
  }

  /** Half-widths, divisors and sensitivities in a row for each input, in quadrature. */
  private static Drawing bilanPoignee() {
    Drawing drawing =
        new Drawing(
                "bilan-poignee",
                "budget-of-the-result",
                "density of a foam grip",
                Language.FRENCH,
                Writer.CALC_ODS)
            .inQuadrature();
    Page page = drawing.page("Bilan");
    Rows.draw(
        page,
        """
        1 | Masse volumique d'une poignée en mousse
        2 | Bilan d'incertitude, lois rectangulaires. Loïc Quémener et Inès Tavernier (noms et valeurs inventés)
        4 | Grandeur | Symbole | Valeur | Unité | Demi-étendue a | Diviseur | u = a/diviseur | Coefficient c | (c·u)² | D'où vient a
        5 | masse | m | 10.42 | g | 0.05 | =SQRT(3) :: 0.00 | =E5/F5 :: 0.00 | =1/C14 :: 0.0000 | =(H5*G5)^2 :: 0.0E+00 | notice de la balance : 0,05 g
        6 | longueur | L | 128.0 | mm | 1.0 | =SQRT(3) :: 0.00 | =E6/F6 :: 0.0 | =-C15/C6 :: 0.0000 | =(H6*G6)^2 :: 0.0E+00 | réglet, deux lectures au quart de millimètre, bords coupés de travers
        7 | diamètre extérieur | D | 31.8 | mm | 0.4 | =SQRT(3) :: 0.00 | =E7/F7 :: 0.0 | =-2*C7*C15/(C7^2-C8^2) :: 0.0000 | =(H7*G7)^2 :: 0.0E+00 | la mousse s'écrase sous le pied à coulisse
        8 | diamètre intérieur | d | 22.2 | mm | 0.4 | =SQRT(3) :: 0.00 | =E8/F8 :: 0.0 | =2*C8*C15/(C7^2-C8^2) :: 0.0000 | =(H8*G8)^2 :: 0.0E+00 | la mousse s'écarte sous les becs
        11 | Résultats
        13 | Grandeur | Symbole | Valeur | Unité | Incertitude-type composée
        14 | volume | V | =PI()/4*(C7^2-C8^2)*C6/1000 :: 0.0 | cm³ | =C14*SQRT((G6/C6)^2+(2*C7*G7/(C7^2-C8^2))^2+(2*C8*G8/(C7^2-C8^2))^2) :: 0.0
        15 | masse volumique | ρ | =C5/C14 :: 0.000 | g/cm³ | =SQRT(SUM(I5:I8)) :: 0.000
        17 | incertitude élargie U = 2u de ρ | | | g/cm³ | =2*E15 :: 0.000
        """);
    page.bold("A1,A4:J4,A11,A13:E13");
    page.measured("masse m", "g", "C5")
        .uncertainty("G5")
        .parameter("E5")
        .parameter("F5")
        .because("J5");
    page.measured("longueur L", "mm", "C6")
        .uncertainty("G6")
        .parameter("E6")
        .parameter("F6")
        .because("J6");
    page.measured("diamètre extérieur D", "mm", "C7")
        .uncertainty("G7")
        .parameter("E7")
        .parameter("F7")
        .because("J7");
    page.measured("diamètre intérieur d", "mm", "C8")
        .uncertainty("G8")
        .parameter("E8")
        .parameter("F8")
        .because("J8");
    page.calculated("volume V", "cm³", "C14").number("52.1").uncertainty("E14");
    page.calculated("masse volumique ρ", "g/cm³", "C15").number("0.200").uncertainty("E15");
    page.other(Role.CALCULATED, "H5:I8").other(Role.CALCULATED, "E17");
    return drawing;
  }
}
