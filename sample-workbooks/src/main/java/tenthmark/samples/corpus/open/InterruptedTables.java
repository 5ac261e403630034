package tenthmark.samples.corpus.open;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Writer;

/** Tables with notes and blank rows between their rows. */
@AutoService(Family.class)
public final class InterruptedTables implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(lager(), cadena());
  }

  private static Drawing lager() {
    Drawing drawing =
        new Drawing(
            "tretlager-notizen",
            "notes-between-rows",
            "bearing friction",
            Language.GERMAN,
            Writer.CALC_XLSX);
    Page page = drawing.page("Tretlager");
    page.draw(
        "A1",
        """
        Reibmoment des Tretlagers
        Jonte und Amira, 2. Termin

        Last | F (N) | ΔF (N) | r (mm) | Δr (mm) | M (mN·m) | ΔM (mN·m)
        ohne | 0.85 | 0.05 | 24.0 | 0.5 | =B5*D5 :: 0.0 | =F5*(C5/B5+E5/D5) :: 0.0
        Federwaage am Faden, halber Skalenteil; r mit Lineal, 0,25 mm je Ende
        5 kg | 1.10 | 0.05 | 24.0 | 0.5 | =B7*D7 :: 0.0 | =F7*(C7/B7+E7/D7) :: 0.0
        10 kg | 1.35 | 0.05 | 24.0 | 0.5 | =B8*D8 :: 0.0 | =F8*(C8/B8+E8/D8) :: 0.0
        hier hat der Faden kurz geklemmt, Messung wiederholt:
        15 kg | 1.65 | 0.05 | 24.0 | 0.5 | =B10*D10 :: 0 | =F10*(C10/B10+E10/D10) :: 0
        """);
    page.bold("A1,A4:G4");
    page.measured("F", "N", "B5,B7,B8,B10").uncertainty("C5,C7,C8,C10").because("A6");
    page.measured("r", "mm", "D5,D7,D8,D10").uncertainty("E5,E7,E8,E10").because("A6");
    page.calculated("M", "mN·m", "F5,F7,F8,F10")
        .number("20.4", "26.4", "32.4", "40")
        .uncertainty("G5,G7,G8,G10");
    return drawing;
  }

  private static Drawing cadena() {
    Drawing drawing =
        new Drawing(
            "cadena-filas-vacias",
            "blank-rows",
            "chain stretch",
            Language.SPANISH,
            Writer.POI_XLSX);
    Page page = drawing.page("Cadenas");
    page.draw(
        "A2",
        """
        Alargamiento de tres cadenas (tramo de 24 eslabones)

        Cadena | Longitud (mm) | Incertidumbre (mm) | Alargamiento (%) | Incertidumbre (%)

        nueva | 304.8 | 0.2 | =(B6-304.8)/304.8*100 :: 0.00 | =C6/304.8*100 :: 0.00

        de paseo | 306.3 | 0.2 | =(B8-304.8)/304.8*100 :: 0.00 | =C8/304.8*100 :: 0.00

        de reparto | 308.0 | 0.2 | =(B10-304.8)/304.8*100 :: 0.00 | =C10/304.8*100 :: 0.00

        El calibre largo tiene divisiones de 0,1 mm: una por cada extremo. Longitud nominal: 304,8 mm
        """);
    page.bold("A2,A4:E4");
    page.measured("Longitud", "mm", "B6,B8,B10").uncertainty("C6,C8,C10").because("A12");
    page.calculated("Alargamiento", "%", "D6,D8,D10")
        .number("0.00", "0.49", "1.05")
        .uncertainty("E6,E8,E10");
    return drawing;
  }
}
