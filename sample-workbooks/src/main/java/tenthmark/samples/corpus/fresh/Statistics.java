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

/** Spread, standard uncertainties, coverage factors and sigmas. */
@AutoService(Family.class)
public final class Statistics implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(cyclometer(), manivelle(), torqueWrench(), umfang(), classe(), charge());
  }

  /** Counts with their square roots, rates and a background. */
  private static Drawing cyclometer() {
    Drawing drawing =
        Draw.en("old-cyclometer", "count-rates", "counts from a luminous dial", Writer.POI_XLSX)
            .inQuadrature();
    Page page = drawing.page("Counter");
    page.rows(
        """
        1 | Counts from the luminous dial of a very old cyclometer
        2 | Demonstrator's copy, Aurelio Vance (no such person, no such dial)
        3 | Counts scatter by their square root. The gate time is kept by the counter itself and is exact. Errors that have nothing to do with each other are added in quadrature.
        5 | Distance (cm) | Gate (s) | N | √N | N per second | error (1/s) | without background (1/s) | error (1/s)
        6 | no dial | 600 | 212 | =SQRT(C6) :: 0 | =C6/B6 :: 0.00 | =D6/B6 :: 0.00
        7 | 2 | 24 | 379 | =SQRT(C7) :: 0 | =C7/B7 :: 0.0 | =D7/B7 :: 0.0 | =E7-E$6 :: 0.0 | =SQRT(F7^2+F$6^2) :: 0.0
        8 | 4 | 60 | 283 | =SQRT(C8) :: 0 | =C8/B8 :: 0.0 | =D8/B8 :: 0.0 | =E8-E$6 :: 0.0 | =SQRT(F8^2+F$6^2) :: 0.0
        9 | 6 | 120 | 287 | =SQRT(C9) :: 0 | =C9/B9 :: 0.00 | =D9/B9 :: 0.00 | =E9-E$6 :: 0.00 | =SQRT(F9^2+F$6^2) :: 0.00
        10 | 8 | 240 | 331 | =SQRT(C10) :: 0 | =C10/B10 :: 0.00 | =D10/B10 :: 0.00 | =E10-E$6 :: 0.00 | =SQRT(F10^2+F$6^2) :: 0.00
        """);
    page.bold("A1,A5:H5");
    page.other(Role.CONSTANT, "A7:A10,B6:B10");
    page.measured("N", "", "C6:C10").uncertainty("D6:D10").because("A3");
    page.calculated("N per second", "1/s", "E6:E10")
        .number("0.35", "15.8", "4.7", "2.39", "1.38")
        .uncertainty("F6:F10");
    page.calculated("without background", "1/s", "G7:G10")
        .number("15.4", "4.4", "2.04", "1.03")
        .uncertainty("H7:H10");
    return drawing;
  }

  /** Sources with half-widths and divisors, standard uncertainties in quadrature. */
  private static Drawing manivelle() {
    Drawing drawing =
        Draw.fr("manivelle-types", "half-widths-and-divisors", "crank arm", Writer.CALC_ODS)
            .inQuadrature();
    Page page = drawing.page("Bilan");
    page.rows(
        """
        1 | Incertitudes-types : longueur d'une manivelle et couple du cycliste
        2 | Modèle distribué par A.-L. Puyraimond (inventée), complété par Wandrille (inventé aussi)
        4 | Grandeur | Source | Demi-étendue | Diviseur | Incertitude-type | Unité | Explication
        5 | L | lecture du réglet | 0.5 | =SQRT(3) :: 0.00 | =C5/D5 :: 0.00 | mm | graduations au millimètre, deux bouts : une demi-graduation en tout, loi rectangulaire
        6 | L | étalonnage du réglet | 0.2 | 2 | =C6/D6 :: 0.00 | mm | certificat, élargie avec k = 2
        7 | F | lecture du dynamomètre | 2.0 | =SQRT(3) :: 0.00 | =C7/D7 :: 0.0 | N | graduations de 4 N, loi rectangulaire
        8 | F | classe du dynamomètre | 3.0 | =SQRT(3) :: 0.00 | =C8/D8 :: 0.0 | N | notice : 3 N, loi rectangulaire
        10 | Grandeur | Valeur | Incertitude-type composée | Unité
        11 | L | 172.4 | =SQRT(E5^2+E6^2) :: 0.0 | mm
        12 | F | 214 | =SQRT(E7^2+E8^2) :: 0 | N
        13 | couple C = F·L | =B12*B11/1000 :: 0.0 | =B13*SQRT((C11/B11)^2+(C12/B12)^2) :: 0.0 | N·m
        """);
    page.bold("A1,A4:G4,A10:D10");
    page.measured("L", "mm", "B11")
        .uncertainty("C11")
        .contribution("reading", "E5")
        .contribution("instrument", "E6")
        .parameter("C5")
        .parameter("C6")
        .parameter("D5")
        .parameter("D6")
        .because("G5");
    page.measured("F", "N", "B12")
        .uncertainty("C12")
        .contribution("reading", "E7")
        .contribution("instrument", "E8")
        .parameter("C7")
        .parameter("C8")
        .parameter("D7")
        .parameter("D8")
        .because("G7");
    page.calculated("couple C", "N·m", "B13").number("36.9").uncertainty("C13");
    return drawing;
  }

  /** Expanded uncertainties of a certificate. */
  private static Drawing torqueWrench() {
    Drawing drawing =
        Draw.en("torque-wrench", "expanded-k2", "torque wrench checked", Writer.GNUMERIC_XLSX)
            .inQuadrature();
    Page page = drawing.page("Check");
    page.rows(
        """
        1 | Check of the workshop's torque wrench against the reference head
        2 | Filled in by Benedikta Osgood (invented) in the manner of a certificate
        3 | All uncertainties are expanded, k = 2, and combine in quadrature.
        5 | Set point | Reference | U (k=2) | Wrench | U (k=2) | Deviation | U (k=2)
        6 | N·m | N·m | N·m | N·m | N·m | N·m | N·m
        7 | 5 | 5.02 | 0.03 | 5.2 | 0.2 | =D7-B7 :: 0.0 | =SQRT(C7^2+E7^2) :: 0.0
        8 | 10 | 10.04 | 0.05 | 10.3 | 0.2 | =D8-B8 :: 0.0 | =SQRT(C8^2+E8^2) :: 0.0
        9 | 20 | 20.05 | 0.06 | 20.4 | 0.2 | =D9-B9 :: 0.0 | =SQRT(C9^2+E9^2) :: 0.0
        10 | 40 | 40.08 | 0.07 | 40.9 | 0.2 | =D10-B10 :: 0.0 | =SQRT(C10^2+E10^2) :: 0.0
        12 | Notes
        13 | Reference: taken from the certificate of the head, which states U for each point.
        14 | Wrench: its scale has marks every 0.5 N·m; we read it with a standard uncertainty of a fifth of a mark, 0.1 N·m, doubled here.
        """);
    page.bold("A1,A5:G5,A12").other(Role.LABEL, "A7:A10");
    page.measured("Reference", "N·m", "B7:B10").uncertainty("C7:C10").because("A13");
    page.measured("Wrench", "N·m", "D7:D10").uncertainty("E7:E10").because("A14");
    page.calculated("Deviation", "N·m", "F7:F10")
        .number("0.2", "0.3", "0.3", "0.8")
        .uncertainty("G7:G10");
    return drawing;
  }

  /** One quantity by several methods, and how many sigmas they are apart. */
  private static Drawing umfang() {
    Drawing drawing =
        Draw.de("umfang-methoden", "methods-compared", "circumference of a wheel", Writer.POI_XLSX)
            .inQuadrature();
    Page page = drawing.page("Umfang");
    page.rows(
        """
        1 | Radumfang auf drei Wegen
        2 | Swantje Quistorp & Lothar Immenkamp (erfunden) - Standardunsicherheiten
        4 | Weg | Umfang in cm | Standardunsicherheit in cm | Begründung
        5 | A abgerollt | 209.4 | 0.3 | Maßband, an beiden Enden ein Kreidestrich von 2 bis 3 mm
        6 | B Schnur um den Reifen | 210.3 | 0.4 | Schnur dehnt sich, zweimal angelegt
        7 | C Durchmesser 66,4 cm mal π | =PI()*66.4 :: 0.0 | 0.9 | Durchmesser an zwei Enden auf zusammen 0,3 cm, mal π
        9 | Vergleich | Differenz in cm | u(Differenz) in cm | Differenz/u
        10 | B − A | =B6-B5 :: 0.0 | =SQRT(C6^2+C5^2) :: 0.0 | =ABS(B10)/C10 :: 0.0
        11 | C − A | =B7-B5 :: 0.0 | =SQRT(C7^2+C5^2) :: 0.0 | =ABS(B11)/C11 :: 0.0
        12 | C − B | =B7-B6 :: 0.0 | =SQRT(C7^2+C6^2) :: 0.0 | =ABS(B12)/C12 :: 0.0
        13 | Alle unter 2, also vertragen sich die drei Wege.
        """);
    page.bold("A1,A4:D4,A9:D9");
    page.measured("Umfang", "cm", "B5:B7")
        .number("209.4", "210.3", "208.6")
        .uncertainty("C5:C7")
        .because("D5:D7");
    page.calculated("Differenz", "cm", "B10:B12")
        .number("0.9", "-0.8", "-1.7")
        .uncertainty("C10:C12");
    page.other(Role.COMPARISON, "D10:D12");
    return drawing;
  }

  /** A row for each group of the class, the class's mean below. */
  private static Drawing classe() {
    Drawing drawing =
        Draw.fr("ressort-classe", "class-table", "spring of a brake lever", Writer.POI_XLS);
    Page page = drawing.page("Classe");
    page.rows(
        """
        1 | Raideur du ressort de frein, résultats de toute la classe
        2 | Relevé au tableau par Apollinaire Guesdon (inventé), groupes inventés
        4 | groupe | F en N | ± F en N | x en mm | ± x en mm | k en N/mm | ± k en N/mm
        5 | les Chambres à air | 12.2 | 0.2 | 8.0 | 0.5 | =B5/D5 :: 0.00 | =F5*(C5/B5+E5/D5) :: 0.00
        6 | Pignon fixe | 18.5 | 0.2 | 12.0 | 0.5 | =B6/D6 :: 0.00 | =F6*(C6/B6+E6/D6) :: 0.00
        7 | Roue libre | 22.9 | 0.3 | 15.0 | 0.5 | =B7/D7 :: 0.00 | =F7*(C7/B7+E7/D7) :: 0.00
        8 | Garde-boue | 30.1 | 0.3 | 20.0 | 0.5 | =B8/D8 :: 0.00 | =F8*(C8/B8+E8/D8) :: 0.00
        9 | les Rustines | 38.7 | 0.4 | 25.0 | 0.5 | =B9/D9 :: 0.00 | =F9*(C9/B9+E9/D9) :: 0.00
        11 | moyenne de la classe | | | | | =AVERAGE(F5:F9) :: 0.000 | =F12/SQRT(COUNT(F5:F9)) :: 0.000
        12 | écart-type | | | | | =STDEV(F5:F9) :: 0.000
        14 | ± F : chaque groupe prend une graduation de son dynamomètre. ± x : réglet, un quart de millimètre à chaque bout. Moyenne : écart-type divisé par la racine du nombre de groupes.
        """);
    page.bold("A1,A4:G4,A11");
    page.measured("F", "N", "B5:B9").uncertainty("C5:C9").because("A14");
    page.measured("x", "mm", "D5:D9").uncertainty("E5:E9").because("A14");
    page.calculated("k", "N/mm", "F5:F9")
        .number("1.53", "1.54", "1.53", "1.51", "1.55")
        .uncertainty("G5:G9");
    page.record(Kind.MEAN, "moyenne de la classe", "N/mm", "F11").uncertainty("G11").because("A14");
    page.other(Role.STATISTIC, "F12");
    return drawing;
  }

  /** Quantities as rows, each with its uncertainty in the row below; trials across. */
  private static Drawing charge() {
    Drawing drawing =
        Draw.fr(
            "fleche-rayon", "uncertainty-row-below-row", "bending of a spoke", Writer.GNUMERIC_ODS);
    Page page = drawing.page("Flexion");
    page.rows(
        """
        1 | Un rayon serré dans l'étau plie sous une masse
        2 | Théophane Lescure (inventé), 2 juin
        4 | essai | n° 1 | n° 2 | n° 3 | n° 4
        5 | masse accrochée (g) | 50.0 | 100.0 | 150.0 | 200.0
        6 | ± (g) | 0.5 | 0.5 | 0.5 | 0.5
        7 | flèche (mm) | 6.5 | 13.0 | 20.0 | 26.5
        8 | ± (mm) | 0.5 | 0.5 | 0.5 | 0.5
        9 | flèche par gramme (mm/g) | =B7/B5 :: 0.000 | =C7/C5 :: 0.000 | =D7/D5 :: 0.000 | =E7/E5 :: 0.000
        10 | ± (mm/g) | =B9*(B8/B7+B6/B5) :: 0.000 | =C9*(C8/C7+C6/C5) :: 0.000 | =D9*(D8/D7+D6/D5) :: 0.000 | =E9*(E8/E7+E6/E5) :: 0.000
        12 | Masses marquées, vérifiées à un demi-gramme sur la balance du labo. La flèche se lit devant un réglet : le bout du rayon tremble d'un demi-millimètre.
        """);
    page.draw("B9", "=B7/B5 :: 0.000").bold("A1,A4:E4");
    page.measured("masse accrochée", "g", "B5:E5").uncertainty("B6:E6").because("A12");
    page.measured("flèche", "mm", "B7:E7").uncertainty("B8:E8").because("A12");
    page.calculated("flèche par gramme", "mm/g", "B9:E9").uncertainty("B10:E10");
    return drawing;
  }
}
