package tenthmark.samples.corpus.later;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** No headings: what it is, the number, a plus-minus, the uncertainty and the unit along a line. */
@AutoService(Family.class)
public final class Scribbles implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(platoPinon(), bottleStrap());
  }

  /** Two groups of lines beside each other. */
  private static Drawing platoPinon() {
    Drawing drawing =
        new Drawing(
            "plato-y-pinon",
            "lines-without-headings",
            "chainring and cog",
            Language.SPANISH,
            Writer.GNUMERIC_XLSX);
    Page page = drawing.page("Hoja1");
    Rows.draw(
        page,
        """
        1 | plato y piñón, jueves, Gorka Aldecoa (números inventados)
        3 | diámetro del plato | 182.0 | +- | 1.0 | mm | regla en mm, medio milímetro en cada lado | | masa del plato | 161.3 | +- | 0.2 | g | balanza: 0,1 y baila otro
        4 | diámetro del piñón | 65.0 | +- | 1.0 | mm | igual | | masa del piñón | 48.7 | +- | 0.2 | g | igual
        5 | | | | | | | | las dos juntas | =I3+I4 :: 0.0 | +- | =K3+K4 :: 0.0 | g
        6 | relación por diámetros | =B3/B4 :: 0.00 | +- | =B6*(D3/B3+D4/B4) :: 0.00
        8 | dientes del plato | 45 | contados
        9 | dientes del piñón | 16 | contados
        10 | relación por dientes | =B8/B9 :: 0.0000
        11 | se diferencian en | =B6-B10 :: 0.00 | menos que el error, bien
        """);
    page.measured("diámetro del plato", "mm", "B3").uncertainty("D3").because("F3");
    page.measured("diámetro del piñón", "mm", "B4").uncertainty("D4").because("F4");
    page.measured("masa del plato", "g", "I3").uncertainty("K3").because("M3");
    page.measured("masa del piñón", "g", "I4").uncertainty("K4").because("M4");
    page.calculated("las dos juntas", "g", "I5").number("210.0").uncertainty("K5");
    page.calculated("relación por diámetros", "", "B6").number("2.80").uncertainty("D6");
    page.other(Role.COUNT, "B8:B9").other(Role.CALCULATED, "B10").other(Role.COMPARISON, "B11");
    return drawing;
  }

  /** Letters with an equals sign, scattered over the sheet. */
  private static Drawing bottleStrap() {
    Drawing drawing =
        new Drawing(
            "bottle-strap",
            "letters-and-equals-signs",
            "rubber strap of a bottle cage",
            Language.ENGLISH,
            Writer.POI_XLS);
    Page page = drawing.page("Sheet1");
    Rows.draw(
        page,
        """
        2 | | weight on the bottle strap, Dev Harkaway, invented
        4 | | M = | 0.750 | kg | ± | 0.002 | kg | kitchen scale, last digit is 1 g and it flickers one more
        5 | | x = | 41.0 | mm | ± | 1.0 | mm | ruler, a quarter mm at both ends, edge of the strap is wobbly, half a mm
        6 | | g = | 9.81 | m/s² | given
        8 | | k = M g / x
        9 | | k = | =C4*C6/(C5/1000) :: 0 | N/m | ± | =C9*(F4/C4+F5/C5) :: 0 | N/m
        11 | | | then let it bounce
        12 | | 10 bounces | 4.1 | s | ± | 0.2 | s | stopped by hand, somebody else says go
        13 | | T = | =C12/10 :: 0.00 | s | ± | =F12/10 :: 0.00 | s
        15 | | k = 4 pi² M / T²
        16 | | k = | =4*PI()^2*C4/C13^2 :: 0 | N/m | ± | =C16*(F4/C4+2*F13/C13) :: 0 | N/m
        18 | | the two k differ by | =ABS(C9-C16) :: 0 | N/m, that is fine
        """);
    page.measured("M", "kg", "C4").uncertainty("F4").because("H4");
    page.measured("x", "mm", "C5").uncertainty("F5").because("H5");
    page.other(Role.CONSTANT, "C6").other(Role.COMPARISON, "C18");
    page.calculated("k", "N/m", "C9").number("179").uncertainty("F9");
    page.measured("10 bounces", "s", "C12").uncertainty("F12").because("H12");
    page.calculated("T", "s", "C13").number("0.41").uncertainty("F13");
    page.calculated("k", "N/m", "C16").number("176").uncertainty("F16");
    return drawing;
  }
}
