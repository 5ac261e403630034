package tenthmark.measurement.functions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tenthmark.measurement.catalogue.Argument;
import tenthmark.measurement.catalogue.Arguments;
import tenthmark.measurement.catalogue.Breakdown;
import tenthmark.measurement.catalogue.Kind;
import tenthmark.measurement.catalogue.Kinds;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.recording.Budget;
import tenthmark.measurement.recording.Contribution;
import tenthmark.measurement.recording.ContributionKind;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/** The table of contributions that several worksheet functions take. */
final class BudgetParameters {

  static final Parameter<List<Contribution>> TABLE =
      Parameter.required(
          "table",
          "Columns: kind (reading, physical, instrument, repeat, timing), what it is due to, size."
              + " Blank rows are skipped.",
          new Kind<>(
              Kind.Form.RANGE,
              Message.of("allowed.contributions"),
              BudgetParameters::contributionsIn));

  private static final List<String> COLUMNS =
      List.of("column.kind", "column.dueto", "column.size", Breakdown.SHARE);

  private static final Kind<String> WORD = Kinds.text();
  private static final Kind<ContributionKind> KIND =
      new Kind<>(
          Kind.Form.TEXT,
          allowedKinds(),
          argument -> ContributionKind.named(WORD.read(argument)).orElseThrow(argument::refused));
  private static final Kind<String> DUE_TO = Kinds.text();
  private static final Kind<Double> SIZE = Kinds.notNegative();

  private BudgetParameters() {}

  private static Message allowedKinds() {
    return Message.of("allowed.choice", ContributionKind.allInWords());
  }

  static Budget budgetIn(Arguments arguments) {
    return new Budget(arguments.get(TABLE), arguments.get(CommonParameters.COMBINE));
  }

  /** One row for each contribution with its share, and the total in the last row. */
  static Value.Table rowsIn(Arguments arguments) {
    Sentences sentences = arguments.sentences();
    Budget budget = budgetIn(arguments);
    List<List<Value>> rows = new ArrayList<>();
    List<Double> shares = budget.shares();
    for (int i = 0; i < shares.size(); i++) {
      Contribution contribution = budget.contributions().get(i);
      rows.add(
          List.of(
              Value.of(contribution.kind().word(sentences)),
              Value.of(contribution.dueTo()),
              Value.of(contribution.size()),
              Value.of(shares.get(i))));
    }
    double total = budget.total().doubleValue();
    rows.add(
        List.of(
            Value.of(sentences.say("label.total")),
            Value.BLANK,
            Value.of(total),
            Value.of(total == 0 ? 0 : 1)));
    return new Value.Table(rows);
  }

  static Optional<Breakdown> breakdownIn(Arguments arguments) {
    return Optional.of(new Breakdown(COLUMNS, rowsIn(arguments), Optional.empty(), List.of()));
  }

  private static List<Contribution> contributionsIn(Argument argument) {
    Value.Table table = argument.table();
    if (table.width() != 3) {
      throw argument.refused();
    }
    List<Contribution> contributions = new ArrayList<>();
    for (int row = 0; row < table.height(); row++) {
      if (!isBlank(table.rows().get(row))) {
        contributions.add(contribution(argument, table, row));
      }
    }
    if (contributions.isEmpty()) {
      throw argument.refusedAs(Message.of("found.blank.rows"));
    }
    return contributions;
  }

  private static Contribution contribution(Argument argument, Value.Table table, int row) {
    boolean unexplained = table.rows().get(row).get(1) instanceof Value.Blank;
    return new Contribution(
        argument.cell(row, 0, KIND),
        unexplained ? "" : argument.cell(row, 1, DUE_TO).strip(),
        argument.cell(row, 2, SIZE));
  }

  private static boolean isBlank(List<Value> row) {
    return row.stream().allMatch(Value.Blank.class::isInstance);
  }
}
