package tenthmark.samples.corpus.fresh;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.samples.corpus.Draw;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Kind;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Lenses, balls, beams and springs. */
@AutoService(Family.class)
public final class Mechanics implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(lente(), sirup(), balken(), tensiometer(), radios(), palanca(), poleas());
  }

  /** A result in each row, their mean below, an accepted value after it. */
  private static Drawing lente() {
    Drawing drawing = Draw.es("lente-faro", "result-per-row", "lens of a headlamp", Writer.POI_XLS);
    Page page = drawing.page("Óptica");
    page.rows(
        """
        1 | PRÁCTICA 9. LENTE DE UN FARO VIEJO
        2 | Nombre: Xoán Barreiro (inventado)
        4 | Objeto–lente | | Lente–imagen | | Distancia focal
        5 | a (cm) | error | b (cm) | error | f (cm) | error
        6 | 15.0 | 0.3 | 30.2 | 0.5 | =A6*C6/(A6+C6) :: 0.00 | =E6^2*(B6/A6^2+D6/C6^2) :: 0.00
        7 | 20.0 | 0.3 | 19.8 | 0.5 | =A7*C7/(A7+C7) :: 0.0 | =E7^2*(B7/A7^2+D7/C7^2) :: 0.0
        8 | 25.0 | 0.3 | 16.9 | 0.5 | =A8*C8/(A8+C8) :: 0.0 | =E8^2*(B8/A8^2+D8/C8^2) :: 0.0
        9 | 30.0 | 0.3 | 14.8 | 0.5 | =A9*C9/(A9+C9) :: 0.0 | =E9^2*(B9/A9^2+D9/C9^2) :: 0.0
        10 | | | | Valor medio: | =AVERAGE(E6:E9) :: 0.0 | =AVERAGE(F6:F9) :: 0.0
        11 | | | | Grabado en la lente: | 10
        12 | | | | Error relativo: | =ABS(E10-E11)/E11 :: 0.0%
        14 | Errores: en a, 1 mm en cada extremo de la cinta y 1 mm porque no se ve dónde está el centro de la lente; en b, lo mismo y 2 mm más, los que se puede mover la pantalla sin que la imagen pierda nitidez.
        """);
    page.merge("A4:B4", "C4:D4", "E4:F4").bold("A1,A4,C4,E4,A5:F5,D10");
    page.measured("a", "cm", "A6:A9").uncertainty("B6:B9").because("A14");
    page.measured("b", "cm", "C6:C9").uncertainty("D6:D9").because("A14");
    page.calculated("f", "cm", "E6:E9").number("10.02", "9.9", "10.1", "9.9").uncertainty("F6:F9");
    page.calculated("Valor medio", "cm", "E10").number("10.0").uncertainty("F10");
    page.other(Role.ACCEPTED, "E11").other(Role.COMPARISON, "E12");
    return drawing;
  }

  /** A filled-in form with a row of repeats inside. */
  private static Drawing sirup() {
    Drawing drawing =
        Draw.en(
            "ball-in-bottle",
            "form-with-repeats",
            "viscosity by a falling ball",
            Writer.GNUMERIC_XLS);
    Page page = drawing.page("Bottle");
    page.rows(
        """
        1 | Viscosity of glycerine in a drinking bottle (bearing balls as probes)
        2 | Student | Rosalind Achebe-Finch (invented) | | Group | C
        4 | STEP 1 - the ball
        5 | diameter of the ball | 3.000 | ± | 0.010 | mm | micrometer, one division of 0.01 mm
        6 | density of its steel (given) | 7850 | | | kg/m³
        8 | STEP 2 - the liquid
        9 | density of glycerine (given) | 1260 | | | kg/m³
        10 | distance between the rubber bands | 0.250 | ± | 0.002 | m | each band is 1 mm wide
        12 | STEP 3 - the fall
        13 | attempt | 1 | 2 | 3 | 4 | 5
        14 | seconds | 8.61 | 8.42 | 8.55 | 8.38 | 8.64
        15 | average time | =AVERAGE(B14:F14) :: 0.0 | ± | =B16/SQRT(5)+0.15 :: 0.0 | s | scatter of the mean and 0.15 s for my eye on two bands
        16 | standard deviation | =STDEV(B14:F14) :: 0.00 | | | s
        18 | STEP 4 - results
        19 | speed | =B10/B15 :: 0.0000 | ± | =B19*(D10/B10+D15/B15) :: 0.0000 | m/s
        20 | viscosity η = d²·g·(ρs−ρl)/(18·v) | =(B5/1000)^2*9.81*(B6-B9)/(18*B19) :: 0.00 | ± | =B20*(2*D5/B5+D19/B19) :: 0.00 | Pa·s
        """);
    page.bold("A1,A4,A8,A12,A18");
    page.measured("diameter of the ball", "mm", "B5").uncertainty("D5").because("F5");
    page.other(Role.CONSTANT, "B6,B9").other(Role.INDEX, "B13:F13").other(Role.RAW, "B14:F14");
    page.measured("distance between the rubber bands", "m", "B10")
        .uncertainty("D10")
        .because("F10");
    page.record(Kind.MEAN, "average time", "s", "B15")
        .number("8.5")
        .uncertainty("D15")
        .because("F15");
    page.other(Role.STATISTIC, "B16");
    page.calculated("speed", "m/s", "B19").number("0.0293").uncertainty("D19");
    page.calculated("viscosity η", "Pa·s", "B20").number("1.10").uncertainty("D20");
    return drawing;
  }

  /** Two sides of a beam under each other in each trial. */
  private static Drawing balken() {
    Drawing drawing =
        Draw.de("drehmoment-balken", "left-and-right-rows", "torque balance", Writer.CALC_ODS);
    Page page = drawing.page("Balken");
    page.rows(
        """
        1 | Drehmomente am Fahrradlenker als Waagebalken
        2 | Praktikum Mechanik, Tisch 2: Dorit Pankratz, Hauke Lührs (erfunden)
        3 | g = | 9.81 | m/s²
        5 | Versuch | Seite | Masse m in kg | Δm in kg | Hebelarm r in m | Δr in m | Drehmoment M in N·m | ΔM in N·m
        6 | 1 | links | 0.500 | 0.005 | 0.240 | 0.003 | =C6*$B$3*E6 :: 0.00 | =G6*(D6/C6+F6/E6) :: 0.00
        7 | | rechts | 0.800 | 0.005 | 0.151 | 0.003 | =C7*$B$3*E7 :: 0.00 | =G7*(D7/C7+F7/E7) :: 0.00
        8 | | Differenz | | | | | =G6-G7 :: 0.00 | =H6+H7 :: 0.00
        9 | 2 | links | 0.500 | 0.005 | 0.300 | 0.003 | =C9*$B$3*E9 :: 0.00 | =G9*(D9/C9+F9/E9) :: 0.00
        10 | | rechts | 1.000 | 0.005 | 0.148 | 0.003 | =C10*$B$3*E10 :: 0.00 | =G10*(D10/C10+F10/E10) :: 0.00
        11 | | Differenz | | | | | =G9-G10 :: 0.00 | =H9+H10 :: 0.00
        13 | Die Differenzen sind kleiner als ihre Fehler: Der Lenker ist im Gleichgewicht.
        14 | Δm: Küchenwaage mit 5-g-Schritten. Δr: Maßband, an jedem Ende 0,5 mm, dazu 2 mm, weil der Faden auf dem dicken Rohr liegt.
        """);
    page.merge("A6:A8", "A9:A11").bold("A1,A5:H5");
    page.other(Role.CONSTANT, "B3").other(Role.INDEX, "A6,A9");
    page.measured("Masse m", "kg", "C6:C7,C9:C10").uncertainty("D6:D7,D9:D10").because("A14");
    page.measured("Hebelarm r", "m", "E6:E7,E9:E10").uncertainty("F6:F7,F9:F10").because("A14");
    page.calculated("Drehmoment M", "N·m", "G6:G7,G9:G10")
        .number("1.18", "1.19", "1.47", "1.45")
        .uncertainty("H6:H7,H9:H10");
    page.calculated("Differenz", "N·m", "G8,G11").number("-0.01", "0.02").uncertainty("H8,H11");
    return drawing;
  }

  /** A line that calibrates, and its use. */
  private static Drawing tensiometer() {
    Drawing drawing =
        Draw.de("kalibriergerade", "calibration-and-use", "spoke tension meter", Writer.CALC_XLSX);
    Page page = drawing.page("Kalibrierung");
    page.rows(
        """
        1 | Speichentensiometer kalibrieren und benutzen
        2 | Friedemann Oelrichs, Gruppe 11 (frei erfunden)
        4 | Teil A: bekannte Kräfte | | | | | Gerade F = a + b·x
        5 | Anzeige x (Skt.) | Δx (Skt.) | Kraft F (N) | ΔF (N) | | Steigung b (N/Skt.) | =INDEX(LINEST(C6:C11,A6:A11,TRUE,TRUE),1,1) :: 0.000
        6 | 20.0 | 0.5 | 403 | 5 | | Δb (N/Skt.) | =INDEX(LINEST(C6:C11,A6:A11,TRUE,TRUE),2,1) :: 0.000
        7 | 30.0 | 0.5 | 556 | 5 | | Abschnitt a (N) | =INDEX(LINEST(C6:C11,A6:A11,TRUE,TRUE),1,2) :: 0.0
        8 | 40.0 | 0.5 | 711 | 5 | | Δa (N) | =INDEX(LINEST(C6:C11,A6:A11,TRUE,TRUE),2,2) :: 0.0
        9 | 50.0 | 0.5 | 863 | 5
        10 | 60.0 | 0.5 | 1018 | 5
        11 | 70.0 | 0.5 | 1171 | 5
        12 | Δx ist ein halber Teilstrich, der Zeiger ist dick. ΔF: Kranwaage, laut Begleitheft auf 5 N genau.
        14 | Teil B: drei Speichen am Laufrad
        15 | Speiche | x (Skt.) | Δx (Skt.) | F (N) | ΔF (N)
        16 | 4 | 52.0 | 0.5 | =$G$7+$G$5*B16 :: 0 | =$G$8+B16*$G$6+$G$5*C16 :: 0
        17 | 5 | 48.5 | 0.5 | =$G$7+$G$5*B17 :: 0 | =$G$8+B17*$G$6+$G$5*C17 :: 0
        18 | 6 | 55.0 | 0.5 | =$G$7+$G$5*B18 :: 0 | =$G$8+B18*$G$6+$G$5*C18 :: 0
        """);
    page.bold("A1,A4,F4,A5:D5,A14,A15:E15").other(Role.LABEL, "A16:A18");
    page.measured("Anzeige x", "Skt.", "A6:A11").uncertainty("B6:B11").because("A12");
    page.measured("Kraft F", "N", "C6:C11").uncertainty("D6:D11").because("A12");
    page.record(Kind.SLOPE, "Steigung b", "N/Skt.", "G5").uncertainty("G6");
    page.record(Kind.INTERCEPT, "Abschnitt a", "N", "G7").uncertainty("G8");
    page.measured("x", "Skt.", "B16:B18").uncertainty("C16:C18").because("A12");
    page.calculated("F", "N", "D16:D18").uncertainty("E16:E18");
    return drawing;
  }

  /** Columns of raw readings, a table of their statistics beside them. */
  private static Drawing radios() {
    Drawing drawing =
        Draw.es("grosor-radios", "statistics-table-beside", "spoke thickness", Writer.POI_XLSX);
    Page page = drawing.page("Hoja1");
    page.rows(
        """
        1 | ¿Son iguales los radios de tres marcas?
        2 | Unai Etxeandia y Candela Robledo, personas inventadas
        4 | Lecturas del pálmer (mm) | | | | Estadística
        5 | Alfa | Beta | Gamma | | Marca | n | Media (mm) | s (mm) | s/√n (mm) | Pálmer (mm) | Error total (mm)
        6 | 2.012 | 1.983 | 1.806 | | Alfa | =COUNT(A6:A13) | =AVERAGE(A6:A13) :: 0.000 | =STDEV(A6:A13) :: 0.000 | =H6/SQRT(F6) :: 0.000 | 0.005 | =I6+J6 :: 0.000
        7 | 2.008 | 1.991 | 1.812 | | Beta | =COUNT(B6:B13) | =AVERAGE(B6:B13) :: 0.000 | =STDEV(B6:B13) :: 0.000 | =H7/SQRT(F7) :: 0.000 | 0.005 | =I7+J7 :: 0.000
        8 | 2.015 | 1.979 | 1.799 | | Gamma | =COUNT(C6:C13) | =AVERAGE(C6:C13) :: 0.000 | =STDEV(C6:C13) :: 0.000 | =H8/SQRT(F8) :: 0.000 | 0.005 | =I8+J8 :: 0.000
        9 | 2.003 | 1.986 | 1.808
        10 | 2.011 | 1.994 | 1.803 | | Beta y Alfa se diferencian en | | =G6-G7 :: 0.000 | mm
        11 | 2.009 | 1.981 | 1.815 | | con un error de | | =K6+K7 :: 0.000 | mm
        12 | 2.014 | 1.988 | 1.801 | | así que no son iguales.
        13 | 2.006 | 1.985 | 1.810
        15 | Pálmer: una división es 0,01 mm y estimamos media; la dispersión sale de ocho sitios del radio.
        """);
    page.bold("A1,A4,E4,A5:C5,E5:K5").merge("A4:C4", "E4:K4");
    page.other(Role.RAW, "A6:C13").other(Role.COUNT, "F6:F8").other(Role.STATISTIC, "H6:H8");
    page.record(Kind.MEAN, "Media", "mm", "G6:G8")
        .number("2.010", "1.986", "1.807")
        .uncertainty("K6:K8")
        .contribution("repeat", "I6:I8")
        .contribution("instrument", "J6:J8")
        .because("A15");
    page.calculated("Beta y Alfa se diferencian", "mm", "G10").number("0.024").uncertainty("G11");
    return drawing;
  }

  /** The uncertainty of each column in the last row, its reason under it. */
  private static Drawing palanca() {
    Drawing drawing =
        Draw.es(
            "fuerza-maneta",
            "uncertainty-row-at-foot",
            "spring-loaded brake lever",
            Writer.CALC_XLSX);
    Page page = drawing.page("maneta");
    page.rows(
        """
        1 | Maneta de freno con muelle
        2 | Eneko Larrazábal (no existe)
        4 | | recorrido x / mm | fuerza F / N | trabajo hasta aquí W / mJ | ± W / mJ
        5 | 1 | 4.0 | 6.2 | =B5*C5/2 :: 0.0 | =D5*($B$11/B5+$C$11/C5) :: 0.0
        6 | 2 | 8.0 | 12.1 | =B6*C6/2 :: 0 | =D6*($B$11/B6+$C$11/C6) :: 0
        7 | 3 | 12.0 | 18.3 | =B7*C7/2 :: 0 | =D7*($B$11/B7+$C$11/C7) :: 0
        8 | 4 | 16.0 | 24.0 | =B8*C8/2 :: 0 | =D8*($B$11/B8+$C$11/C8) :: 0
        9 | 5 | 20.0 | 30.4 | =B9*C9/2 :: 0 | =D9*($B$11/B9+$C$11/C9) :: 0
        10 | 6 | 24.0 | 36.2 | =B10*C10/2 :: 0 | =D10*($B$11/B10+$C$11/C10) :: 0
        11 | error de cada dato | 0.5 | 0.2
        12 | por qué | la regla se lee en los dos extremos, un cuarto de mm en cada uno | el dinamómetro tiene una raya cada 0,2 N y la aguja no se está quieta
        14 | rigidez k por la pendiente | =SLOPE(C5:C10,B5:B10) :: 0.000 | N/mm
        15 | su error | =INDEX(LINEST(C5:C10,B5:B10,TRUE,TRUE),2,1) :: 0.000 | N/mm
        """);
    page.bold("A1,B4:E4,A11:C11").other(Role.INDEX, "A5:A10");
    page.measured("recorrido x", "mm", "B5:B10").uncertainty("B11").because("B12");
    page.measured("fuerza F", "N", "C5:C10").uncertainty("C11").because("C12");
    page.calculated("trabajo W", "mJ", "D5:D10").uncertainty("E5:E10");
    page.record(Kind.SLOPE, "rigidez k", "N/mm", "B14").uncertainty("B15");
    return drawing;
  }

  /** A small table for each mass, beside each other, a table of results under them. */
  private static Drawing poleas() {
    Drawing drawing =
        Draw.es(
            "rueda-polea", "table-per-mass", "wheel as a pulley", Writer.POI_XLSX_WITHOUT_VALUES);
    Page page = drawing.page("Polea");
    page.rows(
        """
        1 | La rueda como polea: una pesa cuelga del hilo y la hace girar
        2 | Zuriñe Alcorta, grupo de los jueves (inventada)
        3 | altura de caída h | 1.200 | ± | 0.010 | m | la pesa mide 3 cm y no se ve bien cuándo toca el suelo
        5 | pesa de 50 g | | | pesa de 100 g | | | pesa de 150 g
        6 | intento | t (s) | | intento | t (s) | | intento | t (s)
        7 | 1 | 5.31 | | 1 | 3.74 | | 1 | 3.06
        8 | 2 | 5.24 | | 2 | 3.81 | | 2 | 3.11
        9 | 3 | 5.38 | | 3 | 3.69 | | 3 | 3.02
        10 | 4 | 5.27 | | 4 | 3.76 | | 4 | 3.09
        11 | media | =AVERAGE(B7:B10) :: 0.0 | | media | =AVERAGE(E7:E10) :: 0.0 | | media | =AVERAGE(H7:H10) :: 0.0
        12 | ± | =(MAX(B7:B10)-MIN(B7:B10))/2+0.2 :: 0.0 | | ± | =(MAX(E7:E10)-MIN(E7:E10))/2+0.2 :: 0.0 | | ± | =(MAX(H7:H10)-MIN(H7:H10))/2+0.2 :: 0.0
        13 | ±: la mitad entre el mayor y el menor, y las dos décimas que tardo en parar el cronómetro
        15 | pesa (g) | aceleración (m/s²) | ± (m/s²)
        16 | 50 | =2*$B$3/B11^2 :: 0.000 | =B16*($D$3/$B$3+2*B12/B11) :: 0.000
        17 | 100 | =2*$B$3/E11^2 :: 0.00 | =B17*($D$3/$B$3+2*E12/E11) :: 0.00
        18 | 150 | =2*$B$3/H11^2 :: 0.00 | =B18*($D$3/$B$3+2*H12/H11) :: 0.00
        """);
    page.merge("A5:B5", "D5:E5", "G5:H5").bold("A1,A5,D5,G5,A6:B6,D6:E6,G6:H6,A15:C15");
    page.measured("altura de caída h", "m", "B3").uncertainty("D3").because("F3");
    page.other(Role.INDEX, "A7:A10,D7:D10,G7:G10").other(Role.RAW, "B7:B10,E7:E10,H7:H10");
    page.record(Kind.MEAN, "t", "s", "B11,E11,H11")
        .number("5.3", "3.8", "3.1")
        .uncertainty("B12,E12,H12")
        .because("A13");
    page.other(Role.CONSTANT, "A16:A18");
    page.calculated("aceleración", "m/s²", "B16:B18").uncertainty("C16:C18");
    return drawing;
  }
}
