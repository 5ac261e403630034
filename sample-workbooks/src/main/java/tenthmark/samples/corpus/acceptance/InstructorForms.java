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

/** Sheets that an instructor handed out, filled in. */
@AutoService(Family.class)
public final class InstructorForms implements Family {

  private static final String LAYOUT = "instructor-forms";

  @Override
  public List<Drawing> drawings() {
    return List.of(tyre(), dynamoCoil(), wheelPendulum());
  }

  private static Drawing tyre() {
    Drawing drawing =
        new Drawing(
            "acceptance-tyre-form",
            LAYOUT,
            "gas law with a tyre",
            Language.ENGLISH,
            Writer.POI_XLSX_WITHOUT_VALUES);
    Page page = drawing.page("Sheet 5");
    page.draw(
        "A1",
        """
        SHEET 5: PRESSURE AND TEMPERATURE OF A TYRE
        Student|Noor Haddad||Student no.|20417
        Date|2026-10-12||Station|6
        Fill in the boxes. Give a reason for every uncertainty.

        A. Tyre from the cold room
        (1) Gauge pressure|2.50|bar|uncertainty|0.05|bar
        Reason:|half of one mark of the dial, marks are 0.1 bar apart
        (2) Temperature of the air in it|4.0|°C|uncertainty|0.5|°C
        Reason:|card of the probe

        B. Tyre from the boiler room
        (3) Gauge pressure|2.75|bar|uncertainty|0.05|bar
        Reason:|same dial
        (4) Temperature of the air in it|24.0|°C|uncertainty|0.5|°C
        Reason:|same probe

        C. The room
        (5) Barometer|1.012|bar|uncertainty|0.002|bar
        Reason:|two counts of the display on the wall

        D. What do you find?
        (6) Absolute pressure, cold|=B7+B19 :: 0.00|bar|uncertainty|=E7+E19 :: 0.00|bar
        (7) Absolute pressure, warm|=B13+B19 :: 0.00|bar|uncertainty|=E13+E19 :: 0.00|bar
        (8) Pressure ratio (7)/(6)|=B24/B23 :: 0.00||uncertainty|=B25*(E23/B23+E24/B24) :: 0.00
        (9) Temperature ratio, in kelvin|=(B15+273.15)/(B9+273.15) :: 0.000||uncertainty|=B26*(E9/(B9+273.15)+E15/(B15+273.15)) :: 0.000
        (10) Difference of (8) and (9)|=ABS(B25-B26) :: 0.000||allowed|=E25+E26 :: 0.00
        (11) Does the gas law hold?|=IF(B27<=E27,"yes, within the uncertainties","no")
        """);
    page.other(Role.LABEL, "E2:E3").other(Role.DATE, "B3").other(Role.COMPARISON, "B27,E27");
    page.measured("pressure", "bar", "B7,B13").uncertainty("E7,E13").because("B8,B14");
    page.measured("temperature", "°C", "B9,B15").uncertainty("E9,E15").because("B10,B16");
    page.measured("barometer", "bar", "B19").uncertainty("E19").because("B20");
    page.calculated("pressure", "bar", "B23:B24").number("3.51", "3.76").uncertainty("E23:E24");
    page.calculated("pressure ratio", "", "B25").number("1.07").uncertainty("E25");
    page.calculated("temperature ratio", "", "B26").number("1.072").uncertainty("E26");
    return drawing;
  }

  private static Drawing dynamoCoil() {
    Drawing drawing =
        new Drawing(
            "acceptance-dynamospule-blatt",
            LAYOUT,
            "resistance of a dynamo coil",
            Language.GERMAN,
            Writer.GNUMERIC_ODS);
    Page page = drawing.page("Protokollblatt");
    page.draw(
        "A1",
        """
        Protokollblatt 4 – Widerstand einer Dynamospule
        ausgefüllt von:|Henrik Sauer||Platz:|9

        1. Weg: Spannung und Strom
        |Spannung U|Strom I|Raumtemperatur
        Messwert|1.84|0.526|22.5
        Unsicherheit|0.02|0.005|0.5
        Einheit|V|A|°C
        Warum so viel?|zwei Ziffernschritte laut Anleitung|fünf Ziffernschritte laut Anleitung|ein halber Teilstrich

        2. Weg: Ohmmeter
        |mit Spule|Klemmen kurzgeschlossen
        Messwert|3.62|0.15
        Unsicherheit|0.03|0.03
        Einheit|Ω|Ω
        Warum so viel?|drei Ziffernschritte, Anzeige wandert|wie links

        Ergebnis
        |1. Weg: R = U/I|2. Weg: Differenz|Abstand
        Wert|=B6/C6 :: 0.00|=B13-C13 :: 0.00|=ABS(B20-C20) :: 0.00
        Unsicherheit|=B20*(B7/B6+C7/C6) :: 0.00|=B14+C14 :: 0.00|=B21+C21 :: 0.00
        Einheit|Ω|Ω|Ω

        Urteil:|=IF(D20<=D21,"Die beiden Wege stimmen überein.","Die beiden Wege stimmen nicht überein.")
        """);
    page.bold("A1,A4,A11,A18").other(Role.LABEL, "E2").other(Role.COMPARISON, "D20:D21");
    page.measured("Spannung", "V", "B6").uncertainty("B7").because("B9");
    page.measured("Strom", "A", "C6").uncertainty("C7").because("C9");
    page.measured("Raumtemperatur", "°C", "D6").uncertainty("D7").because("D9");
    page.measured("mit Spule", "Ω", "B13").uncertainty("B14").because("B16");
    page.measured("kurzgeschlossen", "Ω", "C13").uncertainty("C14").because("C16");
    page.calculated("R", "Ω", "B20").number("3.50").uncertainty("B21");
    page.calculated("Differenz", "Ω", "C20").number("3.47").uncertainty("C21");
    return drawing;
  }

  private static Drawing wheelPendulum() {
    Drawing drawing =
        new Drawing(
            "acceptance-rueda-pendulo",
            LAYOUT,
            "period of a wheel used as a pendulum",
            Language.SPANISH,
            Writer.POI_XLS);
    Page page = drawing.page("Hoja 2");
    page.draw(
        "A1",
        """
        HOJA 2. LA RUEDA COMO PÉNDULO
        Nombre:|Aitana Bermúdez||||Grupo:|2

        Paso 1. Cronometre varias oscilaciones seguidas, tres veces.
        Intento|Oscilaciones|Tiempo (s)|Error (s)|Periodo (s)|Error (s)|¿Por qué ese error?
        primero|20|37.6|0.2|=C6/B6 :: 0.000|=D6/B6 :: 0.000|mi reflejo al arrancar y al parar
        segundo|20|37.9|0.2|=C7/B7 :: 0.000|=D7/B7 :: 0.000|el mismo reflejo
        tercero|20|37.3|0.2|=C8/B8 :: 0.000|=D8/B8 :: 0.000|el mismo reflejo

        Paso 2. Promedie.
        Periodo medio (s)||||=AVERAGE(E6:E8) :: 0.000
        Semirrango (s)||||=(MAX(E6:E8)-MIN(E6:E8))/2 :: 0.000
        Error del periodo medio (s)||||=MAX(E12,F6:F8) :: 0.000||la dispersión manda, es mayor que el error de un solo intento

        Paso 3. ¿Qué largo tendría un péndulo simple con ese periodo?
        g (m/s²)||||9.81
        Largo L = gT²/4π² (m)||||=E16*E11^2/(4*PI()^2) :: 0.000
        Error del largo (m)||||=2*E17*E13/E11 :: 0.000
        """);
    page.other(Role.LABEL, "G2").other(Role.COUNT, "B6:B8").other(Role.STATISTIC, "E12");
    page.other(Role.CONSTANT, "E16");
    page.measured("tiempo", "s", "C6:C8").uncertainty("D6:D8").because("G6:G8");
    page.calculated("periodo", "s", "E6:E8").number("1.880", "1.895", "1.865").uncertainty("F6:F8");
    page.record(Kind.MEAN, "periodo medio", "s", "E11")
        .number("1.880")
        .uncertainty("E13")
        .because("G13");
    page.calculated("largo", "m", "E17").number("0.878").uncertainty("E18");
    return drawing;
  }
}
