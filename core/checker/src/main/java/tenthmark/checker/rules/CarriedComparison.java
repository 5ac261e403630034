package tenthmark.checker.rules;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.carried.CarriedUncertainty;
import tenthmark.checker.carried.Claim;
import tenthmark.checker.carried.Derivation;
import tenthmark.checker.carried.RecordedInput;
import tenthmark.checker.carried.Way;
import tenthmark.measurement.formula.CellAddress;

/** A stated uncertainty beside what carrying the recorded ones gives. */
record CarriedComparison(Derivation.Followed derivation) {

  Claim claim() {
    return derivation.claim();
  }

  /** The ways that give the stated number. */
  Set<Way> fitting() {
    Set<Way> fitting = EnumSet.noneOf(Way.class);
    for (CarriedUncertainty carried : derivation.carried()) {
      carried
          .sizes()
          .forEach(
              (way, size) -> {
                if (Numbers.agreesAsUncertainty(claim().uncertainty(), size)) {
                  fitting.add(way);
                }
              });
    }
    return fitting;
  }

  /** Why the checker cannot tell whether a number that fits in no way is wrong. */
  Optional<String> doubt() {
    Optional<String> undefined =
        derivation.carried().stream().flatMap(carried -> carried.problem().stream()).findFirst();
    double least =
        derivation.carried().stream()
            .flatMap(carried -> carried.sizes().values().stream())
            .mapToDouble(size -> size)
            .min()
            .orElse(0);
    return !derivation.besides().isEmpty() && claim().uncertainty() > least
        ? Optional.of(
            "it may include what no record holds: the number in " + places(derivation.besides()))
        : undefined;
  }

  /** Whether the number is certainly none that carrying gives. */
  boolean differs() {
    return fitting().isEmpty() && doubt().isEmpty();
  }

  /** What carrying gives, with each input's sensitivity coefficient and uncertainty. */
  String expected() {
    List<String> parts = new ArrayList<>();
    for (CarriedUncertainty carried : derivation.carried()) {
      String from = parts.isEmpty() ? "" : "from the measurements behind them ";
      parts.add(from + sizes(carried));
    }
    String exact =
        derivation.exact().isEmpty() ? "" : "; taken as exact: " + places(derivation.exact());
    return String.join("; ", parts) + exact + without();
  }

  private static String sizes(CarriedUncertainty carried) {
    List<String> sizes = new ArrayList<>();
    for (Way way : Way.values()) {
      if (carried.sizes().containsKey(way)) {
        String how =
            switch (way) {
              case STRAIGHT -> way.words() + ": " + contributions(carried);
              case QUADRATURE -> way.words() + " of the same";
              case EXTREMES -> way.words();
            };
        sizes.add(Numbers.showBriefly(carried.sizes().get(way)) + " (" + how + ")");
      }
    }
    return String.join(" or ", sizes);
  }

  private static String contributions(CarriedUncertainty carried) {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < carried.inputs().size(); i++) {
      RecordedInput input = carried.inputs().get(i);
      parts.add(
          input.name()
              + " "
              + Numbers.showBriefly(Math.abs(carried.sensitivities().get(i)))
              + " x "
              + Numbers.showBriefly(input.uncertainty()));
    }
    return String.join(" + ", parts);
  }

  /** The input without which the number would fit, if there is one. */
  private String without() {
    for (CarriedUncertainty carried : derivation.carried()) {
      for (int i = 0; i < carried.inputs().size() && carried.inputs().size() > 1; i++) {
        for (Way way : List.of(Way.STRAIGHT, Way.QUADRATURE)) {
          double rest = carried.without(i, way);
          if (rest != 0 && Numbers.agreesAsUncertainty(claim().uncertainty(), rest)) {
            return "; the number fits "
                + way.words()
                + " without "
                + carried.inputs().get(i).name();
          }
        }
      }
    }
    return "";
  }

  private static String places(List<CellAddress> cells) {
    int shown = 3;
    String places = String.join(", ", cells.stream().limit(shown).map(CellAddress::place).toList());
    return cells.size() > shown ? places + ", ..." : places;
  }
}
