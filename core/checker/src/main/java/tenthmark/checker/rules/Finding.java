package tenthmark.checker.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.checker.reading.Areas;
import tenthmark.checker.record.Field;
import tenthmark.checker.record.MeasurementRecord;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/**
 * Something that a rule found in a workbook.
 *
 * @param rule whose finding it is; how to fix it stands there
 * @param cell where; for a finding about the whole file the first cell that shows it
 * @param also further cells that have the same fault, which is charged once
 * @param found what stands there
 * @param expected what should stand there and how that was computed
 * @param points what it costs, zero or greater
 * @param mends what would put it right, as far as the rule can tell; nothing once its effects are
 *     known
 * @param effects what follows from it; nothing once causes are found
 * @param record where the value of the measurement record stands in which it is, if it is in one
 * @param cause the finding without which this one would not be there, if there is one
 */
public record Finding(
    RuleDeclaration rule,
    CellAddress cell,
    List<CellAddress> also,
    Message found,
    Message expected,
    double points,
    List<Mend> mends,
    Effects effects,
    Optional<CellAddress> record,
    Optional<Cause> cause) {

  private static final String PERHAPS_THERE = "doubt.found";
  private static final String PERHAPS_MISREAD = "doubt.misread";

  /** Copies the lists. */
  public Finding {
    also = List.copyOf(also);
    mends = List.copyOf(mends);
  }

  /** A finding that costs nothing, of which nobody knows yet how to mend it or why it is there. */
  Finding(RuleDeclaration rule, CellAddress cell, Message found, Message expected) {
    this(
        rule,
        cell,
        List.of(),
        found,
        expected,
        0,
        List.of(),
        Effects.NONE,
        Optional.empty(),
        Optional.empty());
  }

  /** The same finding with what would put it right. */
  Finding mendedBy(List<Mend> contents) {
    return new Finding(rule, cell, also, found, expected, points, contents, effects, record, cause);
  }

  /** The same finding with the number that a part of a record should be, if it has a place. */
  Finding mendedBy(MeasurementRecord measurement, Field part, double number) {
    return mendedBy(
        measurement.place(part).stream().map(place -> Mend.number(place, number)).toList());
  }

  /** The same finding as a note that costs nothing: what is missing may not be understood. */
  Finding inDoubt(Message why) {
    return new Finding(
        rule.withSeverity(Severity.NOTE),
        cell,
        also,
        Message.of(PERHAPS_THERE, found, why),
        Message.of("doubt.expected"),
        0,
        mends,
        effects,
        record,
        cause);
  }

  /** The same finding as a note that costs nothing: the cells may mean something else. */
  Finding perhapsMisread(Message why) {
    return new Finding(
        rule.withSeverity(Severity.NOTE),
        cell,
        also,
        Message.of(PERHAPS_MISREAD, found, why),
        Message.of("doubt.otherwise", expected),
        0,
        mends,
        effects,
        record,
        cause);
  }

  /** Whether it is a note only because something was not understood. */
  boolean isInDoubt() {
    return found.key().equals(PERHAPS_THERE) || found.key().equals(PERHAPS_MISREAD);
  }

  /** The same finding under a rule with another severity, and what it costs. */
  Finding graded(Severity severity, double cost) {
    return new Finding(
        rule.withSeverity(severity),
        cell,
        also,
        found,
        expected,
        cost,
        mends,
        effects,
        record,
        cause);
  }

  /** The same finding as one that follows from another, which is charged alone. */
  Finding following(Finding origin) {
    return new Finding(
        rule,
        cell,
        also,
        found,
        expected,
        0,
        List.of(),
        Effects.NONE,
        record,
        Optional.of(new Cause(origin.rule.id(), origin.cell)));
  }

  /**
   * The same finding as the cause of others. One fault is charged once, as the dearest of what is
   * found of it; a note costs nothing.
   */
  Finding causing(List<Finding> following) {
    double dearest = following.stream().mapToDouble(Finding::points).reduce(points, Math::max);
    return new Finding(
        rule,
        cell,
        also,
        found,
        expected,
        rule.severity() == Severity.NOTE ? 0 : dearest,
        List.of(),
        Effects.NONE,
        record,
        Optional.empty());
  }

  /** The same finding with what follows from it, of which it was put right to find that out. */
  Finding withEffects(Effects known) {
    return new Finding(rule, cell, also, found, expected, points, List.of(), known, record, cause);
  }

  /** The same finding as one in a record, told by where its value stands. */
  Finding inRecord(Optional<CellAddress> value) {
    return new Finding(rule, cell, also, found, expected, points, mends, effects, value, cause);
  }

  /** One fault that several findings of one rule are; the first is told. */
  static Finding joined(List<Finding> same) {
    Finding first = same.get(0);
    return new Finding(
        first.rule,
        first.cell,
        same.stream().skip(1).map(Finding::cell).toList(),
        first.found,
        first.expected,
        first.points,
        same.stream().flatMap(finding -> finding.mends.stream()).toList(),
        first.effects,
        first.record,
        first.cause);
  }

  /** All cells that have the fault. */
  public List<CellAddress> cells() {
    return Stream.concat(Stream.of(cell), also.stream()).toList();
  }

  /** The same finding in each of its cells by itself. */
  public Stream<Finding> apart() {
    return cells().stream()
        .map(
            one ->
                new Finding(
                    rule, one, List.of(), found, expected, points, mends, effects, record, cause));
  }

  /** What was found, and where else. */
  public Message told() {
    return also.isEmpty() ? found : Message.of("found.likewise", found, Areas.inWords(also));
  }

  /** The same, and what that follows from, if it does. */
  public Message said() {
    return cause
        .map(origin -> Message.of("found.following", told(), origin.cell(), origin.rule()))
        .orElse(told());
  }

  /** Whether it follows from another finding. */
  public boolean follows() {
    return cause.isPresent();
  }

  /** Whether it follows from this one. */
  public boolean followsFrom(Finding origin) {
    return cause.equals(Optional.of(new Cause(origin.rule.id(), origin.cell)));
  }
}
