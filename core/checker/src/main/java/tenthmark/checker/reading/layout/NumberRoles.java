package tenthmark.checker.reading.layout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tenthmark.checker.reading.NumberRole;
import tenthmark.checker.reading.words.Role;

/** What a number is that a word names which is no part of a record. */
public final class NumberRoles {

  private static final Map<Role, NumberRole> ROLES =
      Map.ofEntries(
          Map.entry(Role.ACCEPTED, NumberRole.ACCEPTED),
          Map.entry(Role.COMPARISON, NumberRole.COMPARISON),
          Map.entry(Role.STATISTIC, NumberRole.STATISTIC),
          Map.entry(Role.UNCERTAINTY, NumberRole.STATISTIC),
          Map.entry(Role.COUNT, NumberRole.COUNT),
          Map.entry(Role.CYCLES, NumberRole.COUNT),
          Map.entry(Role.CONSTANT, NumberRole.CONSTANT),
          Map.entry(Role.SPECIFICATION, NumberRole.CONSTANT),
          Map.entry(Role.DIVISION, NumberRole.CONSTANT),
          Map.entry(Role.RESOLUTION, NumberRole.CONSTANT),
          Map.entry(Role.REACTION, NumberRole.CONSTANT),
          Map.entry(Role.DATE, NumberRole.DATE),
          Map.entry(Role.INDEX, NumberRole.INDEX),
          Map.entry(Role.MEAN, NumberRole.CALCULATED),
          Map.entry(Role.SUMMARY, NumberRole.CALCULATED));

  private static final List<Role> ORDER =
      List.of(
          Role.ACCEPTED,
          Role.COMPARISON,
          Role.STATISTIC,
          Role.COUNT,
          Role.CYCLES,
          Role.CONSTANT,
          Role.UNCERTAINTY,
          Role.MEAN,
          Role.SUMMARY,
          Role.SPECIFICATION,
          Role.DIVISION,
          Role.RESOLUTION,
          Role.REACTION,
          Role.DATE,
          Role.INDEX);

  private NumberRoles() {}

  /** The role of a number under a heading or beside a label with these roles. */
  public static Optional<NumberRole> of(Set<Role> roles) {
    return ORDER.stream().filter(roles::contains).map(ROLES::get).findFirst();
  }
}
