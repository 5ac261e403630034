package tenthmark.samples.corpus.fresh;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.samples.corpus.Draw;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Hand-outs that are filled in, and free notes. */
@AutoService(Family.class)
public final class HandOuts implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(questions(), ficha(), colonne(), texte(), deltas(), sections());
  }

  /** Questions, and answers under them in cells of their own. */
  private static Drawing questions() {
    Drawing drawing =
        Draw.en("gear-questions", "questions-and-answers", "gears and crank arms", Writer.POI_XLSX);
    Page page = drawing.page("Worksheet 5");
    page.rows(
        """
        1 | WORKSHEET 5: one turn of the pedals
        2 | your name: | Lachlan Abernathy-Cho (invented)
        4 | Q1. How long is the crank arm, from axle to pedal axle?
        5 | | 170.5 | ± | 1.0 | mm
        6 | How do you know the uncertainty? | the two axles have no marked centre, so I trust half a millimetre at each end
        8 | Q2. How far does the wheel roll in one turn?
        9 | | 2095 | ± | 5 | mm
        10 | How do you know the uncertainty? | chalk lines at start and end are about 2 mm thick each and the tape is good to a millimetre
        12 | Q3. Count the teeth.
        13 | chainring | 44 | cog | 16
        15 | Q4. What path does the foot make in one turn?
        16 | | =2*PI()*B5 :: 0 | ± | =2*PI()*D5 :: 0 | mm
        18 | Q5. How far does the bicycle go in one turn of the pedals?
        19 | | =B9*B13/D13 :: 0 | ± | =D9*B13/D13 :: 0 | mm
        21 | Q6. So how many times as far as your foot?
        22 | | =B19/B16 :: 0.00 | ± | =B22*(D19/B19+D16/B16) :: 0.00
        23 | (no unit, it is a ratio)
        """);
    page.bold("A1,A4,A8,A12,A15,A18,A21");
    page.measured("crank arm", "mm", "B5").uncertainty("D5").because("B6");
    page.measured("wheel roll in one turn", "mm", "B9").uncertainty("D9").because("B10");
    page.other(Role.COUNT, "B13,D13");
    page.calculated("path of the foot", "mm", "B16").number("1071").uncertainty("D16");
    page.calculated("bicycle in one turn of the pedals", "mm", "B19")
        .number("5761")
        .uncertainty("D19");
    page.calculated("how many times as far", "", "B22").number("5.38").uncertainty("D22");
    return drawing;
  }

  /** A form of two halves beside each other. */
  private static Drawing ficha() {
    Drawing drawing = Draw.es("ficha-disco", "two-halves-form", "brake disc", Writer.CALC_ODS);
    Page page = drawing.page("Ficha");
    page.rows(
        """
        1 | FICHA DE LABORATORIO 12 – DISCO DE FRENO
        2 | Alumna: | Maddalen Izquierdo (inventada) | | Fecha: | 2026-04-21
        4 | LO QUE SE MIDE | | | LO QUE SALE
        5 | Masa (g) | 118.3 | | Volumen (cm³) | =PI()*((B8/2)^2-(B11/2)^2)*B14/1000 :: 0.0
        6 | Incertidumbre (g) | 0.2 | | Incertidumbre (cm³) | =PI()*(B8*B9+B11*B12)*B14/2000+E5*B15/B14 :: 0.0
        7 | Motivo: la balanza de 0,1 g y su deriva
        8 | Diámetro de fuera (mm) | 160.0 | | Densidad (g/cm³) | =B5/E5 :: 0.0
        9 | Incertidumbre (mm) | 0.2 | | Incertidumbre (g/cm³) | =E8*(B6/B5+E6/E5) :: 0.0
        10 | Motivo: regla larga, una décima en cada extremo
        11 | Diámetro de dentro (mm) | 132.0 | | Acero, según tablas (g/cm³) | 7.8
        12 | Incertidumbre (mm) | 0.2 | | Diferencia (g/cm³) | =ABS(E8-E11) :: 0.0
        13 | Motivo: la misma regla, una décima en cada extremo
        14 | Grosor (mm) | 2.36 | | El disco es de acero: la diferencia cabe en la incertidumbre.
        15 | Incertidumbre (mm) | 0.03
        16 | Motivo: pie de rey de 0,02 mm, y una centésima por el desgaste
        """);
    page.bold("A1,A4,D4").other(Role.DATE, "E2");
    page.measured("Masa", "g", "B5").uncertainty("B6").because("A7");
    page.measured("Diámetro de fuera", "mm", "B8").uncertainty("B9").because("A10");
    page.measured("Diámetro de dentro", "mm", "B11").uncertainty("B12").because("A13");
    page.measured("Grosor", "mm", "B14").uncertainty("B15").because("A16");
    page.calculated("Volumen", "cm³", "E5").uncertainty("E6");
    page.calculated("Densidad", "g/cm³", "E8").uncertainty("E9");
    page.other(Role.ACCEPTED, "E11").other(Role.COMPARISON, "E12");
    return drawing;
  }

  /** Everything under each other in one column. */
  private static Drawing colonne() {
    Drawing drawing =
        Draw.fr("une-colonne", "one-long-column", "friction on a slope", Writer.POI_XLSX);
    Page page = drawing.page("Feuil1");
    page.rows(
        """
        1 | Patin de frein sur la planche inclinée
        2 | Ondine Vaucelles (inventée)
        4 | Hauteur h du bout de la planche (cm)
        5 | 41.5
        6 | incertitude sur h (cm)
        7 | 0.5
        8 | parce que le patin part brusquement pendant qu'on lève, on lit à 5 mm près
        9 | Longueur L de la planche (cm)
        10 | 80.0
        11 | incertitude sur L (cm)
        12 | 0.2
        13 | parce qu'on lit 1 mm à chaque bout du mètre
        14 | Base b = √(L² − h²) (cm)
        15 | =SQRT(A10^2-A5^2) :: 0.0
        16 | incertitude sur b (cm)
        17 | =(A10*A12+A5*A7)/A15 :: 0.0
        18 | Coefficient de frottement µ = h/b, sans unité
        19 | =A5/A15 :: 0.000
        20 | incertitude sur µ
        21 | =A19*(A7/A5+A7*A5/A15^2+A12*A10/A15^2) :: 0.000
        22 | Caoutchouc sur bois, livre :
        23 | 0.6
        24 | Le coefficient de la table est à un chiffre près, le nôtre s'arrondit à la même valeur.
        """);
    page.bold("A1");
    page.measured("Hauteur h", "cm", "A5").uncertainty("A7").because("A8");
    page.measured("Longueur L", "cm", "A10").uncertainty("A12").because("A13");
    page.calculated("Base b", "cm", "A15").number("68.4").uncertainty("A17");
    page.calculated("Coefficient de frottement µ", "", "A19").uncertainty("A21");
    page.other(Role.ACCEPTED, "A23");
    return drawing;
  }

  /** Texts with value and uncertainty; the unit stands in the heading. */
  private static Drawing texte() {
    Drawing drawing =
        Draw.de("kugellager-texte", "texts-under-unit-headings", "bearing balls", Writer.POI_XLS);
    Page page = drawing.page("Kugeln");
    page.rows(
        """
        1 | Kugeln aus einem alten Steuersatz
        2 | Hilke Ahrensburg, Gruppe Rot (erfunden)
        4 | Kugel | d / mm | m / g | V / mm³ | ρ / (g/cm³)
        5 | groß | 6,350 ± 0,010 | 1,05 ± 0,02 | 134,1 ± 0,6 | 7,83 ± 0,19
        6 | mittel | 4,760 ± 0,010 | 0,44 ± 0,02 | 56,5 ± 0,4 | 7,8 ± 0,4
        7 | klein | 3,970 ± 0,010 | 0,26 ± 0,02 | 32,8 ± 0,2 | 7,9 ± 0,7
        9 | d: Bügelmessschraube, ein Skalenteil. m: Feinwaage, letzte Stelle und gleich viel, weil der Nullpunkt wandert.
        10 | V = π d³/6, dreimal die relative Unsicherheit von d. Bei der Dichte kommt die von m dazu.
        11 | Probe mit der großen Kugel, gerechnet in mm³: | =PI()*6.35^3/6 :: 0.00
        """);
    page.bold("A1,A4:E4");
    page.measured("d", "mm", "B5:B7")
        .number("6.350", "4.760", "3.970")
        .uncertaintyOf(0.01)
        .because("A9");
    page.measured("m", "g", "C5:C7")
        .number("1.05", "0.44", "0.26")
        .uncertaintyOf(0.02)
        .because("A9");
    page.calculated("V", "mm³", "D5:D7")
        .number("134.1", "56.5", "32.8")
        .uncertaintyOf(0.6, 0.4, 0.2)
        .because("A10");
    page.calculated("ρ", "g/cm³", "E5:E7")
        .number("7.83", "7.8", "7.9")
        .uncertaintyOf(0.19, 0.4, 0.7)
        .because("A10");
    page.other(Role.CALCULATED, "B11");
    return drawing;
  }

  /** Lower-case deltas, absolute and in percent. */
  private static Drawing deltas() {
    Drawing drawing =
        Draw.en("coaster-energy", "deltas-and-percent", "coasting down a hill", Writer.POI_XLSX);
    Page page = drawing.page("Coasting");
    page.rows(
        """
        1 | Coasting: how much of the height turns into speed?
        2 | Marguerite Holloway-Diaz (fictional), handed in late
        3 | g = 9.81 m/s² in all rows
        5 | rider | h [m] | δh [m] | δh/h [%] | v [m/s] | δv [m/s] | δv/v [%] | v²/(2gh) | δ(v²/(2gh))
        6 | Ottilie | 5.0 | 0.2 | =100*C6/B6 :: 0.0 | 8.4 | 0.2 | =100*F6/E6 :: 0.0 | =E6^2/(2*9.81*B6) :: 0.00 | =H6*(D6+2*G6)/100 :: 0.00
        7 | Barnaby | 5.0 | 0.2 | =100*C7/B7 :: 0.0 | 8.9 | 0.2 | =100*F7/E7 :: 0.0 | =E7^2/(2*9.81*B7) :: 0.00 | =H7*(D7+2*G7)/100 :: 0.00
        8 | Seraphina | 8.5 | 0.2 | =100*C8/B8 :: 0.0 | 10.9 | 0.2 | =100*F8/E8 :: 0.0 | =E8^2/(2*9.81*B8) :: 0.00 | =H8*(D8+2*G8)/100 :: 0.00
        9 | Ottilie again | 8.5 | 0.2 | =100*C9/B9 :: 0.0 | 11.2 | 0.2 | =100*F9/E9 :: 0.0 | =E9^2/(2*9.81*B9) :: 0.00 | =H9*(D9+2*G9)/100 :: 0.00
        11 | δh because we levelled with a garden hose and the water swings by 10 cm at either end
        12 | δv because the bike computer shows tenths and lags: two of them
        """);
    page.bold("A5:I5");
    page.measured("h", "m", "B6:B9").uncertainty("C6:C9").parameter("D6:D9").because("A11");
    page.measured("v", "m/s", "E6:E9").uncertainty("F6:F9").parameter("G6:G9").because("A12");
    page.calculated("v²/(2gh)", "", "H6:H9")
        .number("0.72", "0.81", "0.71", "0.75")
        .uncertainty("I6:I9");
    return drawing;
  }

  /** One table with headings of sections between its rows; reasons in comments. */
  private static Drawing sections() {
    Drawing drawing =
        Draw.fr("montee-sections", "sections-in-one-table", "power of a climb", Writer.CALC_XLSX);
    Page page = drawing.page("Montée");
    page.rows(
        """
        1 | Puissance d'une cycliste dans la montée du Moulin
        2 | Feuille de Clothilde Armagnac (inventée)
        4 | Quoi | Combien | À combien près | Unité
        5 | — Avant de partir —
        6 | cycliste et vélo | 71.5 | 0.5 | kg
        7 | pesanteur | 9.81 | | N/kg
        8 | — Sur la route —
        9 | dénivelé | 46 | 2 | m
        10 | durée | 214 | 2 | s
        11 | — De retour —
        12 | travail du poids | =B6*B7*B9/1000 :: 0.0 | =B12*(C6/B6+C9/B9) :: 0.0 | kJ
        13 | puissance | =1000*B12/B10 :: 0 | =B13*(C12/B12+C10/B10) :: 0 | W
        """);
    page.bold("A1,A4:D4,A5,A8,A11").merge("A5:D5", "A8:D8", "A11:D11");
    page.comment(
        "C6",
        "pèse-personne : affiche par pas de 0,1 kg, mais change de 0,5 kg selon l'endroit du sol");
    page.comment("C9", "deux lectures sur la carte, une courbe tous les 10 m, un mètre chacune");
    page.comment("C10", "montre déclenchée en roulant, une seconde au départ et une à l'arrivée");
    page.measured("cycliste et vélo", "kg", "B6").uncertainty("C6").becauseOfComment("C6");
    page.other(Role.CONSTANT, "B7");
    page.measured("dénivelé", "m", "B9").uncertainty("C9").becauseOfComment("C9");
    page.measured("durée", "s", "B10").uncertainty("C10").becauseOfComment("C10");
    page.calculated("travail du poids", "kJ", "B12").number("32.3").uncertainty("C12");
    page.calculated("puissance", "W", "B13").number("151").uncertainty("C13");
    return drawing;
  }
}
