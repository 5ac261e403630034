package tenthmark.samples.corpus.open;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Kind;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Writer;

/** Reasons in a text box, in comments, on another sheet. */
@AutoService(Family.class)
public final class ReasonsElsewhere implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(griffe(), levier(), axle());
  }

  private static Drawing griffe() {
    Drawing drawing =
        new Drawing(
            "griffe-textfeld", "reasons-in-box", "foam grips", Language.GERMAN, Writer.POI_XLSX);
    Page page = drawing.page("Griffe");
    page.draw(
        "A1",
        """
        Schaumgriffe: Kraft und Eindrückung

        F / N | ΔF / N | s / mm | Δs / mm
        5.0 | 0.5 | 0.8 | 0.2
        10.0 | 0.5 | 1.5 | 0.2
        15.0 | 0.5 | 2.1 | 0.2
        20.0 | 0.5 | 2.6 | 0.2
        """);
    page.bold("A1,A3:D3");
    page.box(
        "F3:K9",
        "ΔF: Federwaage mit 1-N-Teilung, halber Teil. Δs: Messschieber; die Backen sinken auf jeder Seite 0,1 mm ein.");
    page.measured("F", "N", "A4:A7").uncertainty("B4:B7").becauseOfBox();
    page.measured("s", "mm", "C4:C7").uncertainty("D4:D7").becauseOfBox();
    return drawing;
  }

  private static Drawing levier() {
    Drawing drawing =
        new Drawing(
            "levier-commentaires",
            "reasons-in-comments",
            "spring-loaded brake lever",
            Language.FRENCH,
            Writer.CALC_XLSX);
    Page page = drawing.page("Levier");
    page.draw(
        "A1",
        """
        Levier de frein : force au câble

        Grandeur | Valeur | Incertitude | Unité
        bras a | 88.0 | 0.5 | mm
        bras b | 22.0 | 0.5 | mm
        force de la main F | 40.0 | 1.0 | N
        force au câble | =B6*B4/B5 :: 0 | =B7*(C4/B4+C5/B5+C6/B6) :: 0 | N
        """);
    page.bold("A1,A3:D3");
    page.comment("C4", "réglet au mm, 0,25 mm à chaque bout")
        .comment("C5", "réglet au mm, 0,25 mm à chaque bout")
        .comment("C6", "peson gradué en newtons, l'aiguille bouge d'une graduation");
    page.measured("bras a", "mm", "B4").uncertainty("C4").becauseOfComment("C4");
    page.measured("bras b", "mm", "B5").uncertainty("C5").becauseOfComment("C5");
    page.measured("force de la main", "N", "B6").uncertainty("C6").becauseOfComment("C6");
    page.calculated("force au câble", "N", "B7").number("160").uncertainty("C7");
    return drawing;
  }

  private static Drawing axle() {
    Drawing drawing =
        new Drawing(
            "axle-reasons-sheet",
            "reasons-on-another-sheet",
            "axle diameter",
            Language.ENGLISH,
            Writer.GNUMERIC_XLSX);
    Page page = drawing.page("Data");
    page.draw(
        "A1",
        """
        Axle: how even is it?

        Place | Diameter (mm) | Uncertainty (mm)
        left | 9.98 | 0.02
        middle | 9.95 | 0.02
        right | 9.97 | 0.02
        Mean | =AVERAGE(B4:B6) :: 0.00 | =MAX(C4:C6) :: 0.00
        """);
    Page reasons = drawing.page("Reasons");
    reasons.draw(
        "A1",
        """
        Where the numbers come from
        Diameter: micrometer with 0.01 mm steps, read to one step, and its zero is only good to 0.01 mm.
        The zero is the same for all three, so the mean is no better than one reading.
        """);
    page.bold("A1,A3:C3");
    page.measured("Diameter", "mm", "B4:B6").uncertainty("C4:C6").because("Reasons!A2");
    page.record(Kind.MEAN, "Diameter", "mm", "B7")
        .number("9.97")
        .uncertainty("C7")
        .because("Reasons!A3");
    return drawing;
  }
}
