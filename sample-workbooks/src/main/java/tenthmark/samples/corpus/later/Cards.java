package tenthmark.samples.corpus.later;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Each quantity on a card of its own: its name, then value, uncertainty and reason below. */
@AutoService(Family.class)
public final class Cards implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(ficheRayon(), leverCards(), fichasPuno());
  }

  /** Two cards side by side, an old sheet filled in. */
  private static Drawing ficheRayon() {
    Drawing drawing =
        new Drawing("fiche-rayon", "cards", "spoke density", Language.FRENCH, Writer.POI_XLS);
    Page page = drawing.page("Fiche 3");
    Rows.draw(
        page,
        """
        1 | TP 3 : rayon, moyeu et jante (atelier vélo, données inventées)
        2 | Nom : Maëlle Fauvet | | | | Date : | 2025-10-14
        4 | Longueur du rayon L | | | | Diamètre du rayon d
        5 | valeur | 291.5 | mm | | valeur | 2.030 | mm
        6 | incertitude | 0.5 | mm | | incertitude | 0.010 | mm
        7 | pourquoi | réglet au millimètre, un quart de division à chaque bout | | | pourquoi | palmer au centième, millième estimé : une demi-division, et autant pour le zéro
        9 | Masse des rayons pesés M | | | | Nombre de rayons pesés n
        10 | valeur | 74.6 | g | | valeur | 10
        11 | incertitude | 0.2 | g | | incertitude | exact
        12 | pourquoi | balance au 0,1 g : le dernier chiffre, plus 0,1 g parce qu'il hésite | | | pourquoi | compté deux fois
        14 | Masse d'un rayon m = M/n | | | | Volume d'un rayon V = πd²L/4
        15 | valeur | =B10/F10 :: 0.00 | g | | valeur | =PI()*F5^2*B5/4 :: 0 | mm³
        16 | incertitude | =B11/F10 :: 0.00 | g | | incertitude | =F15*(2*F6/F5+B6/B5) :: 0 | mm³
        17 | calcul | l'incertitude de M se divise aussi par n | | | calcul | somme des incertitudes relatives, deux fois celle de d
        19 | Masse volumique ρ = m/V | | | | Comparaison
        20 | valeur | =1000*B15/F15 :: 0.00 | g/cm³ | | inox, table | 7.90 | g/cm³
        21 | incertitude | =B20*(B16/B15+F16/F15) :: 0.00 | g/cm³ | | écart | =ABS(B20-F20) :: 0.00 | g/cm³
        22 | calcul | somme des incertitudes relatives | | | conclusion | =IF(F21<=B21,"compatible","non compatible")
        """);
    page.bold("A1,A4,E4,A9,E9,A14,E14,A19,E19");
    page.merge("A4:C4", "E4:G4", "A9:C9", "E9:G9", "A14:C14", "E14:G14", "A19:C19", "E19:G19");
    page.other(Role.DATE, "F2").other(Role.COUNT, "F10");
    page.other(Role.ACCEPTED, "F20").other(Role.COMPARISON, "F21");
    page.measured("Longueur du rayon L", "mm", "B5").uncertainty("B6").because("B7");
    page.measured("Diamètre du rayon d", "mm", "F5").uncertainty("F6").because("F7");
    page.measured("Masse des rayons pesés M", "g", "B10").uncertainty("B11").because("B12");
    page.calculated("Masse d'un rayon m", "g", "B15").number("7.46").uncertainty("B16");
    page.calculated("Volume d'un rayon V", "mm³", "F15").number("943").uncertainty("F16");
    page.calculated("Masse volumique ρ", "g/cm³", "B20").number("7.91").uncertainty("B21");
    return drawing;
  }

  /** One card under the other, with the contributions on it. */
  private static Drawing leverCards() {
    Drawing drawing =
        new Drawing(
            "lever-cards",
            "cards-with-contributions",
            "brake lever",
            Language.ENGLISH,
            Writer.CALC_XLSX);
    Page page = drawing.page("Lever");
    Rows.draw(
        page,
        """
        1 | Brake lever: two forces and two arms
        2 | Bench 4 - Orla Tunstead, second year (invented, and so are the numbers)
        3 | Every "give or take" is the plain sum of the lines above it.
        5 | Hand force F (hook 10 mm from the tip)
        6 | best value | 42.6 | N
        7 | reading the scale | 0.1 | N | marks every 1 N and far apart, so a tenth of one
        8 | spring balance itself | 0.4 | N | maker says 1 % of the reading
        9 | give or take | =B7+B8 :: 0.0 | N
        11 | Cable force C
        12 | best value | 158 | N
        13 | reading the scale | 1 | N | marks every 2 N, half of one because the needle trembles
        14 | spring balance itself | 2 | N | maker says 1 % of the reading, taken up to a whole newton
        15 | give or take | =B13+B14 :: 0 | N
        17 | Long arm a (pivot to finger)
        18 | best value | 81 | mm
        19 | reading both ends | 0.5 | mm | ruler in mm, a quarter of a millimetre at each end
        20 | where the finger really presses | 1.5 | mm | the pad of a finger is wide
        21 | give or take | =B19+B20 :: 0 | mm
        23 | Short arm b (pivot to cable)
        24 | best value | 21.75 | mm
        25 | reading the calliper | 0.05 | mm | its vernier has steps of 0.05 mm
        26 | edge of the pin | 0.05 | mm | worn, not sharp
        27 | give or take | =B25+B26 :: 0.00 | mm
        29 | Gain by forces C/F
        30 | best value | =B12/B6 :: 0.00
        31 | give or take | =B30*(B15/B12+B9/B6) :: 0.00 | | relative ones added
        33 | Gain by arms a/b
        34 | best value | =B18/B24 :: 0.00
        35 | give or take | =B34*(B21/B18+B27/B24) :: 0.00 | | relative ones added
        37 | difference of the two gains | =ABS(B30-B34) :: 0.00
        38 | allowed | =B31+B35 :: 0.00
        39 | verdict | =IF(B37<=B38,"they agree","they do not agree")
        """);
    page.bold("A1,A5,A11,A17,A23,A29,A33");
    page.measured("Hand force F", "N", "B6")
        .uncertainty("B9")
        .contribution("reading", "B7")
        .contribution("instrument", "B8")
        .because("D7");
    page.measured("Cable force C", "N", "B12")
        .uncertainty("B15")
        .contribution("reading", "B13")
        .contribution("instrument", "B14")
        .because("D13");
    page.measured("Long arm a", "mm", "B18")
        .uncertainty("B21")
        .contribution("reading", "B19")
        .contribution("physical", "B20")
        .because("D19");
    page.measured("Short arm b", "mm", "B24")
        .uncertainty("B27")
        .contribution("reading", "B25")
        .contribution("physical", "B26")
        .because("D25");
    page.calculated("Gain by forces", "", "B30").number("3.71").uncertainty("B31");
    page.calculated("Gain by arms", "", "B34").number("3.72").uncertainty("B35");
    page.other(Role.COMPARISON, "B37:B38");
    return drawing;
  }

  /** Cards in a row, filled in with the LAB functions. */
  private static Drawing fichasPuno() {
    Drawing drawing =
        new Drawing(
            "fichas-puno", "cards-in-a-row", "foam grip", Language.SPANISH, Writer.CALC_ODS);
    Page page = drawing.page("Puño");
    Rows.draw(
        page,
        """
        1 | Puño de espuma: cuánto pesa y cuánto mide
        2 | Ayudante: Nerea Otxandio (inventada; medidas inventadas)
        4 | LARGO | | MASA | | FUERZA PARA APLASTARLO 5 mm
        5 | 128.0 | mm | 11.36 | g | 14.5 | N
        6 | =LAB_TOTAL(A7:A8) :: 0.0 | ± mm | =LAB_TOTAL(C7:C8) :: 0.00 | ± g | =LAB_TOTAL(E7:E8) :: 0.0 | ± N
        7 | =LAB_READING(1,"fine",2) :: 0.0 | lectura en los dos extremos | 0.01 | último dígito | =LAB_READING(1,"wide") :: 0.0 | lectura, una décima de división
        8 | =LAB_FUZZY(1) :: 0.0 | borde blando de 1 mm en un extremo | 0.01 | deriva del cero | 0.3 | dinamómetro, 2 % según su hoja
        9 | Regla en mm; la espuma cede en un borde. | | Balanza de 0,01 g. | | Muelle con divisiones de 1 N, bien separadas.
        11 | MASA POR CENTÍMETRO | | RIGIDEZ
        12 | =10*C5/A5 :: 0.000 | g/cm | =E5/5 :: 0.00 | N/mm
        13 | =A12*(C6/C5+A6/A5) :: 0.000 | ± g/cm | =E6/5 :: 0.00 | ± N/mm
        14 | Suma de errores relativos. | | El tope de 5 mm es una galga, se toma como exacto.
        """);
    page.bold("A1,A4:E4,A11:C11");
    page.measured("LARGO", "mm", "A5")
        .uncertainty("A6")
        .contribution("reading", "A7")
        .contribution("physical", "A8")
        .because("A9");
    page.measured("MASA", "g", "C5")
        .uncertainty("C6")
        .contribution("reading", "C7")
        .contribution("instrument", "C8")
        .because("C9");
    page.measured("FUERZA", "N", "E5")
        .uncertainty("E6")
        .contribution("reading", "E7")
        .contribution("instrument", "E8")
        .because("E9");
    page.calculated("MASA POR CENTÍMETRO", "g/cm", "A12").number("0.888").uncertainty("A13");
    page.calculated("RIGIDEZ", "N/mm", "C12").number("2.90").uncertainty("C13");
    return drawing;
  }
}
