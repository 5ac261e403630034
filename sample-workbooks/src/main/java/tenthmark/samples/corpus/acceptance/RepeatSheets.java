package tenthmark.samples.corpus.acceptance;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Kind;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** The same thing measured again and again, with mean and scatter. */
@AutoService(Family.class)
public final class RepeatSheets implements Family {

  private static final String LAYOUT = "repeat-sheets";

  @Override
  public List<Drawing> drawings() {
    return List.of(wheelPeriod(), freewheelClicks(), spinDown());
  }

  private static Drawing wheelPeriod() {
    Drawing drawing =
        new Drawing(
            "acceptance-wheel-swing",
            LAYOUT,
            "period of a wheel",
            Language.ENGLISH,
            Writer.GNUMERIC_XLSX);
    Page page = drawing.page("swing");
    page.draw(
        "A1",
        """
        Swinging wheel with a lump on the rim
        by Soledad Whitlock

        attempt|ten swings took|
        1|23.4|s
        2|23.2|s
        3|23.6|s
        4|23.5|s
        5|23.3|s
        6|23.6|s
        7|23.2|s
        8|23.4|s
        9|23.5|s
        10|23.4|s
        """);
    page.draw(
        "E4",
        """
        average of ten|=AVERAGE(B5:B14) :: 0.0|s
        standard deviation|=STDEV(B5:B14) :: 0.00|s
        how many|=COUNT(B5:B14)|
        SD of the mean|=F5/SQRT(F6) :: 0.00|s
        my thumb (start and stop)|0.2|s
        so the average is uncertain by|=F7+F8 :: 0.0|s
        because I pressed by eye at the turning point, which is worth 0.2 s however often I repeat, and the scatter comes on top
        swings per attempt|10|
        period T|=F4/F11 :: 0.00|s
        uncertainty of T|=F9/F11 :: 0.00|s
        """);
    page.draw(
        "A17",
        """
        lump m|0.500|kg|uncertainty|0.001|kg|(kitchen scale, shows grams)
        radius of its centre r|0.311|m|uncertainty|0.002|m|(tape in mm, but the middle of the lump is a guess to 2 mm)
        g|9.81|m/s²
        moment of inertia I = T²mgr/4π²|=F12^2*B17*B19*B18/(4*PI()^2) :: 0.000|kg m²|uncertainty|=B20*(2*F13/F12+E17/B17+E18/B18) :: 0.000|kg m²
        """);
    page.other(Role.INDEX, "A5:A14").other(Role.RAW, "B5:B14").other(Role.STATISTIC, "F5");
    page.other(Role.COUNT, "F6,F11").other(Role.CONSTANT, "B19");
    page.record(Kind.MEAN, "average", "s", "F4")
        .number("23.4")
        .uncertainty("F9")
        .contribution("repeat", "F7")
        .contribution("timing", "F8")
        .because("E10");
    page.calculated("period", "s", "F12").number("2.34").uncertainty("F13");
    page.measured("lump", "kg", "B17").uncertainty("E17").because("G17");
    page.measured("radius", "m", "B18").uncertainty("E18").because("G18");
    page.calculated("moment of inertia", "kg m²", "B20").number("0.212").uncertainty("E20");
    return drawing;
  }

  private static Drawing freewheelClicks() {
    Drawing drawing =
        new Drawing(
            "acceptance-roue-libre-clics",
            LAYOUT,
            "clicks of a freewheel",
            Language.FRENCH,
            Writer.POI_XLS);
    Page page = drawing.page("Clics");
    page.draw(
        "A1",
        """
        On compte les clics de la roue libre pendant dix secondes
        Groupe de Maëlle Diallo et Tom Kerbrat

        essai n°|1|2|3|4|5|6|7|8
        clics comptés|118|121|119|117|123|120|118|122

        nombre d'essais|=COUNT(B5:I5)
        moyenne N|=AVERAGE(B5:I5) :: 0.0
        écart-type s|=STDEV(B5:I5) :: 0.0
        incertitude sur N = s/√n|=B9/SQRT(B7) :: 0.0
        (la dispersion des huit essais ; un clic oublié y est compris)

        durée Δt|10.0|s
        incertitude sur Δt|0.2|s
        (chronomètre tenu à la main : réflexe au départ et à l'arrêt)

        fréquence des clics f = N/Δt|=B8/B13 :: 0.0|Hz
        incertitude sur f|=B17*(B10/B8+B14/B13) :: 0.0|Hz
        dents du cliquet|24
        tours par seconde|=B17/B19 :: 0.000|tr/s
        incertitude|=B18/B19 :: 0.000|tr/s
        """);
    page.other(Role.INDEX, "B4:I4").other(Role.RAW, "B5:I5").other(Role.COUNT, "B7,B19");
    page.other(Role.STATISTIC, "B9");
    page.record(Kind.MEAN, "N", "", "B8").number("119.8").uncertainty("B10").because("A11");
    page.measured("durée", "s", "B13").uncertainty("B14").because("A15");
    page.calculated("fréquence", "Hz", "B17").number("12.0").uncertainty("B18");
    page.calculated("tours par seconde", "tr/s", "B20").number("0.499").uncertainty("B21");
    return drawing;
  }

  private static Drawing spinDown() {
    Drawing drawing =
        new Drawing(
            "acceptance-nabenlager-auslauf",
            LAYOUT,
            "friction of a hub bearing",
            Language.GERMAN,
            Writer.POI_XLSX_WITHOUT_VALUES);
    Page page = drawing.page("Auslauf");
    page.draw(
        "A1",
        """
        Wie lange läuft das Rad nach?
        Drehzahl beim Loslassen:|2.00|1/s|±|0.05|1/s|Tacho zittert um 0,05 1/s

        Auslaufzeit in s
        Lauf|trocken|gefettet|geölt
        1|38.2|61.5|74.1
        2|37.6|60.2|75.3
        3|39.1|62.3|73.2
        4|38.4|61.0|74.8
        5|37.9|60.8|74.0
        Mittel|=AVERAGE(B6:B10) :: 0.0|=AVERAGE(C6:C10) :: 0.0|=AVERAGE(D6:D10) :: 0.0
        Standardabweichung|=STDEV(B6:B10) :: 0.00|=STDEV(C6:C10) :: 0.00|=STDEV(D6:D10) :: 0.00
        Stdabw. des Mittels|=B12/SQRT(COUNT(B6:B10)) :: 0.00|=C12/SQRT(COUNT(C6:C10)) :: 0.00|=D12/SQRT(COUNT(D6:D10)) :: 0.00
        Reaktionszeit|0.2|0.2|0.2
        Unsicherheit des Mittels|=B13+B14 :: 0.0|=C13+C14 :: 0.0|=D13+D14 :: 0.0
        Streuung der fünf Läufe und dazu die Reaktionszeit beim Stoppen

        Winkelverzögerung α = 2πn/t in 1/s²
        α|=2*PI()*$B$2/B11 :: 0.000|=2*PI()*$B$2/C11 :: 0.000|=2*PI()*$B$2/D11 :: 0.000
        Δα|=B19*($E$2/$B$2+B15/B11) :: 0.000|=C19*($E$2/$B$2+C15/C11) :: 0.000|=D19*($E$2/$B$2+D15/D11) :: 0.000

        Das Fett spart gegenüber trocken|=1-C19/B19 :: 0%||der Verzögerung.
        Johanna Reiter, 5. Woche
        """);
    page.bold("A1,A4:D5,A11:D11,A19:D19");
    page.measured("Drehzahl", "1/s", "B2").uncertainty("E2").because("G2");
    page.other(Role.INDEX, "A6:A10").other(Role.RAW, "B6:D10").other(Role.STATISTIC, "B12:D12");
    page.other(Role.COMPARISON, "B22");
    page.record(Kind.MEAN, "Auslaufzeit", "s", "B11:D11")
        .number("38.2", "61.2", "74.3")
        .uncertainty("B15:D15")
        .contribution("repeat", "B13:D13")
        .contribution("timing", "B14:D14")
        .because("A16");
    page.calculated("α", "1/s²", "B19:D19")
        .number("0.329", "0.205", "0.169")
        .uncertainty("B20:D20");
    return drawing;
  }
}
