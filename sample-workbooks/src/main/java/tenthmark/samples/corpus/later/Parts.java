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

/** A sheet for each part of the work, and a last one that brings the results together. */
@AutoService(Family.class)
public final class Parts implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(dynamo(), cranks());
  }

  private static Drawing dynamo() {
    Drawing drawing =
        new Drawing(
            "dynamo-trois-feuilles",
            "parts-and-summary",
            "dynamo circuit",
            Language.FRENCH,
            Writer.CALC_ODS);
    Page one = drawing.page("Partie A");
    Rows.draw(
        one,
        """
        1 | Partie A : la charge du dynamo est-elle une résistance ?
        3 | n° | U (V) | ± U (V) | I (A) | ± I (A) | R = U/I (Ω) | ± R (Ω)
        4 | 1 | 1.20 | 0.02 | 0.100 | 0.002 | =B4/D4 :: 0.0 | =F4*(C4/B4+E4/D4) :: 0.0
        5 | 2 | 2.41 | 0.02 | 0.201 | 0.003 | =B5/D5 :: 0.0 | =F5*(C5/B5+E5/D5) :: 0.0
        6 | 3 | 3.58 | 0.03 | 0.298 | 0.004 | =B6/D6 :: 0.0 | =F6*(C6/B6+E6/D6) :: 0.0
        7 | 4 | 4.79 | 0.03 | 0.399 | 0.005 | =B7/D7 :: 0.0 | =F7*(C7/B7+E7/D7) :: 0.0
        8 | 5 | 6.02 | 0.04 | 0.502 | 0.006 | =B8/D8 :: 0.0 | =F8*(C8/B8+E8/D8) :: 0.0
        9 | moyenne | | | | | =AVERAGE(F4:F8) :: 0.0 | =AVERAGE(G4:G8) :: 0.0
        11 | U : notice du multimètre, 0,5 % de la lecture et un chiffre ; I : 1 % et un chiffre.
        12 | L'incertitude vient des appareils, la moyenne ne la réduit pas.
        """);
    one.bold("A1,A3:G3");
    Page two = drawing.page("Partie B");
    Rows.draw(
        two,
        """
        1 | Partie B : à quelle vitesse ?
        3 | Grandeur | Valeur | Incertitude | Unité | Justification
        4 | tension aux bornes de la charge U | 7.25 | 0.05 | V | multimètre, 0,5 % de la lecture et un chiffre
        5 | durée de 20 tours de roue t | 14.6 | 0.2 | s | chronomètre à la main
        6 | nombre de tours | 20 | exact
        7 | circonférence de la roue C | 2.105 | 0.003 | m | mètre ruban, deux bouts, et la trace du pneu
        9 | vitesse v | =B6*B7/B5 :: 0.00 | =B9*(C7/B7+C5/B5) :: 0.00 | m/s | calculée
        10 | puissance P = U²/R | =B4^2/'Partie A'!F9 :: 0.00 | =B10*(2*C4/B4+'Partie A'!G9/'Partie A'!F9) :: 0.00 | W | calculée
        """);
    two.bold("A1,A3:E3");
    Page last = drawing.page("Bilan");
    Rows.draw(
        last,
        """
        1 | Bilan (valeurs inventées, Aubin Kerhervé)
        3 | Grandeur | Valeur | ± | Unité
        4 | résistance de la charge | ='Partie A'!F9 :: 0.0 | ='Partie A'!G9 :: 0.0 | Ω
        5 | vitesse | ='Partie B'!B9 :: 0.00 | ='Partie B'!C9 :: 0.00 | m/s
        6 | puissance | ='Partie B'!B10 :: 0.00 | ='Partie B'!C10 :: 0.00 | W
        8 | résistance marquée | 12 | | Ω
        9 | écart | =100*ABS(B4-B8)/B8 :: 0.0 | | %
        """);
    last.bold("A1,A3:D3");
    one.other(Role.INDEX, "A4:A8");
    one.measured("U", "V", "B4:B8").uncertainty("C4:C8").because("A11");
    one.measured("I", "A", "D4:D8").uncertainty("E4:E8").because("A11");
    one.calculated("R", "Ω", "F4:F8")
        .number("12.0", "12.0", "12.0", "12.0", "12.0")
        .uncertainty("G4:G8");
    one.record(Kind.MEAN, "R", "Ω", "F9").number("12.0").uncertainty("G9").because("A12");
    two.measured("tension aux bornes de la charge U", "V", "B4").uncertainty("C4").because("E4");
    two.measured("durée de 20 tours t", "s", "B5").uncertainty("C5").because("E5");
    two.other(Role.COUNT, "B6");
    two.measured("circonférence de la roue C", "m", "B7").uncertainty("C7").because("E7");
    two.calculated("vitesse v", "m/s", "B9").number("2.88").uncertainty("C9");
    two.calculated("puissance P", "W", "B10").number("4.38").uncertainty("C10");
    last.calculated("résistance de la charge", "Ω", "B4").number("12.0").uncertainty("C4");
    last.calculated("vitesse", "m/s", "B5").number("2.88").uncertainty("C5");
    last.calculated("puissance", "W", "B6").number("4.38").uncertainty("C6");
    last.other(Role.ACCEPTED, "B8").other(Role.COMPARISON, "B9");
    return drawing;
  }

  private static Drawing cranks() {
    Drawing drawing =
        new Drawing(
            "cranks-two-days",
            "parts-and-summary",
            "crank arms",
            Language.ENGLISH,
            Writer.GNUMERIC_XLSX);
    day(drawing.page("monday"), "Monday, left crank (made up)", "left", "170.5", "268.4", "45");
    day(drawing.page("thursday"), "Thursday: the right one", "right", "170.0", "271.9", "47");
    Page both = drawing.page("both days");
    Rows.draw(
        both,
        """
        1 | Both days together
        2 | thing | number | +/- | unit
        3 | left minus right, hole to hole | =monday!B3-thursday!B3 :: 0.0 | =monday!C3+thursday!C3 :: 0.0 | mm
        4 | mass of both | =monday!B4+thursday!B4 :: 0.0 | =monday!C4+thursday!C4 :: 0.0 | g
        5 | mean torque | =(monday!B6+thursday!B6)/2 :: 0.0 | =(monday!C6+thursday!C6)/2 :: 0.0 | N m
        6 | bolts on the chainring | 5 | | counted
        """);
    both.calculated("left minus right", "mm", "B3").number("0.5").uncertainty("C3");
    both.calculated("mass of both", "g", "B4").number("540.3").uncertainty("C4");
    both.calculated("mean torque", "N m", "B5").number("7.8").uncertainty("C5");
    both.other(Role.COUNT, "B6");
    return drawing;
  }

  private static void day(
      Page page, String title, String side, String length, String mass, String pull) {
    Rows.draw(
        page,
        """
        1 | %s
        2 | thing | number | +/- | unit | why
        3 | %s crank, hole to hole | %s | 0.5 | mm | ruler, a quarter mm at both ends
        4 | its mass | %s | 0.2 | g | the balance shows 0.1 and wobbles by one more
        5 | pull at the pedal | %s | 2 | N | luggage scale, marks every 2 N, and the hand is never quite still
        6 | torque | =B5*B3/1000 :: 0.0 | =B6*(C5/B5+C3/B3) :: 0.0 | N m | pull times length
        """
            .formatted(title, side, length, mass, pull));
    page.measured(side + " crank, hole to hole", "mm", "B3").uncertainty("C3").because("E3");
    page.measured("mass", "g", "B4").uncertainty("C4").because("E4");
    page.measured("pull at the pedal", "N", "B5").uncertainty("C5").because("E5");
    page.calculated("torque", "N m", "B6").uncertainty("C6");
  }
}
