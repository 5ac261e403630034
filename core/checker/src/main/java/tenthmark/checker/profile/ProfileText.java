package tenthmark.checker.profile;

import java.util.List;

/** What a profile's text was read as. */
public sealed interface ProfileText {

  /** A profile without any problem. */
  record Usable(Profile profile) implements ProfileText {}

  /**
   * No profile.
   *
   * @param problems all that were found, from top to bottom; at least one
   */
  record Unusable(List<Problem> problems) implements ProfileText {}
}
