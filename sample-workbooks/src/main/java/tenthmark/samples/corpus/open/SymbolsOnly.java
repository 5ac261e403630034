package tenthmark.samples.corpus.open;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Writer;

/** Nothing but symbols over the columns. */
@AutoService(Family.class)
public final class SymbolsOnly implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(roll(), feu());
  }

  private static Drawing roll() {
    Drawing drawing =
        new Drawing(
            "trolley-symbols",
            "symbols-only",
            "inclined plane roll",
            Language.ENGLISH,
            Writer.CALC_ODS);
    Page page = drawing.page("Sheet1");
    page.draw(
        "A1",
        """
        m | δm | h | δh | v | δv | Ek | δEk | Ep | δEp
        1.48 | 0.01 | 0.250 | 0.002 | 2.16 | 0.03 | =A2*E2^2/2 :: 0.00 | =G2*(B2/A2+2*F2/E2) :: 0.00 | =A2*9.81*C2 :: 0.00 | =I2*(B2/A2+D2/C2) :: 0.00
        1.48 | 0.01 | 0.200 | 0.002 | 1.93 | 0.03 | =A3*E3^2/2 :: 0.00 | =G3*(B3/A3+2*F3/E3) :: 0.00 | =A3*9.81*C3 :: 0.00 | =I3*(B3/A3+D3/C3) :: 0.00
        1.48 | 0.01 | 0.300 | 0.002 | 2.37 | 0.04 | =A4*E4^2/2 :: 0.00 | =G4*(B4/A4+2*F4/E4) :: 0.00 | =A4*9.81*C4 :: 0.00 | =I4*(B4/A4+D4/C4) :: 0.00

        all in SI units: kg, m, m/s, J
        δm last digit of the scale; δh 1 mm at floor and axle; δv light gate, 1.5 % by its sheet
        """);
    page.measured("m", "kg", "A2:A4").uncertainty("B2:B4").because("A7");
    page.measured("h", "m", "C2:C4").uncertainty("D2:D4").because("A7");
    page.measured("v", "m/s", "E2:E4").uncertainty("F2:F4").because("A7");
    page.calculated("Ek", "J", "G2:G4").number("3.45", "2.76", "4.16").uncertainty("H2:H4");
    page.calculated("Ep", "J", "I2:I4").number("3.63", "2.90", "4.36").uncertainty("J2:J4");
    return drawing;
  }

  private static Drawing feu() {
    Drawing drawing =
        new Drawing(
            "feu-avant-symboles",
            "symbols-only",
            "dynamo circuit",
            Language.FRENCH,
            Writer.GNUMERIC_XLSX);
    Page page = drawing.page("Feuil1");
    page.draw(
        "A1",
        """
        U1 = | 3.02 | ± | 0.03 | V | | I1 = | 0.251 | ± | 0.004 | A
        U2 = | 4.48 | ± | 0.03 | V | | I2 = | 0.372 | ± | 0.005 | A
        U3 = | 6.03 | ± | 0.04 | V | | I3 = | 0.499 | ± | 0.006 | A

        R1 = | =B1/H1 :: 0.0 | ± | =B5*(D1/B1+J1/H1) :: 0.0 | Ω
        R2 = | =B2/H2 :: 0.0 | ± | =B6*(D2/B2+J2/H2) :: 0.0 | Ω
        R3 = | =B3/H3 :: 0.0 | ± | =B7*(D3/B3+J3/H3) :: 0.0 | Ω

        U : 0,5 % + 1 digit ; I : 1 % + 1 digit, d'après les notices
        """);
    page.measured("U1", "V", "B1").uncertainty("D1").because("A9");
    page.measured("U2", "V", "B2").uncertainty("D2").because("A9");
    page.measured("U3", "V", "B3").uncertainty("D3").because("A9");
    page.measured("I1", "A", "H1").uncertainty("J1").because("A9");
    page.measured("I2", "A", "H2").uncertainty("J2").because("A9");
    page.measured("I3", "A", "H3").uncertainty("J3").because("A9");
    page.calculated("R1", "Ω", "B5").number("12.0").uncertainty("D5");
    page.calculated("R2", "Ω", "B6").number("12.0").uncertainty("D6");
    page.calculated("R3", "Ω", "B7").number("12.1").uncertainty("D7");
    return drawing;
  }
}
