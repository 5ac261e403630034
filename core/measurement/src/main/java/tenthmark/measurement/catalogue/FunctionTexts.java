package tenthmark.measurement.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.measurement.formula.CellAddress;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Sentences;

/**
 * What the function wizard and the reference say about functions and their parameters, in one
 * language. English is what the declarations say. The other languages have a text for each function
 * by its name and for each parameter by both names, or one for all the functions that share a
 * parameter; a formula or a source may be said by one text for a family, which fills the gap of
 * what a function adds to it.
 */
public final class FunctionTexts {

  private static final String ROOT = "wizard.";
  private static final String SHARED = ROOT + "parameter.";
  private static final String EXAMPLE = "reference.example.";

  private final Sentences sentences;

  private FunctionTexts(Sentences sentences) {
    this.sentences = sentences;
  }

  /** The texts in a language. */
  public static FunctionTexts in(Language language) {
    return new FunctionTexts(Sentences.in(language));
  }

  /** The texts in the language of some sentences. */
  public static FunctionTexts in(Sentences sentences) {
    return new FunctionTexts(sentences);
  }

  /** What a function does, in one sentence. */
  public String description(Declaration function) {
    return sayOr(ROOT + function.name(), function.description());
  }

  /** When to use a function, in whole sentences. */
  public String use(Declaration function) {
    return sayOr("use." + function.name(), function.use());
  }

  /** The formula and its conditions. */
  public String formula(Declaration function) {
    return ofFamilyOr("reference.formula.", function, function.formula());
  }

  /** Where the formula is from. */
  public String source(Declaration function) {
    return function.source().equals(Declaration.NO_SOURCE)
        ? sayOr("reference.source.none", function.source())
        : ofFamilyOr("reference.source.", function, function.source());
  }

  private String ofFamilyOr(String root, Declaration function, String english) {
    String ofFamily = sayOr(root + "family." + function.family().name(), english);
    String own = root + function.name();
    return sentences.knows(own) ? sentences.say(own, ofFamily) : ofFamily;
  }

  /** A call as somebody types it in this language, among texts in it, and what it gives there. */
  public Example example(Declaration function) {
    Example english = function.example();
    String key = EXAMPLE + function.name();
    return new Example(
        sentences.decimalSign().write(english.formula()),
        cells(key, english.cells()),
        sayOr(key, sentences.decimalSign().write(english.result())));
  }

  private List<List<Value>> cells(String key, List<List<Value>> english) {
    List<List<Value>> rows = new ArrayList<>();
    for (List<Value> row : english) {
      List<Value> cells = new ArrayList<>();
      for (Value cell : row) {
        String place = new CellAddress("", cells.size(), rows.size()).place();
        cells.add(
            cell instanceof Value.Text text
                ? Value.of(sayOr(key + "." + place, text.text()))
                : cell);
      }
      rows.add(cells);
    }
    return rows;
  }

  /** The heading of a family. */
  public String title(Family family) {
    return sayOr("family." + family.name(), family.title());
  }

  private String sayOr(String key, String english) {
    return sentences.knows(key) ? sentences.say(key) : english;
  }

  /** What a parameter is. */
  public String description(Declaration function, Parameter<?> parameter) {
    return key(function, parameter).map(sentences::say).orElse(parameter.description());
  }

  /**
   * What a parameter is, for the wizard: Calc calls every argument optional whose type is any, so
   * the text begins with it for those that must be given. Its end may be cut off after two lines.
   */
  public String inWizard(Declaration function, Parameter<?> parameter) {
    String text = description(function, parameter);
    return parameter.isOptional() ? text : sentences.say(ROOT + "required") + " " + text;
  }

  /** What is allowed for a parameter. */
  public String allowed(Parameter<?> parameter) {
    return sentences.say(parameter.allowed());
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
