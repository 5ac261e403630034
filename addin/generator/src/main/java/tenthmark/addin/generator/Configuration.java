package tenthmark.addin.generator;

import java.util.List;
import java.util.stream.Collectors;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Parameter;

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
            text("DisplayName", declaration.displayName()),
            text("Description", declaration.description()),
            text("CompatibilityName", declaration.storedName()),
            declaration.parameters().stream()
                .map(Configuration::parameter)
                .collect(Collectors.joining()));
  }

  private static String parameter(Parameter<?> parameter) {
    return """
              <node oor:name="%s" oor:op="replace">
        %s%s\
              </node>
        """
        .formatted(
            parameter.name(),
            text("DisplayName", parameter.name()),
            text("Description", description(parameter)));
  }

  /** Calc calls every argument optional whose type is any, so the text must tell. */
  private static String description(Parameter<?> parameter) {
    return parameter.isOptional()
        ? parameter.description()
        : parameter.description() + " Must be given.";
  }

  private static String text(String property, String text) {
    return "     <prop oor:name=\"%s\"><value xml:lang=\"en-US\">%s</value></prop>\n"
        .formatted(property, Markup.escape(text));
  }
}
