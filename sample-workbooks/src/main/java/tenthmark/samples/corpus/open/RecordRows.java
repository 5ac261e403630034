package tenthmark.samples.corpus.open;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** A record a row. */
@AutoService(Family.class)
public final class RecordRows implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(crank(), kette(), neumatico(), poignee());
  }

  private static Drawing crank() {
    Drawing drawing =
        new Drawing(
            "crank-arm-budget", "record-rows", "crank arms", Language.ENGLISH, Writer.CALC_ODS);
    Page page = drawing.page("Crank arm");
    page.draw(
        "A1",
        """
        Crank arm on the bench
        Hana O., 3 March

        Quantity | Symbol | Value | Unit | Reading | Physical | Instrument | Total | Rationale
        length between the holes | L | 172.0 | mm | 0.5 | 0.5 | 0.5 | =SUM(E5:G5) :: 0.0 | rule in mm, 0.25 mm at each end; chamfered holes hide the centre by 0.5 mm; rule class 0.5 mm
        thickness at the middle | d | 12.35 | mm | 0.05 | 0.05 | 0.05 | =SUM(E6:G6) :: 0.00 | vernier with 0.05 mm steps; the forging is uneven; caliper sheet says 0.05 mm
        mass | m | 612 | g | 0 | 0 | 2 | =SUM(E7:G7) :: 0 | kitchen scale, ± 2 g in its leaflet; the display stood still
        pull at the pedal thread | F | 25.0 | N | 0.1 | 0.2 | 0.5 | =SUM(E8:G8) :: 0.0 | spring balance with 0.5 N steps, read to a fifth of a step; it swung by 0.2 N; 1 % of full scale
        moment of the pull | M | =C8*C5/1000 :: 0.00 | N·m | | | | =C9*(H8/C8+H5/C5) :: 0.00 | from F and L, pulled at a right angle
        """);
    page.bold("A1,A4:I4");
    page.measured("length", "mm", "C5")
        .uncertainty("H5")
        .contribution("reading", "E5")
        .contribution("physical", "F5")
        .contribution("instrument", "G5")
        .because("I5");
    page.measured("thickness", "mm", "C6")
        .uncertainty("H6")
        .contribution("reading", "E6")
        .contribution("physical", "F6")
        .contribution("instrument", "G6")
        .because("I6");
    page.measured("mass", "g", "C7")
        .uncertainty("H7")
        .contribution("reading", "E7")
        .contribution("physical", "F7")
        .contribution("instrument", "G7")
        .because("I7");
    page.measured("pull", "N", "C8")
        .uncertainty("H8")
        .contribution("reading", "E8")
        .contribution("physical", "F8")
        .contribution("instrument", "G8")
        .because("I8");
    page.calculated("moment", "N·m", "C9").number("4.30").uncertainty("H9").because("I9");
    return drawing;
  }

  /** The instrument is a name here. */
  private static Drawing kette() {
    Drawing drawing =
        new Drawing(
            "kette-laengung",
            "record-rows",
            "chain stretch",
            Language.GERMAN,
            Writer.POI_XLSX_WITHOUT_VALUES);
    Page page = drawing.page("Kette");
    page.draw(
        "A1",
        """
        Wie weit ist die Kette gelängt?

        Größe | Zeichen | Messwert | Einheit | Instrument | Unsicherheit | Begründung
        Länge von 50 Gliedern | L | 638.5 | mm | Stahlmaßstab Nr. 4 | 0.5 | an beiden Enden auf 0,25 mm abgelesen, Kette mit 20 N gespannt
        Spannkraft | F | 20.0 | N | Federwaage | 0.5 | halber Skalenteil
        Nennlänge | L0 | 635.0 | mm | (Norm: 50 · 12,7 mm)
        Längung | ε | =(C4-C6)/C6*100 :: 0.00 | % | | =F4/C6*100 :: 0.00 | ΔL/L0

        Ab 0,5 % wird im Kurs getauscht: hier also ja, aber knapp (innerhalb der Unsicherheit).
        """);
    page.bold("A1,A3:G3");
    page.measured("Länge", "mm", "C4").uncertainty("F4").because("G4");
    page.measured("Spannkraft", "N", "C5").uncertainty("F5").because("G5");
    page.other(Role.ACCEPTED, "C6");
    page.calculated("Längung", "%", "C7").number("0.55").uncertainty("F7").because("G7");
    return drawing;
  }

  private static Drawing neumatico() {
    Drawing drawing =
        new Drawing(
            "neumatico-gas", "record-rows", "tyre gas law", Language.SPANISH, Writer.GNUMERIC_ODS);
    Page page = drawing.page("Neumático");
    page.draw(
        "A1",
        """
        Ley de los gases con un neumático de carretera
        Alumnos: Lucía Vega, Hugo Prat

        Magnitud | Valor | Unidad | Incertidumbre | Justificación
        Presión absoluta p | 4.20 | bar | 0.10 | manómetro: media división (0,05 bar) y calibración del fabricante (0,05 bar)
        Volumen V | 1.85 | L | 0.05 | llenado con agua desde una probeta de 1 L, dos lecturas
        Temperatura θ | 21.5 | °C | 0.5 | termómetro digital, ficha técnica
        p·V/T | =B5*B6/(B7+273.15) :: 0.0000 | bar·L/K | =B8*(D5/B5+D6/B6+D7/(B7+273.15)) :: 0.0000 | suma de incertidumbres relativas
        """);
    page.bold("A1,A4:E4");
    page.measured("Presión", "bar", "B5").uncertainty("D5").because("E5");
    page.measured("Volumen", "L", "B6").uncertainty("D6").because("E6");
    page.measured("Temperatura", "°C", "B7").uncertainty("D7").because("E7");
    page.calculated("p·V/T", "bar·L/K", "B8").number("0.0264").uncertainty("D8").because("E8");
    return drawing;
  }

  private static Drawing poignee() {
    Drawing drawing =
        new Drawing(
            "poignee-mousse", "record-rows", "foam grips", Language.FRENCH, Writer.CALC_ODS);
    Page page = drawing.page("Poignée");
    page.draw(
        "A1",
        """
        Masse volumique d'une poignée en mousse
        Groupe du jeudi : Manon, Yanis, Chloé

        Grandeur | Symbole | Valeur | Incertitude | Unité | Origine de l'incertitude
        diamètre extérieur | D | 31.4 | 0.8 | mm | pied à coulisse, la mousse s'écrase : bord flou de 0,4 mm de chaque côté
        diamètre intérieur | d | 22.2 | 0.1 | mm | pied à coulisse sur le tube, graduation 0,05 mm, deux bords
        longueur | L | 128 | 2 | mm | réglet, extrémités arrondies : 1 mm à chaque bout
        masse | m | 18.6 | 0.1 | g | balance, dernier chiffre

        Calculs
        volume | V | =PI()/4*(C5^2-C6^2)*C7/1000 :: 0 | =PI()/4*(2*C5*D5*C7+2*C6*D6*C7+(C5^2-C6^2)*D7)/1000 :: 0 | cm³
        masse volumique | ρ | =C8/C11 :: 0.00 | =C12*(D8/C8+D11/C11) :: 0.00 | g/cm³
        """);
    page.bold("A1,A4:F4,A10");
    page.measured("diamètre extérieur", "mm", "C5").uncertainty("D5").because("F5");
    page.measured("diamètre intérieur", "mm", "C6").uncertainty("D6").because("F6");
    page.measured("longueur", "mm", "C7").uncertainty("D7").because("F7");
    page.measured("masse", "g", "C8").uncertainty("D8").because("F8");
    page.calculated("volume", "cm³", "C11").number("50").uncertainty("D11");
    page.calculated("masse volumique", "g/cm³", "C12").number("0.38").uncertainty("D12");
    return drawing;
  }
}
