package tenthmark.samples.corpus.acceptance;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Kind;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Pairs of x and y for a graph, with the lengths of their error bars. */
@AutoService(Family.class)
public final class GraphTables implements Family {

  private static final String LAYOUT = "graph-tables";

  @Override
  public List<Drawing> drawings() {
    return List.of(brakeLever(), spokePitch(), lampLens());
  }

  private static Drawing brakeLever() {
    Drawing drawing =
        new Drawing(
            "acceptance-lever-spring",
            LAYOUT,
            "spring constant of a brake lever",
            Language.ENGLISH,
            Writer.POI_XLSX);
    Page page = drawing.page("Spring");
    page.draw(
        "A1",
        """
        How stiff is the return spring of the lever?
        Jonas Adeyemi / bench 7 / Tuesday
        local g|9.81|m/s²
        pointer with nothing hung on|14.0|mm|±|0.2|mm
        all masses good to|0.5%|of what is stamped on them
        mass hung (kg)|pointer at (mm)|error of pointer|stretch x (mm)|error of x|force F (N)|error of F
        0.200|17.3|0.2|=B7-$B$4 :: 0.0|=C7+$E$4 :: 0.0|=A7*$B$3 :: 0.000|=$B$5*F7 :: 0.000
        0.400|20.5|0.2|=B8-$B$4 :: 0.0|=C8+$E$4 :: 0.0|=A8*$B$3 :: 0.00|=$B$5*F8 :: 0.00
        0.600|23.9|0.2|=B9-$B$4 :: 0.0|=C9+$E$4 :: 0.0|=A9*$B$3 :: 0.00|=$B$5*F9 :: 0.00
        0.800|27.0|0.2|=B10-$B$4 :: 0.0|=C10+$E$4 :: 0.0|=A10*$B$3 :: 0.00|=$B$5*F10 :: 0.00
        1.000|30.4|0.2|=B11-$B$4 :: 0.0|=C11+$E$4 :: 0.0|=A11*$B$3 :: 0.00|=$B$5*F11 :: 0.00
        1.200|33.6|0.2|=B12-$B$4 :: 0.0|=C12+$E$4 :: 0.0|=A12*$B$3 :: 0.00|=$B$5*F12 :: 0.00
        1.400|36.8|0.2|=B13-$B$4 :: 0.0|=C13+$E$4 :: 0.0|=A13*$B$3 :: 0.00|=$B$5*F13 :: 0.00




        Fit of F against x
        k, slope|=SLOPE(F7:F13,D7:D13) :: 0.000|N/mm|plus or minus|=B19*SQRT((1/B20^2-1)/(B21-2)) :: 0.000|N/mm
        correlation r|=CORREL(D7:D13,F7:F13) :: 0.00000
        points n|=COUNT(D7:D13)
        The error of the slope comes from the scatter: k·√((1/r²−1)/(n−2)).
        """);
    page.box(
        "A24:G28",
        "Pointer: millimetre marks, we can tell a fifth of a millimetre. Stretch is a difference of"
            + " two pointer readings, so it has the error twice. Masses: the half percent is the"
            + " maker's word.");
    page.graph("I2:P20", "F against x", "D7:D13", "F7:F13");
    page.other(Role.CONSTANT, "B3").other(Role.STATISTIC, "B20").other(Role.COUNT, "B21");
    page.measured("pointer", "mm", "B4").uncertainty("E4").becauseOfBox();
    page.measured("mass", "kg", "A7:A13")
        .uncertaintyOf(0.001, 0.002, 0.003, 0.004, 0.005, 0.006, 0.007)
        .parameter("B5")
        .becauseOfBox();
    page.measured("pointer", "mm", "B7:B13").uncertainty("C7:C13").becauseOfBox();
    page.calculated("stretch", "mm", "D7:D13")
        .number("3.3", "6.5", "9.9", "13.0", "16.4", "19.6", "22.8")
        .uncertainty("E7:E13");
    page.calculated("force", "N", "F7:F13")
        .number("1.962", "3.92", "5.89", "7.85", "9.81", "11.77", "13.73")
        .uncertainty("G7:G13");
    page.record(Kind.SLOPE, "k", "N/mm", "B19").number("0.602").uncertainty("E19").because("A22");
    return drawing;
  }

  private static Drawing spokePitch() {
    Drawing drawing =
        new Drawing(
            "acceptance-speichenton",
            LAYOUT,
            "spoke tension and pitch",
            Language.GERMAN,
            Writer.CALC_ODS);
    Page page = drawing.page("Ton und Spannung");
    page.draw(
        "A1",
        """
        Klingt eine straffe Speiche höher?
        Protokoll: Marit Özdemir

        Nr.|F / N|Δ|ν / Hz|Δ|ν² / 10³ Hz²|Δ
        1|300|20|275|2|=D5^2/1000 :: 0.0|=2*D5*E5/1000 :: 0.0
        2|400|20|318|2|=D6^2/1000 :: 0.0|=2*D6*E6/1000 :: 0.0
        3|500|20|354|2|=D7^2/1000 :: 0.0|=2*D7*E7/1000 :: 0.0
        4|600|20|390|2|=D8^2/1000 :: 0.0|=2*D8*E8/1000 :: 0.0
        5|700|20|419|2|=D9^2/1000 :: 0.0|=2*D9*E9/1000 :: 0.0
        6|800|20|450|2|=D10^2/1000 :: 0.0|=2*D10*E10/1000 :: 0.0
        7|900|20|476|2|=D11^2/1000 :: 0.0|=2*D11*E11/1000 :: 0.0

        Kraft: Zeiger des Tensiometers, nach seiner Eichtabelle auf 20 N. Ton: Spitze im Spektrum, zwei Kästchen von 1 Hz breit.

        Gerade F = b·ν² + a
        b|=INDEX(LINEST(B5:B11,F5:F11,TRUE,TRUE),1,1) :: 0.00|±|=INDEX(LINEST(B5:B11,F5:F11,TRUE,TRUE),2,1) :: 0.00|mN·s²
        a|=INDEX(LINEST(B5:B11,F5:F11,TRUE,TRUE),1,2) :: 0|±|=INDEX(LINEST(B5:B11,F5:F11,TRUE,TRUE),2,2) :: 0|N
        Unsicherheiten von a und b aus der Streuung um die Gerade (RGP).

        freie Länge L|0.200|±|0.002|m|zwischen Kreuzung und Nippel, jedes Ende auf 1 mm
        Masse je Länge μ = b/(4L²)|=B16/(4*B20^2) :: 0.0|±|=B21*(D16/B16+2*D20/B20) :: 0.0|g/m
        Hersteller|24.7|||g/m
        """);
    page.other(Role.INDEX, "A5:A11").other(Role.ACCEPTED, "B22");
    page.measured("F", "N", "B5:B11").uncertainty("C5:C11").because("A13");
    page.measured("ν", "Hz", "D5:D11").uncertainty("E5:E11").because("A13");
    page.calculated("ν²", "10³ Hz²", "F5:F11")
        .number("75.6", "101.1", "125.3", "152.1", "175.6", "202.5", "226.6")
        .uncertainty("G5:G11");
    page.record(Kind.SLOPE, "b", "mN·s²", "B16").number("3.97").uncertainty("D16").because("A18");
    page.record(Kind.INTERCEPT, "a", "N", "B17").number("0").uncertainty("D17").because("A18");
    page.measured("Länge", "m", "B20").uncertainty("D20").because("F20");
    page.calculated("Masse je Länge", "g/m", "B21").number("24.8").uncertainty("D21");
    return drawing;
  }

  private static Drawing lampLens() {
    Drawing drawing =
        new Drawing(
            "acceptance-lentille-phare",
            LAYOUT,
            "focal length of a lamp lens",
            Language.FRENCH,
            Writer.POI_XLSX);
    Page page = drawing.page("Optique");
    page.draw(
        "A1",
        """
        TP 3 : distance focale de la lentille du phare
        Binôme : Capucine Ferrand, Yanis Morel

        Objet||Image||Inverses (en m⁻¹)||||Vergence
        p (cm)|Δp|q (cm)|Δq|1/p|Δ(1/p)|1/q|Δ(1/q)|C (δ)|ΔC
        15.0|0.2|30.1|0.3|=100/A6 :: 0.00|=100*B6/A6^2 :: 0.00|=100/C6 :: 0.00|=100*D6/C6^2 :: 0.00|=E6+G6 :: 0.00|=F6+H6 :: 0.00
        17.0|0.2|24.2|0.3|=100/A7 :: 0.00|=100*B7/A7^2 :: 0.00|=100/C7 :: 0.00|=100*D7/C7^2 :: 0.00|=E7+G7 :: 0.00|=F7+H7 :: 0.00
        20.0|0.2|19.9|0.3|=100/A8 :: 0.00|=100*B8/A8^2 :: 0.00|=100/C8 :: 0.00|=100*D8/C8^2 :: 0.00|=E8+G8 :: 0.00|=F8+H8 :: 0.00
        22.0|0.2|18.4|0.3|=100/A9 :: 0.00|=100*B9/A9^2 :: 0.00|=100/C9 :: 0.00|=100*D9/C9^2 :: 0.00|=E9+G9 :: 0.00|=F9+H9 :: 0.00
        25.0|0.2|16.7|0.3|=100/A10 :: 0.00|=100*B10/A10^2 :: 0.00|=100/C10 :: 0.00|=100*D10/C10^2 :: 0.00|=E10+G10 :: 0.00|=F10+H10 :: 0.00
        30.0|0.2|15.1|0.3|=100/A11 :: 0.00|=100*B11/A11^2 :: 0.00|=100/C11 :: 0.00|=100*D11/C11^2 :: 0.00|=E11+G11 :: 0.00|=F11+H11 :: 0.00

        |||||||moyenne de C|=AVERAGE(I6:I11) :: 0.00|=MAX(J6:J11) :: 0.00
        |||||||distance focale f' (cm)|=100/I13 :: 0.00|=100*J13/I13^2 :: 0.00

        Δp : banc gradué en mm, un millimètre de chaque côté (objet et lentille).
        Δq : l'image reste nette sur 3 mm environ, c'est bien plus que la graduation.
        Pour la moyenne nous gardons la plus grande des incertitudes, car le banc est toujours le même.
        Sur la boîte de la lentille : f' = 10 cm. C'est compatible.
        """);
    page.merge("A4:B4", "C4:D4", "E4:H4", "I4:J4");
    page.bold("A4,C4,E4,I4,A5:J5,H14:J14");
    page.graph("A21:G36", "1/q en fonction de 1/p", "E6:E11", "G6:G11");
    page.measured("p", "cm", "A6:A11").uncertainty("B6:B11").because("A16");
    page.measured("q", "cm", "C6:C11").uncertainty("D6:D11").because("A17");
    page.calculated("1/p", "m⁻¹", "E6:E11")
        .number("6.67", "5.88", "5.00", "4.55", "4.00", "3.33")
        .uncertainty("F6:F11");
    page.calculated("1/q", "m⁻¹", "G6:G11")
        .number("3.32", "4.13", "5.03", "5.43", "5.99", "6.62")
        .uncertainty("H6:H11");
    page.calculated("C", "δ", "I6:I11")
        .number("9.99", "10.01", "10.03", "9.98", "9.99", "9.96")
        .uncertainty("J6:J11");
    page.record(Kind.MEAN, "C", "δ", "I13").number("9.99").uncertainty("J13").because("A18");
    page.calculated("f'", "cm", "I14").number("10.01").uncertainty("J14");
    return drawing;
  }
}
