package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged program as a user starts it. */
class RunnableJarIT {

  private static final Path JAR = Path.of("target/tenthmark-checker.jar");

  @TempDir Path folder;

  @Test
  void isSmallerThanFortyMegabytes() throws Exception {
    assertThat(Files.size(JAR)).isLessThan(40_000_000);
  }

  /** Other files in the folder are named; the libraries beneath log nothing. */
  @Test
  void checksEveryFormatAndLogsNothing() throws Exception {
    Path saved = Path.of("src/test/resources/saved-by-calc");
    Process process = start("check", saved.toString());

    assertThat(process.waitFor()).isEqualTo(1);
    assertThat(Files.readString(folder.resolve("err"), StandardCharsets.UTF_8).lines())
        .containsExactly(saved.resolve("README.txt") + ": not checked: not a workbook");
    assertThat(Files.readString(folder.resolve("out"), StandardCharsets.UTF_8))
        .contains(
            "good.ods: Sheet1.E5: error error-cell",
            files(saved, ".ods", ".xlsx", ".xls").size() + " files checked");
  }

  @Test
  void readsAProfileWithUnits() throws Exception {
    Process process =
        start(
            "check",
            "--profile",
            "src/test/resources/profiles/bicycle-workshop.yaml",
            "src/test/resources/saved-by-calc/good.ods");

    assertThat(process.waitFor()).isEqualTo(1);
    assertThat(Files.readString(folder.resolve("err"))).isEmpty();
  }

  @Test
  void carriesAllFunctionsAndRules() throws Exception {
    Process process = start("rules");

    assertThat(process.waitFor()).isZero();
    assertThat(Files.readString(folder.resolve("out"))).contains("total-differs", "unit-missing");
  }

  @Test
  void stampsItsVersionOnEveryReport() throws Exception {
    Path reports = folder.resolve("reports");
    Process process =
        start(
            "check",
            "--out",
            reports.toString(),
            "src/test/resources/saved-by-calc/good.ods",
            "src/test/resources/saved-by-calc/good.xlsx");

    assertThat(process.waitFor()).isEqualTo(1);
    String stamp = "tenthmark-checker " + System.getProperty("tenthmark.version");
    assertThat(Files.readString(reports.resolve("findings.json"))).contains('"' + stamp + '"');
    assertThat(files(reports, ".html"))
        .hasSize(3)
        .allSatisfy(page -> assertThat(Files.readString(page)).contains(stamp + "."));
    assertThat(files(reports, ".ods"))
        .singleElement()
        .satisfies(copy -> assertThat(part(copy, "content.xml")).contains(stamp));
    assertThat(files(reports, ".xlsx"))
        .singleElement()
        .satisfies(copy -> assertThat(part(copy, "xl/sharedStrings.xml")).contains(stamp));
  }

  private static List<Path> files(Path folder, String... endings) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(Files::isRegularFile)
          .filter(file -> Stream.of(endings).anyMatch(file.toString()::endsWith))
          .toList();
    }
  }

  private static String part(Path archive, String name) throws IOException {
    try (ZipFile zip = new ZipFile(archive.toFile());
        InputStream part = zip.getInputStream(zip.getEntry(name))) {
      return new String(part.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private Process start(String... arguments) throws Exception {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                JAR.toString()));
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command)
        .redirectOutput(folder.resolve("out").toFile())
        .redirectError(folder.resolve("err").toFile())
        .start();
  }
}
