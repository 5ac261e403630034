package tenthmark.samples.corpus.acceptance;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** A row for each thing that was measured, the results below. */
@AutoService(Family.class)
public final class RecordSheets implements Family {

  private static final String LAYOUT = "record-sheets";

  @Override
  public List<Drawing> drawings() {
    return List.of(crankArm(), spoke(), foamGrip());
  }

  private static Drawing crankArm() {
    Drawing drawing =
        new Drawing(
            "acceptance-crank-arm-density",
            LAYOUT,
            "density of a crank arm",
            Language.ENGLISH,
            Writer.POI_XLSX);
    Page page = drawing.page("Week 1");
    page.draw(
        "A1",
        """
        Is the crank arm really aluminium?
        Ruby Tanaka and Femi Oduya|||bench|4|handed in|2026-09-14

        What we measured|Symbol|Value|Unit|± in all|from reading|from the instrument|How we got there
        Mass of the bare arm|m|186.4|g|=F5+G5 :: 0.0|0.1|0.2|the last digit stayed still, so one digit; the card of the balance says 0.2 g
        Water level before|V1|150.0|mL|=F6+G6 :: 0.0|0.5|0.5|marks every 2 mL, we trust a quarter of one; cylinder is good to 0.5 mL
        Water level with arm|V2|219.0|mL|=F7+G7 :: 0.0|0.5|0.5|same as before, no bubbles on the arm

        What we worked out
        Volume of the arm|V|=C7-C6 :: 0|mL|=E6+E7 :: 0|||levels subtract, uncertainties add
        Density|ρ|=C5/C10 :: 0.00|g/mL|=C11*(E5/C5+E10/C10) :: 0.00|||relative uncertainties add

        From the data book, 6061 alloy||2.70|g/mL
        We are off by||=(C11-C13)/C13 :: 0.0%|||||well inside our uncertainty, so yes, aluminium
        """);
    page.bold("A1,A4:H4,A9").other(Role.LABEL, "E2").other(Role.DATE, "G2");
    page.measured("mass", "g", "C5")
        .uncertainty("E5")
        .contribution("reading", "F5")
        .contribution("instrument", "G5")
        .because("H5");
    page.measured("water level", "mL", "C6:C7")
        .uncertainty("E6:E7")
        .contribution("reading", "F6:F7")
        .contribution("instrument", "G6:G7")
        .because("H6:H7");
    page.calculated("volume", "mL", "C10").number("69").uncertainty("E10").because("H10");
    page.calculated("density", "g/mL", "C11").number("2.70").uncertainty("E11").because("H11");
    page.other(Role.ACCEPTED, "C13").other(Role.COMPARISON, "C14");
    return drawing;
  }

  private static Drawing spoke() {
    Drawing drawing =
        new Drawing(
            "acceptance-speiche-dichte",
            LAYOUT,
            "density of a spoke",
            Language.GERMAN,
            Writer.POI_XLS);
    Page page = drawing.page("Speiche");
    page.draw(
        "A1",
        """
        Versuch 1: Woraus ist die Speiche?
        Lena Vogt, Emre Şahin – Gruppe B

        |Wert|Ablesung|Gerät|Summe|Einheit
        Länge L|262.0|0.5|0.3|=C5+D5 :: 0.0|mm
        Stahlmaßstab, Millimeterstriche: an jedem Ende ein Viertel Strich; Maßstab laut Aufdruck auf 0,3 mm genau
        Durchmesser d|2.00|0.01|0.01|=C7+D7 :: 0.00|mm
        Messschraube, auf einen Skalenteil abgelesen; Nullpunkt auf 0,01 mm geprüft
        Masse von zehn Speichen M|64.7|0.1|0.1|=C9+D9 :: 0.0|g
        letzte Ziffer der Waage ruhig, also eine Stelle; Waage laut Datenblatt auf 0,1 g genau
        Anzahl der Speichen auf der Waage|10

        Masse einer Speiche m|=B9/B11 :: 0.00|||=E9/B11 :: 0.00|g
        Volumen V|=PI()/4*B7^2*B5/1000 :: 0.000|||=B14*(2*E7/B7+E5/B5) :: 0.000|cm³
        Dichte ρ|=B13/B14 :: 0.0|||=B15*(E13/B13+E14/B14) :: 0.0|g/cm³

        Tabellenwert nichtrostender Stahl|7.9||||g/cm³
        Unser Wert passt dazu.
        """);
    page.bold("A1,A4:F4");
    page.measured("Länge", "mm", "B5")
        .uncertainty("E5")
        .contribution("reading", "C5")
        .contribution("instrument", "D5")
        .because("A6");
    page.measured("Durchmesser", "mm", "B7")
        .uncertainty("E7")
        .contribution("reading", "C7")
        .contribution("instrument", "D7")
        .because("A8");
    page.measured("Masse", "g", "B9")
        .uncertainty("E9")
        .contribution("reading", "C9")
        .contribution("instrument", "D9")
        .because("A10");
    page.calculated("Masse", "g", "B13").number("6.47").uncertainty("E13");
    page.calculated("Volumen", "cm³", "B14").number("0.823").uncertainty("E14");
    page.calculated("Dichte", "g/cm³", "B15").number("7.9").uncertainty("E15");
    page.other(Role.COUNT, "B11").other(Role.ACCEPTED, "B17");
    return drawing;
  }

  private static Drawing foamGrip() {
    Drawing drawing =
        new Drawing(
            "acceptance-puno-espuma",
            LAYOUT,
            "density of a foam grip",
            Language.SPANISH,
            Writer.CALC_ODS);
    Page page = drawing.page("Puño");
    page.draw(
        "B2",
        """
        Densidad de un puño de espuma
        Alumnas: Itziar Mendoza, Paula Rincón

        Magnitud|Instrumento|Lo leído|Unidad|División|Por lectura|Por los bordes|Incertidumbre total
        longitud l|regla de acero|128|mm|1|0.5|1.5|=G6+H6 :: 0
        diámetro exterior D|calibre|34.2|mm|0.1|0.1|0.4|=G7+H7 :: 0.0
        diámetro interior d|calibre|22.2|mm|0.1|0.1|0.1|=G8+H8 :: 0.0
        masa m|balanza|38.6|g|0.1|0.2||=G9+H9 :: 0.0

        Por qué:
        l|la regla se lee en dos extremos, un cuarto de milímetro en cada uno; los bordes de la espuma son blandos y no acaban de golpe
        D|el calibre se lee a una décima, pero la espuma cede al apretar unas cuatro décimas
        d|una décima del calibre y otra porque el agujero no es del todo redondo
        m|la última cifra salta entre dos valores

        volumen V|=PI()/4*(D7^2-D8^2)*D6/1000 :: 0|cm³|±|=PI()/2*(D7*I7+D8*I8)*D6/1000+C17*I6/D6 :: 0
        densidad|=D9/C17 :: 0.00|g/cm³|±|=C18*(I9/D9+F17/C17) :: 0.00
        """);
    page.bold("B2,B5:I5");
    page.measured("longitud", "mm", "D6")
        .uncertainty("I6")
        .parameter("F6")
        .contribution("reading", "G6")
        .contribution("physical", "H6")
        .because("C12");
    page.measured("diámetro exterior", "mm", "D7")
        .uncertainty("I7")
        .parameter("F7")
        .contribution("reading", "G7")
        .contribution("physical", "H7")
        .because("C13");
    page.measured("diámetro interior", "mm", "D8")
        .uncertainty("I8")
        .parameter("F8")
        .contribution("reading", "G8")
        .contribution("physical", "H8")
        .because("C14");
    page.measured("masa", "g", "D9")
        .uncertainty("I9")
        .parameter("F9")
        .contribution("reading", "G9")
        .because("C15");
    page.calculated("volumen", "cm³", "C17").number("68").uncertainty("F17");
    page.calculated("densidad", "g/cm³", "C18").number("0.57").uncertainty("F18");
    return drawing;
  }
}
