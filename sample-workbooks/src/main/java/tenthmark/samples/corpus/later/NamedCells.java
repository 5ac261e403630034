package tenthmark.samples.corpus.later;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Writer;

/**
 * A list of names and numbers; value and uncertainty have a line each, and formulas use the names.
 */
@AutoService(Family.class)
public final class NamedCells implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(gripByName());
  }

  private static Drawing gripByName() {
    Drawing drawing =
        new Drawing(
            "grip-by-name",
            "named-cells",
            "density of a foam grip",
            Language.ENGLISH,
            Writer.POI_XLSX);
    Page page = drawing.page("Grip");
    Rows.draw(
        page,
        """
        1 | Foam grip: density. Every number below carries its name.
        2 | Sefton Ayre, bench 2 (invented)
        4 | mass | 12.85 | g
        5 | u_mass | 0.05 | g | the balance's leaflet
        6 | grip_length | 131.0 | mm
        7 | u_length | 1.0 | mm | ruler at two ends, 0.25 mm each, and the foam is cut crooked by half a millimetre
        8 | outer | 33.0 | mm
        9 | u_outer | 0.4 | mm | the calliper squeezes the foam
        10 | inner | 21.8 | mm
        11 | u_inner | 0.4 | mm | the calliper spreads the foam
        13 | volume | =PI()/4*(outer^2-inner^2)*grip_length/1000 :: 0 | cm³
        14 | u_volume | =volume*(u_length/grip_length+(2*outer*u_outer+2*inner*u_inner)/(outer^2-inner^2)) :: 0 | cm³
        15 | density | =mass/volume :: 0.000 | g/cm³
        16 | u_density | =density*(u_mass/mass+u_volume/volume) :: 0.000 | g/cm³
        """);
    page.bold("A1");
    page.name("mass", "B4")
        .name("u_mass", "B5")
        .name("grip_length", "B6")
        .name("u_length", "B7")
        .name("outer", "B8")
        .name("u_outer", "B9")
        .name("inner", "B10")
        .name("u_inner", "B11")
        .name("volume", "B13")
        .name("u_volume", "B14")
        .name("density", "B15")
        .name("u_density", "B16");
    page.measured("mass", "g", "B4").uncertainty("B5").because("D5");
    page.measured("grip_length", "mm", "B6").uncertainty("B7").because("D7");
    page.measured("outer", "mm", "B8").uncertainty("B9").because("D9");
    page.measured("inner", "mm", "B10").uncertainty("B11").because("D11");
    page.calculated("volume", "cm³", "B13").number("63").uncertainty("B14");
    page.calculated("density", "g/cm³", "B15").number("0.203").uncertainty("B16");
    return drawing;
  }
}
