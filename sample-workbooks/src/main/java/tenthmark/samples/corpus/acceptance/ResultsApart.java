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

/** What was read on one sheet, what follows from it on another. */
@AutoService(Family.class)
public final class ResultsApart implements Family {

  private static final String LAYOUT = "results-apart";

  @Override
  public List<Drawing> drawings() {
    return List.of(hubs(), chain(), battery());
  }

  private static Drawing hubs() {
    Drawing drawing =
        new Drawing(
            "acceptance-hub-clicks",
            LAYOUT,
            "clicks of four freewheels",
            Language.ENGLISH,
            Writer.POI_XLSX);
    Page data = drawing.page("Bench notes");
    data.draw(
        "A1",
        """
        Counting clicks. Motor turns the wheel, we count from the recording.
        Desmond Achterberg, lab 3

        Hub|Teeth|Clicks N|dN|Time t/s|dt/s
        red|24|132|2|12.4|0.2
        black|18|97|2|11.9|0.2
        silver|36|210|2|13.1|0.2
        gold|54|253|2|10.7|0.2

        dN: we may lose one click at either end of the recording.
        dt: started and stopped by hand.
        """);
    data.other(Role.COUNT, "B5:B8");
    data.measured("clicks", "", "C5:C8").uncertainty("D5:D8").because("A10");
    data.measured("time", "s", "E5:E8").uncertainty("F5:F8").because("A11");
    Page results = drawing.page("Answers");
    results.draw(
        "A1",
        """
        How fast does the motor turn?

        Hub|click rate in Hz|error in Hz|turns per second|error
        red|='Bench notes'!C5/'Bench notes'!E5 :: 0.0|=B4*('Bench notes'!D5/'Bench notes'!C5+'Bench notes'!F5/'Bench notes'!E5) :: 0.0|=B4/'Bench notes'!B5 :: 0.000|=C4/'Bench notes'!B5 :: 0.000
        black|='Bench notes'!C6/'Bench notes'!E6 :: 0.0|=B5*('Bench notes'!D6/'Bench notes'!C6+'Bench notes'!F6/'Bench notes'!E6) :: 0.0|=B5/'Bench notes'!B6 :: 0.000|=C5/'Bench notes'!B6 :: 0.000
        silver|='Bench notes'!C7/'Bench notes'!E7 :: 0.0|=B6*('Bench notes'!D7/'Bench notes'!C7+'Bench notes'!F7/'Bench notes'!E7) :: 0.0|=B6/'Bench notes'!B7 :: 0.000|=C6/'Bench notes'!B7 :: 0.000
        gold|='Bench notes'!C8/'Bench notes'!E8 :: 0.0|=B7*('Bench notes'!D8/'Bench notes'!C8+'Bench notes'!F8/'Bench notes'!E8) :: 0.0|=B7/'Bench notes'!B8 :: 0.000|=C7/'Bench notes'!B8 :: 0.000

        all hubs|||=AVERAGE(D4:D7) :: 0.000|=(MAX(D4:D7)-MIN(D4:D7))/2 :: 0.000
        Error of the last line is half of the range of the four.
        """);
    results
        .calculated("click rate", "Hz", "B4:B7")
        .number("10.6", "8.2", "16.0", "23.6")
        .uncertainty("C4:C7");
    results
        .calculated("turns per second", "1/s", "D4:D7")
        .number("0.444", "0.453", "0.445", "0.438")
        .uncertainty("E4:E7");
    results
        .record(Kind.MEAN, "turns per second", "1/s", "D9")
        .number("0.445")
        .uncertainty("E9")
        .because("A10");
    return drawing;
  }

  private static Drawing chain() {
    Drawing drawing =
        new Drawing(
            "acceptance-kettenlaengung",
            LAYOUT,
            "stretch of a chain",
            Language.GERMAN,
            Writer.POI_XLSX);
    Page data = drawing.page("Messdaten");
    data.draw(
        "A1",
        """
        Kette an der Wand, 100 Glieder, sechsmal gemessen
        Wer|Länge in mm
        Aylin|1272.5
        Aylin|1273.0
        Bjarne|1272.8
        Bjarne|1272.6
        Cem|1273.1
        Cem|1272.7
        Glieder|100
        """);
    data.other(Role.RAW, "B3:B8").other(Role.COUNT, "B9");
    Page results = drawing.page("Auswertung");
    results.draw(
        "A1",
        """
        Auswertung

        Mittelwert der Länge L|=AVERAGE(Messdaten!B3:B8) :: 0.0|mm
        Standardabweichung|=STDEV(Messdaten!B3:B8) :: 0.00|mm

        Beiträge zu ΔL
        Ablesung|0.5|mm
        Bandmaß|0.5|mm
        Wiederholung|=B4/SQRT(COUNT(Messdaten!B3:B8)) :: 0.0|mm
        ΔL|=SUM(B7:B9) :: 0.0|mm

        Teilung p = L/100|=B3/Messdaten!B9 :: 0.000|mm
        Δp|=B10/Messdaten!B9 :: 0.000|mm
        Teilung neu|12.700|mm
        Längung|=(B12-B14)/B14*100 :: 0.00|%
        ΔLängung|=B13/B14*100 :: 0.00|%

        Verschleißgrenze laut Werkstatt|0.75|%
        """);
    results
        .record(Kind.MEAN, "Länge", "mm", "B3")
        .number("1272.8")
        .uncertainty("B10")
        .contribution("reading", "B7")
        .contribution("instrument", "B8")
        .contribution("repeat", "B9")
        .because("Begründung!A2");
    results.other(Role.STATISTIC, "B4").other(Role.CONSTANT, "B14").other(Role.ACCEPTED, "B18");
    results.calculated("Teilung", "mm", "B12").number("12.728").uncertainty("B13");
    results.calculated("Längung", "%", "B15").number("0.22").uncertainty("B16");
    drawing
        .page("Begründung")
        .draw(
            "A1",
            """
            Warum diese Unsicherheiten?
            Ablesung 0,5 mm: an beiden Enden je ein Viertel Millimeter. Bandmaß 0,5 mm: steht auf dem Gehäuse. Wiederholung: Streuung der sechs Messungen, Standardabweichung durch Wurzel aus sechs.
            Die Kette hing immer mit demselben Gewicht.
            """);
    return drawing;
  }

  private static Drawing battery() {
    Drawing drawing =
        new Drawing(
            "acceptance-pile-interne",
            LAYOUT,
            "internal resistance of a battery",
            Language.FRENCH,
            Writer.GNUMERIC_XLSX);
    Page data = drawing.page("Mesures");
    data.draw(
        "A1",
        """
        Pile de l'éclairage : tension selon le débit
        Garance Petitjean

        n°|intensité|incertitude|tension|incertitude
        |A|A|V|V
        1|0.050|0.002|4.56|0.02
        2|0.100|0.002|4.53|0.02
        3|0.200|0.002|4.45|0.02
        4|0.300|0.002|4.37|0.02
        5|0.400|0.002|4.30|0.02
        6|0.500|0.002|4.23|0.02
        7|0.600|0.002|4.15|0.02

        Ampèremètre : deux points sur le dernier chiffre d'après la notice.
        Voltmètre : pareil, deux points.
        """);
    data.other(Role.INDEX, "A6:A12");
    data.measured("intensité", "A", "B6:B12").uncertainty("C6:C12").because("A14");
    data.measured("tension", "V", "D6:D12").uncertainty("E6:E12").because("A15");
    Page results = drawing.page("Résultats");
    results.draw(
        "A1",
        """
        Droite U = E − r·I par moindres carrés

        |valeur|incertitude|unité
        force électromotrice E|=INDEX(LINEST(Mesures!D6:D12,Mesures!B6:B12,TRUE,TRUE),1,2) :: 0.000|=INDEX(LINEST(Mesures!D6:D12,Mesures!B6:B12,TRUE,TRUE),2,2) :: 0.000|V
        résistance interne r|=-INDEX(LINEST(Mesures!D6:D12,Mesures!B6:B12,TRUE,TRUE),1,1) :: 0.000|=INDEX(LINEST(Mesures!D6:D12,Mesures!B6:B12,TRUE,TRUE),2,1) :: 0.000|Ω
        courant de court-circuit E/r|=B4/B5 :: 0.00|=B6*(C4/B4+C5/B5) :: 0.00|A

        Les incertitudes de E et de r viennent de la dispersion des points autour de la droite.
        """);
    results.record(Kind.INTERCEPT, "E", "V", "B4").number("4.600").uncertainty("C4").because("A8");
    results.record(Kind.SLOPE, "r", "Ω", "B5").number("0.748").uncertainty("C5").because("A8");
    results.calculated("courant de court-circuit", "A", "B6").number("6.15").uncertainty("C6");
    return drawing;
  }
}
