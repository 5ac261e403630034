package tenthmark.samples.corpus.open;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Contributions in quadrature, and a long table. */
@AutoService(Family.class)
public final class Budgets implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(kurbel(), cadence());
  }

  private static Drawing kurbel() {
    Drawing drawing =
        new Drawing(
                "kurbel-quadratisch", "record-rows", "crank arms", Language.GERMAN, Writer.CALC_ODS)
            .inQuadrature();
    Page page = drawing.page("Kurbel");
    page.draw(
        "A1",
        """
        Kurbelarm, Unsicherheiten quadratisch addiert

        Messgröße | Wert | Einheit | Ablesung | Gerät | Gesamt | Warum
        Länge l | 170.5 | mm | 0.4 | 0.3 | =SQRT(SUMSQ(D4:E4)) :: 0.0 | Lineal, beide Enden zusammen 0,4 mm; Herstellerangabe des Lineals
        Kraft F | 42.0 | N | 0.3 | 0.4 | =SQRT(SUMSQ(D5:E5)) :: 0.0 | Skala auf 0,3 N abgelesen; 1 % vom Messwert laut Datenblatt
        Drehmoment M | =B4*B5/1000 :: 0.00 | N·m | | | =B6*SQRT((F4/B4)^2+(F5/B5)^2) :: 0.00
        """);
    page.bold("A1,A3:G3");
    page.measured("Länge", "mm", "B4")
        .uncertainty("F4")
        .contribution("reading", "D4")
        .contribution("instrument", "E4")
        .because("G4");
    page.measured("Kraft", "N", "B5")
        .uncertainty("F5")
        .contribution("reading", "D5")
        .contribution("instrument", "E5")
        .because("G5");
    page.calculated("Drehmoment", "N·m", "B6").number("7.16").uncertainty("F6");
    return drawing;
  }

  private static Drawing cadence() {
    Drawing drawing =
        new Drawing(
            "cadence-long-table", "long-table", "wheel timing", Language.ENGLISH, Writer.POI_XLSX);
    Page page = drawing.page("Cadence");
    page.draw(
        "A1",
        """
        Cadence on the roller: ten turns of the crank, twenty times
        Four riders took turns.

        Run | Time for ten turns (s) | Unc. (s) | Cadence (1/min) | Unc. (1/min) | Rider
        1 | 8.2 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 1
        2 | 8.6 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 2
        3 | 9.1 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 3
        4 | 9.3 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 4
        5 | 9.8 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 1
        6 | 10.4 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 2
        7 | 10.2 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 3
        8 | 10.9 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 4
        9 | 11.3 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 1
        10 | 11.8 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 2
        11 | 12.1 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 3
        12 | 12.6 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 4
        13 | 13.0 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 1
        14 | 12.8 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 2
        15 | 13.5 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 3
        16 | 14.1 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 4
        17 | 14.4 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 1
        18 | 14.9 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 2
        19 | 15.3 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 3
        20 | 15.8 | 0.2 | =600/B{r} :: 0.0 | =D{r}*C{r}/B{r} :: 0.0 | 4

        Unc. of the time: started and stopped by hand, 0.2 s
        """);
    page.bold("A1,A4:F4");
    page.other(Role.INDEX, "A5:A24").other(Role.LABEL, "F5:F24");
    page.measured("Time", "s", "B5:B24").uncertainty("C5:C24").because("A26");
    page.calculated("Cadence", "1/min", "D5:D24")
        .number(
            "73.2", "69.8", "65.9", "64.5", "61.2", "57.7", "58.8", "55.0", "53.1", "50.8", "49.6",
            "47.6", "46.2", "46.9", "44.4", "42.6", "41.7", "40.3", "39.2", "38.0")
        .uncertainty("E5:E24");
    return drawing;
  }
}
