package tenthmark.samples.corpus.finale;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.samples.corpus.Draw;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Kind;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Tables out of Spanish laboratory notebooks. */
@AutoService(Family.class)
public final class SpanishNotebooks implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(tuboSonoro(), reflectante(), faroMultimetro());
  }

  /** Three pairs of columns that were read, two that follow from them, the mean below. */
  private static Drawing tuboSonoro() {
    Drawing drawing =
        Draw.es("tubo-sonoro", "read-pairs-then-derived-pairs", "sound in a pump", Writer.POI_XLS);
    Page page = drawing.page("Sonido");
    page.rows(
        """
        1 | Velocidad del sonido en el cilindro de una bomba larga
        2 | Práctica de Leocadia Bustarviejo (alumna inventada), grupo de los martes
        4 | f (Hz) | Δf (Hz) | L₁ (cm) | ΔL₁ (cm) | L₂ (cm) | ΔL₂ (cm) | λ (cm) | Δλ (cm) | v (m/s) | Δv (m/s)
        5 | 500 | 2 | 16.2 | 0.3 | 50.5 | 0.3 | =2*(E5-C5) :: 0.0 | =2*(F5+D5) :: 0.0 | =A5*G5/100 :: 0 | =I5*(B5/A5+H5/G5) :: 0
        6 | 700 | 2 | 11.4 | 0.3 | 36.0 | 0.3 | =2*(E6-C6) :: 0.0 | =2*(F6+D6) :: 0.0 | =A6*G6/100 :: 0 | =I6*(B6/A6+H6/G6) :: 0
        7 | 900 | 2 | 8.7 | 0.3 | 27.7 | 0.3 | =2*(E7-C7) :: 0.0 | =2*(F7+D7) :: 0.0 | =A7*G7/100 :: 0 | =I7*(B7/A7+H7/G7) :: 0
        9 | Velocidad media | | =AVERAGE(I5:I7) :: 0 | ± | =AVERAGE(J5:J7) :: 0 | m/s
        10 | Tablas, a 20 °C | | 343 | | | m/s
        11 | Error relativo | | =ABS(C9-C10)/C10 :: 0.0%
        13 | Cómo se han estimado los errores:
        14 | Δf: la aplicación del móvil salta entre dos frecuencias vecinas, separadas 2 Hz
        15 | ΔL₁ y ΔL₂: el émbolo se puede mover 3 mm hacia cada lado sin que se note que el sonido baja
        """);
    page.bold("A1,A4:J4,A13");
    page.measured("f", "Hz", "A5:A7").uncertainty("B5:B7").because("A14");
    page.measured("L₁", "cm", "C5:C7").uncertainty("D5:D7").because("A15");
    page.measured("L₂", "cm", "E5:E7").uncertainty("F5:F7").because("A15");
    page.calculated("λ", "cm", "G5:G7").number("68.6", "49.2", "38.0").uncertainty("H5:H7");
    page.calculated("v", "m/s", "I5:I7").number("343", "344", "342").uncertainty("J5:J7");
    page.record(Kind.MEAN, "velocidad media", "m/s", "C9").number("343").uncertainty("E9");
    page.other(Role.ACCEPTED, "C10").other(Role.COMPARISON, "C11");
    return drawing;
  }

  /** Each length three times with what adds to its error, and a small table for the rest. */
  private static Drawing reflectante() {
    Drawing drawing =
        Draw.es(
            "reflectante",
            "repeats-and-contributions-in-a-row",
            "density of a reflector",
            Writer.POI_XLSX);
    Page page = drawing.page("Datos");
    page.rows(
        """
        1 | ¿De qué plástico es el reflectante?
        2 | Nombre: Wenceslao Iturralde (no existe)
        3 | Fecha: | 2026-03-24
        5 | Medida | 1.ª (mm) | 2.ª (mm) | 3.ª (mm) | Promedio (mm) | Repetición (mm) | Lectura (mm) | Instrumento (mm) | Error total (mm) | Comentario
        6 | Largo | 94.2 | 94.4 | 94.0 | =AVERAGE(B6:D6) :: 0.0 | =(MAX(B6:D6)-MIN(B6:D6))/2 :: 0.0 | 0.1 | 0.1 | =SUM(F6:H6) :: 0.0 | esquinas redondeadas, por eso no sale siempre lo mismo
        7 | Alto | 41.1 | 40.9 | 41.0 | =AVERAGE(B7:D7) :: 0.0 | =(MAX(B7:D7)-MIN(B7:D7))/2 :: 0.0 | 0.1 | 0.1 | =SUM(F7:H7) :: 0.0 | calibre de décimas, una por leer y una de fábrica
        8 | Grosor | 8.4 | 8.6 | 8.5 | =AVERAGE(B8:D8) :: 0.0 | =(MAX(B8:D8)-MIN(B8:D8))/2 :: 0.0 | 0.1 | 0.1 | =SUM(F8:H8) :: 0.0 | la cara de dentro tiene relieve
        10 | | Valor | Error | Unidad | Comentario
        11 | Masa | 38.4 | 0.2 | g | balanza de décimas: una por leer y una porque el cero se mueve
        12 | Volumen | =E6*E7*E8/1000 :: 0.0 | =B12*(I6/E6+I7/E7+I8/E8) :: 0.0 | cm³ | largo por alto por grosor
        13 | Densidad | =B11/B12 :: 0.00 | =B13*(C11/B11+C12/B12) :: 0.00 | g/cm³ | masa entre volumen
        15 | Acrílico (tablas) | 1.18 | | g/cm³
        16 | Diferencia | =(B13-B15)/B15 :: 0.0%
        17 | Es compatible con el acrílico.
        """);
    page.bold("A1,A5:J5,B10:E10");
    page.other(Role.DATE, "B3").other(Role.RAW, "B6:D8");
    length(page, "Largo", 6, "94.2");
    length(page, "Alto", 7, "41.0");
    length(page, "Grosor", 8, "8.5");
    page.measured("Masa", "g", "B11").uncertainty("C11").because("E11");
    page.calculated("Volumen", "cm³", "B12").number("32.8").uncertainty("C12");
    page.calculated("Densidad", "g/cm³", "B13").number("1.17").uncertainty("C13");
    page.other(Role.ACCEPTED, "B15").other(Role.COMPARISON, "B16");
    return drawing;
  }

  private static void length(Page page, String quantity, int row, String number) {
    page.record(Kind.MEAN, quantity, "mm", "E" + row)
        .number(number)
        .uncertainty("I" + row)
        .contribution("repeat", "F" + row)
        .contribution("reading", "G" + row)
        .contribution("instrument", "H" + row)
        .because("J" + row);
  }

  /** The maker's percent and digits for each range of a meter, and the error that they make. */
  private static Drawing faroMultimetro() {
    Drawing drawing =
        Draw.es("faro-multimetro", "percent-and-digits", "bulb of a headlamp", Writer.POI_XLSX);
    Page page = drawing.page("Faro");
    page.rows(
        """
        1 | La bombilla del faro, fría y encendida
        2 | Montaje y medidas: Escolástica Peñarroya (personaje ficticio)
        4 | Magnitud | Lectura | Unidad | Un dígito vale | % de la lectura | Dígitos | Error | De dónde sale
        5 | Tensión V | 6.12 | V | 0.01 | 0.5 | 2 | =B5*E5/100+F5*D5 :: 0.00 | manual del multímetro, escala de 20 V
        6 | Corriente I | 0.482 | A | 0.001 | 1.2 | 3 | =B6*E6/100+F6*D6 :: 0.000 | manual del multímetro, escala de 2 A
        7 | Resistencia en frío R₀ | 2.4 | Ω | 0.1 | 0.8 | 2 | =B7*E7/100+F7*D7 :: 0.0 | manual del multímetro, escala de 200 Ω
        9 | Calculado | Valor | Unidad | | | | Error | Fórmula
        10 | Resistencia encendida R | =B5/B6 :: 0.0 | Ω | | | | =B10*(G5/B5+G6/B6) :: 0.0 | R = V/I
        11 | Potencia P | =B5*B6 :: 0.00 | W | | | | =B11*(G5/B5+G6/B6) :: 0.00 | P = V·I
        12 | R/R₀ | =B10/B7 :: 0.0 | | | | | =B12*(G10/B10+G7/B7) :: 0.0 | cociente
        14 | Potencia impresa en el casquillo | 3 | W
        15 | Encendida, la resistencia es unas cinco veces mayor: el filamento está muy caliente.
        """);
    page.bold("A1,A4:H4,A9:H9");
    page.measured("Tensión", "V", "B5")
        .uncertainty("G5")
        .parameter("D5")
        .parameter("E5")
        .parameter("F5")
        .because("H5");
    page.measured("Corriente", "A", "B6")
        .uncertainty("G6")
        .parameter("D6")
        .parameter("E6")
        .parameter("F6")
        .because("H6");
    page.measured("Resistencia en frío", "Ω", "B7")
        .uncertainty("G7")
        .parameter("D7")
        .parameter("E7")
        .parameter("F7")
        .because("H7");
    page.calculated("Resistencia encendida", "Ω", "B10").number("12.7").uncertainty("G10");
    page.calculated("Potencia", "W", "B11").number("2.95").uncertainty("G11");
    page.calculated("R/R₀", "", "B12").number("5.3").uncertainty("G12");
    page.other(Role.ACCEPTED, "B14");
    return drawing;
  }
}
