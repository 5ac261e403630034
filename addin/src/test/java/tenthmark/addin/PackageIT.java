package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import tenthmark.measurement.catalogue.Catalogue;

/** What is in tenthmark.oxt. */
class PackageIT {

  private static final Path EXTENSION = Path.of(System.getProperty("tenthmark.extension"));

  /** Digits and dots only, as an extension's version is. */
  private static final String VERSION =
      System.getProperty("tenthmark.version").replace("-SNAPSHOT", "");

  @Test
  void holdsEveryFileThatItNames() throws Exception {
    List<String> named = all("full-path=\"([^\"]+)\"", text("META-INF/manifest.xml"));
    named.addAll(all("xlink:href=\"([^\"]+)\"", text("description.xml")));
    named.addAll(all("uri=\"([^\"]+)\"", text("tenthmark.components")));
    named.addAll(all("%origin%/([^<]+)<", text("Addons.xcu")));
    assertThat(names())
        .containsAll(named)
        .contains(
            "function-reference.html",
            "function-reference-de.html",
            "function-reference-fr.html",
            "function-reference-es.html");
  }

  @Test
  void saysWhatItIs() throws Exception {
    assertThat(text("description.xml"))
        .contains("<identifier value=\"org.tenthmark.calc\"/>")
        .contains("<version value=\"" + VERSION + "\"/>")
        .containsPattern("LibreOffice-minimal-version[^>]* value=\"7.4\"");
    assertThat(text("LICENSE.txt"))
        .isEqualTo(Files.readString(Path.of("../install-notes/LICENSE.txt")))
        .contains("Apache License");
    assertThat(text("README.txt"))
        .contains("not for calibration, safety or legal decisions")
        .contains("maker's and the lab's safety rules");
  }

  @Test
  void hasIconsOfBothSizes() throws Exception {
    assertThat(ImageIO.read(new ByteArrayInputStream(bytes("icon.png"))).getWidth()).isEqualTo(42);
    assertThat(ImageIO.read(new ByteArrayInputStream(bytes("icon-26.png"))).getWidth())
        .isEqualTo(26);
  }

  @Test
  void registersEveryFunctionInOneJarWithoutTheChecker() throws Exception {
    List<String> classes = classesOfTheJar();
    assertThat(classes)
        .containsAll(
            Catalogue.load().functions().stream()
                .map(function -> function.getClass().getName().replace('.', '/') + ".class")
                .toList())
        .noneMatch(name -> name.startsWith("org/apache/poi/"))
        .noneMatch(name -> name.startsWith("tenthmark/checker/"))
        .noneMatch(name -> name.startsWith("tenthmark/addin/generator/"))
        .noneMatch(name -> name.startsWith("com/sun/star/"));
  }

  @Test
  void hasOneTimeStampSoThatBuildsAreAlike() throws IOException {
    try (ZipFile zip = new ZipFile(EXTENSION.toFile())) {
      assertThat(zip.stream().map(ZipEntry::getTimeLocal).distinct()).hasSize(1);
    }
  }

  private static List<String> names() throws IOException {
    try (ZipFile zip = new ZipFile(EXTENSION.toFile())) {
      return zip.stream().map(ZipEntry::getName).toList();
    }
  }

  private static List<String> classesOfTheJar() throws IOException {
    List<String> names = new ArrayList<>();
    try (ZipInputStream jar =
        new ZipInputStream(new ByteArrayInputStream(bytes("tenthmark.jar")))) {
      for (ZipEntry entry = jar.getNextEntry(); entry != null; entry = jar.getNextEntry()) {
        names.add(entry.getName());
      }
    }
    return names;
  }

  private static String text(String name) throws IOException {
    return new String(bytes(name), StandardCharsets.UTF_8);
  }

  private static byte[] bytes(String name) throws IOException {
    try (ZipFile zip = new ZipFile(EXTENSION.toFile())) {
      return zip.getInputStream(zip.getEntry(name)).readAllBytes();
    }
  }

  private static List<String> all(String pattern, String text) {
    return Pattern.compile(pattern)
        .matcher(text)
        .results()
        .map((MatchResult match) -> match.group(1))
        .collect(Collectors.toCollection(ArrayList::new));
  }
}
