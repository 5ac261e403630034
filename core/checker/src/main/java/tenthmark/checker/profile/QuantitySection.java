package tenthmark.checker.profile;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.course.AcceptedValue;
import tenthmark.checker.course.ExpectedQuantity;
import tenthmark.checker.course.Origin;
import tenthmark.checker.unit.UnitText;

/** The entries of the list of quantities. */
final class QuantitySection {

  private static final String APPARATUS = "apparatus";
  private static final List<String> WITH_ACCEPTED = List.of("uncertainty", "gap");

  private final Set<String> apparatus;
  private final Set<String> names = new HashSet<>();

  /**
   * @param apparatus the names that an entry may refer to
   */
  QuantitySection(Set<String> apparatus) {
    this.apparatus = apparatus;
  }

  Optional<ExpectedQuantity> read(Section section) {
    Optional<String> name = section.requiredText("name");
    if (name.isPresent() && !names.add(name.get())) {
      section.valueProblem("name", "there is a quantity " + name.get() + " above");
    }
    Optional<String> symbol = section.text("symbol");
    List<String> also = section.texts("also");
    Optional<UnitText.Known> unit = UnitKey.read(section);
    Optional<AcceptedValue> accepted = accepted(section);
    Origin origin = section.choice("origin", Words.of(Origin.values())).orElse(Origin.ANY);
    boolean required = section.flag("required").orElse(true);
    boolean physical = section.flag("physical").orElse(false);
    Optional<String> instrument = section.text(APPARATUS);
    if (instrument.filter(named -> !apparatus.contains(named)).isPresent()) {
      section.valueProblem(APPARATUS, "there is no apparatus " + instrument.get() + " in the list");
    }
    section.close();
    return name.isEmpty() || unit.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new ExpectedQuantity(
                name.get(),
                symbol,
                also,
                unit.get(),
                accepted,
                origin,
                required,
                physical,
                instrument));
  }

  private static Optional<AcceptedValue> accepted(Section section) {
    Optional<Double> value = section.number("accepted", Range.ANY);
    double uncertainty = section.number("uncertainty", Range.NOT_NEGATIVE).orElse(0.0);
    double gap = section.number("gap", Range.POSITIVE).orElse(1.0);
    if (section.value("accepted").isEmpty()) {
      WITH_ACCEPTED.stream()
          .filter(key -> section.value(key).isPresent())
          .forEach(key -> section.keyProblem(key, key + " needs an accepted value"));
    }
    return value.map(number -> new AcceptedValue(number, uncertainty, gap));
  }
}
