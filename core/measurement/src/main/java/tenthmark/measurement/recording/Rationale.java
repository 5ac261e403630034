package tenthmark.measurement.recording;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.measurement.rounding.PowerOfTen;
import tenthmark.measurement.rounding.Written;
import tenthmark.measurement.wording.Sentences;

/**
 * The text under a record that says where its uncertainty comes from, kind by kind.
 *
 * @param unit of the contributions; empty for none
 * @param sentences the language
 */
public record Rationale(Budget budget, String unit, Sentences sentences) {

  /** Kinds that every record must speak about, even if only to call them negligible. */
  private static final Set<ContributionKind> ALWAYS =
      EnumSet.of(ContributionKind.READING, ContributionKind.PHYSICAL, ContributionKind.INSTRUMENT);

  private static final int DIGITS_SHOWN = 4;

  private static final String WITHOUT_CAUSE = "rationale.contribution.unexplained";

  /** What stands in a text of any language behind a contribution whose cause is not given. */
  private static final List<String> NO_CAUSE =
      Sentences.inEveryLanguage(WITHOUT_CAUSE).stream()
          .map(phrase -> phrase.replace("{0}", "").strip())
          .toList();

  /** Whether a text says itself that it does not give the cause of a contribution. */
  public static boolean lacksCause(String text) {
    return NO_CAUSE.stream().anyMatch(text::contains);
  }

  /** The whole text, one sentence for each kind and one for the total. */
  public String text() {
    return Stream.concat(
            Stream.of(ContributionKind.values()).map(this::about).flatMap(Optional::stream),
            Stream.of(total()))
        .collect(Collectors.joining(" "));
  }

  private Optional<String> about(ContributionKind kind) {
    String key = "rationale." + word(kind);
    List<Contribution> present =
        budget.contributions().stream()
            .filter(contribution -> contribution.kind() == kind && contribution.size() > 0)
            .toList();
    if (present.isEmpty()) {
      return ALWAYS.contains(kind)
          ? Optional.of(sentences.say(key + ".negligible"))
          : Optional.empty();
    }
    return Optional.of(sentences.say(key, list(present.stream().map(this::phrase).toList())));
  }

  private String list(List<String> phrases) {
    String list = phrases.get(0);
    for (int i = 1; i < phrases.size(); i++) {
      boolean last = i == phrases.size() - 1;
      list =
          sentences.say(last ? "rationale.list.last" : "rationale.list.next", list, phrases.get(i));
    }
    return list;
  }

  private String phrase(Contribution contribution) {
    String size = quantity(Written.shown(contribution.size()));
    return contribution.dueTo().isEmpty()
        ? sentences.say(WITHOUT_CAUSE, size)
        : sentences.say("rationale.contribution", size, withoutFullStop(contribution.dueTo()));
  }

  private String total() {
    BigDecimal total = budget.total();
    return total.signum() == 0
        ? sentences.say("rationale.total.zero")
        : sentences.say("rationale.total." + word(budget.combine()), quantity(total));
  }

  private String quantity(BigDecimal size) {
    String number = PowerOfTen.show(size, DIGITS_SHOWN, sentences.decimalSign());
    return unit.isEmpty() ? number : sentences.say("quantity", number, unit);
  }

  private static String withoutFullStop(String text) {
    return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}
