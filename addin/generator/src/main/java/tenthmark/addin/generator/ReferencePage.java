package tenthmark.addin.generator;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.FunctionTexts;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.explanation.ErrorKind;
import tenthmark.measurement.wording.Language;
import tenthmark.measurement.wording.Sentences;

/** The function reference in one language: one self-contained page, by family and name. */
final class ReferencePage {

  private final List<Declaration> declarations;
  private final Language language;
  private final FunctionTexts functions;
  private final Sentences sentences;

  ReferencePage(List<Declaration> declarations, Language language) {
    this.declarations = declarations;
    this.language = language;
    this.sentences = Sentences.in(language);
    this.functions = FunctionTexts.in(sentences);
  }

  /** What the page's file is called, without its ending. */
  String name() {
    String suffix = language == Language.ENGLISH ? "" : "-" + language.code();
    return "function-reference" + suffix;
  }

  String text() {
    List<Family> families = declarations.stream().map(Declaration::family).distinct().toList();
    return """
        <!DOCTYPE html>
        <html lang="%s">
        <head>
        <meta charset="utf-8"/>
        <meta name="viewport" content="width=device-width, initial-scale=1"/>
        <title>%s</title>
        <style>
        body { font: 16px/1.5 sans-serif; color: #1b1b1b; background: #fff; max-width: 46em; \
        margin: 0 auto; padding: 1em; }
        code, pre { font-family: monospace; font-size: 0.95em; }
        section { border-top: 1px solid #767676; margin-top: 2em; }
        p, h3, dd { overflow-wrap: anywhere; }
        .wide { overflow-x: auto; overflow-wrap: normal; }
        table { border-collapse: collapse; margin: 0.6em 0; }
        caption { text-align: left; font-weight: bold; padding-bottom: 0.25em; }
        th, td { border: 1px solid #767676; padding: 0.25em 0.6em; text-align: left; \
        vertical-align: top; }
        dt { font-weight: bold; margin-top: 0.6em; }
        a, a:visited { color: #0b4a8f; }
        :focus-visible { outline: 3px solid #0b4a8f; outline-offset: 2px; }
        .skip { position: absolute; left: -999em; }
        .skip:focus { position: static; }
        </style>
        </head>
        <body>
        <a class="skip" href="#content">%s</a>
        <header>
        <h1>%s</h1>
        <p>%s</p>
        <p>%s</p>
        <ul>
        <li>%s</li>
        <li>%s</li>
        <li>%s</li>
        <li>%s</li>
        </ul>
        </header>
        <nav aria-label="%s">
        %s\
        <p><a href="#examples">%s</a></p>
        <p><a href="#errors">%s</a></p>
        </nav>
        <main id="content" tabindex="-1">
        %s\
        %s\
        %s\
        </main>
        </body>
        </html>
        """
        .formatted(
            language.code(),
            say("title"),
            say("skip"),
            say("title"),
            say("caution"),
            say("brackets"),
            say("errors"),
            say("error.range"),
            say("blank"),
            say("english.names"),
            say("contents"),
            families.stream().map(this::contents).collect(Collectors.joining()),
            say("examples.title"),
            say("errors.title"),
            families.stream().map(this::family).collect(Collectors.joining()),
            examples(),
            errors());
  }

  /** The addresses on the page to which the office's windows lead. */
  List<String> sections() {
    List<String> sections =
        new ArrayList<>(declarations.stream().map(Declaration::displayName).toList());
    sections.add("examples");
    sections.add("errors");
    return sections;
  }

  /** The page that leads on to a section. */
  String signpost(String section) {
    return Signpost.to(name() + ".html", section, language, say("signpost", section));
  }

  private String say(String key, String... gaps) {
    return Markup.escape(sentences.say("reference." + key, gaps));
  }

  private String examples() {
    return """
        <section id="examples">
        <h2>%s</h2>
        <p>%s</p>
        %s\
        </section>
        """
        .formatted(
            say("examples.title"),
            say("examples.note"),
            WorkedExample.in(sentences).stream().map(this::example).collect(Collectors.joining()));
  }

  private String example(WorkedExample example) {
    String steps =
        example.steps().stream()
            .map(
                step ->
                    "<tr><th scope=\"row\">%s</th><td><code>%s</code></td><td>%s</td><td>%s</td></tr>\n"
                        .formatted(
                            step.cell(),
                            Markup.escape(step.content()),
                            Markup.escape(step.shows()),
                            Markup.escape(step.why())))
            .collect(Collectors.joining());
    return "<h3 id=\"%s\">%s</h3>\n<p>%s</p>\n%s"
        .formatted(
            example.id(),
            Markup.escape(example.title()),
            Markup.escape(example.story()),
            table(
                example.title(),
                List.of(say("cell"), say("typed"), say("shows"), say("why")),
                steps));
  }

  private String errors() {
    String entries =
        Arrays.stream(ErrorKind.values())
            .map(
                kind ->
                    "<dt id=\"error-%s\"><code>%s</code></dt>\n<dd>%s %s</dd>\n"
                        .formatted(
                            kind,
                            Markup.escape(String.join(", ", kind.shown(sentences))),
                            say("error.means", kind.meaning(sentences)),
                            Markup.escape(kind.fix(sentences))))
            .collect(Collectors.joining());
    return """
        <section id="errors">
        <h2>%s</h2>
        <p>%s</p>
        <dl>
        %s\
        </dl>
        </section>
        """
        .formatted(say("errors.title"), say("errors.note"), entries);
  }

  /** A table with a caption that scrolls by itself where the window is narrow. */
  private static String table(String caption, List<String> headings, String rows) {
    String head =
        headings.stream()
            .map(heading -> "<th scope=\"col\">%s</th>".formatted(heading))
            .collect(Collectors.joining());
    return """
        <div class="wide" role="region" tabindex="0" aria-label="%1$s">
        <table>
        <caption>%1$s</caption>
        <tr>%2$s</tr>
        %3$s\
        </table>
        </div>
        """
        .formatted(Markup.escape(caption), head, rows);
  }

  private String contents(Family family) {
    String links =
        in(family).stream()
            .map(declaration -> "<a href=\"#%1$s\">%1$s</a>".formatted(declaration.displayName()))
            .collect(Collectors.joining(", "));
    return "<p>%s</p>\n"
        .formatted(sentences.say("titled", Markup.escape(functions.title(family)), links));
  }

  private String family(Family family) {
    return "<h2>%s</h2>\n%s"
        .formatted(
            Markup.escape(functions.title(family)),
            in(family).stream().map(this::function).collect(Collectors.joining()));
  }

  private List<Declaration> in(Family family) {
    return declarations.stream().filter(declaration -> declaration.family() == family).toList();
  }

  private String function(Declaration declaration) {
    return """
        <section id="%s">
        <h3><code>%s</code></h3>
        <p>%s</p>
        %s\
        <dl>
        <dt>%s</dt><dd>%s</dd>
        <dt>%s</dt><dd>%s</dd>
        <dt>%s</dt><dd>%s</dd>
        <dt>%s</dt><dd>%s</dd>
        </dl>
        </section>
        """
        .formatted(
            declaration.displayName(),
            Markup.escape(declaration.signature()),
            Markup.escape(functions.description(declaration)),
            table(
                sentences.say("reference.parameters", declaration.displayName()),
                List.of(say("parameter"), say("meaning"), say("allowed")),
                declaration.parameters().stream()
                    .map(parameter -> parameter(declaration, parameter))
                    .collect(Collectors.joining())),
            say("use"),
            Markup.escape(functions.use(declaration)),
            say("formula"),
            Markup.escape(functions.formula(declaration)),
            say("source"),
            Markup.escape(functions.source(declaration)),
            say("example"),
            example(functions.example(declaration)));
  }

  private String parameter(Declaration declaration, Parameter<?> parameter) {
    return "<tr><th scope=\"row\"><code>%s</code>%s</th><td>%s</td><td>%s</td></tr>\n"
        .formatted(
            parameter.name(),
            occurrence(parameter),
            Markup.escape(functions.description(declaration, parameter)),
            Markup.escape(functions.allowed(parameter)));
  }

  private String occurrence(Parameter<?> parameter) {
    if (parameter.isRepeated()) {
      return say("repeated");
    }
    return parameter.mayBeBlank() ? say("optional") : "";
  }

  private String example(Example example) {
    return "%s<p><code>%s</code> %s <code>%s</code></p>"
        .formatted(
            cells(example),
            Markup.escape(example.formula()),
            say("gives"),
            Markup.escape(example.result()));
  }

  private String cells(Example example) {
    List<List<Value>> rows = example.cells();
    if (rows.isEmpty()) {
      return "";
    }
    int width = rows.stream().mapToInt(List::size).max().orElseThrow();
    List<String> columns = new ArrayList<>(List.of(say("row")));
    for (int column = 0; column < width; column++) {
      columns.add(Character.toString('A' + column));
    }
    StringBuilder lines = new StringBuilder();
    for (int row = 0; row < rows.size(); row++) {
      String cells =
          rows.get(row).stream()
              .map(cell -> "<td>" + Markup.escape(shown(cell)) + "</td>")
              .collect(Collectors.joining());
      lines.append("<tr><th scope=\"row\">%d</th>%s</tr>\n".formatted(row + 1, cells));
    }
    return table(sentences.say("reference.cells", example.formula()), columns, lines.toString());
  }

  private String shown(Value cell) {
    if (cell instanceof Value.Numeric numeric) {
      return sentences
          .decimalSign()
          .write(BigDecimal.valueOf(numeric.number()).stripTrailingZeros().toPlainString());
    }
    return cell instanceof Value.Text text ? text.text() : "";
  }
}
