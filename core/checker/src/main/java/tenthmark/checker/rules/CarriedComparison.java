package tenthmark.checker.rules;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.carried.CarriedUncertainty;
import tenthmark.checker.carried.Claim;
import tenthmark.checker.carried.Derivation;
import tenthmark.checker.carried.RecordedInput;
import tenthmark.checker.carried.Way;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Message;

/** A stated uncertainty beside what carrying the recorded ones gives. */
record CarriedComparison(Derivation.Followed derivation, Expansion expansion) {

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
                if (Numbers.agreesAsUncertainty(claim().uncertainty(), size)
                    || expansion.isOf(size, claim().uncertainty())) {
                  fitting.add(way);
                }
              });
    }
    return fitting;
  }

  /** What carrying gives in one way, the student's own formula followed as far as it goes. */
  Optional<Double> size(Way way) {
    return derivation.carried().stream()
        .flatMap(carried -> Optional.ofNullable(carried.sizes().get(way)).stream())
        .findFirst();
  }

  /** Why the checker cannot tell whether a number that fits in no way is wrong. */
  Optional<Message> doubt() {
    Optional<Message> undefined =
        derivation.carried().stream().flatMap(carried -> carried.problem().stream()).findFirst();
    double least =
        derivation.carried().stream()
            .flatMap(carried -> carried.sizes().values().stream())
            .mapToDouble(size -> size)
            .min()
            .orElse(0);
    return !derivation.besides().isEmpty() && claim().uncertainty() > least
        ? Optional.of(Message.of("carried.besides", places(derivation.besides())))
        : undefined;
  }

  /** Whether the number is certainly none that carrying gives. */
  boolean differs() {
    return fitting().isEmpty() && doubt().isEmpty();
  }

  /** What carrying gives, with each input's sensitivity coefficient and uncertainty. */
  Message expected() {
    List<Message> parts = new ArrayList<>();
    for (CarriedUncertainty carried : derivation.carried()) {
      Message sizes = sizes(carried);
      parts.add(parts.isEmpty() ? sizes : Message.of("carried.behind", sizes));
    }
    if (!derivation.exact().isEmpty()) {
      parts.add(Message.of("carried.exact", places(derivation.exact())));
    }
    without().ifPresent(parts::add);
    return Message.joined("list.further", parts);
  }

  /** One input alone gives the same in every way; no number is said twice. */
  private static Message sizes(CarriedUncertainty carried) {
    if (carried.inputs().size() == 1 && carried.sizes().containsKey(Way.STRAIGHT)) {
      return Message.of(
          "total.alone",
          Numbers.showBriefly(carried.sizes().get(Way.STRAIGHT)),
          contributions(carried));
    }
    List<Message> sizes = new ArrayList<>();
    Set<Message> said = new HashSet<>();
    for (Way way : Way.values()) {
      if (carried.sizes().containsKey(way)
          && said.add(Numbers.showBriefly(carried.sizes().get(way)))) {
        Message size = Numbers.showBriefly(carried.sizes().get(way));
        sizes.add(
            switch (way) {
              case STRAIGHT -> Message.of("total.straight", size, contributions(carried));
              case QUADRATURE -> Message.of("total.quadrature", size);
              case EXTREMES -> Message.of("carried.extremes", size);
            });
      }
    }
    return Message.joined("list.or", sizes);
  }

  private static Message contributions(CarriedUncertainty carried) {
    List<Message> parts = new ArrayList<>();
    for (int i = 0; i < carried.inputs().size(); i++) {
      RecordedInput input = carried.inputs().get(i);
      parts.add(
          Message.of(
              "carried.contribution",
              input.name(),
              Numbers.showBriefly(Math.abs(carried.sensitivities().get(i))),
              Numbers.showBriefly(input.uncertainty())));
    }
    return Message.joined("list.plus", parts);
  }

  /** The input without which the number would fit, if there is one. */
  private Optional<Message> without() {
    for (CarriedUncertainty carried : derivation.carried()) {
      for (int i = 0; i < carried.inputs().size() && carried.inputs().size() > 1; i++) {
        for (Way way : List.of(Way.STRAIGHT, Way.QUADRATURE)) {
          double rest = carried.without(i, way);
          if (rest != 0 && Numbers.agreesAsUncertainty(claim().uncertainty(), rest)) {
            return Optional.of(
                Message.of("carried.without", way.inWords(), carried.inputs().get(i).name()));
          }
        }
      }
    }
    return Optional.empty();
  }

  private static String places(List<CellAddress> cells) {
    int shown = 3;
    String places = String.join(", ", cells.stream().limit(shown).map(CellAddress::place).toList());
    return cells.size() > shown ? places + ", ..." : places;
  }
}
