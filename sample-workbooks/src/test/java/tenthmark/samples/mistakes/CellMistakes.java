package tenthmark.samples.mistakes;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.checker.workbook.Content;
import tenthmark.measurement.formula.CellAddress;

/** Mistakes in what is typed into single cells of records. */
final class CellMistakes {

  private static final String FAMILY = "cells";
  private static final MathContext TEN = new MathContext(8);

  private CellMistakes() {}

  static List<Mistake> all() {
    return List.of(
        new Mistake(
            "uncertainty left out",
            FAMILY,
            Set.of("uncertainty-missing"),
            subject ->
                typedUncertainties(subject)
                    .map(record -> Planted.blank(cell(record)).near(record.places()))),
        new Mistake(
            "negative uncertainty",
            FAMILY,
            Set.of("uncertainty-not-positive"),
            subject ->
                typedUncertainties(subject)
                    .map(record -> scaled(subject, record, cell(record), -1))),
        new Mistake(
            "uncertainty of zero",
            FAMILY,
            Set.of("uncertainty-not-positive"),
            subject ->
                typedUncertainties(subject)
                    .map(record -> scaled(subject, record, cell(record), 0))),
        new Mistake(
            "value and uncertainty changed places",
            FAMILY,
            Set.of("uncertainty-exceeds-value"),
            subject ->
                typedUncertainties(subject)
                    .filter(record -> subject.typed(record.value()).isPresent())
                    .map(record -> swapped(subject, record))),
        new Mistake(
            "contribution too large for its typed total, by a decimal point",
            FAMILY,
            Set.of("total-differs"),
            subject ->
                withTypedTotal(subject).flatMap(record -> contributions(subject, record, 10))),
        new Mistake(
            "total typed with one contribution left out",
            FAMILY,
            Set.of("total-differs"),
            subject ->
                subject
                    .records()
                    .filter(record -> record.contributions().size() > 1)
                    .filter(record -> record.uncertainty().isPresent())
                    .map(
                        record ->
                            Planted.number(cell(record), largest(subject, record))
                                .near(record.places()))),
        new Mistake(
            "number typed with the other decimal sign, as text",
            FAMILY,
            Set.of("number-as-text"),
            subject ->
                subject
                    .records("measured")
                    .filter(record -> subject.typed(record.value()).isPresent())
                    .filter(record -> isUsed(subject, record.value()))
                    .map(record -> asText(subject, record))),
        new Mistake(
            "reason left out",
            FAMILY,
            Set.of("rationale-missing"),
            subject ->
                subject
                    .records("measured")
                    .filter(
                        record -> record.reason().filter(cell -> isOnly(subject, cell)).isPresent())
                    .map(
                        record ->
                            Planted.blank(record.reason().orElseThrow()).near(record.places()))),
        new Mistake(
            "reason without content",
            FAMILY,
            Set.of("rationale-missing"),
            subject ->
                subject
                    .records("measured")
                    .filter(
                        record -> record.reason().filter(cell -> isOnly(subject, cell)).isPresent())
                    .map(
                        record ->
                            Planted.at(
                                    record.reason().orElseThrow(), new Content.Text("human error"))
                                .near(record.places()))),
        new Mistake(
            "typed total ten times too large",
            FAMILY,
            Set.of("total-differs"),
            subject ->
                withTypedTotal(subject).map(record -> scaled(subject, record, cell(record), 10))),
        new Mistake(
            "negative contribution",
            FAMILY,
            Set.of("uncertainty-not-positive"),
            subject -> subject.records().flatMap(record -> contributions(subject, record, -1))),
        new Mistake(
            "unit typed into the cell of a number that is used",
            FAMILY,
            Set.of("number-as-text", "error-cell"),
            subject ->
                subject
                    .records("measured")
                    .filter(record -> subject.typed(record.value()).isPresent())
                    .filter(record -> !record.unit().isEmpty())
                    .filter(record -> isUsed(subject, record.value()))
                    .map(
                        record ->
                            Planted.at(
                                    record.value(),
                                    new Content.Text(
                                        subject.typed(record.value()).orElseThrow()
                                            + " "
                                            + record.unit()))
                                .near(record.places())
                                .near(users(subject, record)))),
        new Mistake(
            "word in the place of a number that is used",
            FAMILY,
            Set.of("error-cell", "number-as-text", "not-read"),
            subject ->
                subject
                    .records("measured")
                    .filter(record -> subject.typed(record.value()).isPresent())
                    .filter(record -> isUsed(subject, record.value()))
                    .map(
                        record ->
                            Planted.at(record.value(), new Content.Text("about 5"))
                                .near(record.places())
                                .near(users(subject, record)))),
        new Mistake(
            "digits of a value that its uncertainty does not support",
            FAMILY,
            Set.of("digits-unmatched"),
            subject ->
                typedUncertainties(subject)
                    .filter(record -> subject.typed(record.value()).filter(v -> v != 0).isPresent())
                    .map(record -> more(subject, record, record.value()))),
        new Mistake(
            "uncertainty with four digits",
            FAMILY,
            Set.of("digits-unmatched"),
            subject ->
                typedUncertainties(subject).map(record -> more(subject, record, cell(record)))),
        new Mistake(
            "value typed over what is measured elsewhere",
            FAMILY,
            Set.of("typed-over", "carried-differs", "calculation-typed-in", "digits-unmatched"),
            subject ->
                subject
                    .records("calculated")
                    .filter(record -> subject.formula(record.value()).isPresent())
                    .filter(record -> subject.number(record.value()).isPresent())
                    .map(
                        record ->
                            Planted.number(
                                    record.value(),
                                    1.07 * subject.number(record.value()).orElseThrow())
                                .near(record.places()))));
  }

  private static Planted more(Subject subject, Stated record, CellAddress cell) {
    double number = subject.typed(cell).orElseThrow();
    return Planted.number(cell, new BigDecimal(number * 1.00123457).round(TEN).doubleValue())
        .near(record.places());
  }

  private static Set<CellAddress> users(Subject subject, Stated used) {
    return subject
        .formulas()
        .filter(cell -> subject.precedents(cell).contains(used.value()))
        .collect(Collectors.toSet());
  }

  private static Stream<Stated> typedUncertainties(Subject subject) {
    return subject
        .records("measured")
        .filter(record -> record.uncertainty().flatMap(subject::typed).isPresent());
  }

  private static Stream<Stated> withTypedTotal(Subject subject) {
    return typedUncertainties(subject).filter(record -> !record.contributions().isEmpty());
  }

  private static CellAddress cell(Stated record) {
    return record.uncertainty().orElseThrow();
  }

  static Planted scaled(Subject subject, Stated record, CellAddress cell, double factor) {
    return Planted.number(cell, subject.typed(cell).orElseThrow() * factor).near(record.places());
  }

  private static Stream<Planted> contributions(Subject subject, Stated record, double factor) {
    return record.contributions().values().stream()
        .filter(cell -> subject.typed(cell).filter(size -> size > 0).isPresent())
        .map(cell -> scaled(subject, record, cell, factor));
  }

  private static double largest(Subject subject, Stated record) {
    return record.contributions().values().stream()
        .flatMap(cell -> subject.number(cell).stream())
        .mapToDouble(size -> size)
        .max()
        .orElse(0);
  }

  private static Planted swapped(Subject subject, Stated record) {
    return Planted.number(record.value(), subject.typed(cell(record)).orElseThrow())
        .and(Planted.number(cell(record), subject.typed(record.value()).orElseThrow()))
        .near(record.places());
  }

  private static boolean isUsed(Subject subject, CellAddress cell) {
    return subject.formulas().anyMatch(formula -> subject.precedents(formula).contains(cell));
  }

  private static Planted asText(Subject subject, Stated record) {
    String text =
        String.format(Locale.ROOT, "%.2f", subject.typed(record.value()).orElseThrow())
            .replace('.', ',');
    return Planted.at(record.value(), new Content.Text(text)).near(record.places());
  }

  /** Whether a reason is that of one record alone. */
  private static boolean isOnly(Subject subject, CellAddress reason) {
    return subject.text(reason).isPresent()
        && subject
                .records()
                .filter(record -> record.reason().filter(reason::equals).isPresent())
                .count()
            == 1;
  }
}
