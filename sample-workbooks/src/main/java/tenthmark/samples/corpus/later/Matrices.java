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

/** One quantity over two conditions: rows for the one, columns for the other. */
@AutoService(Family.class)
public final class Matrices implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(allongement(), lamps());
  }

  /** One uncertainty for the whole block, in a line below. */
  private static Drawing allongement() {
    Drawing drawing =
        new Drawing(
            "allongement-chaine", "cross-table", "chain stretch", Language.FRENCH, Writer.CALC_ODS);
    Page page = drawing.page("Allongement");
    Rows.draw(
        page,
        """
        1 | Allongement de trois chaînes sous charge
        2 | Ancien TP de C. Vauquelin, repris ; valeurs inventées
        4 | Masse accrochée (kg) | Allongement x (mm)
        5 | | neuve | usée | très usée
        6 | 5 | 0.7 | 0.8 | 1.2
        7 | 10 | 1.2 | 1.7 | 2.1
        8 | 15 | 1.7 | 2.3 | 3.4
        9 | 20 | 2.5 | 3.3 | 4.3
        10 | 25 | 3.0 | 3.9 | 5.6
        12 | Incertitude sur chaque allongement (mm) | 0.3
        13 | Réglet au demi-millimètre : 0,1 mm à chaque bout, plus 0,1 mm parce que la chaîne oscille un peu.
        14 | Les masses marquées sont prises comme exactes.
        16 | pente (mm/kg) | =SLOPE(B6:B10,$A$6:$A$10) :: 0.000 | =SLOPE(C6:C10,$A$6:$A$10) :: 0.000 | =SLOPE(D6:D10,$A$6:$A$10) :: 0.000
        17 | incertitude de la pente (mm/kg) | =INDEX(LINEST(B6:B10,$A$6:$A$10,TRUE,TRUE),2,1) :: 0.000 | =INDEX(LINEST(C6:C10,$A$6:$A$10,TRUE,TRUE),2,1) :: 0.000 | =INDEX(LINEST(D6:D10,$A$6:$A$10,TRUE,TRUE),2,1) :: 0.000
        """);
    page.merge("A4:A5", "B4:D4").bold("A1,A4:D5");
    page.other(Role.CONSTANT, "A6:A10");
    page.measured("Allongement x", "mm", "B6:D10").uncertainty("B12").because("A13");
    page.record(Kind.SLOPE, "pente", "mm/kg", "B16:D16")
        .number("0.118", "0.156", "0.220")
        .uncertainty("B17:D17");
    return drawing;
  }

  /** A second block of the same shape for the uncertainties. */
  private static Drawing lamps() {
    Drawing drawing =
        new Drawing(
            "lamps-and-distance",
            "twin-tables",
            "lamp optics",
            Language.ENGLISH,
            Writer.POI_XLSX_WITHOUT_VALUES);
    Page page = drawing.page("Lux");
    Rows.draw(
        page,
        """
        1 | Light of three lamps against distance
        2 | Farah Quillstone, teaching assistant (invented readings)
        4 | | | Illuminance E (lx)
        5 | distance d (cm) | unc. of d (cm) | lamp A | lamp B | lamp C | A: E·d² (lx·m²) | unc. (lx·m²)
        6 | 40.0 | 0.5 | 186 | 143 | 97 | =C6*(A6/100)^2 :: 0.0 | =F6*(C14/C6+2*B6/A6) :: 0.0
        7 | 50.0 | 0.5 | 121 | 92 | 63 | =C7*(A7/100)^2 :: 0.0 | =F7*(C15/C7+2*B7/A7) :: 0.0
        8 | 60.0 | 0.5 | 84 | 64 | 43 | =C8*(A8/100)^2 :: 0.0 | =F8*(C16/C8+2*B8/A8) :: 0.0
        9 | 70.0 | 0.5 | 62 | 47 | 32 | =C9*(A9/100)^2 :: 0.0 | =F9*(C17/C9+2*B9/A9) :: 0.0
        10 | 80.0 | 0.5 | 47 | 36 | 25 | =C10*(A10/100)^2 :: 0.0 | =F10*(C18/C10+2*B10/A10) :: 0.0
        12 | | | Uncertainty of E (lx)
        13 | distance d (cm) | | lamp A | lamp B | lamp C
        14 | =A6 :: 0.0 | | =ROUND(0.02*C6+1,0) :: 0 | =ROUND(0.02*D6+1,0) :: 0 | =ROUND(0.02*E6+1,0) :: 0
        15 | =A7 :: 0.0 | | =ROUND(0.02*C7+1,0) :: 0 | =ROUND(0.02*D7+1,0) :: 0 | =ROUND(0.02*E7+1,0) :: 0
        16 | =A8 :: 0.0 | | =ROUND(0.02*C8+1,0) :: 0 | =ROUND(0.02*D8+1,0) :: 0 | =ROUND(0.02*E8+1,0) :: 0
        17 | =A9 :: 0.0 | | =ROUND(0.02*C9+1,0) :: 0 | =ROUND(0.02*D9+1,0) :: 0 | =ROUND(0.02*E9+1,0) :: 0
        18 | =A10 :: 0.0 | | =ROUND(0.02*C10+1,0) :: 0 | =ROUND(0.02*D10+1,0) :: 0 | =ROUND(0.02*E10+1,0) :: 0
        20 | E: the meter's leaflet says 2 % of the reading, and its last digit is 1 lx.
        21 | d: tape read to half a millimetre at both ends, and the filament is 4 mm deep, so 0.1 cm + 0.4 cm.
        """);
    page.merge("C4:E4", "C12:E12").bold("A1,C4,A5:G5,C12,A13:E13");
    page.measured("distance d", "cm", "A6:A10").uncertainty("B6:B10").because("A21");
    page.measured("Illuminance E", "lx", "C6:E10").uncertainty("C14:E18").because("A20");
    page.calculated("A: E·d²", "lx·m²", "F6:F10")
        .number("29.8", "30.2", "30.2", "30.4", "30.1")
        .uncertainty("G6:G10");
    page.other(Role.LABEL, "A14:A18");
    return drawing;
  }
}
