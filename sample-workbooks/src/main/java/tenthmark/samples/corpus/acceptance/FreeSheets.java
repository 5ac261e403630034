package tenthmark.samples.corpus.acceptance;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Notes rather than tables: numbers stand in the lines that tell of them. */
@AutoService(Family.class)
public final class FreeSheets implements Family {

  private static final String LAYOUT = "free-sheets";

  @Override
  public List<Drawing> drawings() {
    return List.of(battery(), caliperSpring(), contactPatch());
  }

  private static Drawing battery() {
    Drawing drawing =
        new Drawing(
            "acceptance-lamp-battery",
            LAYOUT,
            "internal resistance of a lamp battery",
            Language.ENGLISH,
            Writer.CALC_ODS);
    Page page = drawing.page("my notes");
    page.draw(
        "A1",
        """
        How much resistance hides inside the rear lamp battery?
        Ines Kovac, Thursday

        First the battery alone. The meter said|4.62|V|±|0.02|V
        (it flickers by one count, and its card adds as much again)
        Then with the lamp on it dropped to|4.31|V|±|0.02|V
        (same meter, same range)
        and the current through the lamp was|0.412|A|±|0.006|A
        (three counts of flicker, and three more from the card)

        So the battery swallows|=B4-B6 :: 0.00|V|±|=E4+E6 :: 0.00|V
        and its inside resistance is|=B11/B8 :: 0.00|Ω|±|=B12*(E11/B11+E8/B8) :: 0.00|Ω
        heating the battery with|=B11*B8*1000 :: 0|mW|±|=B13*(E11/B11+E8/B8) :: 0|mW

        ="The inside resistance is ("&TEXT(B12,"0.00")&" ± "&TEXT(E12,"0.00")&") Ω."
        The packet promises less than 1 Ω, so that is fine.
        """);
    page.measured("voltage", "V", "B4").uncertainty("E4").because("A5");
    page.measured("voltage", "V", "B6").uncertainty("E6").because("A7");
    page.measured("current", "A", "B8").uncertainty("E8").because("A9");
    page.calculated("voltage", "V", "B11").number("0.31").uncertainty("E11");
    page.calculated("resistance", "Ω", "B12").number("0.75").uncertainty("E12");
    page.calculated("power", "mW", "B13").number("128").uncertainty("E13");
    page.calculated("resistance", "Ω", "A15").number("0.75").uncertaintyOf(0.11);
    return drawing;
  }

  private static Drawing caliperSpring() {
    Drawing drawing =
        new Drawing(
            "acceptance-muelle-pinza",
            LAYOUT,
            "spring of a brake caliper",
            Language.SPANISH,
            Writer.POI_XLSX);
    Page page = drawing.page("Muelle");
    page.draw(
        "A1",
        """
        Práctica 2. El muelle de la pinza
        Grupo de Nicolás Ferreyra
        Colgamos una pesa del muelle y medimos cuánto se alarga.

        L₀ =|62.5|±|0.5|mm|muelle suelto; regla en mm, un cuarto de división por extremo
        L₁ =|81.5|±|0.5|mm|con la pesa; igual que antes
        m =|1.500|±|0.005|kg
        g =|9.81|||m/s²|

        x = L₁ − L₀ =|=B6-B5 :: 0.0|±|=D5+D6 :: 0.0|mm
        F = m·g =|=B7*B8 :: 0.00|±|=D7*B8 :: 0.00|N
        k = F/x =|=B11/B10 :: 0.00|±|=B12*(D10/B10+D11/B11) :: 0.00|N/mm

        Por tanto la constante del muelle es k = (0,77 ± 0,04) N/mm.
        Casi todo viene del alargamiento: habría que colgar más peso.
        """);
    page.comment("B7", "Así viene marcada la pesa por el fabricante: 1,500 kg, 5 g más o menos.");
    page.measured("L₀", "mm", "B5").uncertainty("D5").because("F5");
    page.measured("L₁", "mm", "B6").uncertainty("D6").because("F6");
    page.measured("m", "kg", "B7").uncertainty("D7").becauseOfComment("B7");
    page.other(Role.CONSTANT, "B8");
    page.calculated("x", "mm", "B10").number("19.0").uncertainty("D10");
    page.calculated("F", "N", "B11").number("14.72").uncertainty("D11");
    page.calculated("k", "N/mm", "B12").number("0.77").uncertainty("D12");
    page.calculated("k", "N/mm", "A14").number("0.77").uncertaintyOf(0.04);
    return drawing;
  }

  private static Drawing contactPatch() {
    Drawing drawing =
        new Drawing(
            "acceptance-empreinte-pneu",
            LAYOUT,
            "tyre pressure from the contact patch",
            Language.FRENCH,
            Writer.POI_XLSX);
    Page page = drawing.page("Compte rendu");
    page.draw(
        "A1",
        """
        Peut-on connaître la pression d'un pneu sans manomètre ?
        Compte rendu d'Anouk Lemaître et Sacha Roy

        La roue avant pèse sur la balance|38.5|kg, à|0.5|près, car le vélo bouge un peu.
        L'empreinte encrée est longue de|92|mm, à|2|près : les bords de l'encre sont flous.
        Elle est large de|31|mm, à|2|près, pour la même raison.
        Nous prenons g égal à|9.81|N/kg.

        L'aire de l'ellipse π·a·b/4 vaut donc|=PI()/4*B5*B6/100 :: 0.0|cm², à|=B9*(D5/B5+D6/B6) :: 0.0|près.
        La pression m·g/S vaut alors|=B4*B7/B9/10 :: 0.00|bar, à|=B10*(D4/B4+D9/B9) :: 0.00|près.
        Le manomètre de l'atelier indique|1.75|bar, à|0.05|près (une demi-graduation).
        L'écart entre les deux est de|=ABS(B11-B10) :: 0.00|bar, moins que|=D10+D11 :: 0.00|: compatible.

        ="Conclusion : la pression estimée est de "&TEXT(B10,"0.00")&" ± "&TEXT(D10,"0.00")&" bar."
        """);
    page.measured("roue avant", "kg", "B4").uncertainty("D4").because("E4");
    page.measured("longue", "mm", "B5").uncertainty("D5").because("E5");
    page.measured("large", "mm", "B6").uncertainty("D6").because("E6");
    page.other(Role.CONSTANT, "B7").other(Role.COMPARISON, "B12,D12");
    page.calculated("aire", "cm²", "B9").number("22.4").uncertainty("D9");
    page.calculated("pression", "bar", "B10").number("1.69").uncertainty("D10");
    page.measured("manomètre", "bar", "B11").uncertainty("D11").because("E11");
    page.calculated("pression", "bar", "A14").number("1.69").uncertaintyOf(0.17);
    return drawing;
  }
}
