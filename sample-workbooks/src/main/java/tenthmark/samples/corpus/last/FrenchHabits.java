package tenthmark.samples.corpus.last;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.samples.corpus.Draw;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Kind;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** French students and their habits. */
@AutoService(Family.class)
public final class FrenchHabits implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(
        miroir(), deuxLectures(), ponderee(), recherche(), exactes(), enTete(), harmoniques());
  }

  /** Two sheets of the same form: the values on one, their uncertainties on the other. */
  private static Drawing miroir() {
    Drawing drawing =
        Draw.fr("feuilles-jumelles", "mirror-sheets", "spokes compared", Writer.CALC_ODS);
    Page values = drawing.page("Mesures");
    values.rows(
        """
        1 | Trois rayons, mesures (les incertitudes sont à la même place sur l'autre feuille)
        2 | Hippolyte Garancière, inventé
        4 | rayon | longueur (mm) | diamètre (mm) | masse (g)
        5 | rouge | 262.4 | 2.10 | 7.15
        6 | vert | 274.0 | 1.80 | 5.51
        7 | bleu | 291.2 | 2.30 | 9.55
        """);
    values.bold("A1,A4:D4");
    Page errors = drawing.page("Incertitudes");
    errors.rows(
        """
        1 | Trois rayons, incertitudes absolues
        4 | rayon | longueur (mm) | diamètre (mm) | masse (g)
        5 | rouge | 0.5 | 0.02 | 0.02
        6 | vert | 0.5 | 0.02 | 0.02
        7 | bleu | 0.5 | 0.02 | 0.02
        9 | longueur : réglet en millimètres, un quart de graduation à chaque bout
        10 | diamètre : pied à coulisse au cinquantième, une graduation
        11 | masse : dernier chiffre, et encore un parce que la balance dérive
        """);
    errors.bold("A1,A4:D4");
    Page results = drawing.page("Résultats");
    results.rows(
        """
        1 | Masse volumique de l'acier des rayons
        3 | rayon | ρ (g/cm³) | Δρ (g/cm³)
        4 | rouge | =Mesures!D5/(PI()/4*Mesures!C5^2*Mesures!B5/1000) :: 0.00 | =B4*(Incertitudes!D5/Mesures!D5+2*Incertitudes!C5/Mesures!C5+Incertitudes!B5/Mesures!B5) :: 0.00
        5 | vert | =Mesures!D6/(PI()/4*Mesures!C6^2*Mesures!B6/1000) :: 0.0 | =B5*(Incertitudes!D6/Mesures!D6+2*Incertitudes!C6/Mesures!C6+Incertitudes!B6/Mesures!B6) :: 0.0
        6 | bleu | =Mesures!D7/(PI()/4*Mesures!C7^2*Mesures!B7/1000) :: 0.00 | =B6*(Incertitudes!D7/Mesures!D7+2*Incertitudes!C7/Mesures!C7+Incertitudes!B7/Mesures!B7) :: 0.00
        8 | référence inox | 7.9
        """);
    results.bold("A1,A3:C3").other(Role.ACCEPTED, "B8");
    values
        .measured("longueur", "mm", "B5:B7")
        .uncertainty("Incertitudes!B5,Incertitudes!B6,Incertitudes!B7")
        .because("Incertitudes!A9");
    values
        .measured("diamètre", "mm", "C5:C7")
        .uncertainty("Incertitudes!C5,Incertitudes!C6,Incertitudes!C7")
        .because("Incertitudes!A10");
    values
        .measured("masse", "g", "D5:D7")
        .uncertainty("Incertitudes!D5,Incertitudes!D6,Incertitudes!D7")
        .because("Incertitudes!A11");
    results.calculated("ρ", "g/cm³", "B4:B6").number("7.87", "7.9", "7.89").uncertainty("C4:C6");
    return drawing;
  }

  /** A length is what lies between two readings. */
  private static Drawing deuxLectures() {
    Drawing drawing =
        Draw.fr("bord-a-bord", "two-readings-a-length", "links of a chain", Writer.GNUMERIC_XLS);
    Page page = drawing.page("Chaîne");
    page.rows(
        """
        1 | Longueur de morceaux de chaîne, lue aux deux bouts du réglet
        2 | Sidonie Lavergne-Hutin, trinôme du fond (inventés)
        3 | incertitude de chaque lecture | 0.2 | mm | un cinquième de graduation
        5 | maillons | bord gauche (mm) | bord droit (mm) | longueur (mm) | incertitude (mm) | pas (mm) | incertitude (mm)
        6 | 4 | 10.0 | 61.0 | =C6-B6 :: 0.0 | =2*$B$3 :: 0.0 | =D6/A6 :: 0.00 | =E6/A6 :: 0.00
        7 | 8 | 10.0 | 112.0 | =C7-B7 :: 0.0 | =2*$B$3 :: 0.0 | =D7/A7 :: 0.00 | =E7/A7 :: 0.00
        8 | 12 | 10.2 | 163.0 | =C8-B8 :: 0.0 | =2*$B$3 :: 0.0 | =D8/A8 :: 0.00 | =E8/A8 :: 0.00
        9 | 20 | 10.0 | 264.6 | =C9-B9 :: 0.0 | =2*$B$3 :: 0.0 | =D9/A9 :: 0.00 | =E9/A9 :: 0.00
        11 | pas nominal | 12.7 | mm
        12 | écart relatif du dernier | =(F9-B11)/B11 :: 0.0%
        """);
    page.bold("A1,A5:G5").other(Role.COUNT, "A6:A9");
    page.measured("bord gauche", "mm", "B6:B9").uncertainty("B3").because("D3");
    page.measured("bord droit", "mm", "C6:C9").uncertainty("B3").because("D3");
    page.calculated("longueur", "mm", "D6:D9")
        .number("51.0", "102.0", "152.8", "254.6")
        .uncertainty("E6:E9");
    page.calculated("pas", "mm", "F6:F9").uncertainty("G6:G9");
    page.other(Role.ACCEPTED, "B11").other(Role.COMPARISON, "B12");
    return drawing;
  }

  /** Weights, and a mean of them. */
  private static Drawing ponderee() {
    Drawing drawing =
        Draw.fr("moyenne-ponderee", "weighted-mean", "weight of a brake pad", Writer.POI_XLSX)
            .inQuadrature();
    Page page = drawing.page("Pondération");
    page.rows(
        """
        1 | Masse d'un même patin de frein sur quatre balances
        2 | Énoncé et corrigé : Ferdinand Quintin (inventé)
        4 | balance | m (g) | u (g) | poids 1/u² (g⁻²) | m/u² (g⁻¹) | (m − moyenne)/u
        5 | cuisine | 34 | 2 | =1/C5^2 :: 0.00 | =B5*D5 :: 0.0 | =(B5-$B$10)/C5 :: 0.0
        6 | postale | 32.5 | 0.5 | =1/C6^2 :: 0.00 | =B6*D6 :: 0.0 | =(B6-$B$10)/C6 :: 0.0
        7 | TP, ancienne | 32.2 | 0.3 | =1/C7^2 :: 0.00 | =B7*D7 :: 0.0 | =(B7-$B$10)/C7 :: 0.0
        8 | TP, neuve | 32.38 | 0.05 | =1/C8^2 :: 0 | =B8*D8 :: 0 | =(B8-$B$10)/C8 :: 0.0
        9 | sommes | | | =SUM(D5:D8) :: 0 | =SUM(E5:E8) :: 0
        10 | moyenne pondérée | =E9/D9 :: 0.00 | =1/SQRT(D9) :: 0.00
        12 | u : incertitudes-types que donnent les notices des balances.
        """);
    page.bold("A1,A4:F4,A10");
    page.measured("m", "g", "B5:B8").uncertainty("C5:C8").because("A12");
    page.other(Role.CALCULATED, "D5:E9").other(Role.COMPARISON, "F5:F8");
    page.record(Kind.MEAN, "moyenne pondérée", "g", "B10").number("32.38").uncertainty("C10");
    return drawing;
  }

  /** A code for the instrument; its uncertainty is looked up. */
  private static Drawing recherche() {
    Drawing drawing =
        Draw.fr("codes-instruments", "looked-up-uncertainty", "pump cylinder", Writer.POI_XLSX);
    Page page = drawing.page("Relevé");
    page.rows(
        """
        1 | Volume d'une pompe à pied
        2 | Eulalie Brossard, mercredi (inventée)
        4 | Mesurande | Code | Mesuré | Incertitude | Unité | | Code | Instrument | Incertitude | Pourquoi
        5 | diamètre intérieur | PC | 35.20 | =VLOOKUP(B5,$G$5:$I$7,3,FALSE) :: 0.00 | mm | | PC | pied à coulisse | 0.05 | une graduation d'un vingtième
        6 | course du piston | RG | 182.0 | =VLOOKUP(B6,$G$5:$I$7,3,FALSE) :: 0.0 | mm | | RG | réglet | 1.0 | un demi-millimètre à chaque bout
        7 | masse d'eau pour remplir | BA | 177.4 | =VLOOKUP(B7,$G$5:$I$7,3,FALSE) :: 0.0 | g | | BA | balance | 0.2 | dernier chiffre et dérive
        9 | volume géométrique | | =PI()/4*C5^2*C6/1000 :: 0.0 | =C9*(2*D5/C5+D6/C6) :: 0.0 | cm³
        10 | volume par l'eau (1,00 g/cm³) | | =C7/1 :: 0.0 | =D7/1 :: 0.0 | cm³
        11 | différence | | =C9-C10 :: 0.0 | =D9+D10 :: 0.0 | cm³
        """);
    page.bold("A1,A4:E4,G4:J4");
    page.measured("diamètre intérieur", "mm", "C5").uncertainty("D5").because("J5");
    page.measured("course du piston", "mm", "C6").uncertainty("D6").because("J6");
    page.measured("masse d'eau", "g", "C7").uncertainty("D7").because("J7");
    page.other(Role.CONSTANT, "I5:I7");
    page.calculated("volume géométrique", "cm³", "C9").uncertainty("D9");
    page.calculated("volume par l'eau", "cm³", "C10").uncertainty("D10");
    page.calculated("différence", "cm³", "C11").uncertainty("D11");
    return drawing;
  }

  /** Exact numbers and uncertain ones in the same columns. */
  private static Drawing exactes() {
    Drawing drawing =
        Draw.fr("cadence-exacte", "exact-and-uncertain", "speed from cadence", Writer.CALC_XLS);
    Page page = drawing.page("Cadence");
    page.rows(
        """
        1 | De la cadence à la vitesse
        2 | Barnabé Delestrée (inventé)
        4 | ce qu'on prend | nombre | à plus ou moins | unité | remarque
        5 | dents du plateau | 42 | exact | dents | comptées
        6 | dents du pignon | 14 | exact | dents | comptées
        7 | tours de pédale | 30 | exact | tours | comptés à voix haute
        8 | durée de ces tours | 24.6 | 0.3 | s | montre, et on ne voit pas bien quand la pédale passe en bas
        9 | développé d'un tour de roue | 2.10 | 0.02 | m | craie au sol, 1 cm à chaque bout
        11 | cadence | =60*B7/B8 :: 0.0 | =B11*C8/B8 :: 0.0 | tr/min | 60·tours/durée
        12 | rapport | =B5/B6 :: 0.00 | exact | | sans unité
        13 | vitesse | =B7*B12*B9/B8 :: 0.00 | =B13*(C8/B8+C9/B9) :: 0.00 | m/s | les pourcentages s'ajoutent
        14 | vitesse | =3.6*B13 :: 0.0 | =3.6*C13 :: 0.0 | km/h
        """);
    page.bold("A1,A4:E4").other(Role.COUNT, "B5:B7").other(Role.CALCULATED, "B12");
    page.measured("durée", "s", "B8").uncertainty("C8").because("E8");
    page.measured("développé", "m", "B9").uncertainty("C9").because("E9");
    page.calculated("cadence", "tr/min", "B11").number("73.2").uncertainty("C11");
    page.calculated("vitesse", "m/s", "B13").number("7.68").uncertainty("C13");
    page.calculated("vitesse", "km/h", "B14").number("27.7").uncertainty("C14");
    return drawing;
  }

  /** The uncertainties of whole columns are told in comments on the headings. */
  private static Drawing enTete() {
    Drawing drawing =
        Draw.fr(
            "tete-commentee",
            "uncertainty-in-heading-comment",
            "lamp and distance",
            Writer.POI_XLSX);
    Page page = drawing.page("Éclairement");
    page.rows(
        """
        1 | Éclairement d'un phare en fonction de la distance
        2 | Josépha Kermorvan (inventée) ; passer la souris sur les titres pour les incertitudes
        4 | d (cm) | E (lux) | E·d² (lux·m²) | ±
        5 | 40.0 | 812 | =B5*(A5/100)^2 :: 0 | =C5*(10/B5+2*0.5/A5) :: 0
        6 | 60.0 | 365 | =B6*(A6/100)^2 :: 0 | =C6*(10/B6+2*0.5/A6) :: 0
        7 | 80.0 | 201 | =B7*(A7/100)^2 :: 0 | =C7*(10/B7+2*0.5/A7) :: 0
        8 | 100.0 | 131 | =B8*(A8/100)^2 :: 0 | =C8*(10/B8+2*0.5/A8) :: 0
        10 | E·d² ne change pas au-delà de son incertitude : la lampe se comporte comme un point.
        """);
    page.bold("A1,A4:D4");
    page.comment(
        "A4",
        "± 0,5 cm : mètre ruban, 1 mm à chaque bout et 3 mm parce qu'on ne voit pas le filament");
    page.comment("B4", "± 10 lux : l'affichage tremble autant quand quelqu'un bouge dans la salle");
    page.measured("d", "cm", "A5:A8").uncertaintyOf(0.5).becauseOfComment("A4");
    page.measured("E", "lux", "B5:B8").uncertaintyOf(10).becauseOfComment("B4");
    page.calculated("E·d²", "lux·m²", "C5:C8")
        .number("130", "131", "129", "131")
        .uncertainty("D5:D8");
    return drawing;
  }

  /** Numbers of harmonics across, a line through the origin. */
  private static Drawing harmoniques() {
    Drawing drawing =
        Draw.fr("harmoniques-rayon", "harmonics", "spoke resonance", Writer.CALC_XLSX);
    Page page = drawing.page("Sons");
    page.rows(
        """
        1 | Un rayon qui chante
        2 | Anselme et Gersende Pélissou, jumeaux imaginaires
        4 | rang de l'harmonique n | 1 | 2 | 3 | 4 | 5
        5 | fréquence du pic (Hz) | 402 | 806 | 1207 | 1612 | 2011
        6 | largeur à mi-hauteur (Hz) | 8 | 8 | 8 | 8 | 8
        7 | incertitude = demi-largeur (Hz) | =B6/2 | =C6/2 | =D6/2 | =E6/2 | =F6/2
        8 | fréquence divisée par n (Hz) | =B5/B4 :: 0 | =C5/C4 :: 0 | =D5/D4 :: 0.0 | =E5/E4 :: 0.0 | =F5/F4 :: 0.0
        9 | incertitude (Hz) | =B7/B4 :: 0 | =C7/C4 :: 0 | =D7/D4 :: 0.0 | =E7/E4 :: 0.0 | =F7/F4 :: 0.0
        11 | longueur libre du rayon | 0.285 | m | ± 0.002 | m | le croisement n'est pas un point : 1 mm à chaque bout
        12 | pente de f selon n | =SLOPE(B5:F5,B4:F4) :: 0.0 | Hz | ± | =INDEX(LINEST(B5:F5,B4:F4,TRUE,TRUE),2,1) :: 0.0 | Hz
        13 | célérité c = 2·L·pente | =2*B11*B12 :: 0 | m/s | ± | =B13*(0.002/B11+E12/B12) :: 0 | m/s
        """);
    page.draw("D11", "±|0.002|m|le croisement n'est pas un point : 1 mm à chaque bout");
    page.draw("B13", "=2*B11*B12 :: 0.0|m/s|±|=B13*(E11/B11+E12/B12) :: 0.0|m/s");
    page.bold("A1").other(Role.COUNT, "B4:F4").other(Role.RAW, "B6:F6");
    page.measured("fréquence du pic", "Hz", "B5:F5").uncertainty("B7:F7").because("A7");
    page.calculated("fréquence divisée par n", "Hz", "B8:F8").uncertainty("B9:F9");
    page.measured("longueur libre", "m", "B11").uncertainty("E11").because("G11");
    page.record(Kind.SLOPE, "pente", "Hz", "B12").uncertainty("E12");
    page.calculated("célérité c", "m/s", "B13").uncertainty("E13");
    return drawing;
  }
}
