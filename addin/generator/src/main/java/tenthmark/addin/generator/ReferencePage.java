package tenthmark.addin.generator;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.explanation.ErrorKind;
import tenthmark.measurement.wording.Sentences;

/** The function reference: one self-contained page, by family and name. */
final class ReferencePage {

  private ReferencePage() {}

  static String of(List<Declaration> declarations) {
    List<Family> families = declarations.stream().map(Declaration::family).distinct().toList();
    return """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8"/>
        <meta name="viewport" content="width=device-width, initial-scale=1"/>
        <title>Tenthmark function reference</title>
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
        <a class="skip" href="#content">Skip to the content</a>
        <header>
        <h1>Tenthmark function reference</h1>
        <p>A teaching aid: not for calibration, safety or legal decisions. Brake and pressure work \
        follows the maker's and the lab's safety rules; local codes and licensed practice come \
        first.</p>
        <p>Parameters in brackets may be left out. Between arguments stands the sign that your \
        language setting asks for, mostly a semicolon or a comma.</p>
        <ul>
        <li>A function that gives a text or a table says in words which argument it cannot use. \
        One that gives a number shows Err:502 (#VALUE! in an .xlsx file).</li>
        <li>A range that holds a cell in error gives Err:504.</li>
        <li>Calc hands over a blank cell that stands alone, such as A3, as the number 0; written \
        as a range, A3:A3, it stays blank. Blank cells inside a range are always seen as \
        blank.</li>
        <li>With the option to use English function names on, LibreOffice 7.4 takes the full \
        names only, such as TENTHMARK.LAB.READING. Files are the same with and without it.</li>
        </ul>
        </header>
        <nav aria-label="Contents">
        %s\
        <p><a href="#examples">Worked examples</a></p>
        <p><a href="#errors">Errors and what to do about them</a></p>
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
            families.stream()
                .map(family -> contents(family, declarations))
                .collect(Collectors.joining()),
            families.stream()
                .map(family -> family(family, declarations))
                .collect(Collectors.joining()),
            examples(),
            errors());
  }

  /** The addresses on the page to which the office's windows lead. */
  static List<String> sections(List<Declaration> declarations) {
    List<String> sections =
        new ArrayList<>(declarations.stream().map(Declaration::displayName).toList());
    sections.add("examples");
    sections.add("errors");
    return sections;
  }

  private static String examples() {
    return """
        <section id="examples">
        <h2>Worked examples</h2>
        <p>Students and numbers are invented. Each example is calculated in a real Calc before a \
        release.</p>
        %s\
        </section>
        """
        .formatted(
            WorkedExample.all().stream().map(ReferencePage::example).collect(Collectors.joining()));
  }

  private static String example(WorkedExample example) {
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
            table(example.title(), List.of("Cell", "Typed in", "Shows", "Why"), steps));
  }

  private static String errors() {
    Sentences sentences = Sentences.english();
    String entries =
        Arrays.stream(ErrorKind.values())
            .map(
                kind ->
                    "<dt id=\"error-%s\"><code>%s</code></dt>\n<dd>Means: %s %s</dd>\n"
                        .formatted(
                            kind,
                            Markup.escape(String.join(", ", kind.names())),
                            Markup.escape(kind.meaning(sentences)),
                            Markup.escape(kind.fix(sentences))))
            .collect(Collectors.joining());
    return """
        <section id="errors">
        <h2>Errors and what to do about them</h2>
        <p>Explain This Cell in the Tenthmark menu and the function LAB_WHY name the reason for \
        one cell.</p>
        <dl>
        %s\
        </dl>
        </section>
        """
        .formatted(entries);
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

  private static String contents(Family family, List<Declaration> declarations) {
    String links =
        in(family, declarations).stream()
            .map(declaration -> "<a href=\"#%1$s\">%1$s</a>".formatted(declaration.displayName()))
            .collect(Collectors.joining(", "));
    return "<p>%s: %s</p>\n".formatted(Markup.escape(family.title()), links);
  }

  private static String family(Family family, List<Declaration> declarations) {
    return "<h2>%s</h2>\n%s"
        .formatted(
            Markup.escape(family.title()),
            in(family, declarations).stream()
                .map(ReferencePage::function)
                .collect(Collectors.joining()));
  }

  private static List<Declaration> in(Family family, List<Declaration> declarations) {
    return declarations.stream().filter(declaration -> declaration.family() == family).toList();
  }

  private static String function(Declaration declaration) {
    return """
        <section id="%s">
        <h3><code>%s</code></h3>
        <p>%s</p>
        %s\
        <dl>
        <dt>When to use it</dt><dd>%s</dd>
        <dt>Formula</dt><dd>%s</dd>
        <dt>Source</dt><dd>%s</dd>
        <dt>Example</dt><dd>%s</dd>
        </dl>
        </section>
        """
        .formatted(
            declaration.displayName(),
            Markup.escape(declaration.signature()),
            Markup.escape(declaration.description()),
            table(
                "Parameters of " + declaration.displayName(),
                List.of("Parameter", "What it is", "Allowed"),
                declaration.parameters().stream()
                    .map(ReferencePage::parameter)
                    .collect(Collectors.joining())),
            Markup.escape(declaration.use()),
            Markup.escape(declaration.formula()),
            Markup.escape(declaration.source()),
            example(declaration.example()));
  }

  private static String parameter(Parameter<?> parameter) {
    return "<tr><th scope=\"row\"><code>%s</code>%s</th><td>%s</td><td>%s</td></tr>\n"
        .formatted(
            parameter.name(),
            occurrence(parameter),
            Markup.escape(parameter.description()),
            Markup.escape(parameter.allowed().toString()));
  }

  private static String occurrence(Parameter<?> parameter) {
    if (parameter.isRepeated()) {
      return ", once or more";
    }
    return parameter.mayBeBlank() ? ", optional" : "";
  }

  private static String example(Example example) {
    return "%s<p><code>%s</code> gives <code>%s</code></p>"
        .formatted(
            cells(example), Markup.escape(example.formula()), Markup.escape(example.result()));
  }

  private static String cells(Example example) {
    List<List<Value>> rows = example.cells();
    if (rows.isEmpty()) {
      return "";
    }
    int width = rows.stream().mapToInt(List::size).max().orElseThrow();
    List<String> columns = new ArrayList<>(List.of("Row"));
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
    return table("Cells of the example " + example.formula(), columns, lines.toString());
  }

  private static String shown(Value cell) {
    if (cell instanceof Value.Numeric numeric) {
      return java.math.BigDecimal.valueOf(numeric.number()).stripTrailingZeros().toPlainString();
    }
    return cell instanceof Value.Text text ? text.text() : "";
  }
}
