package tenthmark.samples;

import static tenthmark.samples.BenchRecord.Kind.INSTRUMENT;
import static tenthmark.samples.BenchRecord.Kind.PHYSICAL;
import static tenthmark.samples.BenchRecord.Kind.READING;
import static tenthmark.samples.BenchRecord.Kind.REPEAT;
import static tenthmark.samples.BenchRecord.Kind.TIMING;

import java.util.List;
import tenthmark.samples.BenchRecord.Contribution;

/** The measurements of the first bench session; every number is invented. */
final class BenchRecords {

  /** Where the repeated timings stand. */
  static final String SPINS = "Repeats!$B$4:$B$9";

  private static final String SCALE_READING = "=LAB_READING(E#,F#,G#)";

  private BenchRecords() {}

  static List<BenchRecord> all() {
    return List.of(
        new BenchRecord(
            "Crank arm, axle to pedal hole",
            "L",
            172.375,
            "mm",
            0.5,
            "fine",
            2,
            List.of(
                new Contribution(READING, "judging both ends on the steel rule", SCALE_READING),
                new Contribution(
                    PHYSICAL, "finding the middle of each hole", "=LAB_FUZZY(0.2,0.2)"))),
        new BenchRecord(
            "Tyre pressure, front",
            "p",
            4.15,
            "bar",
            0.5,
            "wide",
            1,
            List.of(
                new Contribution(READING, "judging the needle", SCALE_READING),
                new Contribution(INSTRUMENT, "the gauge maker's specification", 0.1))),
        new BenchRecord(
            "Foam grip, length",
            "G",
            128.25,
            "mm",
            1,
            "fine",
            2,
            List.of(
                new Contribution(READING, "judging both ends on the tape", SCALE_READING),
                new Contribution(PHYSICAL, "the soft edges of the foam", "=LAB_FUZZY(3,2)"))),
        new BenchRecord(
            "Crank arm, mass",
            "m",
            642,
            "g",
            "",
            "",
            "",
            List.of(
                new Contribution(
                    INSTRUMENT,
                    "the balance maker's specification, 0.2 % and two counts",
                    "=LAB_DISPLAY(1,C#,0.2,2)"))),
        new BenchRecord(
            "Spoke, diameter",
            "d",
            2.013,
            "mm",
            0.01,
            "wide",
            2,
            List.of(
                new Contribution(
                    READING, "judging the thimble closed and on the spoke", SCALE_READING),
                new Contribution(INSTRUMENT, "the micrometer maker's specification", 0.002))),
        new BenchRecord(
            "Wheel, time of ten swings",
            "t",
            15.83,
            "s",
            "",
            "",
            "",
            List.of(
                new Contribution(TIMING, "reaction at start and stop", "=LAB_HANDTIMED()"),
                new Contribution(INSTRUMENT, "the stopwatch display", "=LAB_DISPLAY(0.01)"))),
        new BenchRecord(
            "Wheel, mean time to come to rest",
            "T",
            "=AVERAGE(" + SPINS + ")",
            "s",
            "",
            "",
            "",
            List.of(
                new Contribution(
                    REPEAT, "the scatter of six repeats", "=LAB_REPEATS(" + SPINS + ",\"sdom\")"),
                new Contribution(TIMING, "reaction at start and stop", "=LAB_HANDTIMED()"))));
  }
}
