package tenthmark.checker.reading.words;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Which role a heading has where its words stand for several. */
final class Precedence {

  private static final List<Role> CONTRIBUTIONS =
      List.of(Role.READING, Role.PHYSICAL, Role.INSTRUMENT, Role.TIMING, Role.REPEAT);

  private Precedence() {}

  static boolean isContribution(Role role) {
    return CONTRIBUTIONS.contains(role);
  }

  /**
   * The roles that are left.
   *
   * @param named whether words are left that name a quantity
   */
  static Set<Role> settled(Set<Role> roles, Set<Qualifier> qualifiers, boolean named) {
    Set<Role> left = EnumSet.noneOf(Role.class);
    left.addAll(roles);
    if (left.contains(Role.RATIONALE)) {
      return EnumSet.of(Role.RATIONALE);
    }
    if (left.contains(Role.STATISTIC)
        && qualifiers.contains(Qualifier.OF_MEAN)
        && !left.contains(Role.RESULT)) {
      return EnumSet.of(Role.UNCERTAINTY);
    }
    if (named) {
      left.remove(Role.CONSTANT);
    }
    boolean uncertain = left.contains(Role.UNCERTAINTY);
    if (uncertain && left.stream().anyMatch(CONTRIBUTIONS::contains)) {
      left.retainAll(CONTRIBUTIONS);
      return left;
    }
    if (uncertain && left.contains(Role.UNIT) && left.size() == 2) {
      return EnumSet.of(Role.UNIT);
    }
    if (left.contains(Role.COMPARISON) && left.size() > 1 && uncertain) {
      return qualifiers.contains(Qualifier.RELATIVE) || left.size() > 2
          ? EnumSet.of(Role.COMPARISON, Role.UNCERTAINTY)
          : left;
    }
    if (left.contains(Role.ACCEPTED)) {
      return EnumSet.of(Role.ACCEPTED);
    }
    if (uncertain && left.contains(Role.MEAN)) {
      return EnumSet.of(Role.UNCERTAINTY);
    }
    if (uncertain && left.contains(Role.VALUE) && left.size() == 2) {
      return EnumSet.of(Role.UNCERTAINTY);
    }
    if (left.contains(Role.COUNT) && left.contains(Role.VALUE)) {
      left.remove(Role.VALUE);
    }
    if (left.contains(Role.STATISTIC) && left.contains(Role.VALUE)) {
      left.remove(Role.VALUE);
    }
    return left;
  }
}
