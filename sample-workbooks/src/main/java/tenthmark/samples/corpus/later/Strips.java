package tenthmark.samples.corpus.later;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Writer;

/** Values in a line, their uncertainties in the line below, with the LAB functions. */
@AutoService(Family.class)
public final class Strips implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(visPotence());
  }

  private static Drawing visPotence() {
    Drawing drawing =
        new Drawing(
            "vis-potence",
            "values-above-uncertainties",
            "torque on a stem bolt",
            Language.FRENCH,
            Writer.CALC_XLSX);
    Page page = drawing.page("Couple");
    Rows.draw(
        page,
        """
        1 | Vis de potence : de la force au couple
        2 | Camille Rouxel, moniteur (inventé, mesures inventées)
        4 | | F (N) | r (mm) | M = F·r (N·m)
        5 | | 24.5 | 120.0 | =B5*C5/1000 :: 0.00
        6 | ± | =LAB_TOTAL(B8:B9) :: 0.0 | =LAB_TOTAL(C8:C9) :: 0.0 | =LAB_CARRY(D5,B5:C5,B6:C6) :: 0.00
        8 | dont lecture | =LAB_READING(1,"wide") :: 0.0 | =LAB_READING(1,"fine",2) :: 0.0
        9 | dont le reste | 0.4 | 0.5
        11 | Couple : | =LAB_RESULT(D5,D6,"N·m")
        """);
    page.bold("A1,A4:D4");
    page.comment(
        "B6", "Peson gradué en newtons, divisions larges ; pour le reste sa notice : 0,4 N.");
    page.comment(
        "C6",
        "Réglet en mm aux deux bouts ; le centre de la vis se place à un demi-millimètre près.");
    page.measured("F", "N", "B5")
        .uncertainty("B6")
        .contribution("reading", "B8")
        .contribution("instrument", "B9")
        .becauseOfComment("B6");
    page.measured("r", "mm", "C5")
        .uncertainty("C6")
        .contribution("reading", "C8")
        .contribution("physical", "C9")
        .becauseOfComment("C6");
    page.calculated("M", "N·m", "D5").number("2.94").uncertainty("D6");
    page.calculated("Couple", "N·m", "B11").number("2.94").uncertaintyOf(0.08);
    return drawing;
  }
}
