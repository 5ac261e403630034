package tenthmark.addin.generator;

import java.util.Set;
import java.util.stream.Stream;
import javax.lang.model.SourceVersion;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Parameter;

/** Words that a function or a parameter cannot be called, since a language reserves them. */
final class ReservedWords {

  /** Lower-case keywords of the UNO interface definition language. */
  private static final Set<String> OF_THE_DEFINITION =
      Set.of(
          "any",
          "attribute",
          "boolean",
          "bound",
          "byte",
          "char",
          "const",
          "constants",
          "constrained",
          "double",
          "enum",
          "exception",
          "float",
          "get",
          "hyper",
          "in",
          "inout",
          "interface",
          "long",
          "maybeambiguous",
          "maybedefault",
          "maybevoid",
          "module",
          "oneway",
          "optional",
          "out",
          "property",
          "published",
          "raises",
          "readonly",
          "removable",
          "sequence",
          "service",
          "set",
          "short",
          "singleton",
          "string",
          "struct",
          "transient",
          "type",
          "typedef",
          "union",
          "unsigned",
          "void");

  private ReservedWords() {}

  static void refuseIn(Declaration declaration) {
    Stream.concat(
            Stream.of(declaration.methodName()),
            declaration.parameters().stream().map(Parameter::name))
        .filter(word -> OF_THE_DEFINITION.contains(word) || SourceVersion.isKeyword(word))
        .findFirst()
        .ifPresent(
            word -> {
              throw new IllegalArgumentException(
                  declaration.displayName()
                      + ": \""
                      + word
                      + "\" is a reserved word of the interface definition or of Java");
            });
  }
}
