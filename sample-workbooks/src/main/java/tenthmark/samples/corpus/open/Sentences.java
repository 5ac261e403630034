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

/** Results that stand in lines of text. */
@AutoService(Family.class)
public final class Sentences implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(pendulum(), leuchte());
  }

  private static Drawing pendulum() {
    Drawing drawing =
        new Drawing(
            "pedal-pendulum-lines",
            "sentences",
            "crank arms",
            Language.ENGLISH,
            Writer.POI_XLSX_WITHOUT_VALUES);
    Page page = drawing.page("Pendulum");
    page.draw(
        "A1",
        """
        A pedal on a cord as a pendulum
        Written by Freya, times by Dan

        20 swings took
        36.7 | s
        36.9 | s
        36.8 | s
        =AVERAGE(A5:A7) :: 0.0 | s on average

        T = (1.840 ± 0.010) s
        because 0.2 s of reaction is shared by 20 swings
        L = (0.842 ± 0.002) m
        because the middle of the pedal can be told to 1 mm and the knot to 1 mm
        g = (9.82 ± 0.13) m/s²
        from g = 4 π² L / T²; 0.24 % from L and twice 0.54 % from T
        The accepted value here is 9.81 m/s², so we agree.
        """);
    page.bold("A1");
    page.other(Role.RAW, "A5:A7").other(Role.CALCULATED, "A8");
    page.measured("T", "s", "A10").number("1.840").uncertaintyOf(0.010).because("A11");
    page.measured("L", "m", "A12").number("0.842").uncertaintyOf(0.002).because("A13");
    page.calculated("g", "m/s²", "A14").number("9.82").uncertaintyOf(0.13).because("A15");
    return drawing;
  }

  private static Drawing leuchte() {
    Drawing drawing =
        new Drawing(
            "ruecklicht-saetze", "sentences", "lamp optics", Language.GERMAN, Writer.CALC_ODS);
    Page page = drawing.page("Rücklicht");
    page.draw(
        "A1",
        """
        Rücklicht: Leistung und Beleuchtungsstärke

        Die Spannung betrug U = 6,02 V ± 0,03 V (Datenblatt des Messgeräts: 0,3 % + 1 Digit).
        Für den Strom lasen wir I = 0,412 A ± 0,005 A ab (1 % + 1 Digit).
        Daraus folgt die Leistung P = (2,48 ± 0,04) W.

        Beleuchtungsstärke in 1 m Abstand, fünfmal neu ausgerichtet:
        E / lx | 14.2 | 14.6 | 14.1 | 14.4 | 14.5
        Mittelwert / lx | =AVERAGE(B8:F8) :: 0.00
        Standardabweichung / lx | =STDEV(B8:F8) :: 0.00
        Unsicherheit des Mittelwerts / lx | =B10/SQRT(5) :: 0.00
        """);
    page.bold("A1");
    page.measured("U", "V", "A3").number("6.02").uncertaintyOf(0.03).because("A3");
    page.measured("I", "A", "A4").number("0.412").uncertaintyOf(0.005).because("A4");
    page.calculated("P", "W", "A5").number("2.48").uncertaintyOf(0.04);
    page.other(Role.RAW, "B8:F8").other(Role.STATISTIC, "B10");
    page.record(Kind.MEAN, "E", "lx", "B9").number("14.36").uncertainty("B11");
    return drawing;
  }
}
