package tenthmark.checker.profile;

import java.util.LinkedHashMap;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import tenthmark.measurement.recording.Combine;
import tenthmark.measurement.recording.Convention;
import tenthmark.measurement.rounding.DigitsRule;

/** A convention: one of ours by its name, or a course's own, which changes {@code bench}. */
final class ConventionSection {

  private static final Map<String, Convention> NAMED = new LinkedHashMap<>();
  private static final Map<String, DigitsRule> DIGITS = new LinkedHashMap<>();

  static {
    NAMED.put("bench", Convention.BENCH);
    NAMED.put("standard", Convention.STANDARD);
    DIGITS.put("bench", new DigitsRule.Bench());
    DIGITS.put("1", new DigitsRule.Fixed(1));
    DIGITS.put("2", new DigitsRule.Fixed(2));
    DIGITS.put("particle-data", new DigitsRule.ParticleData());
  }

  private ConventionSection() {}

  /**
   * What a course chose.
   *
   * @param combineRequired whether its way of combining is the only right one
   */
  record Choice(Convention convention, boolean combineRequired) {}

  static Choice read(String key, Section profile) {
    boolean named = profile.value(key).filter(ScalarNode.class::isInstance).isPresent();
    return named
        ? new Choice(profile.choice(key, NAMED).orElse(Convention.BENCH), false)
        : profile
            .section(key)
            .map(ConventionSection::own)
            .orElse(new Choice(Convention.BENCH, false));
  }

  private static Choice own(Section section) {
    Convention bench = Convention.BENCH;
    Convention own =
        new Convention(
            section.text("name").orElse("own"),
            section.number("wide", Range.FRACTION).orElse(bench.wideFraction()),
            section.number("fine", Range.FRACTION).orElse(bench.fineFraction()),
            section.choice("combine", Words.of(Combine.values())).orElse(bench.combine()),
            section.choice("digits", DIGITS).orElse(bench.digits()),
            section.number("reaction", Range.POSITIVE).orElse(bench.reactionSeconds()),
            section.number("coverage", Range.FACTOR).orElse(bench.coverageFactor()));
    boolean required = section.flag("combine-required").orElse(false);
    section.close();
    return new Choice(own, required);
  }
}
