package tenthmark.samples.corpus.later;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Counts of random events, uncertain by their square roots. */
@AutoService(Family.class)
public final class Counts implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(radverkehr());
  }

  private static Drawing radverkehr() {
    Drawing drawing =
        new Drawing(
                "radverkehr",
                "counts",
                "bicycles past the window",
                Language.GERMAN,
                Writer.CALC_XLSX)
            .inQuadrature();
    Page page = drawing.page("Zählung");
    Rows.draw(
        page,
        """
        1 | Radverkehr vor dem Fenster
        2 | Wiebke Torhorst (erfunden), erfundene Zählung
        3 | Zählfehler: Wurzel aus N, weil die Räder unabhängig voneinander kommen. Die Dauer t gibt die Funkuhr, sie gilt als genau.
        5 | Zeitfenster | t / min | N | √N | N/t in 1/min | Fehler in 1/min
        6 | montags früh | 10 | 47 | =SQRT(C6) :: 0 | =C6/B6 :: 0.0 | =D6/B6 :: 0.0
        7 | montags mittags | 10 | 38 | =SQRT(C7) :: 0 | =C7/B7 :: 0.0 | =D7/B7 :: 0.0
        8 | montags abends | 10 | 83 | =SQRT(C8) :: 0 | =C8/B8 :: 0.0 | =D8/B8 :: 0.0
        9 | sonntags früh | 10 | 19 | =SQRT(C9) :: 0 | =C9/B9 :: 0.0 | =D9/B9 :: 0.0
        10 | sonntags mittags | 10 | 27 | =SQRT(C10) :: 0 | =C10/B10 :: 0.0 | =D10/B10 :: 0.0
        11 | zusammen | =SUM(B6:B10) :: 0 | =SUM(C6:C10) :: 0 | =SQRT(C11) :: 0 | =C11/B11 :: 0.0 | =D11/B11 :: 0.0
        """);
    page.bold("A1,A5:F5");
    page.other(Role.CONSTANT, "B6:B11");
    page.measured("N", "", "C6:C10").uncertainty("D6:D10").because("A3");
    page.calculated("N", "", "C11").number("214").uncertainty("D11");
    page.calculated("N/t", "1/min", "E6:E11")
        .number("4.7", "3.8", "8.3", "1.9", "2.7", "4.3")
        .uncertainty("F6:F11");
    return drawing;
  }
}
