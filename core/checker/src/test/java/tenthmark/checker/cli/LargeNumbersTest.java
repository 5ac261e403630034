package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tenthmark.checker.workbook.Grid;

/**
 * Numbers at the end of what a cell can hold and beyond, typed as texts and as numbers. The largest
 * double is 1.7976931348623157e308 (IEEE 754 binary64).
 */
class LargeNumbersTest {

  private static final List<Object> NUMBERS =
      List.of(
          "1e999",
          "-1e999",
          "1e999 ± 1e998 mm",
          "(1e400 ± 1) mm",
          "1.5(5)e999 mm",
          "172.5 ± 1e999 %",
          "1e308 ± 200 %",
          "1.7e308 ± 1.7e308 km",
          "1e-999",
          "1e9999",
          "9".repeat(400),
          "1e308",
          1.7e308,
          -1.7e308,
          Double.MIN_VALUE,
          "=1E308*10",
          "=VALUE(\"1e999\")",
          "=1.7E308",
          "=-1.7E308");

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private void check(Object... arguments) {
    List<String> line = java.util.Arrays.stream(arguments).map(Object::toString).toList();
    Main.run(
        Main.commandLine(new PrintWriter(out, true), new PrintWriter(err, true)),
        line.toArray(String[]::new));
  }

  private Path handIn() throws Exception {
    Path handedIn = Files.createDirectories(folder.resolve("in"));
    for (int i = 0; i < NUMBERS.size(); i++) {
      for (int column = 1; column < 7; column++) {
        Object[] row = {"Crank arm", 172.5, "km", 1, 0.5, 0.5, 0.5, "Fine marks, both ends."};
        row[column] = NUMBERS.get(i);
        Object[] result = {"Spoke", "=B2+0.1", "mm", 1, 0.5, 0.5, 0.5, "=LAB_RATIONALE(E2:G2)"};
        Grid.sheet("Bench")
            .row(
                "Quantity",
                "Value",
                "Unit",
                "Division",
                "Reading",
                "Physical",
                "Uncertainty",
                "Rationale")
            .row(row)
            .row(result)
            .row(
                "Pair", "=B2*B3", "mm²", null, null, null, "=LAB_CARRY(B4,B2:B3,G2:G3)", "Carried.")
            .xlsx(handedIn.resolve("student-%02d-%d.xlsx".formatted(i, column)));
      }
    }
    return handedIn;
  }

  private Path profile() throws Exception {
    return Files.writeString(
        folder.resolve("course.yaml"),
        """
        quantities:
          - name: Crank arm
            unit: µm
            accepted: 172500
            uncertainty: 500
        """);
  }

  @Test
  void takeNeitherTheirFileNorTheClassReports() throws Exception {
    Path reports = folder.resolve("out");

    check("check", "--quiet", "--profile", profile(), "--out", reports, handIn());

    assertThat(err.toString()).isEmpty();
    assertThat(out.toString()).contains(NUMBERS.size() * 6 + " files checked");
    assertThat(List.of("class.html", "gradebook.csv", "findings.json", "junit.xml"))
        .allSatisfy(name -> assertThat(reports.resolve(name)).isNotEmptyFile());
    for (String name : List.of("class.html", "findings.json")) {
      assertThat(Files.readString(reports.resolve(name))).doesNotContain("Infinity", "NaN", "∞");
    }
  }
}
