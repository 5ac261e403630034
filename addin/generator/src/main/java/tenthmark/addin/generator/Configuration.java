package tenthmark.addin.generator;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.FunctionTexts;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.wording.Language;

/**
 * The configuration {@code CalcAddIns.xcu}: names, and the texts of the function wizard. The
 * compatibility name equals the full stored name, so that every office version writes one spelling
 * into every format.
 */
final class Configuration {

  private Configuration() {}

  static String of(List<Declaration> declarations) {
    return """
        <?xml version="1.0" encoding="UTF-8"?>
        <oor:component-data xmlns:oor="http://openoffice.org/2001/registry" \
        xmlns:xs="http://www.w3.org/2001/XMLSchema" oor:name="CalcAddIns" \
        oor:package="org.openoffice.Office">
         <node oor:name="AddInInfo">
          <node oor:name="tenthmark.Lab" oor:op="replace">
           <node oor:name="AddInFunctions">
        %s\
           </node>
          </node>
         </node>
        </oor:component-data>
        """
        .formatted(
            declarations.stream().map(Configuration::function).collect(Collectors.joining()));
  }

  private static String function(Declaration declaration) {
    return """
            <node oor:name="%s" oor:op="replace">
        %s%s%s\
             <prop oor:name="Category"><value>Add-In</value></prop>
             <node oor:name="Parameters">
        %s\
             </node>
            </node>
        """
        .formatted(
            declaration.methodName(),
            inEnglish("DisplayName", declaration.displayName()),
            property("Description", texts -> texts.description(declaration)),
            inEnglish("CompatibilityName", declaration.storedName()),
            declaration.parameters().stream()
                .map(parameter -> parameter(declaration, parameter))
                .collect(Collectors.joining()));
  }

  private static String parameter(Declaration declaration, Parameter<?> parameter) {
    return """
              <node oor:name="%s" oor:op="replace">
        %s%s\
              </node>
        """
        .formatted(
            parameter.name(),
            inEnglish("DisplayName", parameter.name()),
            property("Description", texts -> texts.inWizard(declaration, parameter)));
  }

  /** A name, which is the same in every language since the error sentences use it. */
  private static String inEnglish(String property, String name) {
    return property(property, value(LanguageTag.ENGLISH, name));
  }

  private static String property(String name, Function<FunctionTexts, String> text) {
    return property(
        name,
        Arrays.stream(Language.values())
            .map(
                language -> value(LanguageTag.of(language), text.apply(FunctionTexts.in(language))))
            .collect(Collectors.joining()));
  }

  private static String property(String name, String values) {
    return "     <prop oor:name=\"%s\">%s</prop>\n".formatted(name, values);
  }

  private static String value(String tag, String text) {
    return "<value xml:lang=\"%s\">%s</value>".formatted(tag, Markup.escape(text));
  }
}
