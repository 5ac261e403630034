package tenthmark.checker.copy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.zip.ZipFile;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.wording.CheckerTexts;
import tenthmark.checker.workbook.Limits;
import tenthmark.measurement.formula.CellAddress;

/** What a real headless Calc reads in annotated copies. */
class AnnotatedCopyIT {

  private static final Path SAVED = Path.of("src/test/resources/saved-by-calc");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "faulty-lab-table.ods",
        "faulty-lab-table.xlsx",
        "faulty-lab-table.xls",
        "native-formulas.ods",
        "native-formulas.xls",
        "native-formulas.xlsx",
        "sheets-and-charts.xls"
      })
  void haveTheFindingsTheCommentsAndEqualValues(String name) throws Exception {
    FileReport report = FileChecker.load().check(SAVED.resolve(name));
    Path copy = folder.resolve("copy-" + name);
    Files.write(copy, AnnotatedCopy.of(report, CheckerTexts.english(), Limits.DEFAULT));
    Path original = Files.copy(SAVED.resolve(name), folder.resolve(name));

    Elements annotated = tables(copy);
    Elements tables = tables(original);

    assertThat(annotated.get(0).attr("table:name")).isEqualTo("Findings");
    assertThat(annotated.remove(0).text()).contains("Findings in " + name);
    assertThat(annotated.select("office|annotation"))
        .hasSize(report.findings().stream().map(Finding::cell).collect(Collectors.toSet()).size());
    assertThat(withoutComments(annotated)).isEqualTo(withoutComments(tables));
  }

  @Test
  void showACommentOnTheCellItIsAbout() throws Exception {
    FileReport report = FileChecker.load().check(SAVED.resolve("faulty-lab-table.ods"));
    Path copy = folder.resolve("copy.ods");
    Files.write(copy, AnnotatedCopy.of(report, CheckerTexts.english(), Limits.DEFAULT));

    Set<CellAddress> commented =
        tables(copy).select("office|annotation").stream()
            .map(comment -> address(comment.parent()))
            .collect(Collectors.toSet());

    assertThat(commented)
        .isEqualTo(report.findings().stream().map(Finding::cell).collect(Collectors.toSet()));
  }

  /** The tables as Calc saves them after opening a file. */
  private Elements tables(Path file) throws Exception {
    Path home = Files.createDirectories(folder.resolve("home"));
    Path saved = Files.createDirectories(folder.resolve("saved"));
    for (Path path : List.of(folder, home, saved)) {
      Files.setPosixFilePermissions(path, PosixFilePermissions.fromString("rwxrwxrwx"));
    }
    List<String> command = new ArrayList<>();
    if ("root".equals(System.getProperty("user.name"))) {
      command.addAll(List.of("setpriv", "--reuid=nobody", "--regid=nogroup", "--clear-groups"));
    }
    command.addAll(
        List.of(
            "soffice",
            "--headless",
            "--norestore",
            "-env:UserInstallation=" + home.resolve("profile").toUri(),
            "--convert-to",
            "ods",
            "--outdir",
            saved.toString(),
            file.toString()));
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("soffice.log").toFile());
    builder.environment().put("HOME", home.toString());
    Process calc = builder.start();
    assertThat(calc.waitFor(5, TimeUnit.MINUTES)).isTrue();
    String name = file.getFileName().toString();
    Path document = saved.resolve(name.substring(0, name.lastIndexOf('.')) + ".ods");
    assertThat(document).exists();
    try (ZipFile zip = new ZipFile(document.toFile());
        InputStream content = zip.getInputStream(zip.getEntry("content.xml"))) {
      return Jsoup.parse(content, "UTF-8", "", Parser.xmlParser())
          .select("office|spreadsheet > table|table");
    }
  }

  /** Each table's cells by address, formula, value and text; blank cells left out. */
  private static List<String> withoutComments(Elements tables) {
    List<String> cells = new ArrayList<>();
    for (Element cell : tables.select("table|table-cell")) {
      if (cell.hasAttr("office:value-type")) {
        Element bare = cell.clone();
        bare.select("office|annotation").remove();
        cells.add(
            String.join(
                " | ",
                address(cell).toString(),
                cell.attr("table:formula"),
                cell.attr("office:value"),
                bare.text()));
      }
    }
    return cells.stream().filter(cell -> !cell.contains("TODAY")).toList();
  }

  private static CellAddress address(Element cell) {
    int column = 0;
    for (Element before : cell.previousElementSiblings()) {
      column += repeated(before, "table:number-columns-repeated");
    }
    Element row = cell.parent();
    int number = 0;
    for (Element before = row.previousElementSibling();
        before != null;
        before = before.previousElementSibling()) {
      if (before.tagName().equals("table:table-row")) {
        number += repeated(before, "table:number-rows-repeated");
      }
    }
    return new CellAddress(row.closest("table|table").attr("table:name"), column, number);
  }

  private static int repeated(Element element, String attribute) {
    return element.hasAttr(attribute) ? Integer.parseInt(element.attr(attribute)) : 1;
  }
}
