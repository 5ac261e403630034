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

/** English students and their habits. */
@AutoService(Family.class)
public final class EnglishHabits implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(
        bounds(), reversed(), homework(), rootTwelve(), bands(), logLines(), video(), brackets());
  }

  /** At least, best, at most. */
  private static Drawing bounds() {
    Drawing drawing = Draw.en("lever-bounds", "bounds", "brake lever", Writer.POI_XLSX);
    Page page = drawing.page("Lever");
    page.rows(
        """
        1 | What the brake cable feels
        2 | Isolde Thackeray, lab section 3 (not a real person, not a real lever)
        4 | | at least | best | at most | half of the gap | unit | on what grounds
        5 | pull of the hand | 38.5 | 40.0 | 41.5 | =(D5-B5)/2 :: 0.0 | N | spring scale, the pointer swings one and a half newtons either way
        6 | long arm | 74 | 76 | 78 | =(D6-B6)/2 :: 0 | mm | ruler fine to half a millimetre at each end, but a finger is soft: one more
        7 | short arm | 21.7 | 22.0 | 22.3 | =(D7-B7)/2 :: 0.0 | mm | calliper, and the pin is worn by a quarter of a millimetre
        9 | pull on the cable | =B5*B6/D7 :: 0.0 | =C5*C6/C7 :: 0 | =D5*D6/B7 :: 0.0 | =(D9-B9)/2 :: 0 | N | smallest over largest, largest over smallest
        10 | how many times as strong | =B6/D7 :: 0.00 | =C6/C7 :: 0.00 | =D6/B7 :: 0.00 | =(D10-B10)/2 :: 0.00
        """);
    page.bold("A1,B4:G4");
    page.other(Role.RAW, "B5:B7,D5:D7").other(Role.CALCULATED, "B9:B10,D9:D10");
    page.measured("pull of the hand", "N", "C5").uncertainty("E5").because("G5");
    page.measured("long arm", "mm", "C6").uncertainty("E6").because("G6");
    page.measured("short arm", "mm", "C7").uncertainty("E7").because("G7");
    page.calculated("pull on the cable", "N", "C9").number("138").uncertainty("E9");
    page.calculated("how many times as strong", "", "C10").number("3.45").uncertainty("E10");
    return drawing;
  }

  /** The name of the quantity comes last. */
  private static Drawing reversed() {
    Drawing drawing =
        Draw.en(
            "backwards-columns", "reversed-columns", "density of handlebar tape", Writer.CALC_XLSX);
    Page page = drawing.page("tape");
    page.rows(
        """
        1 | Handlebar tape, does it float?
        2 | Quentin Marlowe-Singh (invented)
        4 | Reason for the error | Unit | Error | Result | Thing
        5 | soft edges, 0.5 mm at each end | mm | 1.0 | 205.0 | length of the piece
        6 | calliper in steps of 0.1 mm, one step for each soft side | mm | 0.2 | 29.8 | width of the piece
        7 | it gives way when squeezed; three squeezes differed by this much | mm | 0.3 | 2.4 | thickness of the piece
        8 | last digit and as much for the drift of the zero | g | 0.02 | 5.63 | mass of the piece
        9 | relative errors added | cm³ | =D9*(C5/D5+C6/D6+C7/D7) :: 0 | =D5*D6*D7/1000 :: 0 | volume of the piece
        10 | relative errors added | g/cm³ | =D10*(C8/D8+C9/D9) :: 0.00 | =D8/D9 :: 0.00 | density
        12 | | g/cm³ | | 1.00 | water
        13 | The density is far below that of water, so it floats.
        """);
    page.bold("A4:E4");
    page.measured("length of the piece", "mm", "D5").uncertainty("C5").because("A5");
    page.measured("width of the piece", "mm", "D6").uncertainty("C6").because("A6");
    page.measured("thickness of the piece", "mm", "D7").uncertainty("C7").because("A7");
    page.measured("mass of the piece", "g", "D8").uncertainty("C8").because("A8");
    page.calculated("volume of the piece", "cm³", "D9")
        .number("15")
        .uncertainty("C9")
        .because("A9");
    page.calculated("density", "g/cm³", "D10").number("0.38").uncertainty("C10").because("A10");
    page.other(Role.ACCEPTED, "D12");
    return drawing;
  }

  /** Given, measured, find, answer as a homework has it. */
  private static Drawing homework() {
    Drawing drawing =
        Draw.en("homework-climb", "given-and-find", "power on a stair", Writer.POI_XLS);
    Page page = drawing.page("HW 3");
    page.rows(
        """
        1 | Homework 3, problem 2: carrying a bicycle upstairs
        2 | Fenella Brightwater (made up for this course)
        4 | GIVEN
        5 | | g | 9.81 | N/kg
        6 | MEASURED
        7 | | m_bike | 12.6 | 0.2 | kg | luggage scale, its last digit, and it swings by another
        8 | | m_me | 61.0 | 0.5 | kg | bathroom scale, marks every kilogram, half of one
        9 | | h | 9.60 | 0.06 | m | 48 steps of 20 cm, each good to a bit more than 1 mm
        10 | | t | 31.0 | 0.4 | s | phone in the other hand, two presses of 0.2 s
        11 | FIND
        12 | | the work W and the power P
        13 | WORK
        14 | | M = m_bike + m_me | =C7+C8 :: 0.0 | =D7+D8 :: 0.0 | kg
        15 | | W = M·g·h | =C14*C5*C9/1000 :: 0.00 | =C15*(D14/C14+D9/C9) :: 0.00 | kJ
        16 | | P = W/t | =1000*C15/C10 :: 0 | =C16*(D15/C15+D10/C10) :: 0 | W
        17 | ANSWER
        18 | | About a third of a horsepower, give or take the second number of each line.
        """);
    page.bold("A1,A4,A6,A11,A13,A17");
    page.other(Role.CONSTANT, "C5");
    page.measured("m_bike", "kg", "C7").uncertainty("D7").because("F7");
    page.measured("m_me", "kg", "C8").uncertainty("D8").because("F8");
    page.measured("h", "m", "C9").uncertainty("D9").because("F9");
    page.measured("t", "s", "C10").uncertainty("D10").because("F10");
    page.calculated("M", "kg", "C14").number("73.6").uncertainty("D14");
    page.calculated("W", "kJ", "C15").number("6.93").uncertainty("D15");
    page.calculated("P", "W", "C16").number("224").uncertainty("D16");
    return drawing;
  }

  /** Resolutions over the root of twelve and scatters, in quadrature. */
  private static Drawing rootTwelve() {
    Drawing drawing =
        Draw.en("spoke-nipple-u", "resolution-and-scatter", "spoke nipple", Writer.GNUMERIC_ODS)
            .inQuadrature();
    Page page = drawing.page("nipple");
    page.rows(
        """
        1 | Brass nipple of a spoke: standard uncertainties
        2 | Zachary Umber (invented) with thanks to nobody
        3 | u(resolution) = one step / √12, u(scatter) = s/√n from the readings on the right
        5 | | mean | unit | one step | u(resolution) | u(scatter) | u | | readings
        6 | length | =AVERAGE(I6:N6) :: 0.000 | mm | 0.02 | =D6/SQRT(12) :: 0.000 | =STDEV(I6:N6)/SQRT(6) :: 0.000 | =SQRT(E6^2+F6^2) :: 0.000 | | 12.02 | 12.04 | 12.00 | 12.04 | 12.02 | 12.00
        7 | outer diameter | =AVERAGE(I7:N7) :: 0.000 | mm | 0.01 | =D7/SQRT(12) :: 0.000 | =STDEV(I7:N7)/SQRT(6) :: 0.000 | =SQRT(E7^2+F7^2) :: 0.000 | | 3.95 | 3.97 | 3.96 | 3.94 | 3.97 | 3.95
        8 | hole diameter | =AVERAGE(I8:N8) :: 0.000 | mm | 0.01 | =D8/SQRT(12) :: 0.000 | =STDEV(I8:N8)/SQRT(6) :: 0.000 | =SQRT(E8^2+F8^2) :: 0.000 | | 1.81 | 1.79 | 1.80 | 1.82 | 1.80 | 1.81
        10 | volume of brass | =PI()/4*(B7^2-B8^2)*B6 :: 0.0 | mm³ | | | | =SQRT((PI()/2*B7*B6*G7)^2+(PI()/2*B8*B6*G8)^2+(B10*G6/B6)^2) :: 0.0
        """);
    page.bold("A1,B5:I5");
    page.record(Kind.MEAN, "length", "mm", "B6")
        .uncertainty("G6")
        .parameter("D6")
        .contribution("instrument", "E6")
        .contribution("repeat", "F6")
        .because("A3");
    page.record(Kind.MEAN, "outer diameter", "mm", "B7")
        .uncertainty("G7")
        .parameter("D7")
        .contribution("instrument", "E7")
        .contribution("repeat", "F7")
        .because("A3");
    page.record(Kind.MEAN, "hole diameter", "mm", "B8")
        .uncertainty("G8")
        .parameter("D8")
        .contribution("instrument", "E8")
        .contribution("repeat", "F8")
        .because("A3");
    page.other(Role.RAW, "I6:N8");
    page.calculated("volume of brass", "mm³", "B10").uncertainty("G10");
    return drawing;
  }

  /** Parts with a tolerance in percent, joined in two ways. */
  private static Drawing bands() {
    Drawing drawing =
        Draw.en("lamp-resistors", "tolerances", "resistors of a lamp", Writer.GNUMERIC_XLSX);
    Page page = drawing.page("R");
    page.rows(
        """
        1 | Two resistors out of an old front lamp
        2 | Persephone Gault & Wim Oduya, both imaginary
        4 | Resistor | Nominal (Ω) | Tolerance (%) | That is ± (Ω) | Note
        5 | R1 | 100 | 5 | =B5*C5/100 :: 0 | tolerance as printed on the body
        6 | R2 | 150 | 5 | =B6*C6/100 :: 0 | tolerance as printed on the body
        8 | Joined | Calculated (Ω) | | ± (Ω) | Measured (Ω) | ± (Ω) | Apart by (Ω)
        9 | in series | =B5+B6 :: 0 | | =D5+D6 :: 0 | 247 | 3 | =ABS(B9-E9) :: 0
        10 | side by side | =B5*B6/(B5+B6) :: 0 | | =B10^2*(D5/B5^2+D6/B6^2) :: 0 | 59.3 | 0.6 | =ABS(B10-E10) :: 0.0
        12 | Measured with the yellow ohmmeter, whose booklet allows 0.8 % and one digit of the range, rounded up.
        13 | Both are apart by less than the two ± together.
        """);
    page.bold("A1,A4:E4,A8:G8");
    page.measured("R1", "Ω", "B5").uncertainty("D5").parameter("C5").because("E5");
    page.measured("R2", "Ω", "B6").uncertainty("D6").parameter("C6").because("E6");
    page.calculated("in series", "Ω", "B9").number("250").uncertainty("D9");
    page.calculated("side by side", "Ω", "B10").number("60").uncertainty("D10");
    page.measured("in series", "Ω", "E9").uncertainty("F9").because("A12");
    page.measured("side by side", "Ω", "E10").uncertainty("F10").because("A12");
    page.other(Role.COMPARISON, "G9:G10");
    return drawing;
  }

  /** A line of prose for each reading, as it was shouted across the workshop. */
  private static Drawing logLines() {
    Drawing drawing = Draw.en("pump-shouts", "log-lines", "tyre pressure", Writer.POI_XLSX);
    Page page = drawing.page("log");
    page.rows(
        """
        1 | Workshop log, kept by Humphrey Lisle (invented)
        2 | 09:05 front tyre before the ride: p = 3.10 ± 0.05 bar, gauge read to half a mark
        3 | 09:07 rear tyre before the ride: p = 3.45 ± 0.05 bar, gauge read to half a mark
        4 | 09:10 air in the yard: T = 11.0 ± 0.5 °C, probe hung in the shade but it wobbles
        5 | 12:40 front tyre after the ride: p = 3.30 ± 0.05 bar, gauge read to half a mark
        6 | 12:41 rear tyre after the ride: p = 3.70 ± 0.05 bar, gauge read to half a mark
        8 | So the front one has gained 0.20 ± 0.10 bar (errors add up)
        9 | and the rear one has gained 0.25 ± 0.10 bar (errors add up)
        """);
    page.measured("p front tyre before the ride", "bar", "A2")
        .number("3.10")
        .uncertaintyOf(0.05)
        .because("A2");
    page.measured("p rear tyre before the ride", "bar", "A3")
        .number("3.45")
        .uncertaintyOf(0.05)
        .because("A3");
    page.measured("T air", "°C", "A4").number("11.0").uncertaintyOf(0.5).because("A4");
    page.measured("p front tyre after the ride", "bar", "A5")
        .number("3.30")
        .uncertaintyOf(0.05)
        .because("A5");
    page.measured("p rear tyre after the ride", "bar", "A6")
        .number("3.70")
        .uncertaintyOf(0.05)
        .because("A6");
    page.calculated("front one has gained", "bar", "A8").number("0.20").uncertaintyOf(0.10);
    page.calculated("rear one has gained", "bar", "A9").number("0.25").uncertaintyOf(0.10);
    return drawing;
  }

  /** Pixels out of a film, a scale, positions. */
  private static Drawing video() {
    Drawing drawing =
        Draw.en("rolling-film", "video-frames", "rolling wheel on film", Writer.CALC_ODS);
    Page page = drawing.page("film");
    page.rows(
        """
        1 | A wheel rolls past the camera
        2 | analysed by Cordelia Vasquez-Munro (fictitious)
        4 | frames per second | 30 | from the camera's menu, exact
        5 | length of the ruler in the picture | 600 | px | 3 | px | 1.5 pixels at each end of it
        6 | its real length | 1000 | mm | 2 | mm | end caps worn by 1 mm each
        7 | scale | =B6/B5 :: 0.000 | mm/px | =B7*(D5/B5+D6/B6) :: 0.000 | mm/px
        9 | frame | time (s) | hub (px) | ± (px) | hub (mm) | ± (mm)
        10 | 112 | =(A10-$A$10)/$B$4 :: 0.000 | 84 | 2 | =C10*$B$7 :: 0 | =E10*(D10/C10+$D$7/$B$7) :: 0
        11 | 118 | =(A11-$A$10)/$B$4 :: 0.000 | 236 | 2 | =C11*$B$7 :: 0 | =E11*(D11/C11+$D$7/$B$7) :: 0
        12 | 124 | =(A12-$A$10)/$B$4 :: 0.000 | 385 | 2 | =C12*$B$7 :: 0 | =E12*(D12/C12+$D$7/$B$7) :: 0
        13 | 130 | =(A13-$A$10)/$B$4 :: 0.000 | 534 | 2 | =C13*$B$7 :: 0 | =E13*(D13/C13+$D$7/$B$7) :: 0
        14 | 136 | =(A14-$A$10)/$B$4 :: 0.000 | 681 | 2 | =C14*$B$7 :: 0 | =E14*(D14/C14+$D$7/$B$7) :: 0
        16 | hub: the middle of the axle is a blur of four pixels
        17 | speed from first to last frame | =(C14-C10)*B7/(B14-B10)/1000 :: 0.000 | m/s | =B17*((D14+D10)/(C14-C10)+D7/B7) :: 0.000 | m/s
        """);
    page.bold("A1,A9:F9");
    page.other(Role.CONSTANT, "B4").other(Role.LABEL, "A10:A14").other(Role.CALCULATED, "B10:B14");
    page.measured("length of the ruler", "px", "B5").uncertainty("D5").because("F5");
    page.measured("real length", "mm", "B6").uncertainty("D6").because("F6");
    page.calculated("scale", "mm/px", "B7").number("1.667").uncertainty("D7");
    page.measured("hub", "px", "C10:C14").uncertainty("D10:D14").because("A16");
    page.calculated("hub", "mm", "E10:E14").uncertainty("F10:F14");
    page.calculated("speed", "m/s", "B17").uncertainty("D17");
    return drawing;
  }

  /** The short form of a standard uncertainty: the last digits in brackets. */
  private static Drawing brackets() {
    Drawing drawing =
        Draw.en("short-form", "digits-in-brackets", "chainring bolt", Writer.POI_XLSX)
            .inQuadrature();
    Page page = drawing.page("bolt");
    page.rows(
        """
        1 | Chainring bolt, results in the short form: 8.02(3) means 8.02 with a standard uncertainty of 0.03
        2 | Leopold Szymanowski-Hart (imaginary), supervisor's example
        4 | what | result | in | where the uncertainty comes from
        5 | length of the shank | 8.02(3) | mm | calliper, a step of 0.05 mm over the root of three
        6 | diameter of the shank | 7.96(3) | mm | calliper, the same
        7 | mass | 3.12(2) | g | balance, scatter of five weighings
        8 | volume of the shank | 399(3) | mm³ | twice the relative uncertainty of the diameter and that of the length, in quadrature
        9 | mass over volume | 7.82(8) | g/cm³ | in quadrature
        11 | unrounded, to check | | | volume | =PI()/4*7.96^2*8.02 :: 0.000
        12 | | | | density | =3.12/E11*1000 :: 0.0000
        """);
    page.bold("A1,A4:D4");
    page.measured("length of the shank", "mm", "B5")
        .number("8.02")
        .uncertaintyOf(0.03)
        .because("D5");
    page.measured("diameter of the shank", "mm", "B6")
        .number("7.96")
        .uncertaintyOf(0.03)
        .because("D6");
    page.measured("mass", "g", "B7").number("3.12").uncertaintyOf(0.02).because("D7");
    page.calculated("volume of the shank", "mm³", "B8")
        .number("399")
        .uncertaintyOf(3)
        .because("D8");
    page.calculated("mass over volume", "g/cm³", "B9")
        .number("7.82")
        .uncertaintyOf(0.08)
        .because("D9");
    page.other(Role.CALCULATED, "E11:E12");
    return drawing;
  }
}
