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

/** Rulers, callipers and balances. */
@AutoService(Family.class)
public final class Lengths implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(axleBudgets(), piezas(), zweiGeraete(), kleinstGroesst(), zahlenformat());
  }

  /** Results on top, a small table of sources for each quantity below. */
  private static Drawing axleBudgets() {
    Drawing drawing =
        Draw.en("axle-sources", "sources-per-quantity", "hub axle density", Writer.CALC_XLSX);
    Page page = drawing.page("Axle");
    page.rows(
        """
        1 | Is the hub axle made of steel?
        2 | Thaddeus Okonjo-Reyes (invented, like his readings), lab partner Wren
        4 | Quantity | Best value | Uncertainty | Unit
        5 | length ℓ | 107.6 | =C16 :: 0.0 | mm
        6 | diameter d | 9.96 | =C22 :: 0.00 | mm
        7 | mass m | 65.8 | =C28 :: 0.0 | g
        8 | volume V | =PI()/4*B6^2*B5/1000 :: 0.00 | =B8*(2*C6/B6+C5/B5) :: 0.00 | cm³
        9 | density ρ | =B7/B8 :: 0.00 | =B9*(C7/B7+C8/B8) :: 0.00 | g/cm³
        10 | Tables give 7.85 g/cm³ for steel: yes, it is.
        12 | Where the uncertainty of ℓ comes from
        13 | no. | source | mm | argument
        14 | 1 | both ends on the scale | 0.4 | millimetre marks, a fifth of one at each end
        15 | 2 | the ruler itself | 0.1 | stamped class II, 0.1 mm on this length
        16 | | all together | =SUM(C14:C15) :: 0.0
        18 | Where the uncertainty of d comes from
        19 | no. | source | mm | argument
        20 | 1 | vernier | 0.02 | its step is 0.02 mm
        21 | 2 | out of round | 0.01 | turned it by hand, never differed by more
        22 | | all together | =SUM(C20:C21) :: 0.00
        24 | Where the uncertainty of m comes from
        25 | no. | source | g | argument
        26 | 1 | display | 0.1 | last digit
        27 | 2 | the balance itself | 0.1 | instruction sheet on the wall
        28 | | all together | =SUM(C26:C27) :: 0.0
        """);
    page.bold("A1,A4:D4,A12,A18,A24");
    page.measured("length ℓ", "mm", "B5")
        .uncertainty("C5")
        .contribution("reading", "C14")
        .contribution("instrument", "C15")
        .because("D14");
    page.measured("diameter d", "mm", "B6")
        .uncertainty("C6")
        .contribution("reading", "C20")
        .contribution("physical", "C21")
        .because("D20");
    page.measured("mass m", "g", "B7")
        .uncertainty("C7")
        .contribution("reading", "C26")
        .contribution("instrument", "C27")
        .because("D26");
    page.calculated("volume V", "cm³", "B8").number("8.38").uncertainty("C8");
    page.calculated("density ρ", "g/cm³", "B9").number("7.85").uncertainty("C9");
    page.other(Role.INDEX, "A14:A15,A20:A21,A26:A27").other(Role.CALCULATED, "C16,C22,C28");
    return drawing;
  }

  /** Many columns: masses, two levels, a volume, a density, a table's value. */
  private static Drawing piezas() {
    Drawing drawing =
        Draw.es("densidad-piezas", "object-a-row-wide", "density of small parts", Writer.POI_XLS);
    Page page = drawing.page("Piezas");
    page.rows(
        """
        1 | ¿De qué están hechas las piezas del cajón?
        2 | Grupo: Leire Antúnez y Óscar Villamor (inventados)
        4 | Pieza | m [g] | Δm [g] | V₁ [ml] | ΔV₁ [ml] | V₂ [ml] | ΔV₂ [ml] | V [ml] | ΔV [ml] | ρ [g/ml] | Δρ [g/ml] | ρ tabla [g/ml] | diferencia [%]
        5 | eje | 154.2 | 0.2 | 100.0 | 0.5 | 119.5 | 0.5 | =F5-D5 :: 0.0 | =E5+G5 :: 0.0 | =B5/H5 :: 0.0 | =J5*(C5/B5+I5/H5) :: 0.0 | 7.85 | =100*(J5-L5)/L5 :: 0.0
        6 | plato | 93.6 | 0.2 | 100.0 | 0.5 | 134.5 | 0.5 | =F6-D6 :: 0.0 | =E6+G6 :: 0.0 | =B6/H6 :: 0.00 | =J6*(C6/B6+I6/H6) :: 0.00 | 2.70 | =100*(J6-L6)/L6 :: 0.0
        7 | cabecilla de latón | 71.3 | 0.2 | 110.0 | 0.5 | 118.5 | 0.5 | =F7-D7 :: 0.0 | =E7+G7 :: 0.0 | =B7/H7 :: 0.0 | =J7*(C7/B7+I7/H7) :: 0.0 | 8.5 | =100*(J7-L7)/L7 :: 0.0
        8 | tapón de nailon | 28.9 | 0.2 | 110.0 | 0.5 | 135.0 | 0.5 | =F8-D8 :: 0.0 | =E8+G8 :: 0.0 | =B8/H8 :: 0.00 | =J8*(C8/B8+I8/H8) :: 0.00 | 1.14 | =100*(J8-L8)/L8 :: 0.0
        10 | Δm: una unidad de la última cifra de la balanza y otra porque el cero se mueve.
        11 | ΔV₁ y ΔV₂: la probeta tiene una raya por mililitro; se lee a media raya por el menisco.
        """);
    page.bold("A1,A4:M4");
    page.measured("m", "g", "B5:B8").uncertainty("C5:C8").because("A10");
    page.measured("V₁", "ml", "D5:D8").uncertainty("E5:E8").because("A11");
    page.measured("V₂", "ml", "F5:F8").uncertainty("G5:G8").because("A11");
    page.calculated("V", "ml", "H5:H8").number("19.5", "34.5", "8.5", "25.0").uncertainty("I5:I8");
    page.calculated("ρ", "g/ml", "J5:J8").number("7.9", "2.71", "8.4", "1.16").uncertainty("K5:K8");
    page.other(Role.ACCEPTED, "L5:L8").other(Role.COMPARISON, "M5:M8");
    return drawing;
  }

  /** The same thing with two instruments. */
  private static Drawing zweiGeraete() {
    Drawing drawing =
        Draw.de(
            "zwei-geraete", "two-instruments", "thickness of a chain link", Writer.GNUMERIC_XLSX);
    Page page = drawing.page("Vergleich");
    page.rows(
        """
        1 | Laschendicke: Messschieber gegen Bügelmessschraube
        2 | Merle Fockenbrock, erfunden
        4 | | Messschieber | | Bügelmessschraube | | Unterschied
        5 | Lasche | Dicke / mm | ± / mm | Dicke / mm | ± / mm | Δ / mm | ± / mm | verträglich?
        6 | A | 1.00 | 0.05 | 0.994 | 0.005 | =B6-D6 :: 0.00 | =C6+E6 :: 0.00 | =IF(ABS(F6)<=G6,"ja","nein")
        7 | B | 1.05 | 0.05 | 1.021 | 0.005 | =B7-D7 :: 0.00 | =C7+E7 :: 0.00 | =IF(ABS(F7)<=G7,"ja","nein")
        8 | C | 0.85 | 0.05 | 0.878 | 0.005 | =B8-D8 :: 0.00 | =C8+E8 :: 0.00 | =IF(ABS(F8)<=G8,"ja","nein")
        9 | D | 1.10 | 0.05 | 1.083 | 0.005 | =B9-D9 :: 0.00 | =C9+E9 :: 0.00 | =IF(ABS(F9)<=G9,"ja","nein")
        10 | E | 0.80 | 0.05 | 0.806 | 0.005 | =B10-D10 :: 0.00 | =C10+E10 :: 0.00 | =IF(ABS(F10)<=G10,"ja","nein")
        11 | Messschieber: der Nonius hat Schritte von 0,05 mm, weiter kann man ihn nicht lesen.
        12 | Bügelmessschraube: ein Teilstrich ist 0,01 mm, geschätzt auf einen halben.
        """);
    page.merge("B4:C4", "D4:E4", "F4:G4").bold("A1,B4,D4,F4");
    page.measured("Messschieber Dicke", "mm", "B6:B10").uncertainty("C6:C10").because("A11");
    page.measured("Bügelmessschraube Dicke", "mm", "D6:D10").uncertainty("E6:E10").because("A12");
    page.calculated("Unterschied Δ", "mm", "F6:F10")
        .number("0.01", "0.03", "-0.03", "0.02", "-0.01")
        .uncertainty("G6:G10");
    return drawing;
  }

  /** The smallest and the largest reading; half of what lies between is the uncertainty. */
  private static Drawing kleinstGroesst() {
    Drawing drawing =
        Draw.de("kleinst-groesst", "smallest-and-largest", "pitch of four chains", Writer.POI_XLSX);
    Page page = drawing.page("Tabelle1");
    page.rows(
        """
        1 | Teilung von vier Ketten
        2 | Anton Seggewiß, Freitagsgruppe (Person und Werte erfunden)
        3 | Je Kette zehn Glieder gemessen und nur den kleinsten und den größten Wert notiert. Als Unsicherheit gilt die halbe Spanne; der Messschieber (0,01 mm) ist viel feiner und fällt nicht ins Gewicht.
        5 | Kette | kleinster Wert (mm) | größter Wert (mm) | Mitte (mm) | halbe Spanne (mm) | 100 Glieder (cm) | Unsicherheit (cm)
        6 | neu | 12.68 | 12.74 | =(B6+C6)/2 :: 0.00 | =(C6-B6)/2 :: 0.00 | =D6*100/10 :: 0.0 | =E6*100/10 :: 0.0
        7 | ein Jahr gefahren | 12.69 | 12.77 | =(B7+C7)/2 :: 0.00 | =(C7-B7)/2 :: 0.00 | =D7*100/10 :: 0.0 | =E7*100/10 :: 0.0
        8 | drei Jahre gefahren | 12.72 | 12.84 | =(B8+C8)/2 :: 0.00 | =(C8-B8)/2 :: 0.00 | =D8*100/10 :: 0.0 | =E8*100/10 :: 0.0
        9 | vom Schrott | 12.76 | 12.94 | =(B9+C9)/2 :: 0.00 | =(C9-B9)/2 :: 0.00 | =D9*100/10 :: 0.0 | =E9*100/10 :: 0.0
        """);
    page.bold("A5:G5").other(Role.RAW, "B6:C9");
    page.record(Kind.MEAN, "Mitte", "mm", "D6:D9")
        .number("12.71", "12.73", "12.78", "12.85")
        .uncertainty("E6:E9")
        .because("A3");
    page.calculated("100 Glieder", "cm", "F6:F9")
        .number("127.1", "127.3", "127.8", "128.5")
        .uncertainty("G6:G9");
    return drawing;
  }

  /** Units stand in the formats of the numbers. */
  private static Drawing zahlenformat() {
    Drawing drawing =
        Draw.de(
            "pedalarm-format", "units-in-number-formats", "pedal and its torque", Writer.CALC_ODS);
    Page page = drawing.page("Pedal");
    page.rows(
        """
        1 | Pedalkraft und Drehmoment
        2 | Ylva Brandmeyer (gibt es nicht)
        4 | Länge der Kurbel | 172.5 :: 0.0" mm" | 0.5 :: "± "0.0" mm" | Stahllineal, an beiden Enden je ein Viertel Millimeter
        5 | Masse auf dem Pedal | 12.40 :: 0.00" kg" | 0.05 :: "± "0.00" kg" | Hängewaage, Teilung 0,1 kg, halber Teilstrich
        6 | Fallbeschleunigung | 9.81 :: 0.00" m/s²" | | aus dem Buch, als genau angenommen
        8 | Kraft | =B5*B6 :: 0.0" N" | =C5*B6 :: "± "0.0" N"
        9 | Drehmoment | =B8*B4/1000 :: 0.00" N·m" | =B9*(C8/B8+C4/B4) :: "± "0.00" N·m"
        """);
    page.bold("A1");
    page.measured("Länge der Kurbel", "mm", "B4").uncertainty("C4").because("D4");
    page.measured("Masse auf dem Pedal", "kg", "B5").uncertainty("C5").because("D5");
    page.other(Role.CONSTANT, "B6");
    page.calculated("Kraft", "N", "B8").number("121.6").uncertainty("C8");
    page.calculated("Drehmoment", "N·m", "B9").number("20.98").uncertainty("C9");
    return drawing;
  }
}
