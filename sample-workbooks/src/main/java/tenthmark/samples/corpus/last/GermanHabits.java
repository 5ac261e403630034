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

/** German students and their habits. */
@AutoService(Family.class)
public final class GermanHabits implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(
        grenzgeraden(),
        griffe(),
        abkuehlung(),
        studentFaktor(),
        bericht(),
        plusMinus(),
        teile(),
        potenz());
  }

  /** The steepest and the flattest line by hand. */
  private static Drawing grenzgeraden() {
    Drawing drawing =
        Draw.de("grenzgeraden", "limiting-lines", "spring-loaded brake lever", Writer.CALC_XLS);
    Page page = drawing.page("Kennlinie");
    page.rows(
        """
        1 | Federkennlinie eines Bremshebels, grafisch ausgewertet
        2 | Tjark Bentlage (erfunden), Millimeterpapier liegt bei
        4 | Weg s | Fehler s | Kraft F | Fehler F
        5 | (mm) | (mm) | (N) | (N)
        6 | 5.0 | 0.5 | 8.2 | 0.4
        7 | 10.0 | 0.5 | 15.9 | 0.4
        8 | 15.0 | 0.5 | 24.3 | 0.4
        9 | 20.0 | 0.5 | 31.8 | 0.4
        10 | 25.0 | 0.5 | 40.2 | 0.4
        12 | Vom Papier abgelesen, jeweils zwischen s = 0 mm und s = 25 mm
        13 | steilste Gerade durch alle Fehlerkreuze | 1.68 | N/mm
        14 | flachste Gerade durch alle Fehlerkreuze | 1.54 | N/mm
        15 | Federkonstante D (Mittel aus beiden) | =(B13+B14)/2 :: 0.00 | N/mm
        16 | Fehler von D (halber Unterschied) | =(B13-B14)/2 :: 0.00 | N/mm
        18 | zur Kontrolle: Tabellenkalkulation | =SLOPE(C6:C10,A6:A10) :: 0.000 | N/mm
        20 | Fehler s: Maßstab, an beiden Enden ein Viertel Millimeter. Fehler F: Federwaage, Teilung 1 N, nicht ganz ein halber Strich.
        """);
    page.bold("A1,A4:D4,A15:A16");
    page.measured("Weg s", "mm", "A6:A10").uncertainty("B6:B10").because("A20");
    page.measured("Kraft F", "N", "C6:C10").uncertainty("D6:D10").because("A20");
    page.other(Role.RAW, "B13:B14").other(Role.CALCULATED, "B18");
    page.record(Kind.SLOPE, "Federkonstante D", "N/mm", "B15")
        .number("1.61")
        .uncertainty("B16")
        .because("A12");
    return drawing;
  }

  /** Each specimen a pair of columns, the quantities down the rows. */
  private static Drawing griffe() {
    Drawing drawing =
        Draw.de("griffe-paare", "specimen-column-pairs", "foam grips", Writer.POI_XLSX);
    Page page = drawing.page("Griffe");
    page.rows(
        """
        1 | Drei Griffe aus Schaumstoff
        2 | Vordruck Werkstattkurs, ausgefüllt von Gesine Harmstorf (erfunden)
        4 | Größe | Einheit | Griff „Kork“ | | Griff „Moos“ | | Griff „Gel“ | | Wie genau und warum
        5 | | | Wert | ± | Wert | ± | Wert | ±
        6 | Länge | cm | 12.8 | 0.2 | 13.2 | 0.2 | 12.6 | 0.2 | an jedem Ende 1 mm, der Rand ist ausgefranst
        7 | Außendurchmesser | cm | 3.42 | 0.03 | 3.28 | 0.06 | 3.35 | 0.04 | Messschieber, je nachdem wie weit er einsinkt
        8 | Lochdurchmesser | cm | 2.22 | 0.02 | 2.21 | 0.02 | 2.22 | 0.02 | Messschieber, Loch nicht ganz rund
        9 | Masse | g | 41.3 | 0.2 | 12.1 | 0.2 | 58.9 | 0.2 | Waage, letzte Stelle und Nullpunkt
        10 | Volumen | cm³ | =PI()/4*(C7^2-C8^2)*C6 :: 0 | =PI()/2*(C7*D7+C8*D8)*C6+C10*D6/C6 :: 0 | =PI()/4*(E7^2-E8^2)*E6 :: 0 | =PI()/2*(E7*F7+E8*F8)*E6+E10*F6/E6 :: 0 | =PI()/4*(G7^2-G8^2)*G6 :: 0 | =PI()/2*(G7*H7+G8*H8)*G6+G10*H6/G6 :: 0
        11 | Dichte | g/cm³ | =C9/C10 :: 0.00 | =C11*(D9/C9+D10/C10) :: 0.00 | =E9/E10 :: 0.00 | =E11*(F9/E9+F10/E10) :: 0.00 | =G9/G10 :: 0.00 | =G11*(H9/G9+H10/G10) :: 0.00
        """);
    page.merge("A4:A5", "B4:B5", "C4:D4", "E4:F4", "G4:H4", "I4:I5").bold("A1,A4:I4,C5:H5");
    String[] names = {"Länge", "Außendurchmesser", "Lochdurchmesser", "Masse"};
    String[] units = {"cm", "cm", "cm", "g"};
    for (int at = 0; at < names.length; at++) {
      int row = 6 + at;
      page.measured(names[at], units[at], "C" + row + ",E" + row + ",G" + row)
          .uncertainty("D" + row + ",F" + row + ",H" + row)
          .because("I" + row);
    }
    page.calculated("Volumen", "cm³", "C10,E10,G10")
        .number("68", "61", "62")
        .uncertainty("D10,F10,H10");
    page.calculated("Dichte", "g/cm³", "C11,E11,G11").uncertainty("D11,F11,H11");
    return drawing;
  }

  /** Times of the clock; minutes are worked out. */
  private static Drawing abkuehlung() {
    Drawing drawing =
        Draw.de(
            "abkuehlung-uhrzeit", "clock-times", "cooling of a brake disc", Writer.GNUMERIC_XLSX);
    Page page = drawing.page("Abkühlung");
    page.rows(
        """
        1 | Eine heiße Bremsscheibe kühlt ab
        2 | Wibke Tönnies und Falk Rademacher, 12. Versuch (alles erfunden)
        3 | Raumluft ϑ₀ | 21.0 | °C | ± | 0.5 | °C | Wandthermometer mit ganzen Graden
        5 | Uhrzeit | Minuten | ϑ in °C | ± | ϑ−ϑ₀ in K | ± | ln((ϑ−ϑ₀)/K) | ±
        6 | 0.59375 :: hh:mm | =(A6-$A$6)*1440 :: 0 | 96.0 | 0.5 | =C6-$B$3 :: 0.0 | =D6+$E$3 :: 0.0 | =LN(E6) :: 0.000 | =F6/E6 :: 0.000
        7 | 0.5965277777777778 :: hh:mm | =(A7-$A$6)*1440 :: 0 | 77.0 | 0.5 | =C7-$B$3 :: 0.0 | =D7+$E$3 :: 0.0 | =LN(E7) :: 0.000 | =F7/E7 :: 0.000
        8 | 0.5993055555555555 :: hh:mm | =(A8-$A$6)*1440 :: 0 | 62.5 | 0.5 | =C8-$B$3 :: 0.0 | =D8+$E$3 :: 0.0 | =LN(E8) :: 0.00 | =F8/E8 :: 0.00
        9 | 0.6020833333333333 :: hh:mm | =(A9-$A$6)*1440 :: 0 | 51.5 | 0.5 | =C9-$B$3 :: 0.0 | =D9+$E$3 :: 0.0 | =LN(E9) :: 0.00 | =F9/E9 :: 0.00
        10 | 0.6048611111111111 :: hh:mm | =(A10-$A$6)*1440 :: 0 | 44.0 | 0.5 | =C10-$B$3 :: 0.0 | =D10+$E$3 :: 0.0 | =LN(E10) :: 0.00 | =F10/E10 :: 0.00
        11 | 0.6076388888888888 :: hh:mm | =(A11-$A$6)*1440 :: 0 | 38.0 | 0.5 | =C11-$B$3 :: 0.0 | =D11+$E$3 :: 0.0 | =LN(E11) :: 0.00 | =F11/E11 :: 0.00
        13 | Abklingrate λ | =-SLOPE(G6:G11,B6:B11) :: 0.0000 | 1/min | ± | =INDEX(LINEST(G6:G11,B6:B11,TRUE,TRUE),2,1) :: 0.0000 | 1/min
        14 | Halbwertszeit ln 2/λ | =LN(2)/B13 :: 0.00 | min | ± | =B14*E13/B13 :: 0.00 | min
        15 | ± bei ϑ: Fühler an der Scheibe, zeigt halbe Grade an und hinkt kaum nach. Die Uhr geht auf die Sekunde genau.
        """);
    page.bold("A1,A5:H5");
    page.measured("Raumluft ϑ₀", "°C", "B3").uncertainty("E3").because("G3");
    page.other(Role.DATE, "A6:A11").other(Role.CALCULATED, "B6:B11");
    page.measured("ϑ", "°C", "C6:C11").uncertainty("D6:D11").because("A15");
    page.calculated("ϑ−ϑ₀", "K", "E6:E11").uncertainty("F6:F11");
    page.calculated("ln", "", "G6:G11").uncertainty("H6:H11");
    page.record(Kind.SLOPE, "Abklingrate λ", "1/min", "B13").uncertainty("E13");
    page.calculated("Halbwertszeit", "min", "B14").uncertainty("E14");
    return drawing;
  }

  /** Student's factor on the scatter of the mean. */
  private static Drawing studentFaktor() {
    Drawing drawing =
        Draw.de("student-faktor", "student-factor", "period of a swinging wheel", Writer.CALC_ODS);
    Page page = drawing.page("Auswertung");
    page.rows(
        """
        1 | Schwingungsdauer eines aufgehängten Laufrads
        2 | Anleitung: Prof. Knut Oevermann, ausgefüllt: Ragna Sielaff (beide erfunden)
        4 | | kleines Rad | großes Rad
        5 | Zeit für 5 Schwingungen in s | 6.58 | 7.96
        6 | | 6.49 | 8.04
        7 | | 6.61 | 7.99
        8 | | 6.52 | 8.07
        9 | | 6.55 | 7.94
        10 | | 6.60 | 8.02
        11 | Anzahl n | =COUNT(B5:B10) | =COUNT(C5:C10)
        12 | Mittelwert in s | =AVERAGE(B5:B10) :: 0.00 | =AVERAGE(C5:C10) :: 0.00
        13 | Standardabweichung s in s | =STDEV(B5:B10) :: 0.000 | =STDEV(C5:C10) :: 0.000
        14 | Faktor t für 95 % und n = 6 | 2.57 | 2.57
        15 | Vertrauensbereich t·s/√n in s | =B14*B13/SQRT(B11) :: 0.000 | =C14*C13/SQRT(C11) :: 0.000
        16 | Gangfehler der Stoppuhr in s | 0.01 | 0.01
        17 | Fehler des Mittelwerts in s | =B15+B16 :: 0.00 | =C15+C16 :: 0.00
        18 | Schwingungsdauer T in s | =B12/5 :: 0.000 | =C12/5 :: 0.000
        19 | Fehler von T in s | =B17/5 :: 0.000 | =C17/5 :: 0.000
        21 | Der Fehler des Mittelwerts ist der Vertrauensbereich plus der Gangfehler, der im Heft der Stoppuhr steht.
        """);
    page.bold("A1,B4:C4");
    page.other(Role.RAW, "B5:C10").other(Role.COUNT, "B11:C11").other(Role.STATISTIC, "B13:C13");
    page.other(Role.CONSTANT, "B14:C14");
    page.record(Kind.MEAN, "Mittelwert", "s", "B12:C12")
        .number("6.56", "8.00")
        .uncertainty("B17:C17")
        .contribution("repeat", "B15:C15")
        .contribution("instrument", "B16:C16")
        .because("A21");
    page.calculated("Schwingungsdauer T", "s", "B18:C18")
        .number("1.312", "1.601")
        .uncertainty("B19:C19");
    return drawing;
  }

  /** Paragraphs of a report, a record in each, calculations in a corner. */
  private static Drawing bericht() {
    Drawing drawing =
        Draw.de("bericht-bremsung", "report-paragraphs", "braking energy", Writer.POI_XLSX);
    Page page = drawing.page("Bericht");
    page.rows(
        """
        1 | Bericht zum Versuch „Bremsen“
        2 | von Alheide Wortmann (gibt es nicht, die Fahrt auch nicht)
        4 | 1. Was wir gemessen haben
        5 | Fahrerin und Rad wiegen zusammen m = (78,0 ± 0,5) kg; die Personenwaage zeigt halbe Kilogramm.
        6 | Sie fuhr mit v = (6,0 ± 0,2) m/s; der Tacho springt um zwei Zehntel hin und her.
        7 | Der Bremsweg war s = (5,10 ± 0,10) m; die Radspur fängt nicht scharf an, 5 cm an jedem Ende.
        9 | 2. Was wir daraus berechnet haben
        10 | Die Bewegungsenergie betrug E = (1400 ± 100) J, also relativ 0,6 % und zweimal 3,3 %.
        11 | Die Bremskraft war im Mittel F = (280 ± 30) N, weil die 2 % vom Bremsweg dazukommen.
        13 | 3. Nebenrechnung (ungerundet)
        14 | m v²/2 | =78*6^2/2 :: 0.0 | J
        15 | Fehler | =B14*(0.5/78+2*0.2/6) :: 0.0 | J
        16 | E/s | =B14/5.1 :: 0.0 | N
        17 | Fehler | =B16*(B15/B14+0.1/5.1) :: 0.0 | N
        """);
    page.bold("A1,A4,A9,A13");
    page.measured("m", "kg", "A5").number("78.0").uncertaintyOf(0.5).because("A5");
    page.measured("v", "m/s", "A6").number("6.0").uncertaintyOf(0.2).because("A6");
    page.measured("s", "m", "A7").number("5.10").uncertaintyOf(0.10).because("A7");
    page.calculated("Bewegungsenergie E", "J", "A10")
        .number("1400")
        .uncertaintyOf(100)
        .because("A10");
    page.calculated("Bremskraft F", "N", "A11").number("280").uncertaintyOf(30).because("A11");
    page.other(Role.CALCULATED, "B14:B17");
    return drawing;
  }

  /** Numbers beside texts such as "± 0,5 mm". */
  private static Drawing plusMinus() {
    Drawing drawing =
        Draw.de("ritzel-plusminus-text", "plus-minus-as-text", "sprockets", Writer.POI_XLS);
    Page page = drawing.page("Ritzel");
    page.rows(
        """
        1 | Ritzel vermessen
        2 | Okka Feddersen, erfunden
        4 | Ritzel | Zähne | Außendurchmesser | | Masse | | Anmerkung
        5 | klein | 11 | 49.6 | ± 0,2 mm | 21.4 | ± 0,2 g | Zahnspitzen gegenüber getroffen? Daher zwei Zehntel
        6 | mittel | 17 | 73.5 | ± 0,2 mm | 48.9 | ± 0,2 g | ebenso
        7 | groß | 28 | 117.8 | ± 0,4 mm | 96.2 | ± 0,2 g | nur mit dem Lineal gemessen, zwei Zehntel je Ende
        9 | Die Waage zeigt Zehntel und schwankt um zwei.
        10 | alle drei zusammen | =SUM(B5:B7) | | | =SUM(E5:E7) :: 0.0 | ± 0,6 g | Fehler dreimal zusammengezählt
        """);
    page.bold("A1,A4:G4").other(Role.COUNT, "B5:B7,B10");
    page.measured("Außendurchmesser", "mm", "C5:C7").uncertaintyOf(0.2, 0.2, 0.4).because("G5:G7");
    page.measured("Masse", "g", "E5:E7").uncertaintyOf(0.2).because("A9");
    page.calculated("alle drei zusammen", "g", "E10")
        .number("166.5")
        .uncertaintyOf(0.6)
        .because("G10");
    return drawing;
  }

  /** A list of parts, pieces and masses, and their sum. */
  private static Drawing teile() {
    Drawing drawing = Draw.de("teileliste", "bill-of-parts", "mass of a wheel", Writer.CALC_XLSX);
    Page page = drawing.page("Stückliste");
    page.rows(
        """
        1 | Stückliste eines Vorderrads und seine Masse
        2 | Werkstatt 2, Ingmar Petersen-Lübke (frei erfunden)
        4 | Teil | Stück | einzeln (g) | Fehler (g) | zusammen (g) | Fehler (g) | Waage
        5 | Speiche | 32 | 6.52 | 0.02 | =B5*C5 :: 0.0 | =B5*D5 :: 0.0 | Feinwaage, letzte Stelle und Drift
        6 | Nippel | 32 | 0.98 | 0.02 | =B6*C6 :: 0.0 | =B6*D6 :: 0.0 | Feinwaage, letzte Stelle und Drift
        7 | Nabe | 1 | 241 | 2 | =B7*C7 :: 0 | =B7*D7 :: 0 | Küchenwaage, ganze Gramm, zwei davon
        8 | Felge | 1 | 512 | 2 | =B8*C8 :: 0 | =B8*D8 :: 0 | Küchenwaage, ganze Gramm, zwei davon
        9 | Summe | | | | =SUM(E5:E8) :: 0 | =SUM(F5:F8) :: 0
        11 | Ganzes Rad gewogen | | | | 991 | 2 | Küchenwaage
        12 | Unterschied | | | | =E9-E11 :: 0 | =F9+F11 :: 0 | kleiner als sein Fehler, nichts vergessen
        """);
    page.bold("A1,A4:G4,A9").other(Role.COUNT, "B5:B8");
    page.measured("einzeln", "g", "C5:C8").uncertainty("D5:D8").because("G5:G8");
    page.calculated("zusammen", "g", "E5:E8")
        .number("208.6", "31.4", "241", "512")
        .uncertainty("F5:F8");
    page.calculated("Summe", "g", "E9").number("993").uncertainty("F9");
    page.measured("Ganzes Rad gewogen", "g", "E11").uncertainty("F11").because("G11");
    page.calculated("Unterschied", "g", "E12").number("2").uncertainty("F12");
    return drawing;
  }

  /** Both axes in logarithms; the slope is a power. */
  private static Drawing potenz() {
    Drawing drawing =
        Draw.de("potenzgesetz", "double-logarithm", "resistance of air", Writer.CALC_XLSX)
            .inQuadrature();
    Page page = drawing.page("Luft");
    page.rows(
        """
        1 | Wie wächst der Luftwiderstand mit der Geschwindigkeit? Ansatz F = c·v^n
        2 | Rieke Hollander, Windkanal aus Pappe (beides erfunden)
        4 | v (m/s) | u(v) (m/s) | F (mN) | u(F) (mN) | ln v | u(ln v) | ln F | u(ln F)
        5 | 2.0 | 0.2 | 41 | 3 | =LN(A5) :: 0.00 | =B5/A5 :: 0.00 | =LN(C5) :: 0.00 | =D5/C5 :: 0.00
        6 | 3.0 | 0.2 | 88 | 3 | =LN(A6) :: 0.00 | =B6/A6 :: 0.00 | =LN(C6) :: 0.00 | =D6/C6 :: 0.00
        7 | 4.0 | 0.2 | 163 | 3 | =LN(A7) :: 0.00 | =B7/A7 :: 0.00 | =LN(C7) :: 0.000 | =D7/C7 :: 0.000
        8 | 5.0 | 0.2 | 248 | 3 | =LN(A8) :: 0.00 | =B8/A8 :: 0.00 | =LN(C8) :: 0.000 | =D8/C8 :: 0.000
        9 | 6.0 | 0.2 | 360 | 3 | =LN(A9) :: 0.00 | =B9/A9 :: 0.00 | =LN(C9) :: 0.000 | =D9/C9 :: 0.000
        11 | Exponent n | =LINEST(G5:G9,E5:E9) :: 0.00 | ± | =STEYX(G5:G9,E5:E9)/SQRT(DEVSQ(E5:E9)) :: 0.00
        12 | erwartet | 2
        13 | Abstand in Unsicherheiten | =ABS(B11-B12)/D11 :: 0.0
        15 | u(v): Anemometer, letzte Stelle flackert um zwei. u(F): Briefwaage, 0,3 g flackern, das sind 3 mN.
        """);
    page.bold("A1,A4:H4");
    page.measured("v", "m/s", "A5:A9").uncertainty("B5:B9").because("A15");
    page.measured("F", "mN", "C5:C9").uncertainty("D5:D9").because("A15");
    page.calculated("ln v", "", "E5:E9").uncertainty("F5:F9");
    page.calculated("ln F", "", "G5:G9").uncertainty("H5:H9");
    page.record(Kind.SLOPE, "Exponent n", "", "B11").uncertainty("D11");
    page.other(Role.ACCEPTED, "B12").other(Role.COMPARISON, "B13");
    return drawing;
  }
}
