package tenthmark.checker.reading.words;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a heading or a label says.
 *
 * @param text as it is written
 * @param roles what its words can stand for; what stands beneath decides; none for a quantity
 * @param qualifiers what says more closely what it is
 * @param name the words that are left: the quantity, or the one that an uncertainty is of
 * @param symbol the quantity's symbol, or empty
 * @param unit that it states, or empty
 * @param given an uncertainty that it states for all that stands beneath
 * @param mark whether a sign makes it an uncertainty
 * @param pair whether it heads a value and its uncertainty at once, as {@code f, Δf / Hz} does
 */
public record Heading(
    String text,
    Set<Role> roles,
    Set<Qualifier> qualifiers,
    String name,
    String symbol,
    String unit,
    Optional<GivenUncertainty> given,
    Mark mark,
    boolean pair) {

  /** A sign before a symbol. */
  public enum Mark {
    NONE,
    /** A delta: an uncertainty if its symbol is measured beside it, else a difference. */
    DELTA,
    /** An uncertainty, or a contribution to one, in any case. */
    SURE
  }

  /** Copies the sets. */
  public Heading {
    roles = Set.copyOf(roles);
    qualifiers = Set.copyOf(qualifiers);
  }

  /** A text that names a quantity by all its words. */
  public static Heading of(String text) {
    String name = text.replaceFirst("(?<![\\s:?])[\\s:?]++$", "");
    return new Heading(
        text, Set.of(), Set.of(), name, "", "", Optional.empty(), Mark.NONE, /* pair= */ false);
  }

  /** Whether it can stand for a role. */
  public boolean can(Role role) {
    return roles.contains(role);
  }

  /** Whether it can stand for one of several roles. */
  public boolean canBeOneOf(List<Role> several) {
    return several.stream().anyMatch(roles::contains);
  }

  /** Whether it is qualified in a way. */
  public boolean is(Qualifier qualifier) {
    return qualifiers.contains(qualifier);
  }

  /** Whether it says more than a name. */
  public boolean isTelling() {
    return !roles.isEmpty() || !unit.isEmpty() || mark != Mark.NONE || given.isPresent();
  }

  /** Whether its words name a quantity and nothing else. */
  public boolean isOfQuantity() {
    return roles.isEmpty() && mark == Mark.NONE && !name.isEmpty();
  }

  /** Whether it is an uncertainty in percent or as a part of the value. */
  public boolean isRelative() {
    return is(Qualifier.RELATIVE) || unit.equals("%");
  }

  /** The same within the unit and the words of a heading above it. */
  public Heading under(Heading above) {
    String whole =
        name.isEmpty() ? above.name : above.name.isEmpty() ? name : above.name + " " + name;
    boolean ownRoles = !roles.isEmpty();
    return new Heading(
        above.text + " " + text,
        ownRoles ? roles : above.roles,
        qualifiers.isEmpty() ? above.qualifiers : qualifiers,
        whole,
        symbol.isEmpty() ? above.symbol : symbol,
        unit.isEmpty() ? above.unit : unit,
        given.or(() -> above.given),
        mark == Mark.NONE ? above.mark : mark,
        pair);
  }

  /** The same where what looks like a unit is the symbol of a quantity. */
  public Heading about(String quantity) {
    return new Heading(text, roles, qualifiers, quantity, quantity, "", given, mark, pair);
  }

  /** The same with a unit that stands beneath. */
  public Heading in(String other) {
    return new Heading(text, roles, qualifiers, name, symbol, other, given, mark, pair);
  }
}
