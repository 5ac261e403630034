package tenthmark.samples.classset;

import static tenthmark.samples.classset.Mistake.in;
import static tenthmark.samples.lab.RecordColumns.DIVISION;
import static tenthmark.samples.lab.RecordColumns.ENDS;
import static tenthmark.samples.lab.RecordColumns.INSTRUMENT;
import static tenthmark.samples.lab.RecordColumns.PHYSICAL;
import static tenthmark.samples.lab.RecordColumns.RATIONALE;
import static tenthmark.samples.lab.RecordColumns.READING;
import static tenthmark.samples.lab.RecordColumns.RESULT;
import static tenthmark.samples.lab.RecordColumns.SYMBOL;
import static tenthmark.samples.lab.RecordColumns.TIMING;
import static tenthmark.samples.lab.RecordColumns.UNCERTAINTY;
import static tenthmark.samples.lab.RecordColumns.UNIT;
import static tenthmark.samples.lab.RecordColumns.VALUE;

import java.util.List;
import tenthmark.samples.plan.WorkbookPlan;

/** The mistakes of the class. */
final class Mistakes {

  static final Mistake UNIT_MISSING =
      in("wrote the mass without a unit", "m", UNIT, "", "unit-missing");
  static final Mistake UNCERTAINTY_MISSING =
      in("forgot the total of the tyre pressure", "p", UNCERTAINTY, "", "uncertainty-missing");
  static final Mistake RATIONALE_MISSING =
      in("gave no rationale for the time", "t", RATIONALE, "", "rationale-missing");
  static final Mistake WISHFUL_READING =
      in(
          "typed a tenth of a millimetre for the reading of the crank arm",
          "L",
          READING,
          0.1,
          "reading-differs");
  static final Mistake ONE_END =
      in("counted one end of the foam grip", "G", ENDS, 1, "length-one-end").at("G", READING);
  static final Mistake ONE_END_OF_OWN_FORMULA =
      in(
          "counted one end of the crank arm in a formula of their own",
          "L",
          READING,
          "=LAB_READING(1,\"fine\",1)",
          "length-one-end");
  static final Mistake DISPLAY_READ =
      in(
          "judged half of the last digit on the balance's display",
          "m",
          READING,
          0.05,
          "display-reading");
  static final Mistake REACTION_MISSING =
      in("left the reaction time out", "t", TIMING, "", "reaction-missing");
  static final Mistake PHYSICAL_MISSING =
      in("took the foam grip for hard", "G", PHYSICAL, "", "physical-missing");
  static final Mistake CONTRIBUTION_LEFT_OUT =
      in(
          "added up the foam grip without its physical contribution",
          "G",
          UNCERTAINTY,
          "={reading}*1",
          "total-differs");
  static final Mistake TOTAL_TYPED =
      in("typed a total that is too small", "G", UNCERTAINTY, 0.5, "total-differs")
          .and("G", UNCERTAINTY, "typed-over");
  static final Mistake TYPED_OVER =
      in("typed the right total over the formula", "p", UNCERTAINTY, 0.15, "typed-over");
  static final Mistake DIGITS =
      in(
              "stated the crank arm to a tenth and its uncertainty to a hundredth",
              "L",
              RESULT,
              "172.4 ± 0.70 mm",
              "digits-unmatched")
          .and("L", RESULT, "typed-over");
  static final Mistake RESULT_COPIED_WRONG =
      in("changed two digits over in the result", "L", RESULT, "127.2 ± 0.7 mm", "result-differs")
          .and("L", RESULT, "typed-over");
  static final Mistake WRONG_DIVISION =
      in(
          "took the steel rule for one with half millimetres",
          "L",
          DIVISION,
          0.5,
          "scale-unlike-apparatus");
  static final Mistake WRONG_SPECIFICATION =
      in(
          "halved what the gauge's maker states",
          "p",
          INSTRUMENT,
          0.05,
          "instrument-unlike-apparatus");
  static final Mistake VALUE_TURNED =
      in("wrote 175.2 mm for 172.5 mm", "L", VALUE, 175.2, "accepted-missed");
  static final Mistake DENSITY_TYPED =
      in("typed the density from a calculator", "rho", VALUE, 2.71, "calculation-typed-in");
  static final Mistake TIME_MISSING =
      new Mistake(
          "did not time the wheel",
          List.of(new Change.Drop("t")),
          List.of(new Mistake.Expected(Mistake.CORNER, "quantity-missing")));
  static final Mistake DENSITY_IN_GRAMS =
      in("gave the density in grams", "rho", UNIT, "g", "unit-unlike-expected");
  static final Mistake PRESSURE_IN_KILOPASCALS =
      in("read the gauge's inner ring, in kPa", "p", UNIT, "kPa", "unit-other-than-expected")
          .with("p", VALUE, 410)
          .with("p", UNCERTAINTY, 15);
  static final Mistake UNKNOWN_UNIT =
      in("made up a unit for the pressure", "p", UNIT, "pumps", "unit-unknown");
  static final Mistake DECIMAL_POINT =
      in(
              "wrote the foam grip in decimetres and its uncertainty in millimetres",
              "G",
              VALUE,
              1.28,
              "uncertainty-exceeds-value")
          .at("G", UNCERTAINTY)
          .and("G", VALUE, "digits-unmatched");
  static final Mistake NEGATIVE_EXTENT =
      in("gave a soft edge a negative extent", "G", PHYSICAL, "=LAB_FUZZY(-3,2)", "error-cell");
  static final Mistake MIXED_UNITS =
      in("wrote a contribution in another unit", "G", PHYSICAL, "0.25 cm", "units-mixed")
          .with("G", UNCERTAINTY, 3);
  static final Mistake UNCERTAINTIES_ADDED =
      in(
          "added the uncertainties of mass and volume although the density is a quotient",
          "rho",
          UNCERTAINTY,
          "={m.uncertainty}+{V.uncertainty}",
          "carried-differs");
  static final Mistake VOLUME_FORGOTTEN =
      in(
          "carried the mass alone into the density",
          "rho",
          UNCERTAINTY,
          "={value}*{m.uncertainty}/{m.value}",
          "carried-differs");

  static final Mistake TOTAL_SHORT =
      in(
          "ended the total of the tyre pressure before the empty column Timing",
          "p",
          UNCERTAINTY,
          "=LAB_TOTAL({reading}:{instrument})",
          "total-short");
  static final Mistake SYMBOL_MISSING =
      in("gave the volume no symbol", "V", SYMBOL, "", "symbol-missing");
  static final Mistake RANGE_SHORT =
      in(
          "left the sixth time out of the mean",
          "t",
          VALUE,
          "=AVERAGE({swing1.seconds}:{swing5.seconds})",
          "range-short");
  static final Mistake SLOPE_TOO_SURE =
      in(
          "stated the spring rate to a thousandth although the points scatter",
          "k",
          UNCERTAINTY,
          0.001,
          "slope-too-sure");
  static final Mistake MASS_AS_TEXT =
      in(
          "typed the mass with a decimal comma, which is a text where programs write a point",
          "m",
          VALUE,
          "214,6",
          "number-as-text");

  /** Typed in where the program no longer calculated by itself. */
  static final Mistake RESULT_STALE =
      new Mistake(
          "corrected the tyre pressure and saved without recalculating",
          List.of(new Change.Retype("p", VALUE, 4.15)),
          List.of(new Mistake.Expected("p.result", "result-stale")));

  /** No fault: the checker says what it cannot look at. */
  static final Mistake NOT_CHECKABLE =
      in(
          "added up the foam grip with a function that the checker does not know",
          "G",
          UNCERTAINTY,
          "=TRIMMEAN({contributions},0)*COUNT({contributions})",
          "not-checkable");

  /** No fault either: the file comes out of an office without the extension. */
  static final Mistake WITHOUT_EXTENSION =
      new Mistake(
          "saved it at last on a computer without the extension",
          List.of(),
          List.of(new Mistake.Expected(WorkbookPlan.NOTICE, "saved-without-extension")));

  /** Harmless, and noted. */
  static final Mistake HIDDEN_SHEET =
      new Mistake(
          "left a hidden sheet in the file",
          List.of(),
          List.of(new Mistake.Expected(Mistake.CORNER, "sheet-hidden")));

  /** A choice and no fault, which the checker notes. */
  static final Mistake IN_QUADRATURE =
      new Mistake(
          "carried in quadrature, which is no fault, where the course combines straight",
          List.of(),
          List.of(new Mistake.Expected("rho.uncertainty", "carried-otherwise")));

  private Mistakes() {}
}
