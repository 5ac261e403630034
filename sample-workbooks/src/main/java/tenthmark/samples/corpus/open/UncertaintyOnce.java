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

/** An uncertainty for a whole table in one cell or in a line below it. */
@AutoService(Family.class)
public final class UncertaintyOnce implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(bujes(), rayons());
  }

  private static Drawing bujes() {
    Drawing drawing =
        new Drawing(
            "bujes-error-comun",
            "common-in-cell",
            "bearing friction",
            Language.SPANISH,
            Writer.POI_XLSX);
    Page page = drawing.page("Bujes");
    page.draw(
        "A1",
        """
        Tiempo de parada de tres bujes (s)

        Ensayo | Buje A | Buje B | Buje C | | Incertidumbre de todos los tiempos:
        1 | 32.4 | 45.1 | 28.7 | | 0.3 | s
        2 | 31.8 | 44.6 | 29.3 | | reacción (0,2 s) y decidir cuándo está parada (0,1 s)
        3 | 33.0 | 45.4 | 28.9
        Media | =AVERAGE(B4:B6) :: 0.0 | =AVERAGE(C4:C6) :: 0.0 | =AVERAGE(D4:D6) :: 0.0
        Semidispersión | =(MAX(B4:B6)-MIN(B4:B6))/2 :: 0.0 | =(MAX(C4:C6)-MIN(C4:C6))/2 :: 0.0 | =(MAX(D4:D6)-MIN(D4:D6))/2 :: 0.0
        """);
    page.bold("A1,A3:D3,A7:D7");
    page.other(Role.INDEX, "A4:A6");
    page.measured("Tiempo Buje A", "s", "B4:B6").uncertainty("F4").because("F5");
    page.measured("Tiempo Buje B", "s", "C4:C6").uncertainty("F4").because("F5");
    page.measured("Tiempo Buje C", "s", "D4:D6").uncertainty("F4").because("F5");
    page.record(Kind.MEAN, "Tiempo Buje A", "s", "B7").number("32.4").uncertainty("B8");
    page.record(Kind.MEAN, "Tiempo Buje B", "s", "C7").number("45.03").uncertainty("C8");
    page.record(Kind.MEAN, "Tiempo Buje C", "s", "D7").number("28.97").uncertainty("D8");
    return drawing;
  }

  private static Drawing rayons() {
    Drawing drawing =
        new Drawing(
            "rayons-neufs-note",
            "common-in-line-below",
            "spoke lengths",
            Language.FRENCH,
            Writer.GNUMERIC_XLS);
    Page page = drawing.page("Rayons");
    page.draw(
        "A1",
        """
        Longueur des rayons neufs

        rayon | longueur (mm)
        1 | 291.5
        2 | 292.0
        3 | 291.5
        4 | 292.0
        5 | 291.0

        Toutes les longueurs sont à ± 0,5 mm près : réglet lu à 0,25 mm à chaque bout.
        moyenne | =AVERAGE(B4:B8) :: 0.0 | mm
        étendue / 2 | =(MAX(B4:B8)-MIN(B4:B8))/2 :: 0.0 | mm
        """);
    page.bold("A1,A3:B3");
    page.other(Role.INDEX, "A4:A8");
    page.measured("longueur", "mm", "B4:B8").uncertaintyOf(0.5).because("A10");
    page.record(Kind.MEAN, "longueur", "mm", "B11").number("291.6").uncertainty("B12");
    return drawing;
  }
}
