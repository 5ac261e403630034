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

/** All in one table, as broad as it needs to be. */
@AutoService(Family.class)
public final class WideTables implements Family {

  private static final String LAYOUT = "wide-tables";

  @Override
  public List<Drawing> drawings() {
    return List.of(chainStretch(), brakeDisc(), dynamoCoil());
  }

  private static Drawing chainStretch() {
    Drawing drawing =
        new Drawing(
                "acceptance-chain-stretch",
                LAYOUT,
                "stretch of a chain",
                Language.ENGLISH,
                Writer.POI_XLSX)
            .inQuadrature();
    Page page = drawing.page("Chains");
    page.draw(
        "A1",
        """
        Worn chains: Priya Lindqvist and Oskar Bello
        A new chain has a pitch of|12.70|mm. Everything is added in quadrature.

        Chain||Length over the rollers (mm)|||||Pitch (mm)||Stretch (%)||Remarks
        bike|links|L|ends read|roller play|rule|u(L)|p|u(p)|s|u(s)|
        city|48|609.8|0.5|0.3|0.2|=SQRT(D{r}^2+E{r}^2+F{r}^2) :: 0.0|=C{r}/B{r} :: 0.000|=G{r}/B{r} :: 0.000|=100*(H{r}/$B$2-1) :: 0.00|=100*I{r}/$B$2 :: 0.00|two ends, a quarter of a mm each; rollers wobble 0.3 mm; rule is class 1
        race|48|611.5|0.5|0.3|0.2|=SQRT(D{r}^2+E{r}^2+F{r}^2) :: 0.0|=C{r}/B{r} :: 0.000|=G{r}/B{r} :: 0.000|=100*(H{r}/$B$2-1) :: 0.00|=100*I{r}/$B$2 :: 0.00|as above
        cargo|48|613.0|0.5|0.3|0.2|=SQRT(D{r}^2+E{r}^2+F{r}^2) :: 0.0|=C{r}/B{r} :: 0.000|=G{r}/B{r} :: 0.000|=100*(H{r}/$B$2-1) :: 0.00|=100*I{r}/$B$2 :: 0.00|as above, replace soon
        kids|48|610.6|0.5|0.3|0.2|=SQRT(D{r}^2+E{r}^2+F{r}^2) :: 0.0|=C{r}/B{r} :: 0.000|=G{r}/B{r} :: 0.000|=100*(H{r}/$B$2-1) :: 0.00|=100*I{r}/$B$2 :: 0.00|as above
        courier|48|616.2|0.5|0.3|0.2|=SQRT(D{r}^2+E{r}^2+F{r}^2) :: 0.0|=C{r}/B{r} :: 0.000|=G{r}/B{r} :: 0.000|=100*(H{r}/$B$2-1) :: 0.00|=100*I{r}/$B$2 :: 0.00|as above, past the limit of 0.75 %
        """);
    page.merge("A4:B4", "C4:G4", "H4:I4", "J4:K4");
    page.bold("A4,C4,H4,J4,L4,A5:K5");
    page.other(Role.CONSTANT, "B2").other(Role.COUNT, "B6:B10");
    page.measured("length", "mm", "C6:C10")
        .uncertainty("G6:G10")
        .contribution("reading", "D6:D10")
        .contribution("physical", "E6:E10")
        .contribution("instrument", "F6:F10")
        .because("L6:L10");
    page.calculated("pitch", "mm", "H6:H10")
        .number("12.704", "12.740", "12.771", "12.721", "12.838")
        .uncertainty("I6:I10");
    page.calculated("stretch", "%", "J6:J10")
        .number("0.03", "0.31", "0.56", "0.16", "1.08")
        .uncertainty("K6:K10");
    return drawing;
  }

  private static Drawing brakeDisc() {
    Drawing drawing =
        new Drawing(
            "acceptance-bremsscheibe-abkuehlung",
            LAYOUT,
            "cooling of a brake disc",
            Language.GERMAN,
            Writer.CALC_ODS);
    Page page = drawing.page("Abkühlung");
    page.draw(
        "A1",
        """
        Wie schnell wird eine Bremsscheibe kalt?
        Milan Brandt, Gruppe Freitag
        Luft im Raum ϑ₀ =|21.5|°C, Δϑ₀ =|0.5|°C

        t in min (± 0,05)|0.00|2.00|4.00|6.00|8.00|10.00|12.00|14.00|16.00
        ϑ in °C|96.0|79.3|66.9|56.5|49.0|42.6|38.2|34.5|31.5
        Δϑ in °C|0.5|0.5|0.5|0.5|0.5|0.5|0.5|0.5|0.5
        Übertemperatur θ = ϑ − ϑ₀ in K|=B6-$B$3 :: 0.0|=C6-$B$3 :: 0.0|=D6-$B$3 :: 0.0|=E6-$B$3 :: 0.0|=F6-$B$3 :: 0.0|=G6-$B$3 :: 0.0|=H6-$B$3 :: 0.0|=I6-$B$3 :: 0.0|=J6-$B$3 :: 0.0
        Δθ in K|=B7+$D$3 :: 0.0|=C7+$D$3 :: 0.0|=D7+$D$3 :: 0.0|=E7+$D$3 :: 0.0|=F7+$D$3 :: 0.0|=G7+$D$3 :: 0.0|=H7+$D$3 :: 0.0|=I7+$D$3 :: 0.0|=J7+$D$3 :: 0.0
        ln(θ/K)|=LN(B8) :: 0.000|=LN(C8) :: 0.000|=LN(D8) :: 0.00|=LN(E8) :: 0.00|=LN(F8) :: 0.00|=LN(G8) :: 0.00|=LN(H8) :: 0.00|=LN(I8) :: 0.00|=LN(J8) :: 0.00
        Δ ln|=B9/B8 :: 0.000|=C9/C8 :: 0.000|=D9/D8 :: 0.00|=E9/E8 :: 0.00|=F9/F8 :: 0.00|=G9/G8 :: 0.00|=H9/H8 :: 0.00|=I9/I8 :: 0.00|=J9/J8 :: 0.00

        Thermoelement laut Prüfschein auf 0,5 °C, Zeit mit der Wanduhr abgelesen auf 3 s

        Steigung s von ln θ über t|=SLOPE(B10:J10,B5:J5) :: 0.0000|1/min, Δs =|=INDEX(LINEST(B10:J10,B5:J5,TRUE,TRUE),2,1) :: 0.0000|1/min
        Abklingzeit τ = −1/s|=-1/B15 :: 0.00|min, Δτ =|=D15/B15^2 :: 0.00|min
        """);
    page.measured("ϑ₀", "°C", "B3").uncertainty("D3").because("A13");
    page.measured("t", "min", "B5:J5").uncertaintyOf(0.05).because("A13");
    page.measured("ϑ", "°C", "B6:J6").uncertainty("B7:J7").because("A13");
    page.calculated("Übertemperatur", "K", "B8:J8")
        .number("74.5", "57.8", "45.4", "35.0", "27.5", "21.1", "16.7", "13.0", "10.0")
        .uncertainty("B9:J9");
    page.calculated("ln", "", "B10:J10")
        .number("4.311", "4.057", "3.82", "3.56", "3.31", "3.05", "2.82", "2.56", "2.30")
        .uncertainty("B11:J11");
    page.record(Kind.SLOPE, "Steigung", "1/min", "B15").number("-0.1251").uncertainty("D15");
    page.calculated("Abklingzeit", "min", "B16").number("7.99").uncertainty("D16");
    return drawing;
  }

  private static Drawing dynamoCoil() {
    Drawing drawing =
        new Drawing(
                "acceptance-bobina-dinamo",
                LAYOUT,
                "resistance of a dynamo coil",
                Language.SPANISH,
                Writer.POI_XLSX_WITHOUT_VALUES)
            .inQuadrature();
    Page page = drawing.page("Bobina");
    page.draw(
        "A1",
        """
        ¿Cumple la bobina de la dinamo la ley de Ohm? — Gael Quiroga
        Las incertidumbres se suman en cuadratura.

        N.º|U (V)|lect.|apar.|ΔU (V)|I (A)|lect.|apar.|ΔI (A)|R (Ω)|ΔR (Ω)|Comentario
        1|0.70|0.01|0.02|=SQRT(C{r}^2+D{r}^2) :: 0.00|0.201|0.001|0.003|=SQRT(G{r}^2+H{r}^2) :: 0.000|=B{r}/F{r} :: 0.00|=J{r}*SQRT((E{r}/B{r})^2+(I{r}/F{r})^2) :: 0.00|lectura: una cuenta de la pantalla; aparato: hoja de datos del multímetro
        2|1.05|0.01|0.02|=SQRT(C{r}^2+D{r}^2) :: 0.00|0.299|0.001|0.003|=SQRT(G{r}^2+H{r}^2) :: 0.000|=B{r}/F{r} :: 0.00|=J{r}*SQRT((E{r}/B{r})^2+(I{r}/F{r})^2) :: 0.00|igual
        3|1.40|0.01|0.02|=SQRT(C{r}^2+D{r}^2) :: 0.00|0.402|0.001|0.003|=SQRT(G{r}^2+H{r}^2) :: 0.000|=B{r}/F{r} :: 0.00|=J{r}*SQRT((E{r}/B{r})^2+(I{r}/F{r})^2) :: 0.00|igual
        4|1.75|0.01|0.02|=SQRT(C{r}^2+D{r}^2) :: 0.00|0.498|0.001|0.003|=SQRT(G{r}^2+H{r}^2) :: 0.000|=B{r}/F{r} :: 0.00|=J{r}*SQRT((E{r}/B{r})^2+(I{r}/F{r})^2) :: 0.00|igual, la bobina ya está tibia
        5|2.10|0.01|0.02|=SQRT(C{r}^2+D{r}^2) :: 0.00|0.602|0.001|0.003|=SQRT(G{r}^2+H{r}^2) :: 0.000|=B{r}/F{r} :: 0.00|=J{r}*SQRT((E{r}/B{r})^2+(I{r}/F{r})^2) :: 0.00|igual

        ||||||||Promedio|=AVERAGE(J5:J9) :: 0.00|=AVERAGE(K5:K9) :: 0.00|Ω (los aparatos son los mismos, así que promediar no la reduce)
        ||||||||Nominal|3.5||Ω
        ||||||||Diferencia|=J11/J12-1 :: 0.0%
        """);
    page.other(Role.INDEX, "A5:A9").other(Role.ACCEPTED, "J12").other(Role.COMPARISON, "J13");
    page.measured("U", "V", "B5:B9")
        .uncertainty("E5:E9")
        .contribution("reading", "C5:C9")
        .contribution("instrument", "D5:D9")
        .because("L5:L9");
    page.measured("I", "A", "F5:F9")
        .uncertainty("I5:I9")
        .contribution("reading", "G5:G9")
        .contribution("instrument", "H5:H9")
        .because("L5:L9");
    page.calculated("R", "Ω", "J5:J9")
        .number("3.48", "3.51", "3.48", "3.51", "3.49")
        .uncertainty("K5:K9");
    page.record(Kind.MEAN, "R", "Ω", "J11").number("3.50").uncertainty("K11").because("L11");
    return drawing;
  }
}
