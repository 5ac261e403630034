package tenthmark.checker.profile;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.schema.CoreSchema;
import tenthmark.checker.course.Apparatus;
import tenthmark.checker.course.ApparatusKind;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.checker.course.Specification;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.rounding.Decimals;

/** Writes a profile to go on from, with comments that say what can be added. */
final class ProfileYaml {

  private static final String TOP =
      """
      # What begins with # is a comment: take the # away to use the line. Everything may be left
      # out but name, division and unit. A teaching aid: not for calibration, safety or legal
      # decisions.

      # course: Bicycle workshop physics

      # bench, standard, or one of your own:
      """;

  private static final String OWN_CONVENTION =
      """
      # convention:
      #   name: our bench
      #   wide: 0.1            # part of a division judged between wide marks
      #   fine: 0.25           # and between fine marks
      #   combine: straight    # or quadrature
      #   combine-required: true   # the other way is a fault
      #   digits: bench        # or 1, 2, particle-data
      #   reaction: 0.2        # seconds, in hand timing
      #   coverage: 2          # a stated uncertainty may be so many times its parts

      # The instruments, told from the divisions in the workbook. Give each the name by which
      # students mention it, and the maker's specification.
      """;

  private static final String QUANTITIES =
      """

      # What is expected in a workbook. "also" lists further names; "accepted" with its
      # uncertainty is compared with each result; "gap" is how many times the allowed difference
      # a result may differ. Students' values are not accepted values: fill in your own.
      """;

  private static final String BOTTOM =
      """

      # Severity (error, warning, note, none) and points of single rules; the command rules
      # prints all ids.
      # rules:
      #   digits-unmatched: {severity: note, points: 0.5}

      # How submissions are named: underscore-separated, folder-per-student, or a pattern.
      # submissions: "{section}/{last}_{first}_{id}_attempt_{time}_{any}"

      # What the columns of your roster are called (check --roster).
      # roster: {id: Student number, name: [First name, Last name], section: Group}

      # The grade table: the score without deductions, and what stands under each heading.
      # grades:
      #   maximum: 10
      #   columns: {Student number: id, Name: name, Lab 1: score, Note: status}

      # What your columns are called besides the words that the checker knows.
      # headings:
      #   uncertainty: [incertezza, delta]
      """;
  private final Dump dump =
      new Dump(
          DumpSettings.builder()
              .setSchema(new CoreSchema())
              .setWidth(Integer.MAX_VALUE)
              .setSplitLines(false)
              .build());

  /**
   * All but the tables.
   *
   * @param unknown quantities that are left out because their unit is not known
   */
  String write(
      String workbook,
      Convention convention,
      List<Apparatus> apparatus,
      List<ExpectedQuantity> quantities,
      List<String> unknown) {
    StringBuilder yaml =
        new StringBuilder()
            .append("# A course profile for tenthmark-checker, started from the workbook ")
            .append(text(workbook))
            .append(".\n")
            .append(TOP)
            .append(convention(convention))
            .append(OWN_CONVENTION);
    yaml.append(apparatus.isEmpty() ? "# apparatus:\n" : "apparatus:\n");
    apparatus.forEach(item -> yaml.append(entry(item)));
    yaml.append(QUANTITIES);
    yaml.append(quantities.isEmpty() ? "# quantities:\n" : "quantities:\n");
    quantities.forEach(quantity -> yaml.append(entry(quantity)));
    unknown.forEach(
        left -> yaml.append("  # Left out, for the unit is not known: ").append(left).append('\n'));
    return yaml.append(BOTTOM).toString();
  }

  /** By its name, or what differs from bench. */
  private String convention(Convention convention) {
    Convention bench = Convention.BENCH;
    if (convention.equals(bench)) {
      return "convention: bench\n";
    }
    StringBuilder own = new StringBuilder("# As the totals, readings and timings show it:\n");
    own.append("convention:\n  name: ").append(text(convention.name())).append('\n');
    if (convention.wideFraction() != bench.wideFraction()) {
      own.append("  wide: ").append(number(convention.wideFraction())).append('\n');
    }
    if (convention.fineFraction() != bench.fineFraction()) {
      own.append("  fine: ").append(number(convention.fineFraction())).append('\n');
    }
    if (convention.combine() != bench.combine()) {
      own.append("  combine: ").append(Words.word(convention.combine())).append('\n');
    }
    if (convention.reactionSeconds() != bench.reactionSeconds()) {
      own.append("  reaction: ").append(number(convention.reactionSeconds())).append('\n');
    }
    return own.toString();
  }

  private String entry(Apparatus item) {
    StringBuilder entry = new StringBuilder();
    entry.append("  - name: ").append(text(item.name())).append('\n');
    entry.append("    kind: ").append(Words.word(item.kind())).append('\n');
    entry.append("    division: ").append(number(item.division())).append('\n');
    entry.append("    unit: ").append(text(item.unit().text())).append('\n');
    item.spacing()
        .ifPresent(
            spacing -> entry.append("    spacing: ").append(Words.word(spacing)).append('\n'));
    return entry.append(specification(item)).toString();
  }

  private static String specification(Apparatus item) {
    Optional<Specification> specification = item.specification();
    if (specification.isPresent() && specification.get() instanceof Specification.OfDisplay of) {
      return "    percent: "
          + number(of.display().percent())
          + "\n    counts: "
          + number(of.display().counts())
          + "\n";
    }
    return item.kind() == ApparatusKind.SCALE
        ? "    # half-width: " + number(item.division()) + "\n"
        : "    # percent: 0.5\n    # counts: 1\n";
  }

  private String entry(ExpectedQuantity quantity) {
    StringBuilder entry = new StringBuilder();
    entry.append("  - name: ").append(text(quantity.name())).append('\n');
    entry.append("    # also: [another name]\n");
    quantity
        .symbol()
        .ifPresent(symbol -> entry.append("    symbol: ").append(text(symbol)).append('\n'));
    entry.append("    unit: ").append(text(quantity.unit().text())).append('\n');
    entry.append("    # accepted: 1\n    # uncertainty: 0.1\n    # gap: 1\n");
    entry.append("    origin: ").append(Words.word(quantity.origin())).append('\n');
    entry.append("    required: ").append(quantity.required()).append('\n');
    entry.append("    physical: ").append(quantity.physical()).append('\n');
    quantity
        .apparatus()
        .ifPresent(name -> entry.append("    apparatus: ").append(text(name)).append('\n'));
    return entry.toString();
  }

  /** A text on one line, in quotes where YAML needs them. */
  String text(String text) {
    return dump.dumpToString(text).strip();
  }

  static String number(double number) {
    return Decimals.shortest(number).toString();
  }
}
