package tenthmark.samples.corpus.later;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** A diary: each line a time, what was done, and what was read, if anything was. */
@AutoService(Family.class)
public final class Logbooks implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(kettenBuch(), cuadernoBateria());
  }

  private static Drawing kettenBuch() {
    Drawing drawing =
        new Drawing(
            "ketten-laborbuch", "logbook", "chain stretch", Language.GERMAN, Writer.CALC_ODS);
    Page page = drawing.page("Laborbuch");
    Rows.draw(
        page,
        """
        1 | Laborbuch Werkstatt: Kettenverschleiß (erfundene Messung)
        2 | Gruppe 7, Jonte Brehmer und Salka Wiebold | | 2025-05-06
        4 | Uhrzeit | Tätigkeit | Messwert | Einheit | ± | Woher kommt das ±
        5 | '09:10 | Neue Kette, 50 Glieder von Bolzenmitte zu Bolzenmitte, gespannt | 635.0 | mm | 1.0 | Bandmaß mit mm-Teilung: an jedem Ende 0,25 mm abgelesen und 0,25 mm, weil die Bolzenmitte geschätzt ist
        6 | '09:25 | Gebrauchte Kette, ebenfalls 50 Glieder | 639.5 | mm | 1.0 | wie bei der neuen Kette
        7 | '09:40 | Zugkraft beim Spannen | 50 | N | 2 | Federwaage mit 2-N-Strichen, Zeiger zittert um einen Strich
        8 | '09:50 | Pause, Kette entfettet
        9 | '10:05 | Teilung der neuen Kette | =C5/50 :: 0.00 | mm | =E5/50 :: 0.00 | gerechnet
        10 | '10:08 | Teilung der gebrauchten Kette | =C6/50 :: 0.00 | mm | =E6/50 :: 0.00 | gerechnet
        11 | '10:15 | Längung | =100*(C6-C5)/C5 :: 0.0 | % | =100*(E6+E5*C6/C5)/C5 :: 0.0 | gerechnet, Beiträge addiert
        12 | '10:20 | Teilung laut Norm | 12.70 | mm | | Tabelle in der Werkstatt
        13 | '10:25 | Grenze auf der Kettenlehre | 0.75 | % | | eingeschlagen
        15 | Ergebnis: Die Längung liegt innerhalb ihrer Unsicherheit bei der Grenze, die Kette wird gewechselt.
        """);
    page.bold("A1,A4:F4");
    page.other(Role.DATE, "C2").other(Role.ACCEPTED, "C12:C13");
    page.measured("Neue Kette, 50 Glieder", "mm", "C5").uncertainty("E5").because("F5");
    page.measured("Gebrauchte Kette, 50 Glieder", "mm", "C6").uncertainty("E6").because("F6");
    page.measured("Zugkraft", "N", "C7").uncertainty("E7").because("F7");
    page.calculated("Teilung der neuen Kette", "mm", "C9").number("12.70").uncertainty("E9");
    page.calculated("Teilung der gebrauchten Kette", "mm", "C10")
        .number("12.79")
        .uncertainty("E10");
    page.calculated("Längung", "%", "C11").number("0.7").uncertainty("E11");
    return drawing;
  }

  private static Drawing cuadernoBateria() {
    Drawing drawing =
        new Drawing(
            "cuaderno-bateria",
            "logbook",
            "battery of a lamp",
            Language.SPANISH,
            Writer.GNUMERIC_XLSX);
    Page page = drawing.page("cuaderno");
    Rows.draw(
        page,
        """
        1 | Cuaderno - batería del faro (datos inventados)
        2 | Iker Solvang y Naia Ruedas, grupo de los jueves
        4 | hora | qué hice | leído | error | unidad | por qué ese error
        5 | '16:05 | tensión en vacío U0 | 6.42 | 0.04 | V | multímetro: 0,5 % más un dígito
        6 | '16:08 | enciendo el faro y espero que se caliente
        7 | '16:12 | tensión con el faro encendido U | 5.91 | 0.04 | V | igual que arriba
        8 | '16:13 | corriente I | 0.482 | 0.009 | A | multímetro: 1,2 % más tres dígitos
        9 | '16:14 | pongo el cronómetro
        10 | '16:34 | tiempo encendido t | 1203.0 | 1.0 | s | tardo medio segundo al empezar y otro medio al acabar
        11 | '16:40 | potencia P = U·I | =C7*C8 :: 0.00 | =D7*C8+C7*D8 :: 0.00 | W | cálculo
        12 | '16:42 | energía gastada E = P·t | =C11*C10/1000 :: 0.00 | =(D11*C10+C11*D10)/1000 :: 0.00 | kJ | cálculo
        13 | '16:45 | caída de tensión U0 - U | =C5-C7 :: 0.00 | =D5+D7 :: 0.00 | V | cálculo
        14 | '16:47 | resistencia interna r | =C13/C8 :: 0.00 | =D13/C8+C13*D8/C8^2 :: 0.00 | Ω | cálculo
        """);
    page.bold("A1,A4:F4");
    page.measured("tensión en vacío U0", "V", "C5").uncertainty("D5").because("F5");
    page.measured("tensión con el faro encendido U", "V", "C7").uncertainty("D7").because("F7");
    page.measured("corriente I", "A", "C8").uncertainty("D8").because("F8");
    page.measured("tiempo encendido t", "s", "C10").uncertainty("D10").because("F10");
    page.calculated("potencia P", "W", "C11").number("2.85").uncertainty("D11");
    page.calculated("energía gastada E", "kJ", "C12").number("3.43").uncertainty("D12");
    page.calculated("caída de tensión", "V", "C13").number("0.51").uncertainty("D13");
    page.calculated("resistencia interna r", "Ω", "C14").number("1.06").uncertainty("D14");
    return drawing;
  }
}
