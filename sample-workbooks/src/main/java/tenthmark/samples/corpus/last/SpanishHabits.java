package tenthmark.samples.corpus.last;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.samples.corpus.Draw;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Kind;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Spanish students and their habits. */
@AutoService(Family.class)
public final class SpanishHabits implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(
        guion(), correccion(), ajuste(), frecuencias(), observadoras(), repetida(), unidades());
  }

  /** Steps with numbers such as 2.1, an answer to each. */
  private static Drawing guion() {
    Drawing drawing =
        Draw.es("guion-numerado", "numbered-protocol", "heat of friction", Writer.POI_XLSX);
    Page page = drawing.page("Guion");
    page.rows(
        """
        1 | GUION 4. ¿Cuánto se calienta la llanta al frenar?
        2 | Contestado por Aitziber Larrañeta (inventada)
        4 | paso | qué hay que hacer | respuesta | ± | unidad | por qué ese ±
        5 | 1.1 | Pesa la rueda. | 1.86 | 0.02 | kg | colgada del peso de maletas, que salta de 20 g en 20 g
        6 | 1.2 | Apunta la velocidad de la llanta (la del cuentakilómetros). | 9.2 | 0.2 | m/s | décimas que bailan de dos en dos
        7 | 1.3 | Temperatura de la pista de frenado antes. | 20.4 | 0.2 | °C | termómetro de infrarrojos, última cifra doble
        8 | 1.4 | Temperatura después. | 26.0 | 0.4 | °C | lo mismo, y se enfría mientras apuntas
        9 | 2.1 | ¿Cuánto ha subido? | =C8-C7 :: 0.0 | =D8+D7 :: 0.0 | K
        10 | 2.2 | ¿Qué energía de traslación llevaba la rueda? | =C5*C6^2/2 :: 0 | =C10*(D5/C5+2*D6/C6) :: 0 | J
        11 | 2.3 | ¿Cuántos julios por grado? | =C10/C9 :: 0 | =C11*(D10/C10+D9/C9) :: 0 | J/K
        """);
    page.bold("A1,A4:F4").other(Role.LABEL, "A5:A11");
    page.measured("Pesa la rueda", "kg", "C5").uncertainty("D5").because("F5");
    page.measured("velocidad", "m/s", "C6").uncertainty("D6").because("F6");
    page.measured("Temperatura antes", "°C", "C7").uncertainty("D7").because("F7");
    page.measured("Temperatura después", "°C", "C8").uncertainty("D8").because("F8");
    page.calculated("Cuánto ha subido", "K", "C9").number("5.6").uncertainty("D9");
    page.calculated("energía", "J", "C10").number("79").uncertainty("D10");
    page.calculated("julios por grado", "J/K", "C11").uncertainty("D11");
    return drawing;
  }

  /** A zero that is taken off. */
  private static Drawing correccion() {
    Drawing drawing =
        Draw.es(
            "correccion-de-cero", "zero-correction", "thickness of brake pads", Writer.CALC_ODS);
    Page page = drawing.page("Zapatas");
    page.rows(
        """
        1 | Desgaste de las zapatas con un pálmer que no marca cero
        2 | Telmo Goikoetxea (no existe)
        4 | | mm
        5 | lo que marca cerrado | 0.040
        6 | error de cualquier lectura | 0.005
        7 | (media división de 0,01 mm)
        9 | zapata | lectura (mm) | corregida (mm) | error (mm) | nueva según caja (mm) | desgaste (mm) | error (mm)
        10 | delantera izquierda | 6.215 | =B10-$B$5 :: 0.000 | =2*$B$6 :: 0.000 | 7 | =E10-C10 :: 0.000 | =D10 :: 0.000
        11 | delantera derecha | 6.180 | =B11-$B$5 :: 0.000 | =2*$B$6 :: 0.000 | 7 | =E11-C11 :: 0.000 | =D11 :: 0.000
        12 | trasera izquierda | 6.730 | =B12-$B$5 :: 0.000 | =2*$B$6 :: 0.000 | 7 | =E12-C12 :: 0.000 | =D12 :: 0.000
        13 | trasera derecha | 6.755 | =B13-$B$5 :: 0.000 | =2*$B$6 :: 0.000 | 7 | =E13-C13 :: 0.000 | =D13 :: 0.000
        """);
    page.bold("A1,A9:G9");
    page.measured("lo que marca cerrado", "mm", "B5").uncertainty("B6").because("A7");
    page.measured("lectura", "mm", "B10:B13").uncertainty("B6").because("A7");
    page.calculated("corregida", "mm", "C10:C13")
        .number("6.175", "6.140", "6.690", "6.715")
        .uncertainty("D10:D13");
    page.other(Role.CONSTANT, "E10:E13");
    page.calculated("desgaste", "mm", "F10:F13").uncertainty("G10:G13");
    return drawing;
  }

  /** A fit, its residuals and their squares over the uncertainty's. */
  private static Drawing ajuste() {
    Drawing drawing =
        Draw.es(
                "muelle-chi-cuadrado",
                "residuals-and-chi-square",
                "spring of a saddle",
                Writer.CALC_XLSX)
            .inQuadrature();
    Page page = drawing.page("Ajuste");
    page.rows(
        """
        1 | Muelle de un sillín: recta y χ²
        2 | Amaranta Villaverde, estudiante imaginaria
        4 | x (mm) | F (N) | u(F) (N) | recta (N) | residuo (N) | residuo/u(F) | (residuo/u(F))²
        5 | 2 | 51 | 2 | =$B$12+$B$11*A5 :: 0.0 | =B5-D5 :: 0.0 | =E5/C5 :: 0.00 | =F5^2 :: 0.00
        6 | 4 | 98 | 2 | =$B$12+$B$11*A6 :: 0.0 | =B6-D6 :: 0.0 | =E6/C6 :: 0.00 | =F6^2 :: 0.00
        7 | 6 | 153 | 2 | =$B$12+$B$11*A7 :: 0.0 | =B7-D7 :: 0.0 | =E7/C7 :: 0.00 | =F7^2 :: 0.00
        8 | 8 | 201 | 2 | =$B$12+$B$11*A8 :: 0.0 | =B8-D8 :: 0.0 | =E8/C8 :: 0.00 | =F8^2 :: 0.00
        9 | 10 | 254 | 2 | =$B$12+$B$11*A9 :: 0.0 | =B9-D9 :: 0.0 | =E9/C9 :: 0.00 | =F9^2 :: 0.00
        11 | pendiente k (N/mm) | =SLOPE(B5:B9,A5:A9) :: 0.0 | u(k) | =INDEX(LINEST(B5:B9,A5:A9,TRUE,TRUE),2,1) :: 0.0
        12 | ordenada b (N) | =INTERCEPT(B5:B9,A5:A9) :: 0 | u(b) | =INDEX(LINEST(B5:B9,A5:A9,TRUE,TRUE),2,2) :: 0
        13 | χ² | =SUM(G5:G9) :: 0.0
        14 | puntos menos parámetros | =COUNT(A5:A9)-2
        15 | χ² entre grados de libertad | =B13/B14 :: 0.00
        17 | u(F): dinamómetro con rayas de 5 N, se aprecia menos de media. x lo fija un tornillo de paso 1 mm, sin error apreciable.
        """);
    page.bold("A1,A4:G4");
    page.other(Role.CONSTANT, "A5:A9");
    page.measured("F", "N", "B5:B9").uncertainty("C5:C9").because("A17");
    page.other(Role.CALCULATED, "D5:D9").other(Role.STATISTIC, "E5:G9,B13,B15");
    page.other(Role.COUNT, "B14");
    page.record(Kind.SLOPE, "pendiente k", "N/mm", "B11").uncertainty("D11");
    page.record(Kind.INTERCEPT, "ordenada b", "N", "B12").uncertainty("D12");
    return drawing;
  }

  /** How often each value came; mean and spread out of the frequencies. */
  private static Drawing frecuencias() {
    Drawing drawing =
        Draw.es("bolas-frecuencias", "frequency-table", "bearing balls", Writer.GNUMERIC_ODS);
    Page page = drawing.page("Bolas");
    page.rows(
        """
        1 | Diámetro de cuarenta bolas de rodamiento
        2 | Grupo «Los Piñones»: Íñigo, Marisol y Froilán (inventados)
        4 | d (mm) | cuántas n | n·d | n·(d − media)²
        5 | 4.74 | 3 | =A5*B5 :: 0.00 | =B5*(A5-$B$11)^2 :: 0.00000
        6 | 4.75 | 9 | =A6*B6 :: 0.00 | =B6*(A6-$B$11)^2 :: 0.00000
        7 | 4.76 | 16 | =A7*B7 :: 0.00 | =B7*(A7-$B$11)^2 :: 0.00000
        8 | 4.77 | 8 | =A8*B8 :: 0.00 | =B8*(A8-$B$11)^2 :: 0.00000
        9 | 4.78 | 4 | =A9*B9 :: 0.00 | =B9*(A9-$B$11)^2 :: 0.00000
        10 | en total | =SUM(B5:B9) | =SUM(C5:C9) :: 0.00 | =SUM(D5:D9) :: 0.00000
        11 | media (mm) | =C10/B10 :: 0.000
        12 | desviación típica (mm) | =SQRT(D10/(B10-1)) :: 0.000
        13 | error de la media (mm) | =B12/SQRT(B10) :: 0.000
        14 | error del pálmer (mm) | 0.005
        15 | error total (mm) | =B13+B14 :: 0.000
        17 | volumen de una bola (mm³) | =PI()/6*B11^3 :: 0.0
        18 | su error (mm³) | =3*B17*B15/B11 :: 0.0
        20 | El pálmer se lee a media división de 0,01 mm; la media se equivoca además por la dispersión.
        """);
    page.bold("A1,A4:D4");
    page.other(Role.RAW, "A5:A9").other(Role.COUNT, "B5:B10").other(Role.CALCULATED, "C5:C10");
    page.other(Role.STATISTIC, "D5:D10,B12");
    page.record(Kind.MEAN, "media", "mm", "B11")
        .number("4.760")
        .uncertainty("B15")
        .contribution("repeat", "B13")
        .contribution("instrument", "B14")
        .because("A20");
    page.calculated("volumen de una bola", "mm³", "B17").number("56.5").uncertainty("B18");
    return drawing;
  }

  /** Two people read the same; half of what they differ is the uncertainty. */
  private static Drawing observadoras() {
    Drawing drawing =
        Draw.es("dos-observadoras", "two-observers", "tyre pressure gauge", Writer.GNUMERIC_XLSX);
    Page page = drawing.page("Manómetro");
    page.rows(
        """
        1 | Un manómetro de aguja, dos pares de ojos
        2 | Ximena Arrieta y Olaia Bengoetxea (inventadas las dos)
        4 | Rueda | Lee Ximena (bar) | Lee Olaia (bar) | Presión p (bar) | ±p (bar) | Ancho huella b (mm) | ±b (mm) | p·b (bar·mm) | ± (bar·mm)
        5 | montaña | 1.86 | 1.92 | =(B5+C5)/2 :: 0.00 | =ABS(B5-C5)/2+0.02 :: 0.00 | 46.0 | 1.0 | =D5*F5 :: 0 | =H5*(E5/D5+G5/F5) :: 0
        6 | paseo | 2.84 | 2.90 | =(B6+C6)/2 :: 0.00 | =ABS(B6-C6)/2+0.02 :: 0.00 | 34.0 | 1.0 | =D6*F6 :: 0 | =H6*(E6/D6+G6/F6) :: 0
        7 | carretera | 6.12 | 6.22 | =(B7+C7)/2 :: 0.00 | =ABS(B7-C7)/2+0.02 :: 0.00 | 19.0 | 1.0 | =D7*F7 :: 0 | =H7*(E7/D7+G7/F7) :: 0
        9 | ±p es la mitad de lo que se diferencian las dos, más 0,02 bar, que es lo que se mueve la aguja al golpear el cristal.
        10 | ±b: huella de tiza con bordes de medio milímetro a cada lado.
        """);
    page.bold("A1,A4:I4").other(Role.RAW, "B5:C7");
    page.record(Kind.MEAN, "Presión p", "bar", "D5:D7")
        .number("1.89", "2.87", "6.17")
        .uncertainty("E5:E7")
        .because("A9");
    page.measured("Ancho huella b", "mm", "F5:F7").uncertainty("G5:G7").because("A10");
    page.calculated("p·b", "bar·mm", "H5:H7").uncertainty("I5:I7");
    return drawing;
  }

  /** A long table whose headings come again. */
  private static Drawing repetida() {
    Drawing drawing =
        Draw.es("cabecera-repetida", "repeated-headings", "wheel timing", Writer.POI_XLS);
    Page page = drawing.page("Vueltas");
    StringBuilder rows = new StringBuilder();
    rows.append("1 | Cuánto tarda la rueda en dar veinte vueltas según dónde va el imán\n");
    rows.append(
        "2 | Norberto Gastaminza (inventado); se imprime en tres hojas, por eso las cabeceras\n");
    String[][] groups = {
      {"9.8", "9.9", "10.1", "9.7"},
      {"12.3", "12.5", "12.2", "12.4"},
      {"15.1", "14.9", "15.2", "15.0"}
    };
    int trial = 1;
    for (int group = 0; group < 3; group++) {
      int top = 4 + 6 * group;
      rows.append(top + " | Medida | t₂₀ (s) | Δt₂₀ (s) | T (s) | ΔT (s)\n");
      for (int at = 0; at < 4; at++) {
        int row = top + 1 + at;
        rows.append(
            row
                + " | "
                + trial++
                + " | "
                + groups[group][at]
                + " | 0.3 | =B{r}/20 :: 0.000 | =C{r}/20 :: 0.000\n");
      }
    }
    rows.append(
        "22 | Δt₂₀: se para y se pone en marcha con el dedo, y hay que contar a la vez; tres"
            + " décimas entre todo.\n");
    page.rows(rows.toString());
    page.bold("A1,A4:E4,A10:E10,A16:E16");
    String each = "%1$s5:%1$s8,%1$s11:%1$s14,%1$s17:%1$s20";
    page.other(Role.INDEX, each.formatted("A"));
    page.measured("t₂₀", "s", each.formatted("B")).uncertainty(each.formatted("C")).because("A22");
    page.calculated("T", "s", each.formatted("D")).uncertainty(each.formatted("E"));
    return drawing;
  }

  /** The same pressure in three units. */
  private static Drawing unidades() {
    Drawing drawing =
        Draw.es("presion-tres-unidades", "three-units", "tyre pressure units", Writer.POI_XLSX);
    Page page = drawing.page("Unidades");
    page.rows(
        """
        1 | La misma presión en tres unidades
        2 | Cayetana Ruipérez (inventada)
        3 | 1 psi = | 6.895 | kPa
        5 | Neumático | psi | ± psi | kPa | ± kPa | bar | ± bar
        6 | de niño | 32 | 2 | =B6*$B$3 :: 0 | =C6*$B$3 :: 0 | =D6/100 :: 0.00 | =E6/100 :: 0.00
        7 | de ciudad | 52 | 2 | =B7*$B$3 :: 0 | =C7*$B$3 :: 0 | =D7/100 :: 0.00 | =E7/100 :: 0.00
        8 | de carrera | 96 | 2 | =B8*$B$3 :: 0 | =C8*$B$3 :: 0 | =D8/100 :: 0.00 | =E8/100 :: 0.00
        10 | El manómetro tiene una raya cada 4 psi y se lee a media raya.
        """);
    page.bold("A1,A5:G5").other(Role.CONSTANT, "B3");
    page.measured("presión", "psi", "B6:B8").uncertainty("C6:C8").because("A10");
    page.calculated("presión", "kPa", "D6:D8").number("221", "359", "662").uncertainty("E6:E8");
    page.calculated("presión", "bar", "F6:F8").number("2.21", "3.59", "6.62").uncertainty("G6:G8");
    return drawing;
  }
}
