package tenthmark.samples.corpus.open;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** A column of plus-minus signs between value and uncertainty, or as the heading. */
@AutoService(Family.class)
public final class PlusMinusColumns implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(desarrollo(), seilzug());
  }

  private static Drawing desarrollo() {
    Drawing drawing =
        new Drawing(
            "desarrollo-mas-menos",
            "plus-minus-column",
            "wheel circumference",
            Language.SPANISH,
            Writer.GNUMERIC_ODS);
    Page page = drawing.page("Rueda");
    page.draw(
        "A1",
        """
        Desarrollo de la rueda trasera

        Magnitud | | valor | | error | unidad | comentario
        Perímetro con cinta | C | 209.5 | ± | 0.3 | cm | cinta de sastre, 0,15 cm por extremo
        Diámetro con regla | D | 66.6 | ± | 0.2 | cm | regla, 0,1 cm por borde porque el neumático es blando
        Perímetro π·D | C' | =PI()*C5 :: 0.0 | ± | =PI()*E5 :: 0.0 | cm | calculado con el diámetro
        Diferencia | | =C6-C4 :: 0.0 | ± | =E6+E4 :: 0.0 | cm | menor que su error: los dos métodos coinciden
        """);
    page.bold("A1,A3:G3");
    page.measured("Perímetro", "cm", "C4").uncertainty("E4").because("G4");
    page.measured("Diámetro", "cm", "C5").uncertainty("E5").because("G5");
    page.calculated("Perímetro", "cm", "C6").number("209.2").uncertainty("E6").because("G6");
    page.other(Role.COMPARISON, "C7,E7");
    return drawing;
  }

  private static Drawing seilzug() {
    Drawing drawing =
        new Drawing(
            "seilzug-plusminus",
            "plus-minus-column",
            "spring-loaded brake lever",
            Language.GERMAN,
            Writer.POI_XLSX);
    Page page = drawing.page("Seilzug");
    page.draw(
        "A1",
        """
        Zugkraft am Bremsseil
        Name: Ole Petersen

        Stellung | Kraft | ± | | Weg | ± | | Kraft × Weg | ±
        | N | N | | mm | mm | | J | J
        1 | 62.0 | 0.5 | | 4.0 | 0.5 | | =B6*E6/1000 :: 0.00 | =H6*(C6/B6+F6/E6) :: 0.00
        2 | 84.5 | 0.5 | | 8.0 | 0.5 | | =B7*E7/1000 :: 0.00 | =H7*(C7/B7+F7/E7) :: 0.00
        3 | 103.0 | 0.5 | | 12.0 | 0.5 | | =B8*E8/1000 :: 0.00 | =H8*(C8/B8+F8/E8) :: 0.00

        Kraft: Federwaage mit 1-N-Teilung, halber Teil. Weg: Lineal, an beiden Marken je 0,25 mm.
        """);
    page.bold("A1,A4:I5");
    page.other(Role.INDEX, "A6:A8");
    page.measured("Kraft", "N", "B6:B8").uncertainty("C6:C8").because("A10");
    page.measured("Weg", "mm", "E6:E8").uncertainty("F6:F8").because("A10");
    page.calculated("Kraft × Weg", "J", "H6:H8")
        .number("0.25", "0.68", "1.24")
        .uncertainty("I6:I8");
    return drawing;
  }
}
