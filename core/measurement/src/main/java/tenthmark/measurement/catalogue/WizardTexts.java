package tenthmark.measurement.catalogue;

import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.measurement.rounding.DecimalSign;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Sentences;

/**
 * What the function wizard says about functions and their parameters, in one language. English is
 * what the declarations say. The other languages have a text for each function by its name and for
 * each parameter by both names, or one for all the functions that share a parameter.
 */
public final class WizardTexts {

  private static final String ROOT = "wizard.";
  private static final String SHARED = ROOT + "parameter.";

  private final Sentences sentences;

  private WizardTexts(Sentences sentences) {
    this.sentences = sentences;
  }

  /** The texts in a language. */
  public static WizardTexts in(Language language) {
    return new WizardTexts(Sentences.in(language, DecimalSign.POINT));
  }

  /** What a function does, in one sentence. */
  public String description(Declaration function) {
    return key(function).map(sentences::say).orElse(function.description());
  }

  /**
   * What a parameter is. Calc calls every argument optional whose type is any, so the text says of
   * the others that they must be given.
   */
  public String description(Declaration function, Parameter<?> parameter) {
    String text = key(function, parameter).map(sentences::say).orElse(parameter.description());
    return parameter.isOptional() ? text : text + " " + sentences.say(ROOT + "required");
  }

  /** Under which key a function has a text of this language. */
  Optional<String> key(Declaration function) {
    return Optional.of(ROOT + function.name()).filter(sentences::knows);
  }

  /** Under which key a parameter has a text of this language. */
  Optional<String> key(Declaration function, Parameter<?> parameter) {
    return Stream.of(ROOT + function.name() + "." + parameter.name(), SHARED + parameter.name())
        .filter(sentences::knows)
        .findFirst();
  }
}
