package tenthmark.checker.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The script that starts the checker, after packaging. */
@DisabledOnOs(OS.WINDOWS)
class LauncherIT {

  private static final Path SCRIPT = Path.of("../../install-notes/tenthmark-checker");
  private static final Path JAR = Path.of("target/tenthmark-checker.jar");

  @TempDir Path folder;

  private record Run(int status, String out, String err) {}

  private Run run(Path script, Map<String, String> environment, String... arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("sh", script.toString()));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().putAll(environment);
    Process process =
        builder
            .redirectOutput(folder.resolve("out").toFile())
            .redirectError(folder.resolve("err").toFile())
            .start();
    int status = process.waitFor();
    return new Run(
        status, Files.readString(folder.resolve("out")), Files.readString(folder.resolve("err")));
  }

  @Test
  void runsWhatABuildLeft() throws Exception {
    Run run = run(SCRIPT, Map.of(), "--version");

    assertThat(run.err()).isEmpty();
    assertThat(run.status()).isZero();
    assertThat(run.out().strip())
        .isEqualTo("tenthmark-checker " + System.getProperty("tenthmark.version"));
  }

  @Test
  void runsTheJarOfAnInstallationThroughALink() throws Exception {
    Path bin = Files.createDirectories(folder.resolve("a prefix/bin"));
    Path share = Files.createDirectories(folder.resolve("a prefix/share/tenthmark"));
    Files.copy(SCRIPT, bin.resolve("tenthmark-checker"));
    Files.copy(JAR, share.resolve("tenthmark-checker.jar"));
    Path link =
        Files.createSymbolicLink(
            folder.resolve("checker"), Path.of("a prefix/bin/tenthmark-checker"));

    Run run = run(link, Map.of(), "explain", "total-differs");

    assertThat(run.status()).isZero();
    assertThat(run.out()).startsWith("total-differs (error)");
  }

  @Test
  void prefersTheJavaThatLiesBesideIt() throws Exception {
    Path script = Files.copy(SCRIPT, folder.resolve("tenthmark-checker"));
    Files.copy(JAR, folder.resolve("tenthmark-checker.jar"));
    Path java = Files.createDirectories(folder.resolve("runtime/bin")).resolve("java");
    Files.writeString(
        java, "#!/bin/sh\necho 'openjdk version \"17.0.1\"' >&2\necho \"beside: $*\"\n");
    assertThat(java.toFile().setExecutable(true)).isTrue();

    Run run = run(script, Map.of(), "rules");

    assertThat(run.out()).contains("beside: -jar", "tenthmark-checker.jar rules");
  }

  @Test
  void givesTheStatusOfTheChecker() throws Exception {
    assertThat(run(SCRIPT, Map.of(), "check", folder.resolve("no file.ods").toString()).status())
        .isEqualTo(2);
  }

  @Test
  void opensFilesOfAnyNameInTheLocaleOfCron() throws Exception {
    Path file = folder.resolve("Grüße 1.ods");
    Files.copy(Path.of("../../sample-workbooks/workbooks/first-lab-table.ods"), file);

    Run run = run(SCRIPT, Map.of("LC_ALL", "", "LANG", ""), "check", file.toString());

    assertThat(run.err()).isEmpty();
    assertThat(run.out()).contains(file + ": 0 errors");
    assertThat(run.status()).isZero();
  }

  @Test
  void saysThatJavaIsMissing() throws Exception {
    Run run = run(SCRIPT, Map.of("TENTHMARK_JAVA", "/nowhere/java"), "--version");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err())
        .isEqualTo(
            "tenthmark-checker: Java was not found; install Java 17 or newer or set"
                + " TENTHMARK_JAVA\n");
  }

  @Test
  void saysThatJavaIsTooOld() throws Exception {
    Path old =
        Files.writeString(
            folder.resolve("java"), "#!/bin/sh\necho 'openjdk version \"1.8.0_392\"' >&2\n");
    assertThat(old.toFile().setExecutable(true)).isTrue();

    Run run = run(SCRIPT, Map.of("TENTHMARK_JAVA", old.toString()), "--version");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("Java 17 or newer is needed", "is version 1");
  }

  @Test
  void saysThatTheJarIsMissing() throws Exception {
    Path alone = Files.copy(SCRIPT, folder.resolve("tenthmark-checker"));

    Run run = run(alone, Map.of(), "--version");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("tenthmark-checker.jar was not found");
  }
}
