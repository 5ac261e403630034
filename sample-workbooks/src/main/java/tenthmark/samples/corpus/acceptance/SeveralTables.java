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

/** Several tables on one sheet, each of its own form. */
@AutoService(Family.class)
public final class SeveralTables implements Family {

  private static final String LAYOUT = "several-tables";

  @Override
  public List<Drawing> drawings() {
    return List.of(bearing(), brakeHeat(), pump());
  }

  private static Drawing bearing() {
    Drawing drawing =
        new Drawing(
            "acceptance-bearing-torque",
            LAYOUT,
            "friction torque of a bearing",
            Language.ENGLISH,
            Writer.CALC_ODS);
    Page page = drawing.page("Bearing");
    page.draw(
        "A1",
        """
        What torque stops the wheel?   (Wed group, Hanneke Osei)

        TABLE 1   The rim
        |value|unit|division|reading|physical|all together|where it comes from
        inner diameter|596.0|mm|1|=LAB_READING(D5,"fine",2) :: 0.0|0.5|=LAB_TOTAL(E5:F5) :: 0.0|two ends on the mm tape; the bead seat is rounded by half a mm
        mass|0.980|kg|0.001|=LAB_READING(D6,1) :: 0.000|0.019|=LAB_TOTAL(E6:F6) :: 0.000|last digit; the nipples may or may not count, 19 g

        TABLE 2   The run
        |value|unit|± |
        turns per second at the start|1.50|1/s|0.03|speedometer jumps by 0.03
        time to stop|64.2|s|0.6|0.2 s thumb, and it is hard to see the very end: 0.4 s

        TABLE 3   What follows
        |value|±|unit|as a result
        radius r|=B5/2000 :: 0.0000|=G5/2000 :: 0.0000|m|=LAB_RESULT(B15,C15,D15)
        deceleration α = 2πn/t|=2*PI()*B10/B11 :: 0.000|=B16*(D10/B10+D11/B11) :: 0.000|1/s²|=LAB_RESULT(B16,C16,D16)
        torque M = m r² α|=B6*B15^2*B16 :: 0.0000|=B17*(G6/B6+2*C15/B15+C16/B16) :: 0.0000|N m|=LAB_RESULT(B17,C17,D17)
        """);
    page.measured("diameter", "mm", "B5")
        .uncertainty("G5")
        .parameter("D5")
        .contribution("reading", "E5")
        .contribution("physical", "F5")
        .because("H5");
    page.measured("mass", "kg", "B6")
        .uncertainty("G6")
        .parameter("D6")
        .contribution("reading", "E6")
        .contribution("physical", "F6")
        .because("H6");
    page.measured("turns per second", "1/s", "B10").uncertainty("D10").because("E10");
    page.measured("time", "s", "B11").uncertainty("D11").because("E11");
    page.calculated("radius", "m", "B15").number("0.2980").uncertainty("C15");
    page.calculated("deceleration", "1/s²", "B16").number("0.147").uncertainty("C16");
    page.calculated("torque", "N m", "B17").number("0.0128").uncertainty("C17");
    page.calculated("radius", "m", "E15").number("0.2980").uncertaintyOf(0.0005);
    page.calculated("deceleration", "1/s²", "E16").number("0.147").uncertaintyOf(0.004);
    page.calculated("torque", "N m", "E17").number("0.0128").uncertaintyOf(0.0007);
    return drawing;
  }

  private static Drawing brakeHeat() {
    Drawing drawing =
        new Drawing(
            "acceptance-chaleur-frein",
            LAYOUT,
            "heat in a brake disc",
            Language.FRENCH,
            Writer.POI_XLSX);
    Page page = drawing.page("Frein");
    page.draw(
        "A1",
        """
        Où passe l'énergie du freinage ? (Théo Garnier, Inès Benali)

        Tableau 1. Avant de freiner
        grandeur|mesure|incertitude|unité|raison
        cycliste et vélo M|82.0|0.5|kg|pèse-personne, on bouge un peu dessus
        distance entre les barrières d|10.00|0.02|m|ruban, un centimètre à chaque barrière
        durée du passage t|1.92|0.01|s|barrières optiques, un pas d'affichage
        vitesse v|=B6/B7 :: 0.00|=B8*(C6/B6+C7/B7) :: 0.00|m/s|d/t
        énergie cinétique Ec|=B5*B8^2/2000 :: 0.00|=B9*(C5/B5+2*C8/B8) :: 0.00|kJ|½Mv²

        Tableau 2. Le disque (acier, c = 0,46 kJ/(kg·K))
        |masse du disque|c|température avant|température après|échauffement
        |kg|kJ/(kg·K)|°C|°C|K
        mesure|0.112|0.46|20.5|39.0|=E14-D14 :: 0.0
        incertitude|0.001||0.5|0.5|=D15+E15 :: 0.0
        raison|balance au gramme||sonde collée, notice : 0,5 °C|idem|différence

        Tableau 3. Bilan
        chaleur reçue Q|=B14*C14*F14 :: 0.00|kJ|incertitude|=B19*(B15/B14+F15/F14) :: 0.00|kJ
        part retrouvée Q/Ec|=B19/B9 :: 0.00||incertitude|=B20*(E19/B19+C9/B9) :: 0.00|
        Le reste chauffe les plaquettes et l'air.
        """);
    page.bold("A3,A11,A18");
    page.measured("cycliste et vélo", "kg", "B5").uncertainty("C5").because("E5");
    page.measured("distance", "m", "B6").uncertainty("C6").because("E6");
    page.measured("durée", "s", "B7").uncertainty("C7").because("E7");
    page.calculated("vitesse", "m/s", "B8").number("5.21").uncertainty("C8").because("E8");
    page.calculated("énergie cinétique", "kJ", "B9").number("1.11").uncertainty("C9").because("E9");
    page.measured("masse", "kg", "B14").uncertainty("B15").because("B16");
    page.other(Role.CONSTANT, "C14");
    page.measured("température", "°C", "D14:E14").uncertainty("D15:E15").because("D16:E16");
    page.calculated("échauffement", "K", "F14").number("18.5").uncertainty("F15").because("F16");
    page.calculated("chaleur", "kJ", "B19").number("0.95").uncertainty("E19");
    page.calculated("part retrouvée", "", "B20").number("0.86").uncertainty("E20");
    return drawing;
  }

  private static Drawing pump() {
    Drawing drawing =
        new Drawing(
            "acceptance-bomba-boyle",
            LAYOUT,
            "gas law with a pump",
            Language.SPANISH,
            Writer.CALC_ODS);
    Page page = drawing.page("Bomba");
    page.draw(
        "A1",
        """
        El aire de la bomba con la boca tapada
        Lucía Etxeberria y Bruno Salas

        Tabla 1: la bomba
        diámetro por dentro|28.0|0.2|mm|calibre, en cruz dos veces
        área|=PI()/4*(B5/10)^2 :: 0.00|=2*B6*C5/B5 :: 0.00|cm²


        Tabla 2: empujando despacio
        émbolo (cm)||presión (bar)||volumen (cm³)||p·V (J)|
        valor|±|valor|±|valor|±|valor|±
        24.0|0.2|1.00|0.02|=$B$6*A12 :: 0|=E12*($C$6/$B$6+B12/A12) :: 0|=C12*E12/10 :: 0.0|=G12*(D12/C12+F12/E12) :: 0.0
        20.0|0.2|1.21|0.02|=$B$6*A13 :: 0|=E13*($C$6/$B$6+B13/A13) :: 0|=C13*E13/10 :: 0.0|=G13*(D13/C13+F13/E13) :: 0.0
        16.0|0.2|1.49|0.02|=$B$6*A14 :: 0|=E14*($C$6/$B$6+B14/A14) :: 0|=C14*E14/10 :: 0.0|=G14*(D14/C14+F14/E14) :: 0.0
        12.0|0.2|2.01|0.02|=$B$6*A15 :: 0|=E15*($C$6/$B$6+B15/A15) :: 0|=C15*E15/10 :: 0.0|=G15*(D15/C15+F15/E15) :: 0.0
        9.6|0.2|2.48|0.02|=$B$6*A16 :: 0|=E16*($C$6/$B$6+B16/A16) :: 0|=C16*E16/10 :: 0.0|=G16*(D16/C16+F16/E16) :: 0.0
        8.0|0.2|3.02|0.02|=$B$6*A17 :: 0.0|=E17*($C$6/$B$6+B17/A17) :: 0.0|=C17*E17/10 :: 0.0|=G17*(D17/C17+F17/E17) :: 0.0
        émbolo: escala en mm, pero la goma tiene 2 mm de juego
        presión: manómetro absoluto digital, dos cuentas

        Tabla 3: ¿es constante?
        promedio de p·V|=AVERAGE(G12:G17) :: 0.0|J
        incertidumbre (la mayor de la tabla)|=MAX(H12:H17) :: 0.0|J
        lo más lejos del promedio|=MAX(G12:G17)-B22 :: 0.0|J, menos que la incertidumbre: sí
        """);
    page.measured("diámetro", "mm", "B5").uncertainty("C5").because("E5");
    page.calculated("área", "cm²", "B6").number("6.16").uncertainty("C6");
    page.measured("émbolo", "cm", "A12:A17").uncertainty("B12:B17").because("A18");
    page.measured("presión", "bar", "C12:C17").uncertainty("D12:D17").because("A19");
    page.calculated("volumen", "cm³", "E12:E17")
        .number("148", "123", "99", "74", "59", "49.3")
        .uncertainty("F12:F17");
    page.calculated("p·V", "J", "G12:G17")
        .number("14.8", "14.9", "14.7", "14.9", "14.7", "14.9")
        .uncertainty("H12:H17");
    page.record(Kind.MEAN, "p·V", "J", "B22").number("14.8").uncertainty("B23").because("A23");
    page.other(Role.COMPARISON, "B24");
    return drawing;
  }
}
