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

/** Tables as English-speaking groups hand them in. */
@AutoService(Family.class)
public final class EnglishReports implements Family {

  @Override
  public List<Drawing> drawings() {
    return List.of(
        cableStrand(),
        hexBar(),
        droppedBall(),
        luggageStrap(),
        hydraulicBrake(),
        chainOil(),
        valveStem());
  }

  /** What was measured, and under it in the same columns what was worked out. */
  private static Drawing cableStrand() {
    Drawing drawing =
        Draw.en("cable-strand", "measured-then-derived", "stretch of a cable", Writer.POI_XLSX);
    Page page = drawing.page("Lab 6");
    page.rows(
        """
        1 | Lab 6: Is a strand of brake cable as stiff as steel should be?
        2 | Odette Farrow and Hamish Quill (invented people, invented data)
        4 | Measured quantity | Best estimate | Abs. uncertainty | Unit | Justification
        5 | Free length L | 1520 | 3 | mm | steel tape, 1 mm at the clamp, 2 mm where the knot is
        6 | Diameter d | 0.600 | 0.005 | mm | micrometer, half a division of the sleeve
        7 | Hanging mass m | 4.000 | 0.004 | kg | stamped on the four weights, 1 g each
        8 | Extension x | 1.06 | 0.02 | mm | dial gauge read twice, loaded and unloaded, one division each
        10 | Derived quantity | Best estimate | Abs. uncertainty | Unit | Equation
        11 | Cross-section A | =PI()/4*B6^2 :: 0.000 | =B11*2*C6/B6 :: 0.000 | mm² | A = πd²/4
        12 | Stress σ | =B7*B16/B11 :: 0 | =B12*(C7/B7+C11/B11) :: 0 | N/mm² | σ = mg/A
        13 | Strain ε | =B8/(B5/1000) :: 0.000 | =B13*(C8/B8+C5/B5) :: 0.000 | mm/m | ε = x/L
        14 | Young's modulus E | =B12/B13 :: 0 | =B14*(C12/B12+C13/B13) :: 0 | GPa | E = σ/ε
        16 | Gravity g | 9.81 | | N/kg | given
        17 | Steel in the handbook | 200 | | GPa | given
        18 | Percent difference | =(B14-B17)/B17 :: 0.0%
        20 | Conclusion: the handbook value lies inside our range, so we see no sign that the strand is not steel.
        """);
    page.bold("A1,A4:E4,A10:E10");
    page.measured("length", "mm", "B5").uncertainty("C5").because("E5");
    page.measured("diameter", "mm", "B6").uncertainty("C6").because("E6");
    page.measured("mass", "kg", "B7").uncertainty("C7").because("E7");
    page.measured("extension", "mm", "B8").uncertainty("C8").because("E8");
    page.calculated("cross-section", "mm²", "B11").number("0.283").uncertainty("C11");
    page.calculated("stress", "N/mm²", "B12").number("139").uncertainty("C12");
    page.calculated("strain", "mm/m", "B13").number("0.697").uncertainty("C13");
    page.calculated("Young's modulus", "GPa", "B14").number("199").uncertainty("C14");
    page.other(Role.CONSTANT, "B16").other(Role.ACCEPTED, "B17").other(Role.COMPARISON, "B18");
    return drawing;
  }

  /** Three sources of error for each reading, their sum, and the density below. */
  private static Drawing hexBar() {
    Drawing drawing =
        Draw.en("hex-bar", "contributions-and-sum", "density of a hex key", Writer.POI_XLS);
    Page page = drawing.page("Sheet1");
    page.rows(
        """
        1 | PHYS 101 - Density of the long arm of a hex key
        2 | Name: | Barnaby Tolliver (made up)
        3 | Errors are added, not squared.
        5 | Quantity | Symbol | Reading | Unit | Reading error | Object error | Tool error | Total error | Why
        6 | across the flats | s | 7.96 | mm | 0.02 | 0.02 | 0.02 | =E6+F6+G6 :: 0.00 | dial caliper: one mark; flats are not quite parallel; leaflet says 0.02
        7 | length | L | 120.0 | mm | 0.5 | 0.3 | 0.1 | =E7+F7+G7 :: 0.0 | ruler: a quarter of a mm at both ends; sawn end is rough; worn ruler
        8 | mass | m | 51.7 | g | 0.1 | 0.0 | 0.1 | =E8+F8+G8 :: 0.0 | last digit; the object has nothing to add; zero drifts
        10 | Results
        11 | volume | V | =SQRT(3)/2*C6^2*C7/1000 :: 0.00 | cm³ | | | | =C11*(2*H6/C6+H7/C7) :: 0.00 | V = ½√3·s²·L
        12 | density | ρ | =C8/C11 :: 0.0 | g/cm³ | | | | =C12*(H8/C8+H11/C11) :: 0.0 | ρ = m/V
        14 | tool steel | ρ | 7.85 | g/cm³
        15 | ours minus this | | =C12-C14 :: 0.00 | g/cm³
        """);
    page.bold("A1,A5:I5,A10");
    page.measured("across the flats", "mm", "C6")
        .uncertainty("H6")
        .contribution("reading", "E6")
        .contribution("physical", "F6")
        .contribution("instrument", "G6")
        .because("I6");
    page.measured("length", "mm", "C7")
        .uncertainty("H7")
        .contribution("reading", "E7")
        .contribution("physical", "F7")
        .contribution("instrument", "G7")
        .because("I7");
    page.measured("mass", "g", "C8")
        .uncertainty("H8")
        .contribution("reading", "E8")
        .contribution("physical", "F8")
        .contribution("instrument", "G8")
        .because("I8");
    page.calculated("volume", "cm³", "C11").uncertainty("H11");
    page.calculated("density", "g/cm³", "C12").number("7.9").uncertainty("H12");
    page.other(Role.ACCEPTED, "C14").other(Role.COMPARISON, "C15");
    return drawing;
  }

  /** A height a row, four trials across, half the range, and g at the end of the row. */
  private static Drawing droppedBall() {
    Drawing drawing =
        Draw.en("dropped-ball", "heights-and-trials", "fall of a bearing ball", Writer.POI_XLSX);
    Page page = drawing.page("Free fall");
    page.rows(
        """
        1 | Free fall of a bearing ball, timed by the microphone of a phone
        2 | Group C: Zelda Marchbanks, Ivo Pettigrew, Nell Osei (all fictional)
        4 | h (m) | δh (m) | t1 (s) | t2 (s) | t3 (s) | t4 (s) | mean t (s) | half range (s) | δt (s) | g (m/s²) | δg (m/s²)
        5 | 0.500 | 0.005 | 0.317 | 0.323 | 0.319 | 0.320 | =AVERAGE(C5:F5) :: 0.000 | =(MAX(C5:F5)-MIN(C5:F5))/2 :: 0.000 | =H5+$C$9 :: 0.000 | =2*A5/G5^2 :: 0.0 | =J5*(B5/A5+2*I5/G5) :: 0.0
        6 | 1.000 | 0.005 | 0.450 | 0.455 | 0.453 | 0.449 | =AVERAGE(C6:F6) :: 0.000 | =(MAX(C6:F6)-MIN(C6:F6))/2 :: 0.000 | =H6+$C$9 :: 0.000 | =2*A6/G6^2 :: 0.0 | =J6*(B6/A6+2*I6/G6) :: 0.0
        7 | 1.500 | 0.005 | 0.551 | 0.555 | 0.557 | 0.552 | =AVERAGE(C7:F7) :: 0.000 | =(MAX(C7:F7)-MIN(C7:F7))/2 :: 0.000 | =H7+$C$9 :: 0.000 | =2*A7/G7^2 :: 0.0 | =J7*(B7/A7+2*I7/G7) :: 0.0
        9 | timing error (s) | | 0.002 | sound needs about that long from the floor to the phone
        10 | δh: metre rule to 2 mm at the floor and 3 mm for the bottom of the ball in the fingers
        11 | δt: half the range of the four trials plus the timing error
        13 | | | | | | | | | average g: | =AVERAGE(J5:J7) :: 0.0 | =AVERAGE(K5:K7) :: 0.0
        14 | | | | | | | | | accepted g: | 9.81
        15 | | | | | | | | | % error: | =ABS(J13-J14)/J14 :: 0.0%
        """);
    page.bold("A1,A4:K4");
    page.measured("h", "m", "A5:A7").uncertainty("B5:B7").because("A10");
    page.other(Role.RAW, "C5:F7");
    page.record(Kind.MEAN, "t", "s", "G5:G7")
        .uncertainty("I5:I7")
        .contribution("repeat", "H5:H7")
        .contribution("timing", "C9")
        .because("A11");
    page.calculated("g", "m/s²", "J5:J7").number("9.8", "9.8", "9.8").uncertainty("K5:K7");
    page.record(Kind.MEAN, "average g", "m/s²", "J13").number("9.8").uncertainty("K13");
    page.other(Role.ACCEPTED, "J14").other(Role.COMPARISON, "J15");
    return drawing;
  }

  /** Loads and stretches, the line through them, and the stiffness out of its slope. */
  private static Drawing luggageStrap() {
    Drawing drawing =
        Draw.en(
            "luggage-strap",
            "load-and-stretch-line",
            "elastic strap of a luggage rack",
            Writer.POI_XLSX_WITHOUT_VALUES);
    Page page = drawing.page("Data and graph");
    page.rows(
        """
        1 | Elastic strap of a luggage rack: is it a Hooke spring?
        2 | Jocasta Wrenfield (not a real student)
        4 | Mass hung (g) | ± (g) | Stretch (cm) | ± (cm) | Force (N) | ± (N)
        5 | 200 | 5 | 3.9 | 0.2 | =A5/1000*$B$17 :: 0.00 | =E5*B5/A5 :: 0.00
        6 | 400 | 5 | 7.8 | 0.2 | =A6/1000*$B$17 :: 0.00 | =E6*B6/A6 :: 0.00
        7 | 600 | 5 | 11.8 | 0.2 | =A7/1000*$B$17 :: 0.00 | =E7*B7/A7 :: 0.00
        8 | 800 | 5 | 15.6 | 0.2 | =A8/1000*$B$17 :: 0.00 | =E8*B8/A8 :: 0.00
        9 | 1000 | 5 | 19.7 | 0.2 | =A9/1000*$B$17 :: 0.00 | =E9*B9/A9 :: 0.00
        11 | | Value | Uncertainty | Unit
        12 | Slope of force against stretch | =INDEX(LINEST(E5:E9,C5:C9,TRUE,TRUE),1,1) :: 0.000 | =INDEX(LINEST(E5:E9,C5:C9,TRUE,TRUE),2,1) :: 0.000 | N/cm
        13 | Intercept | =INDEX(LINEST(E5:E9,C5:C9,TRUE,TRUE),1,2) :: 0.00 | =INDEX(LINEST(E5:E9,C5:C9,TRUE,TRUE),2,2) :: 0.00 | N
        14 | Stiffness k | =100*B12 :: 0.0 | =100*C12 :: 0.0 | N/m
        15 | R² | =RSQ(E5:E9,C5:C9) :: 0.0000
        17 | g (N/kg) | 9.81
        19 | Masses: hook and weights were checked on the kitchen scale, which jumps by 5 g.
        20 | Stretch: 1 mm for reading the ruler at the top and 1 mm at the bottom of the strap.
        21 | Uncertainties of the line are those that LINEST gives.
        """);
    page.graph("H4:O20", "Force against stretch", "C5:C9", "E5:E9");
    page.bold("A1,A4:F4,B11:D11");
    page.measured("mass", "g", "A5:A9").uncertainty("B5:B9").because("A19");
    page.measured("stretch", "cm", "C5:C9").uncertainty("D5:D9").because("A20");
    page.calculated("force", "N", "E5:E9")
        .number("1.96", "3.92", "5.89", "7.85", "9.81")
        .uncertainty("F5:F9");
    page.record(Kind.SLOPE, "slope", "N/cm", "B12").number("0.498").uncertainty("C12");
    page.record(Kind.INTERCEPT, "intercept", "N", "B13").number("0.03").uncertainty("C13");
    page.calculated("stiffness", "N/m", "B14").number("49.8").uncertainty("C14");
    page.other(Role.STATISTIC, "B15").other(Role.CONSTANT, "B17");
    return drawing;
  }

  /** A report: small tables with captions, what is to be said about each under it. */
  private static Drawing hydraulicBrake() {
    Drawing drawing =
        Draw.en("hydraulic-brake", "captioned-tables", "hydraulic brake", Writer.POI_XLSX);
    Page page = drawing.page("Report");
    page.rows(
        """
        1 | Hydraulic brake: how a finger squeezes a disc
        2 | Wilhelmina Castor-Pike, bench 9 (fictitious)
        4 | Table 1. The two pistons
        5 | Piston | d (mm) | Δd (mm) | A (mm²) | ΔA (mm²)
        6 | at the lever | 10.00 | 0.05 | =PI()/4*B6^2 :: 0.0 | =2*D6*C6/B6 :: 0.0
        7 | at the disc | 22.00 | 0.05 | =PI()/4*B7^2 :: 0.0 | =2*D7*C7/B7 :: 0.0
        8 | The vernier has steps of 0.05 mm and the pistons are turned smooth, so one step is enough for Δd.
        10 | Table 2. Forces
        11 | F₁ (N) | ΔF₁ (N) | F₂ (N) | ΔF₂ (N) | F₂/F₁ | Δ(F₂/F₁)
        12 | 20.0 | 0.5 | 96 | 2 | =C12/A12 :: 0.0 | =E12*(B12/A12+D12/C12) :: 0.0
        13 | 40.0 | 0.5 | 190 | 2 | =C13/A13 :: 0.00 | =E13*(B13/A13+D13/C13) :: 0.00
        14 | 60.0 | 0.5 | 289 | 2 | =C14/A14 :: 0.00 | =E14*(B14/A14+D14/C14) :: 0.00
        15 | F₁ is the pull on the lever's piston. The spring scale was hard to hold still, half a newton either way.
        16 | F₂ is the push on the disc. The force sensor shows whole newtons and crept by one more while we read it.
        18 | Table 3. Comparison
        19 | Ratio | Value | Uncertainty
        20 | of the areas, A₂/A₁ | =D7/D6 :: 0.00 | =B20*(E6/D6+E7/D7) :: 0.00
        21 | of the forces, mean of Table 2 | =AVERAGE(E12:E14) :: 0.00 | =AVERAGE(F12:F14) :: 0.00
        22 | difference | =B20-B21 :: 0.00
        23 | The two ratios agree within their uncertainties: pressure is the same at both ends of the hose.
        """);
    page.bold("A1,A4,A10,A18,A5:E5,A11:F11,A19:C19");
    page.measured("d", "mm", "B6:B7").uncertainty("C6:C7").because("A8");
    page.calculated("A", "mm²", "D6:D7").number("78.5", "380.1").uncertainty("E6:E7");
    page.measured("F₁", "N", "A12:A14").uncertainty("B12:B14").because("A15");
    page.measured("F₂", "N", "C12:C14").uncertainty("D12:D14").because("A16");
    page.calculated("F₂/F₁", "", "E12:E14").number("4.8", "4.75", "4.82").uncertainty("F12:F14");
    page.calculated("ratio of the areas", "", "B20").number("4.84").uncertainty("C20");
    page.record(Kind.MEAN, "ratio of the forces", "", "B21").number("4.79").uncertainty("C21");
    page.other(Role.COMPARISON, "B22");
    return drawing;
  }

  /** Full cup minus empty cup; one uncertainty for all weighings. */
  private static Drawing chainOil() {
    Drawing drawing =
        Draw.en("chain-oil", "gross-tare-net", "density of chain oil", Writer.POI_XLS);
    Page page = drawing.page("oil");
    page.rows(
        """
        1 | Density of chain oil
        2 | Ambrose Lindqvist-Dale, Thursday group (a made-up person)
        4 | uncertainty of each weighing (g): | | | 0.02 | two steps of the balance, since drops creep along the rim
        6 | V (mL) | u(V) (mL) | full cup (g) | empty cup (g) | oil (g) | u(oil) (g) | density (g/mL) | u(density) (g/mL)
        7 | 10.0 | 0.3 | 21.19 | 12.48 | =C7-D7 :: 0.00 | =2*$D$4 :: 0.00 | =E7/A7 :: 0.00 | =G7*(B7/A7+F7/E7) :: 0.00
        8 | 20.0 | 0.3 | 29.84 | 12.48 | =C8-D8 :: 0.00 | =2*$D$4 :: 0.00 | =E8/A8 :: 0.000 | =G8*(B8/A8+F8/E8) :: 0.000
        9 | 30.0 | 0.3 | 38.66 | 12.51 | =C9-D9 :: 0.00 | =2*$D$4 :: 0.00 | =E9/A9 :: 0.000 | =G9*(B9/A9+F9/E9) :: 0.000
        11 | u(V): the syringe has a mark each 0.5 mL and the oil stands 0.3 mL higher at the wall than in the middle
        13 | label of the bottle | | | 0.870 | g/mL
        14 | last row minus label | | | =G9-D13 :: 0.000 | g/mL
        """);
    page.bold("A1,A6:H6");
    page.measured("V", "mL", "A7:A9").uncertainty("B7:B9").because("A11");
    page.measured("full cup", "g", "C7:C9").uncertainty("D4").because("E4");
    page.measured("empty cup", "g", "D7:D9").uncertainty("D4").because("E4");
    page.calculated("oil", "g", "E7:E9").number("8.71", "17.36", "26.15").uncertainty("F7:F9");
    page.calculated("density", "g/mL", "G7:G9")
        .number("0.87", "0.868", "0.872")
        .uncertainty("H7:H9");
    page.other(Role.ACCEPTED, "D13").other(Role.COMPARISON, "D14");
    return drawing;
  }

  /** Main scale and vernier read apart, as the manual of an old caliper teaches it. */
  private static Drawing valveStem() {
    Drawing drawing =
        Draw.en("valve-stem", "main-scale-and-vernier", "volume of a valve stem", Writer.POI_XLSX);
    Page page = drawing.page("Vernier");
    page.rows(
        """
        1 | Vernier caliper practice: a blank valve stem
        2 | Philippa Okonjo-Reed (an imaginary trainee)
        3 | Least count L.C. (mm): | 0.02 | Zero error: none
        5 | | No. | M.S.R. (mm) | V.S.R. (div) | M.S.R. + V.S.R. × L.C. (mm)
        6 | diameter | 1 | 7 | 45 | =C6+D6*$B$3 :: 0.00
        7 | | 2 | 7 | 46 | =C7+D7*$B$3 :: 0.00
        8 | | 3 | 7 | 45 | =C8+D8*$B$3 :: 0.00
        9 | length | 1 | 42 | 11 | =C9+D9*$B$3 :: 0.00
        10 | | 2 | 42 | 12 | =C10+D10*$B$3 :: 0.00
        11 | | 3 | 42 | 13 | =C11+D11*$B$3 :: 0.00
        13 | | mean (mm) | half spread (mm) | error (mm) | remark
        14 | diameter d | =AVERAGE(E6:E8) :: 0.00 | =(MAX(E6:E8)-MIN(E6:E8))/2 :: 0.00 | =C14+$B$3 :: 0.00 | half spread of the three plus the least count
        15 | length l | =AVERAGE(E9:E11) :: 0.00 | =(MAX(E9:E11)-MIN(E9:E11))/2 :: 0.00 | =C15+$B$3 :: 0.00 | half spread of the three plus the least count
        17 | volume πd²l/4 (mm³) | =PI()/4*B14^2*B15 :: 0 | error (mm³) | =B17*(2*D14/B14+D15/B15) :: 0
        """);
    page.bold("A1,A5:E5,A13:E13");
    page.other(Role.INDEX, "B6:B11").other(Role.RAW, "C6:D11").other(Role.CALCULATED, "E6:E11");
    page.record(Kind.MEAN, "diameter", "mm", "B14")
        .number("7.91")
        .uncertainty("D14")
        .contribution("repeat", "C14")
        .contribution("instrument", "B3")
        .because("E14");
    page.record(Kind.MEAN, "length", "mm", "B15")
        .number("42.24")
        .uncertainty("D15")
        .contribution("repeat", "C15")
        .contribution("instrument", "B3")
        .because("E15");
    page.calculated("volume", "mm³", "B17").number("2074").uncertainty("D17");
    return drawing;
  }
}
