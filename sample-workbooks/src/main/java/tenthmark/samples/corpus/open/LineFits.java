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

/** Results from the slope and the intercept of a line. */
@AutoService(Family.class)
public final class LineFits implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(recta(), spring());
  }

  private static Drawing recta() {
    Drawing drawing =
        new Drawing(
            "dinamo-recta", "line-fit", "dynamo circuit", Language.SPANISH, Writer.CALC_ODS);
    Page page = drawing.page("Recta");
    page.draw(
        "A1",
        """
        Resistencia interna de la dinamo con una recta

        I (A) | U (V) | u(U) (V)
        0.100 | 5.80 | 0.05
        0.200 | 5.52 | 0.05
        0.300 | 5.27 | 0.05
        0.400 | 4.98 | 0.05
        0.500 | 4.71 | 0.05

        Ajuste U = U0 − r·I
        pendiente −r (Ω) | =INDEX(LINEST(B4:B8,A4:A8,TRUE,TRUE),1,1) :: 0.00
        u de la pendiente (Ω) | =INDEX(LINEST(B4:B8,A4:A8,TRUE,TRUE),2,1) :: 0.00
        ordenada U0 (V) | =INDEX(LINEST(B4:B8,A4:A8,TRUE,TRUE),1,2) :: 0.000
        u de U0 (V) | =INDEX(LINEST(B4:B8,A4:A8,TRUE,TRUE),2,2) :: 0.000
        R² | =RSQ(B4:B8,A4:A8) :: 0.0000

        u(U): el voltímetro da 0,7 % + 1 dígito; tomamos el valor mayor para toda la columna.
        """);
    page.bold("A1,A3:C3,A10").graph("E3:K17", "U(I)", "A4:A8", "B4:B8");
    page.other(Role.RAW, "A4:A8").other(Role.STATISTIC, "B15");
    page.measured("U", "V", "B4:B8").uncertainty("C4:C8").because("A17");
    page.record(Kind.SLOPE, "pendiente", "Ω", "B11").number("-2.72").uncertainty("B12");
    page.record(Kind.INTERCEPT, "U0", "V", "B13").number("6.072").uncertainty("B14");
    return drawing;
  }

  /** The uncertainty of the slope is worked out from the scatter. */
  private static Drawing spring() {
    Drawing drawing =
        new Drawing(
            "return-spring-line",
            "line-fit",
            "spring-loaded brake lever",
            Language.ENGLISH,
            Writer.CALC_XLSX);
    Page page = drawing.page("Spring");
    page.draw(
        "A1",
        """
        Stiffness of the return spring from a graph
        Points by Zainab, graph by Piotr

        x (mm) | F (N)
        2.0 | 0.62
        4.0 | 1.15
        6.0 | 1.71
        8.0 | 2.24
        10.0 | 2.80
        12.0 | 3.33

        Uncertainties: x ± 0.5 mm (rule, 0.25 mm at each end), F ± 0.02 N (digital balance, its leaflet). The scatter about the line counts for the slope.

        slope k (N/mm) | =SLOPE(B5:B10,A5:A10) :: 0.0000
        its uncertainty (N/mm) | =STEYX(B5:B10,A5:A10)/SQRT(DEVSQ(A5:A10)) :: 0.0000
        intercept (N) | =INTERCEPT(B5:B10,A5:A10) :: 0.000
        its uncertainty (N) | =STEYX(B5:B10,A5:A10)*SQRT(1/6+AVERAGE(A5:A10)^2/DEVSQ(A5:A10)) :: 0.000
        correlation | =CORREL(A5:A10,B5:B10) :: 0.0000
        """);
    page.bold("A1,A4:B4").graph("D3:J11", "Force and stretch", "A5:A10", "B5:B10");
    page.measured("x", "mm", "A5:A10").uncertaintyOf(0.5).because("A12");
    page.measured("F", "N", "B5:B10").uncertaintyOf(0.02).because("A12");
    page.record(Kind.SLOPE, "k", "N/mm", "B14").number("0.2719").uncertainty("B15");
    page.record(Kind.INTERCEPT, "intercept", "N", "B16").number("0.072").uncertainty("B17");
    page.other(Role.STATISTIC, "B18");
    return drawing;
  }
}
