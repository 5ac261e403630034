package tenthmark.samples.corpus.open;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Writer;

/** The same quantity in two units. */
@AutoService(Family.class)
public final class ConvertedUnits implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(spokes(), dynamo(), pneu());
  }

  private static Drawing spokes() {
    Drawing drawing =
        new Drawing(
            "spokes-both-units",
            "converted-units",
            "spoke resonance",
            Language.ENGLISH,
            Writer.GNUMERIC_ODS);
    Page page = drawing.page("Spokes");
    page.draw(
        "A1",
        """
        Same spokes, lengths in both units
        Names: Eilidh, Tomasz

        Spoke | L (mm) | ΔL (mm) | L (m) | ΔL (m) | f (Hz) | Δf (Hz) | v (m/s) | Δv (m/s)
        front | 292.0 | 0.5 | =B5/1000 :: 0.0000 | =C5/1000 :: 0.0000 | 398 | 3 | =2*D5*F5 :: 0 | =H5*(E5/D5+G5/F5) :: 0
        rear left | 284.5 | 0.5 | =B6/1000 :: 0.0000 | =C6/1000 :: 0.0000 | 407 | 3 | =2*D6*F6 :: 0 | =H6*(E6/D6+G6/F6) :: 0
        rear right | 281.0 | 0.5 | =B7/1000 :: 0.0000 | =C7/1000 :: 0.0000 | 412 | 3 | =2*D7*F7 :: 0 | =H7*(E7/D7+G7/F7) :: 0

        L: rule in mm, 0.25 mm at each end of the spoke
        f: half the width of the peak
        """);
    page.bold("A1,A4:I4");
    page.measured("L", "mm", "B5:B7").uncertainty("C5:C7").because("A9");
    page.calculated("L", "m", "D5:D7").number("0.2920", "0.2845", "0.2810").uncertainty("E5:E7");
    page.measured("f", "Hz", "F5:F7").uncertainty("G5:G7").because("A10");
    page.calculated("v", "m/s", "H5:H7").number("232", "232", "232").uncertainty("I5:I7");
    return drawing;
  }

  private static Drawing dynamo() {
    Drawing drawing =
        new Drawing(
                "dynamo-kiloohm",
                "converted-units",
                "dynamo circuit",
                Language.GERMAN,
                Writer.POI_XLSX)
            .inQuadrature();
    Page page = drawing.page("Last");
    page.draw(
        "A1",
        """
        Lastwiderstand am Dynamo (Unsicherheiten quadratisch addiert)
        Yusuf und Greta

        Größe | Wert | Unsicherheit | Einheit | Anmerkung
        U | 5.94 | 0.04 | V | Anzeige: 0,5 % + 1 Digit
        I | 2.48 | 0.05 | mA | Anzeige: 2 % vom Messwert, das letzte Digit fällt nicht ins Gewicht
        I | =B6/1000 :: 0.00000 | =C6/1000 :: 0.00000 | A | umgerechnet
        R | =ROUND(B5/B7,-1) :: 0 | =ROUND(B5/B7*SQRT((C5/B5)^2+(C7/B7)^2),-1) :: 0 | Ω
        R | =B8/1000 :: 0.00 | =C8/1000 :: 0.00 | kΩ
        P | =B5*B6 :: 0.0 | =B10*SQRT((C5/B5)^2+(C6/B6)^2) :: 0.0 | mW
        """);
    page.bold("A1,A4:E4");
    page.measured("U", "V", "B5").uncertainty("C5").because("E5");
    page.measured("I", "mA", "B6").uncertainty("C6").because("E6");
    page.calculated("I", "A", "B7").number("0.00248").uncertainty("C7").because("E7");
    page.calculated("R", "Ω", "B8").number("2400").uncertainty("C8");
    page.calculated("R", "kΩ", "B9").number("2.40").uncertainty("C9");
    page.calculated("P", "mW", "B10").number("14.7").uncertainty("C10");
    return drawing;
  }

  private static Drawing pneu() {
    Drawing drawing =
        new Drawing(
            "pneu-unites-si", "converted-units", "tyre gas law", Language.FRENCH, Writer.CALC_ODS);
    Page page = drawing.page("Pneu");
    page.draw(
        "A1",
        """
        Pneu : passage aux unités SI

        Grandeur | Mesuré | ± | Unité | En SI | ± | Unité SI | Source de l'incertitude
        pression absolue p | 3.15 | 0.05 | bar | =B4*100 :: 0 | =C4*100 :: 0 | kPa | manomètre, une demi-graduation
        volume V | 1.62 | 0.03 | L | =B5/1000 :: 0.00000 | =C5/1000 :: 0.00000 | m³ | remplissage à l'éprouvette, 3 × 0,01 L
        température T | 19.5 | 0.5 | °C | =B6+273.15 :: 0.0 | =C6 :: 0.0 | K | thermomètre numérique, notice

        quantité d'air n | | | | =E4*1000*E5/(8.314*E6) :: 0.000 | =E8*(F4/E4+F5/E5+F6/E6) :: 0.000 | mol
        """);
    page.bold("A1,A3:H3");
    page.measured("pression", "bar", "B4").uncertainty("C4").because("H4");
    page.measured("volume", "L", "B5").uncertainty("C5").because("H5");
    page.measured("température", "°C", "B6").uncertainty("C6").because("H6");
    page.calculated("pression", "kPa", "E4").number("315").uncertainty("F4");
    page.calculated("volume", "m³", "E5").number("0.00162").uncertainty("F5");
    page.calculated("température", "K", "E6").number("292.65").uncertainty("F6");
    page.calculated("quantité d'air", "mol", "E8").number("0.210").uncertainty("F8");
    return drawing;
  }
}
