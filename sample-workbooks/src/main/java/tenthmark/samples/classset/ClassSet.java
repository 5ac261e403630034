package tenthmark.samples.classset;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tenthmark.samples.book.SampleBook;
import tenthmark.samples.plan.Places;
import tenthmark.samples.plan.Texts;

/** The submissions of a class after its first bench session. */
public final class ClassSet {

  private static final String ODS = "ods";
  private static final String XLSX = "xlsx";

  private final List<Submission> submissions = new ArrayList<>();

  private ClassSet() {
    add("Ada Brook", Layout.FULL, Method.LAB, ODS);
    add("Ben Castle", Layout.FULL, Method.LAB, ODS, Mistakes.UNIT_MISSING);
    add("Cleo Dunn", Layout.FULL, Method.LAB, XLSX, Mistakes.WISHFUL_READING, Mistakes.TOTAL_SHORT);
    add("Dov Ellis", Layout.FULL, Method.LAB, ODS, Mistakes.ONE_END, Mistakes.REACTION_MISSING);
    add(
        "Elsa Ford",
        Layout.SERIES,
        Method.LAB,
        XLSX,
        Mistakes.WRONG_DIVISION,
        Mistakes.SLOPE_TOO_SURE);
    add(
        "Finn Gale",
        Layout.HIDDEN,
        Method.LAB,
        ODS,
        Mistakes.RESULT_COPIED_WRONG,
        Mistakes.HIDDEN_SHEET);
    add("Gita Hall", Layout.MERGED, Method.LAB, XLSX, Mistakes.DISPLAY_READ, Mistakes.RESULT_STALE);
    add("Hugo Iver", Layout.MERGED, Method.ROOTS, ODS, Mistakes.IN_QUADRATURE);
    add(
        "Ines Jolly",
        Layout.SERIES,
        Method.LAB,
        ODS,
        Mistakes.NEGATIVE_EXTENT,
        Mistakes.RANGE_SHORT);
    add("Jack Kerr", Layout.SERIES, Method.LAB, ODS);
    add("Kira Lund", Layout.BELOW, Method.LAB, XLSX, Mistakes.TOTAL_TYPED);
    add("Leo Moss", Layout.BELOW, Method.LAB, ODS, Mistakes.DIGITS, Mistakes.SYMBOL_MISSING);
    add("Mina Nash", Layout.SIDEWAYS, Method.LAB, XLSX, Mistakes.PHYSICAL_MISSING);
    add(
        "Nils Orr",
        Layout.BELOW,
        Method.LAB,
        ODS,
        Mistakes.ONE_END_OF_OWN_FORMULA,
        Mistakes.WITHOUT_EXTENSION);
    add("Olga Pike", Layout.REORDERED, Method.SUMS, XLSX, Mistakes.MASS_AS_TEXT);
    add(
        "Pia Quinn",
        Layout.REORDERED,
        Method.SUMS,
        ODS,
        Mistakes.UNCERTAINTY_MISSING,
        Mistakes.NOT_CHECKABLE);
    add(
        "Quin Reed",
        Layout.REORDERED,
        Method.ROOTS,
        XLSX,
        Mistakes.CONTRIBUTION_LEFT_OUT,
        Mistakes.IN_QUADRATURE);
    add("Rosa Shaw", Layout.REORDERED, Method.SUMS, ODS, Mistakes.UNCERTAINTIES_ADDED);
    add("Sam Tate", Layout.REORDERED, Method.LAB, XLSX, Mistakes.TYPED_OVER);
    add("Tess Upton", Layout.SIDEWAYS, Method.SUMS, ODS);
    add("Udo Vance", Layout.HEADINGS, Method.LAB, XLSX, Mistakes.WRONG_SPECIFICATION);
    add("Vera Wood", Layout.HEADINGS, Method.ROOTS, ODS, Mistakes.VOLUME_FORGOTTEN);
    add("Wim Yates", Layout.HEADINGS, Method.SUMS, XLSX, Mistakes.MIXED_UNITS);
    add("Xenia Zorn", Layout.PLAIN, Method.TYPED, XLSX);
    add("Yuri Abel", Layout.PLAIN, Method.TYPED, ODS, Mistakes.DENSITY_TYPED);
    add(
        "Zoe Birch",
        Layout.PLAIN,
        Method.TYPED,
        XLSX,
        Mistakes.VALUE_TURNED,
        Mistakes.RATIONALE_MISSING);
    add("Arlo Cole", Layout.PLAIN, Method.TYPED, ODS, Mistakes.PRESSURE_IN_KILOPASCALS);
    add("Bea Dale", Layout.COMMAS, Method.TYPED, ODS);
    add(
        "Carl Eden",
        Layout.COMMAS,
        Method.TYPED,
        XLSX,
        Mistakes.TIME_MISSING,
        Mistakes.DENSITY_IN_GRAMS);
    add(
        "Dina Frost",
        Layout.COMMAS,
        Method.TYPED,
        ODS,
        Mistakes.UNKNOWN_UNIT,
        Mistakes.DECIMAL_POINT);
  }

  /** All submissions, by number. */
  public static List<Submission> all() {
    return List.copyOf(new ClassSet().submissions);
  }

  private void add(
      String student, Layout layout, Method method, String format, Mistake... mistakes) {
    submissions.add(
        new Submission(submissions.size() + 1, student, layout, method, format, List.of(mistakes)));
  }

  /** What the course expects of the class: a profile for the checker. */
  public static String profile() {
    return Texts.read(ClassSet.class, "class-set.yaml");
  }

  /** The roster of the class, with one student who handed in nothing. */
  public static String roster() {
    return "id,name,section\n"
        + all().stream()
            .map(one -> "%02d,%s,%s\n".formatted(one.number(), one.student(), day(one.number())))
            .collect(Collectors.joining())
        + "31,Emil Grant,Wednesday\n";
  }

  private static String day(int number) {
    return number <= 15 ? "Tuesday" : "Wednesday";
  }

  /** An instructor's remarks on the class. */
  public static String remarks() {
    return """
        student,rule,cell,points,because
        19,typed-over,,0.5,The number is right; next time leave the formula in the cell.
        """;
  }

  /** The list of what is planted, in Markdown. */
  public static String list() {
    return """
        # The class set

        Thirty submissions of one bench session, with an invented class and invented numbers, and the
        mistakes planted in them. This list is made from the same table as the workbooks; a test
        holds that the checker, with `class-set.yaml`, finds every one of them and nothing else.

        %s

        | File | Student | Layout | Uncertainties | Mistake | Findings |
        |---|---|---|---|---|---|
        """
            .formatted(SampleBook.CAUTION)
        + all().stream().flatMap(one -> lines(one).stream()).collect(Collectors.joining());
  }

  private static List<String> lines(Submission submission) {
    String start =
        "| %s.%s | %s | %s | %s | "
            .formatted(
                submission.fileName(),
                submission.format(),
                submission.student(),
                submission.layout().words(),
                submission.method().words());
    if (submission.mistakes().isEmpty()) {
      return List.of(start + "none | none |\n");
    }
    Places places = submission.plan().places();
    return submission.mistakes().stream()
        .map(
            mistake ->
                start
                    + mistake.words()
                    + " | "
                    + mistake.findings().stream()
                        .map(found -> cell(found, places) + " `" + found.rule() + "`")
                        .collect(Collectors.joining(", "))
                    + " |\n")
        .toList();
  }

  /** The findings that a submission has to have, as in {@code H5 length-one-end}. */
  public static List<String> expected(Submission submission) {
    Places places = submission.plan().places();
    return submission.mistakes().stream()
        .flatMap(mistake -> mistake.findings().stream())
        .map(found -> cell(found, places) + " " + found.rule())
        .toList();
  }

  private static String cell(Mistake.Expected found, Places places) {
    return found.cell().equals(Mistake.CORNER) ? "A1" : places.address(found.cell());
  }
}
