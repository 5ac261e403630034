package tenthmark.samples.corpus.later;

import com.google.auto.service.AutoService;
import java.util.List;
import tenthmark.measurement.wording.Language;
import tenthmark.samples.corpus.Drawing;
import tenthmark.samples.corpus.Family;
import tenthmark.samples.corpus.Page;
import tenthmark.samples.corpus.Role;
import tenthmark.samples.corpus.Writer;

/** Each value is the difference of two readings. */
@AutoService(Family.class)
public final class StartAndEnd implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(alongTheTape(), bergabfahrt());
  }

  private static Drawing alongTheTape() {
    Drawing drawing =
        new Drawing(
            "along-the-tape",
            "start-and-end",
            "spoke and chain pitch",
            Language.ENGLISH,
            Writer.CALC_ODS);
    Page page = drawing.page("Tape");
    Rows.draw(
        page,
        """
        1 | Where on the tape it begins and where it ends
        2 | Ottoline Brack, teaching assistant (invented)
        4 | part | start (mm) | end (mm) | length (mm) | unc. (mm)
        5 | spoke | 10.0 | 301.5 | =C5-B5 :: 0.0 | 0.5
        6 | crank | 20.0 | 190.5 | =C6-B6 :: 0.0 | 1.0
        7 | chain, 20 pitches | 15.0 | 269.0 | =C7-B7 :: 0.0 | 1.0
        8 | brake cable | 5 | 1204 | =C8-B8 :: 0 | 2
        10 | Why these uncertainties
        11 | spoke: a quarter of a millimetre at either end
        12 | crank: the same, and the holes have round edges, another half a millimetre in all
        13 | chain: the same, and the middle of each pin is guessed
        14 | brake cable: it will not lie straight, so 1.5 mm more
        16 | result | value | unc. | unit
        17 | pitch of the chain | =D7/20 :: 0.00 | =E7/20 :: 0.00 | mm
        18 | pitch by the standard | 12.70 | | mm
        19 | off by | =100*(B17-B18)/B18 :: 0.0 | | %
        """);
    page.bold("A1,A4:E4,A10,A16:D16");
    page.other(Role.RAW, "B5:C8");
    page.measured("spoke", "mm", "D5").number("291.5").uncertainty("E5").because("A11");
    page.measured("crank", "mm", "D6").number("170.5").uncertainty("E6").because("A12");
    page.measured("chain, 20 pitches", "mm", "D7").number("254.0").uncertainty("E7").because("A13");
    page.measured("brake cable", "mm", "D8").number("1199").uncertainty("E8").because("A14");
    page.calculated("pitch of the chain", "mm", "B17").number("12.70").uncertainty("C17");
    page.other(Role.ACCEPTED, "B18").other(Role.COMPARISON, "B19");
    return drawing;
  }

  private static Drawing bergabfahrt() {
    Drawing drawing =
        new Drawing(
            "bergabfahrt", "before-and-after", "downhill ride", Language.GERMAN, Writer.POI_XLS);
    Page page = drawing.page("Fahrt");
    Rows.draw(
        page,
        """
        1 | Bergabfahrt mit schleifender Bremse
        2 | Aus der Sammlung von W. Ehrenfried (erfunden)
        4 | Größe | vorher | nachher | Änderung | ± | Einheit | Grund für ±
        5 | Fahrradcomputer | 1243.61 | 1251.98 | =C5-B5 :: 0.00 | 0.02 | km | je 0,01 km an Start und Ziel, letzte Stelle
        6 | Stoppuhr | 12.4 | 1489.6 | =C6-B6 :: 0.0 | 0.4 | s | zweimal die Reaktion, 0,2 s
        7 | Temperatur der Felge | 18.5 | 63.0 | =C7-B7 :: 0.0 | 1.0 | K | Teilung 1 K, zweimal halb geschätzt
        8 | Trinkflasche auf der Waage | 742.3 | 401.8 | =B8-C8 :: 0.0 | 0.4 | g | 0,1 g und 0,1 g Schwanken, zweimal
        10 | Geschwindigkeit | | | =1000*D5/D6 :: 0.000 | =D10*(E5/D5+E6/D6) :: 0.000 | m/s
        11 | dieselbe | | | =3.6*D10 :: 0.00 | =3.6*E10 :: 0.00 | km/h
        12 | getrunken je Kilometer | | | =D8/D5 :: 0.00 | =D12*(E8/D8+E5/D5) :: 0.00 | g/km
        """);
    page.bold("A1,A4:G4");
    page.other(Role.RAW, "B5:C8");
    page.measured("Fahrradcomputer", "km", "D5").number("8.37").uncertainty("E5").because("G5");
    page.measured("Stoppuhr", "s", "D6").number("1477.2").uncertainty("E6").because("G6");
    page.measured("Temperatur der Felge", "K", "D7").number("44.5").uncertainty("E7").because("G7");
    page.measured("Trinkflasche", "g", "D8").number("340.5").uncertainty("E8").because("G8");
    page.calculated("Geschwindigkeit", "m/s", "D10").number("5.666").uncertainty("E10");
    page.calculated("Geschwindigkeit", "km/h", "D11").number("20.40").uncertainty("E11");
    page.calculated("getrunken je Kilometer", "g/km", "D12").number("40.68").uncertainty("E12");
    return drawing;
  }
}
