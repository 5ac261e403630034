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

/** Several tables beside one another on one sheet. */
@AutoService(Family.class)
public final class SideBySide implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(poleas(), freins(), grips());
  }

  private static Drawing poleas() {
    Drawing drawing =
        new Drawing(
            "rodamientos-dos-tablas",
            "side-by-side",
            "bearing friction",
            Language.SPANISH,
            Writer.POI_XLSX);
    Page page = drawing.page("Rodamientos");
    page.draw(
        "A1",
        """
        Frenado de la rueda por los rodamientos: con grasa y sin grasa
        Grupo: Vera, Nico, Iván

        CON GRASA | | | | | SIN GRASA
        Ensayo | t (s) | Δt (s) | | | Ensayo | t (s) | Δt (s)
        1 | 41.2 | 0.3 | | | 1 | 58.9 | 0.3
        2 | 40.6 | 0.3 | | | 2 | 57.7 | 0.3
        3 | 42.0 | 0.3 | | | 3 | 59.4 | 0.3
        media | =AVERAGE(B6:B8) :: 0.0 | =(MAX(B6:B8)-MIN(B6:B8))/2 :: 0.0 | | | media | =AVERAGE(G6:G8) :: 0.0 | =(MAX(G6:G8)-MIN(G6:G8))/2 :: 0.0

        Δt: reacción 0,2 s y 0,1 s para decidir cuándo se para. Media: semiamplitud de las tres medidas.
        """);
    page.bold("A1,A4,F4,A5:C5,F5:H5");
    page.other(Role.INDEX, "A6:A8,F6:F8");
    page.measured("t", "s", "B6:B8,G6:G8").uncertainty("C6:C8,H6:H8").because("A11");
    page.record(Kind.MEAN, "t", "s", "B9,G9")
        .number("41.3", "58.7")
        .uncertainty("C9,H9")
        .because("A11");
    return drawing;
  }

  private static Drawing freins() {
    Drawing drawing =
        new Drawing(
            "freins-trois-equipes",
            "side-by-side",
            "spring-loaded brake lever",
            Language.FRENCH,
            Writer.CALC_XLSX);
    Page page = drawing.page("Comparaison");
    page.draw(
        "A1",
        """
        Trois équipes, le même levier de frein

        Équipe de Zoé | | | Équipe de Nils | | | Équipe de Rita
        F (N) | ± (N) | | F (N) | ± (N) | | F (N) | ± (N)
        12.5 | 0.5 | | 12.8 | 0.2 | | 12.0 | 0.5
        25.0 | 0.5 | | 25.4 | 0.2 | | 24.5 | 0.5
        37.0 | 0.5 | | 37.6 | 0.2 | | 37.0 | 0.5
        peson à ressort, une demi-graduation | | | peson numérique, notice | | | peson à ressort, une demi-graduation

        Raideur (N/mm) sur les 20 mm de course entre la première et la dernière ligne
        =(A7-A5)/20 :: 0.00 | =(B7+B5)/20 :: 0.00 | | =(D7-D5)/20 :: 0.00 | =(E7+E5)/20 :: 0.00 | | =(G7-G5)/20 :: 0.00 | =(H7+H5)/20 :: 0.00
        """);
    page.bold("A1,A3,D3,G3").merge("A3:B3", "D3:E3", "G3:H3");
    page.measured("F", "N", "A5:A7").uncertainty("B5:B7").because("A8");
    page.measured("F", "N", "D5:D7").uncertainty("E5:E7").because("D8");
    page.measured("F", "N", "G5:G7").uncertainty("H5:H7").because("G8");
    page.calculated("Raideur", "N/mm", "A11,D11,G11")
        .number("1.22", "1.24", "1.25")
        .uncertainty("B11,E11,H11");
    return drawing;
  }

  /** Readings, constants and results in three blocks. */
  private static Drawing grips() {
    Drawing drawing =
        new Drawing(
            "grips-three-blocks",
            "side-by-side",
            "foam grips",
            Language.ENGLISH,
            Writer.GNUMERIC_XLS);
    Page page = drawing.page("Grips");
    page.draw(
        "A1",
        """
        Squeezing foam grips | | | | | | | | by Theo and Wren

        Load (g) | Thickness (mm) | Unc. (mm) | | Constants | | | Results
        0 | 5.6 | 0.2 | | g (m/s²) | 9.81 | | Change of thickness (mm) | Unc. (mm)
        200 | 4.9 | 0.2 | | area (mm²) | 400 | | =B4-B5 :: 0.0 | =C4+C5 :: 0.0
        500 | 4.2 | 0.2 | | | | | =B4-B6 :: 0.0 | =C4+C6 :: 0.0
        1000 | 3.3 | 0.2 | | | | | =B4-B7 :: 0.0 | =C4+C7 :: 0.0

        Caliper with 0.05 mm steps, but its jaws sink in: 0.1 mm at each jaw.
        Loads are slotted weights (nominal).
        """);
    page.bold("A1,A3:C3,E3,H3,H4:I4");
    page.other(Role.CONSTANT, "A4:A7,F4:F5");
    page.measured("Thickness", "mm", "B4:B7").uncertainty("C4:C7").because("A9");
    page.calculated("Change of thickness", "mm", "H5:H7")
        .number("0.7", "1.4", "2.3")
        .uncertainty("I5:I7");
    return drawing;
  }
}
