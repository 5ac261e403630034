package tenthmark.samples.corpus.open;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Writer;

/** Formulas that speak of cells by name. */
@AutoService(Family.class)
public final class NamedCells implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(tyre(), freno());
  }

  private static Drawing tyre() {
    Drawing drawing =
        new Drawing(
            "tyre-named-cells", "named-cells", "tyre gas law", Language.ENGLISH, Writer.CALC_XLSX);
    Page page = drawing.page("Tyre");
    page.draw(
        "A1",
        """
        Air in a tyre

        gauge plus air pressure | 4.95 | bar
        plus or minus | 0.10 | bar
        room inside | 1.32 | L
        plus or minus | 0.04 | L

        pressure × room | =pressure*room :: 0.0 | bar·L
        plus or minus | =B8*(pressure_unc/pressure+room_unc/room) :: 0.0 | bar·L

        Pressure: dial in steps of 0.1 bar, half a step for the gauge and half a step for the barometer.
        Room: filled with water from a jug, 0.02 L for each of two jugs.
        """);
    page.bold("A1")
        .name("pressure", "B3")
        .name("pressure_unc", "B4")
        .name("room", "B5")
        .name("room_unc", "B6");
    page.measured("pressure", "bar", "B3").uncertainty("B4").because("A11");
    page.measured("room", "L", "B5").uncertainty("B6").because("A12");
    page.calculated("pressure × room", "bar·L", "B8").number("6.5").uncertainty("B9");
    return drawing;
  }

  private static Drawing freno() {
    Drawing drawing =
        new Drawing(
                "freno-con-nombres",
                "named-cells",
                "brake torque",
                Language.SPANISH,
                Writer.POI_XLSX)
            .inQuadrature();
    Page page = drawing.page("Freno");
    page.name("F_t", "C3")
        .name("uF_t", "D3")
        .name("r_ll", "C4")
        .name("ur_ll", "D4")
        .name("M_f", "C5");
    page.draw(
        "A1",
        """
        Momento de frenado en la llanta

        Fuerza tangencial | F_t | 48.0 | 1.0 | N | dinamómetro con divisiones de 1 N; la lectura oscila una división
        Radio de la llanta | r_ll | 0.311 | 0.001 | m | cinta métrica, 0,5 mm por extremo
        Momento | M_f | =F_t*r_ll :: 0.0 | =M_f*SQRT((uF_t/F_t)^2+(ur_ll/r_ll)^2) :: 0.0 | N·m | raíz de la suma de cuadrados
        """);
    page.bold("A1");
    page.measured("Fuerza tangencial", "N", "C3").uncertainty("D3").because("F3");
    page.measured("Radio", "m", "C4").uncertainty("D4").because("F4");
    page.calculated("Momento", "N·m", "C5").number("14.9").uncertainty("D5").because("F5");
    return drawing;
  }
}
