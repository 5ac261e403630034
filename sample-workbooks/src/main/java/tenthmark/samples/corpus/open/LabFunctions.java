package tenthmark.samples.corpus.open;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Kind;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Uncertainties from the LAB functions. */
@AutoService(Family.class)
public final class LabFunctions implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(lever(), volant());
  }

  private static Drawing lever() {
    Drawing drawing =
        new Drawing(
            "lever-lab-functions",
            "lab-functions",
            "spring-loaded brake lever",
            Language.ENGLISH,
            Writer.CALC_ODS);
    Page page = drawing.page("Lever");
    page.draw(
        "A1",
        """
        Lever arm and hand force

        Quantity | Value | Unit | Division | Reading | Physical | Instrument | Uncertainty | Record | Why
        lever arm | 92.5 | mm | 1 | =LAB_READING(D4,"fine",2) :: 0.0 | =LAB_FUZZY(1) :: 0.0 | 0.5 | =LAB_TOTAL(E4:G4) :: 0.0 | =LAB_RESULT(B4,H4,C4) | rule read to a quarter at both ends; the pivot is soft over 1 mm; class of the rule
        hand force | 31.0 | N | 1 | =LAB_READING(D5,"wide") :: 0.0 | 0.2 | 0.5 | =LAB_TOTAL(E5:G5) :: 0.0 | =LAB_RESULT(B5,H5,C5) | wide scale read to a tenth; the hand trembles; leaflet of the balance
        moment | =B4*B5/1000 :: 0.00 | N·m | | | | | =LAB_CARRY(B6,B4:B5,H4:H5) :: 0.00 | =LAB_RESULT(B6,H6,C6)
        """);
    page.bold("A1,A3:J3");
    page.measured("lever arm", "mm", "B4")
        .uncertainty("H4")
        .contribution("reading", "E4")
        .contribution("physical", "F4")
        .contribution("instrument", "G4")
        .parameter("D4")
        .because("J4");
    page.measured("hand force", "N", "B5")
        .uncertainty("H5")
        .contribution("reading", "E5")
        .contribution("physical", "F5")
        .contribution("instrument", "G5")
        .parameter("D5")
        .because("J5");
    page.calculated("moment", "N·m", "B6").number("2.87").uncertainty("H6");
    return drawing;
  }

  private static Drawing volant() {
    Drawing drawing =
        new Drawing(
            "volant-fonctions-lab",
            "lab-functions",
            "wheel timing",
            Language.FRENCH,
            Writer.CALC_XLSX);
    Page page = drawing.page("Volant");
    page.draw(
        "A1",
        """
        Période de la roue lestée

        n° | 10 périodes (s)
        1 | 15.8
        2 | 16.1
        3 | 15.9
        4 | 16.0
        5 | 15.7

        moyenne de 10 périodes (s) | =AVERAGE(B4:B8) :: 0.0
        dispersion (s) | =LAB_REPEATS(B4:B8) :: 0.00
        déclenchement à la main (s) | =LAB_HANDTIMED() :: 0.00
        incertitude (s) | =LAB_TOTAL(B11:B12) :: 0.0
        période T (s) | =B10/10 :: 0.00
        incertitude sur T (s) | =B13/10 :: 0.00
        résultat | =LAB_RESULT(B14,B15,"s")

        Dispersion : écart type de la moyenne. Déclenchement : le même temps de réaction à chaque fois.
        """);
    page.bold("A1,A3:B3,A16:B16");
    page.other(Role.INDEX, "A4:A8").other(Role.RAW, "B4:B8");
    page.record(Kind.MEAN, "10 périodes", "s", "B10")
        .number("15.9")
        .uncertainty("B13")
        .contribution("repeat", "B11")
        .contribution("timing", "B12")
        .because("A18");
    page.calculated("période", "s", "B14").number("1.59").uncertainty("B15");
    return drawing;
  }
}
