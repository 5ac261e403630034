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

/** Tables out of German practical courses. */
@AutoService(Family.class)
public final class GermanProtocols implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(ausrollen(), heizgriff(), fliehkraft());
  }

  /** Name, symbol, value, uncertainty, unit, reason; the results in a second table below. */
  private static Drawing ausrollen() {
    Drawing drawing =
        Draw.de("ausrollen", "name-symbol-value-reason", "rolling to a stop", Writer.POI_XLSX);
    Page page = drawing.page("Protokoll");
    page.rows(
        """
        1 | Versuch 3: Ausrollen auf dem Schulhof
        2 | Swantje Ohlendorf, Bertram Kielhorn (Namen und Zahlen erfunden)
        3 | Versuchstag: | 2026-05-19
        5 | Messgröße | Zeichen | Messwert | Messunsicherheit | Einheit | Begründung
        6 | Messstrecke zwischen den Kreidestrichen | s₁ | 5.00 | 0.02 | m | Maßband, Strichbreite der Kreide je 1 cm
        7 | Zeit auf der Messstrecke | t | 1.80 | 0.04 | s | Handyvideo mit 50 Bildern je Sekunde, an beiden Strichen ein Bild
        8 | Ausrollweg | s₂ | 62.4 | 0.3 | m | Band dreimal angelegt, jedes Mal bis zu 10 cm schief
        9 | Masse von Rad und Fahrerin | m | 84.5 | 0.5 | kg | Personenwaage, Zeiger zwischen zwei Strichen
        11 | gegeben: Fallbeschleunigung | g | 9.81 | | m/s²
        13 | Ergebnis | Zeichen | Wert | Unsicherheit | Einheit | Formel
        14 | Geschwindigkeit am Anfang | v | =C6/C7 :: 0.00 | =C14*(D6/C6+D7/C7) :: 0.00 | m/s | v = s₁/t
        15 | Verzögerung | a | =C14^2/(2*C8) :: 0.000 | =C15*(2*D14/C14+D8/C8) :: 0.000 | m/s² | a = v²/(2·s₂)
        16 | bremsende Kraft | F | =C9*C15 :: 0.0 | =C16*(D9/C9+D15/C15) :: 0.0 | N | F = m·a
        17 | Rollwiderstandszahl | c | =C15/C11 :: 0.0000 | =D15/C11 :: 0.0000 | | c = a/g
        19 | Vergleichswert aus der Versuchsanleitung | | 0.006
        20 | Abweichung davon | | =(C17-C19)/C19 :: 0.0%
        21 | Die Abweichung liegt innerhalb der Messunsicherheit.
        """);
    page.bold("A1,A5:F5,A13:F13");
    page.other(Role.DATE, "B3").other(Role.CONSTANT, "C11");
    page.measured("Messstrecke", "m", "C6").uncertainty("D6").because("F6");
    page.measured("Zeit", "s", "C7").uncertainty("D7").because("F7");
    page.measured("Ausrollweg", "m", "C8").uncertainty("D8").because("F8");
    page.measured("Masse", "kg", "C9").uncertainty("D9").because("F9");
    page.calculated("Geschwindigkeit", "m/s", "C14").number("2.78").uncertainty("D14");
    page.calculated("Verzögerung", "m/s²", "C15").number("0.062").uncertainty("D15");
    page.calculated("Kraft", "N", "C16").number("5.2").uncertainty("D16");
    page.calculated("Rollwiderstandszahl", "", "C17").number("0.0063").uncertainty("D17");
    page.other(Role.ACCEPTED, "C19").other(Role.COMPARISON, "C20");
    return drawing;
  }

  /** Currents and voltages, what was thought of them beside the table, and the line below. */
  private static Drawing heizgriff() {
    Drawing drawing =
        Draw.de("heizgriff", "characteristic-with-slope", "heated grip", Writer.POI_XLSX);
    Page page = drawing.page("Kennlinie");
    page.rows(
        """
        1 | Heizdraht in einem Lenkergriff: U-I-Kennlinie
        2 | Ruprecht Sülzenfuß (gibt es nicht)
        4 | Nr. | I in mA | u(I) in mA | U in V | u(U) in V | | Zu den Unsicherheiten
        5 | 1 | 51 | 2 | 1.12 | 0.03 | | u(I): letzte Stelle und ein Digit aus dem Handbuch
        6 | 2 | 100 | 2 | 2.19 | 0.03 | | u(U): die Anzeige schwankt um drei Hundertstel
        7 | 3 | 151 | 2 | 3.33 | 0.03
        8 | 4 | 201 | 2 | 4.41 | 0.03
        9 | 5 | 249 | 2 | 5.48 | 0.03
        10 | 6 | 302 | 2 | 6.63 | 0.03
        12 | Ausgleichsgerade | | Wert | Unsicherheit | Einheit
        13 | Steigung = Widerstand R | | =1000*SLOPE(D5:D10,B5:B10) :: 0.00 | =C13*SQRT((1/C14^2-1)/(COUNT(B5:B10)-2)) :: 0.00 | Ω
        14 | Korrelationskoeffizient | | =CORREL(B5:B10,D5:D10) :: 0.00000
        15 | Aufdruck auf dem Griff | | 22 | | Ω
        16 | Unterschied | | =C13-C15 :: 0.00 | | Ω
        """);
    page.graph("G8:N22", "U über I", "B5:B10", "D5:D10");
    page.bold("A1,A4:G4,A12:E12");
    page.other(Role.INDEX, "A5:A10");
    page.measured("I", "mA", "B5:B10").uncertainty("C5:C10").because("G5");
    page.measured("U", "V", "D5:D10").uncertainty("E5:E10").because("G6");
    page.record(Kind.SLOPE, "Widerstand", "Ω", "C13").uncertainty("D13");
    page.other(Role.STATISTIC, "C14").other(Role.ACCEPTED, "C15").other(Role.COMPARISON, "C16");
    return drawing;
  }

  /** A block for what goes in, one for constants, one for what comes out, at different heights. */
  private static Drawing fliehkraft() {
    Drawing drawing =
        Draw.de(
            "fliehkraft-ventil", "dashboard-blocks", "valve on a turning wheel", Writer.POI_XLSX);
    Page page = drawing.page("Rechner");
    page.rows(
        """
        1 | Wie stark zieht ein Ventil an der drehenden Felge?
        2 | Rechenblatt der Betreuerin Leokadia Brömmelkamp (erfunden)
        4 | EINGABE | | | | | FEST
        5 | Masse des Ventils | 6.2 | ± | 0.2 | g | Umdrehungen | 20
        6 | Abstand von der Achse | 298 | ± | 3 | mm | g | 9.81 | m/s²
        7 | Zeit für alle Umdrehungen | 9.6 | ± | 0.4 | s
        8 | | | | | | AUSGABE
        9 | WARUM | | | | | Winkelgeschwindigkeit | =2*PI()*G5/B7 :: 0.0 | ± | =G9*D7/B7 :: 0.0 | rad/s
        10 | Masse: Briefwaage, ein Teilstrich | | | | | Bahngeschwindigkeit | =G9*B6/1000 :: 0.0 | ± | =G10*(I9/G9+D6/B6) :: 0.0 | m/s
        11 | Abstand: die Mitte des Ventils ist geschätzt | | | | | Kraft auf das Ventil | =B5/1000*G9^2*B6/1000 :: 0.00 | ± | =G11*(D5/B5+2*I9/G9+D6/B6) :: 0.00 | N
        12 | Zeit: mit der Hand gestoppt, zweimal 0,2 s | | | | | in Vielfachen des Gewichts | =G9^2*B6/1000/G6 :: 0.0 | ± | =G12*(2*I9/G9+D6/B6) :: 0.0
        """);
    page.bold("A1,A4,F4,F8,A9");
    page.measured("Masse", "g", "B5").uncertainty("D5").because("A10");
    page.measured("Abstand", "mm", "B6").uncertainty("D6").because("A11");
    page.measured("Zeit", "s", "B7").uncertainty("D7").because("A12");
    page.other(Role.COUNT, "G5").other(Role.CONSTANT, "G6");
    page.calculated("Winkelgeschwindigkeit", "rad/s", "G9").number("13.1").uncertainty("I9");
    page.calculated("Bahngeschwindigkeit", "m/s", "G10").number("3.9").uncertainty("I10");
    page.calculated("Kraft", "N", "G11").number("0.32").uncertainty("I11");
    page.calculated("in Vielfachen des Gewichts", "", "G12").number("5.2").uncertainty("I12");
    return drawing;
  }
}
