package tenthmark.addin.generator;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Example;
import tenthmark.measurement.catalogue.Family;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.Value;

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
        table { border-collapse: collapse; display: block; overflow-x: auto; }
        th, td { border: 1px solid #767676; padding: 0.25em 0.6em; text-align: left; \
        vertical-align: top; }
        dt { font-weight: bold; margin-top: 0.6em; }
        </style>
        </head>
        <body>
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
        <nav>
        %s\
        </nav>
        %s\
        </body>
        </html>
        """
        .formatted(
            families.stream()
                .map(family -> contents(family, declarations))
                .collect(Collectors.joining()),
            families.stream()
                .map(family -> family(family, declarations))
                .collect(Collectors.joining()));
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
        <table>
        <tr><th>Parameter</th><th>What it is</th><th>Allowed</th></tr>
        %s\
        </table>
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
            declaration.parameters().stream()
                .map(ReferencePage::parameter)
                .collect(Collectors.joining()),
            Markup.escape(declaration.use()),
            Markup.escape(declaration.formula()),
            Markup.escape(declaration.source()),
            example(declaration.example()));
  }

  private static String parameter(Parameter<?> parameter) {
    return "<tr><td><code>%s</code>%s</td><td>%s</td><td>%s</td></tr>\n"
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
    return "%s<code>%s</code> gives <code>%s</code>"
        .formatted(
            cells(example.cells()),
            Markup.escape(example.formula()),
            Markup.escape(example.result()));
  }

  private static String cells(List<List<Value>> rows) {
    if (rows.isEmpty()) {
      return "";
    }
    List<String> lines = new ArrayList<>();
    int width = rows.stream().mapToInt(List::size).max().orElseThrow();
    StringBuilder head = new StringBuilder("<tr><th></th>");
    for (int column = 0; column < width; column++) {
      head.append("<th>").append((char) ('A' + column)).append("</th>");
    }
    lines.add(head + "</tr>");
    for (int row = 0; row < rows.size(); row++) {
      String cells =
          rows.get(row).stream()
              .map(cell -> "<td>" + Markup.escape(shown(cell)) + "</td>")
              .collect(Collectors.joining());
      lines.add("<tr><th>" + (row + 1) + "</th>" + cells + "</tr>");
    }
    return "<table>\n" + String.join("\n", lines) + "\n</table>\n";
  }

  private static String shown(Value cell) {
    if (cell instanceof Value.Numeric numeric) {
      return java.math.BigDecimal.valueOf(numeric.number()).stripTrailingZeros().toPlainString();
    }
    return cell instanceof Value.Text text ? text.text() : "";
  }
}
