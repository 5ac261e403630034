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

/** Records that are texts: sentences under each other, or cells of a table. */
@AutoService(Family.class)
public final class Prose implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(pedalTurn(), pesees());
  }

  private static Drawing pedalTurn() {
    Drawing drawing =
        new Drawing(
            "pedal-turn",
            "sentences",
            "distance of a pedal turn",
            Language.ENGLISH,
            Writer.POI_XLSX);
    Page page = drawing.page("Sheet 12");
    Rows.draw(
        page,
        """
        1 | How far does one turn of the pedals carry us?
        2 | Sheet 12 of the old folder; class copy of Wendell Ostrow (invented figures)
        4 | We rolled ten turns of the wheel along the corridor, five times.
        5 | run | distance (m)
        6 | 1 | 21.04
        7 | 2 | 21.09
        8 | 3 | 21.01
        9 | 4 | 21.07
        10 | 5 | 21.04
        11 | mean | =AVERAGE(B6:B10) :: 0.00
        12 | standard deviation | =STDEV(B6:B10) :: 0.000
        14 | ="Ten turns of the wheel: D = ("&TEXT(B11,"0.00")&" ± "&TEXT(B12/SQRT(5)+0.02,"0.00")&") m"
        15 | The uncertainty is the standard deviation of the mean plus 2 cm for the chalk marks at both ends.
        17 | The chainring has 48 teeth and the cog 16, counted, so one turn of the pedals is three of the wheel.
        19 | Pressure of the tyre: p = (4.00 ± 0.10) bar
        20 | The gauge has marks every 0.1 bar, read to a fifth (0.02 bar); the other 0.08 bar is its maker's 2 % of the reading.
        22 | ="One turn of the pedals: S = ("&TEXT(B11/10*48/16,"0.000")&" ± "&TEXT((B12/SQRT(5)+0.02)/10*48/16,"0.000")&") m"
        """);
    page.bold("A1,A5:B5");
    page.other(Role.INDEX, "A6:A10").other(Role.RAW, "B6:B10");
    page.other(Role.CALCULATED, "B11").other(Role.STATISTIC, "B12");
    page.record(Kind.MEAN, "D", "m", "A14").number("21.05").uncertaintyOf(0.03).because("A15");
    page.measured("Pressure of the tyre p", "bar", "A19")
        .number("4.00")
        .uncertaintyOf(0.10)
        .because("A20");
    page.calculated("S", "m", "A22").number("6.315").uncertaintyOf(0.010);
    return drawing;
  }

  private static Drawing pesees() {
    Drawing drawing =
        new Drawing(
            "pesees-atelier", "text-cells", "small parts", Language.FRENCH, Writer.CALC_ODS);
    Page page = drawing.page("Feuille1");
    Rows.draw(
        page,
        """
        1 | Petites pièces de l'atelier
        2 | Tao Brémond (inventé), mardi
        4 | objet | combien | longueur | masse d'un seul
        5 | cale-pied | 2 | 84,5 ± 0,5 mm | 61,3 ± 0,2 g
        6 | porte-bidon | 1 | 142,0 ± 1,0 mm | 48,6 ± 0,2 g
        7 | levier de frein | 2 | 96,5 ± 0,5 mm | 74,9 ± 0,2 g
        8 | maillon rapide | 4 | 24,15 ± 0,05 mm | 2,31 ± 0,02 g
        9 | en tout | =SUM(B5:B8)
        11 | longueur : réglet en mm, 0,25 mm à chaque bout ; le porte-bidon est souple, 0,5 mm de plus ; le maillon au pied à coulisse de 0,05 mm
        12 | masse : balance de cuisine, 0,1 g qui hésite d'un chiffre ; le maillon sur la balance fine, 0,01 g et autant de dérive
        """);
    page.bold("A4:D4");
    page.other(Role.COUNT, "B5:B9");
    page.measured("longueur", "mm", "C5:C8")
        .number("84.5", "142.0", "96.5", "24.15")
        .uncertaintyOf(0.5, 1.0, 0.5, 0.05)
        .because("A11");
    page.measured("masse d'un seul", "g", "D5:D8")
        .number("61.3", "48.6", "74.9", "2.31")
        .uncertaintyOf(0.2, 0.2, 0.2, 0.02)
        .because("A12");
    return drawing;
  }
}
