package tenthmark.samples.corpus.finale;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.samples.corpus.Draw;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Kind;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Tables out of French practical classes. */
@AutoService(Family.class)
public final class FrenchWorksheets implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(antivol(), pedale(), pompeNotee());
  }

  /** Trials down two columns, and under each column all that is made of them. */
  private static Drawing antivol() {
    Drawing drawing =
        Draw.fr(
            "antivol-pendu",
            "statistics-rows-below-columns",
            "bicycle lock as a pendulum",
            Writer.POI_XLS);
    Page page = drawing.page("TP 2");
    page.rows(
        """
        1 | TP 2 : un antivol pendu au bout d'un câble, mesure de g
        2 | Eulalie Montferrand, Côme Aubrac (élèves inventés)
        4 | Essai | 10 T, câble court | 10 T, câble long | Unité
        5 | 1 | 12.64 | 17.90 | s
        6 | 2 | 12.71 | 17.99 | s
        7 | 3 | 12.68 | 17.93 | s
        8 | 4 | 12.75 | 18.02 | s
        9 | 5 | 12.66 | 17.94 | s
        10 | Moyenne | =AVERAGE(B5:B9) :: 0.00 | =AVERAGE(C5:C9) :: 0.00 | s
        11 | Écart-type | =STDEV(B5:B9) :: 0.000 | =STDEV(C5:C9) :: 0.000 | s
        12 | Écart-type / √5 | =B11/SQRT(5) :: 0.000 | =C11/SQRT(5) :: 0.000 | s
        13 | Temps de réaction | 0.10 | 0.10 | s
        14 | Incertitude sur 10 T | =B12+B13 :: 0.00 | =C12+C13 :: 0.00 | s
        16 | T | =B10/10 :: 0.000 | =C10/10 :: 0.000 | s
        17 | ΔT | =B14/10 :: 0.000 | =C14/10 :: 0.000 | s
        18 | Longueur ℓ | 0.400 | 0.800 | m
        19 | Δℓ | 0.003 | 0.003 | m
        20 | g | =4*PI()^2*B18/B16^2 :: 0.0 | =4*PI()^2*C18/C16^2 :: 0.00 | m/s²
        21 | Δg | =B20*(B19/B18+2*B17/B16) :: 0.0 | =C20*(C19/C18+2*C17/C16) :: 0.00 | m/s²
        22 | g admis | 9.81 | 9.81 | m/s²
        24 | Temps de réaction : la même personne déclenche et arrête, on garde un dixième de seconde en tout.
        25 | Δℓ : le mètre est gradué au millimètre, mais le milieu de l'antivol est estimé à 3 mm près.
        26 | Les deux valeurs de g sont compatibles avec la valeur admise.
        """);
    page.bold("A1,A4:D4,A10:D10,A14:D14,A20:D21");
    page.other(Role.INDEX, "A5:A9").other(Role.RAW, "B5:C9").other(Role.STATISTIC, "B11:C11");
    page.record(Kind.MEAN, "10 T", "s", "B10:C10")
        .number("12.69", "17.96")
        .uncertainty("B14:C14")
        .contribution("repeat", "B12:C12")
        .contribution("timing", "B13:C13")
        .because("A24");
    page.calculated("T", "s", "B16:C16").number("1.269", "1.796").uncertainty("B17:C17");
    page.measured("longueur", "m", "B18:C18").uncertainty("B19:C19").because("A25");
    page.calculated("g", "m/s²", "B20:C20").number("9.8", "9.80").uncertainty("B21:C21");
    page.other(Role.ACCEPTED, "B22:C22");
    return drawing;
  }

  /** A table with a column of numbers in brackets, and under it the notes that they stand for. */
  private static Drawing pedale() {
    Drawing drawing =
        Draw.fr("pedale-dans-l-eau", "numbered-notes", "pedal weighed in water", Writer.POI_XLSX);
    Page page = drawing.page("Pesées");
    page.rows(
        """
        1 | Masse volumique d'une pédale par double pesée
        2 | Compte rendu d'Apolline Desrosiers et de Gontran Vial (personnages inventés)
        4 | Grandeur | Valeur | Incertitude absolue | Unité | Note
        5 | masse dans l'air, m₁ | 316.4 | 0.2 | g | (a)
        6 | masse apparente dans l'eau, m₂ | 229.1 | 0.5 | g | (b)
        7 | température de l'eau | 21.5 | 0.5 | °C | (c)
        8 | volume de la pédale, V | =(B5-B6)/B19 :: 0.0 | =(C5+C6)/B19 :: 0.0 | cm³ | (d)
        9 | masse volumique, ρ | =B5*B19/(B5-B6) :: 0.00 | =B19/(B5-B6)^2*(B6*C5+B5*C6) :: 0.00 | g/cm³ | (e)
        11 | Notes
        12 | (a) Balance au dixième de gramme, un chiffre pour la lecture et un pour le zéro.
        13 | (b) La pédale tourne au bout du fil, l'affichage bouge d'un demi-gramme.
        14 | (c) Thermomètre gradué tous les degrés, une demi-graduation.
        15 | (d) V = (m₁ − m₂)/ρ(eau) ; les incertitudes s'ajoutent.
        16 | (e) ρ = m₁·ρ(eau)/(m₁ − m₂) ; on a dérivé par rapport à m₁ et à m₂.
        18 | Données
        19 | eau à 21,5 °C | 0.998 | | g/cm³
        20 | aluminium | 2.70 | | g/cm³
        21 | acier | 7.85 | | g/cm³
        23 | La valeur trouvée est entre celles de l'aluminium (le corps) et de l'acier (l'axe).
        """);
    page.bold("A1,A4:E4,A11,A18");
    page.measured("masse dans l'air", "g", "B5").uncertainty("C5").because("A12");
    page.measured("masse apparente dans l'eau", "g", "B6").uncertainty("C6").because("A13");
    page.measured("température", "°C", "B7").uncertainty("C7").because("A14");
    page.calculated("volume", "cm³", "B8").number("87.5").uncertainty("C8");
    page.calculated("masse volumique", "g/cm³", "B9").number("3.62").uncertainty("C9");
    page.other(Role.CONSTANT, "B19").other(Role.ACCEPTED, "B20:B21");
    return drawing;
  }

  /** A form of an examination, with the marks that each answer is worth. */
  private static Drawing pompeNotee() {
    Drawing drawing =
        Draw.fr("pompe-notee", "form-with-marks", "air from a foot pump", Writer.POI_XLSX);
    Page page = drawing.page("Épreuve");
    page.rows(
        """
        1 | Épreuve pratique : le débit d'une pompe à pied
        2 | Candidat : | Théodule Vergnaud (fictif)
        4 | À remplir | Réponse | à ± près | Unité | Justifier l'incertitude | Points
        5 | Diamètre intérieur du corps de pompe | 5.00 | 0.02 | cm | pied à coulisse, une graduation de 0,2 mm | 2
        6 | Course du piston | 12.6 | 0.3 | cm | règle : 1 mm en haut, 2 mm en bas à cause du joint | 2
        7 | Air recueilli dans le sac gradué | 6.0 | 0.3 | L | le sac a des traits tous les 0,5 L et il n'est jamais bien lisse | 2
        8 | Nombre de coups de pompe | 25 | | | compté à deux, sans erreur | 1
        9 | Durée de tous les coups | 31.4 | 0.4 | s | chronomètre à la main, 0,2 s au départ et 0,2 s à l'arrivée | 2
        11 | À calculer
        12 | Volume balayé par le piston | =PI()/4*B5^2*B6/1000 :: 0.000 | =B12*(2*C5/B5+C6/B6) :: 0.000 | L | | 3
        13 | Air recueilli par coup | =B7/B8 :: 0.000 | =C7/B8 :: 0.000 | L | | 2
        14 | Rapport des deux | =B13/B12 :: 0.00 | =B14*(C13/B13+C12/B12) :: 0.00 | sans | | 3
        15 | Débit moyen | =B7/B9 :: 0.000 | =B15*(C7/B7+C9/B9) :: 0.000 | L/s | | 3
        17 | Total des points | | | | | =SUM(F5:F15)
        """);
    page.bold("A1,A4:F4,A11,A17");
    page.measured("diamètre", "cm", "B5").uncertainty("C5").because("E5");
    page.measured("course", "cm", "B6").uncertainty("C6").because("E6");
    page.measured("air recueilli", "L", "B7").uncertainty("C7").because("E7");
    page.measured("durée", "s", "B9").uncertainty("C9").because("E9");
    page.calculated("volume balayé", "L", "B12").number("0.247").uncertainty("C12");
    page.calculated("air recueilli par coup", "L", "B13").number("0.240").uncertainty("C13");
    page.calculated("rapport", "", "B14").number("0.97").uncertainty("C14");
    page.calculated("débit", "L/s", "B15").number("0.191").uncertainty("C15");
    page.other(Role.COUNT, "B8").other(Role.LABEL, "F5:F9,F12:F15,F17");
    return drawing;
  }
}
