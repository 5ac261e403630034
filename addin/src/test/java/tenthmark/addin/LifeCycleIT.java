package tenthmark.addin;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.deployment.XExtensionManager;
import com.sun.star.deployment.XPackage;
import com.sun.star.frame.XDocumentTemplates;
import com.sun.star.ucb.XSimpleFileAccess;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.addin.office.Launcher;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.UserFolder;
import tenthmark.addin.office.Workbook;
import tenthmark.addin.office.Workbook.Format;

/**
 * What installing, upgrading, switching off and removing the extension do to a user's profile and
 * documents, in each office that there is.
 */
class LifeCycleIT {

  private static final String IDENTIFIER = "org.tenthmark.calc";
  private static final Pattern VERSION = Pattern.compile("<version value=\"([^\"]+)\"/>");
  private static final String OLDER = "0.0.1";
  private static final String FORMULA = "=TENTHMARK.LAB.READING(A1;\"fine\";2)";

  @TempDir private Path scratch;
  private UserFolder folder;

  static Stream<Launcher> offices() {
    return Stream.concat(Stream.of(Launcher.installed()), Launcher.second().stream());
  }

  @AfterEach
  void delete() throws IOException {
    folder.close();
  }

  @ParameterizedTest
  @MethodSource("offices")
  void anUpgradeReplacesTheOlderVersionAndDocumentsStayAsTheyAre(Launcher launcher)
      throws Exception {
    folder = UserFolder.create(launcher, Profile.plain());
    folder.add(older());
    assertThat(installed()).contains("Version: " + OLDER);
    Path document = documentSaved();

    folder.add(extension());

    assertThat(installed()).contains("Version: " + version()).doesNotContain(OLDER);
    documentCalculates(document);

    folder.unopkg("remove", IDENTIFIER);
    folder.start().close();
    // The office keeps the older package, unused, until it is itself updated.
    assertThat(traces()).allMatch(file -> file.startsWith(extensions().resolve("tmp")));

    Files.writeString(extensions().resolve("buildid"), "another build");
    folder.start().close();
    assertThat(traces()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("offices")
  void theOlderVersionRemovedBeforeTheNewerIsAddedLeavesNoTrace(Launcher launcher)
      throws Exception {
    folder = UserFolder.create(launcher, Profile.plain());
    folder.add(older());
    Path document = documentSaved();

    folder.unopkg("remove", IDENTIFIER);
    folder.add(extension());

    assertThat(installed()).contains("Version: " + version()).doesNotContain(OLDER);
    documentCalculates(document);

    folder.unopkg("remove", IDENTIFIER);
    folder.start().close();
    assertThat(traces()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("offices")
  void switchedOffItIsGoneUntilItIsSwitchedOnAgain(Launcher launcher) throws Exception {
    folder = UserFolder.create(launcher, Profile.withExtension());
    Path document = documentSaved();

    switchTo(false);
    try (Office office = folder.start();
        Workbook workbook = office.open(document)) {
      assertThat(workbook.shown("B1")).isEqualTo("#NAME?");
    }

    switchTo(true);
    documentCalculates(document);
  }

  @ParameterizedTest
  @MethodSource("offices")
  void removedItLeavesNoTraceAndNoDocumentLosesAnything(Launcher launcher) throws Exception {
    folder = UserFolder.create(launcher, Profile.withExtension());
    Path ods = documentSaved();
    byte[] before = Files.readAllBytes(ods);
    Path xlsx = saved(Format.XLSX);

    folder.unopkg("remove", IDENTIFIER);

    assertThat(installed()).doesNotContain(IDENTIFIER);
    // The office itself sweeps up at its next start.
    try (Office office = folder.start();
        Workbook numbers = office.open(xlsx)) {
      assertThat(numbers.number("B1")).isEqualTo(0.5);
      assertThat(numbers.formula("B1")).isEqualToIgnoringCase(FORMULA);
      try (Workbook formulas = office.open(ods)) {
        assertThat(formulas.number("A1")).isEqualTo(1);
        assertThat(formulas.formula("B1")).isEqualToIgnoringCase(FORMULA);
      }
    }
    assertThat(traces()).isEmpty();
    assertThat(ods).hasBinaryContent(before);

    folder.add(extension());
    documentCalculates(ods);
    documentCalculates(xlsx);
  }

  /**
   * The office keeps its list of templates until it lists them anew, and then until its next start
   * that it has struck ours off.
   */
  @ParameterizedTest
  @MethodSource("offices")
  void removedAfterItsTemplatesWereListedItIsForgottenOnceTheOfficeHasListedThemAnew(
      Launcher launcher) throws Exception {
    folder = UserFolder.create(launcher, Profile.withExtension());
    try (Office office = folder.start()) {
      assertThat(shelves(office)).contains("Tenthmark");
    }
    Path registry = folder.profile().resolve("user/registrymodifications.xcu");
    assertThat(traces()).contains(registry);

    folder.unopkg("remove", IDENTIFIER);

    try (Office office = folder.start()) {
      assertThat(shelves(office)).doesNotContain("Tenthmark");
    }
    assertThat(traces()).isSubsetOf(List.of(registry));
    assertThat(Files.readAllLines(registry).stream().filter(LifeCycleIT::names))
        .allMatch(line -> line.contains("\"/org.openoffice.ucb.Store/ContentProperties\""))
        .allMatch(line -> line.endsWith(" oor:op=\"remove\"/></item>"));

    folder.start().close();
    assertThat(traces()).isEmpty();
  }

  /** The headings under which the Templates dialog lists. */
  private static List<String> shelves(Office office) throws Exception {
    XDocumentTemplates templates =
        queryInterface(
            XDocumentTemplates.class, office.service("com.sun.star.frame.DocumentTemplates"));
    templates.update();
    String root = templates.getContent().getIdentifier().getContentIdentifier();
    String[] shelves =
        queryInterface(XSimpleFileAccess.class, office.service("com.sun.star.ucb.SimpleFileAccess"))
            .getFolderContents(root, true);
    return Arrays.stream(shelves).map(shelf -> shelf.substring(root.length() + 1)).toList();
  }

  private Path documentSaved() throws Exception {
    return saved(Format.ODS);
  }

  /** A document with a formula and its value, kept outside of the profile. */
  private Path saved(Format format) throws Exception {
    try (Office office = folder.start();
        Workbook workbook = office.create().set("A1", 1).set("B1", FORMULA)) {
      assertThat(workbook.number("B1")).isEqualTo(0.5);
      return Files.copy(
          workbook.save("document", format), scratch.resolve("document-" + format.name()));
    }
  }

  private void documentCalculates(Path document) throws Exception {
    try (Office office = folder.start();
        Workbook workbook = office.open(document)) {
      assertThat(workbook.formula("B1")).isEqualTo(FORMULA);
      workbook.set("A1", 2).recalculateHard();
      assertThat(workbook.number("B1")).isEqualTo(1);
    }
  }

  /** As in the Extension Manager; it takes effect at the next start. */
  private void switchTo(boolean on) throws Exception {
    try (Office office = folder.start()) {
      XExtensionManager manager =
          queryInterface(
              XExtensionManager.class,
              office.singleton("com.sun.star.deployment.ExtensionManager"));
      XPackage extension = manager.getDeployedExtension("user", IDENTIFIER, "tenthmark.oxt", null);
      if (on) {
        manager.enableExtension(extension, null, null);
      } else {
        manager.disableExtension(extension, null, null);
      }
    }
  }

  private Path extensions() {
    return folder.profile().resolve("user/extensions");
  }

  private String installed() throws Exception {
    return folder.unopkg("list");
  }

  /** Files of the profile that are named after the extension or name it. */
  private List<Path> traces() throws IOException {
    try (Stream<Path> files = Files.walk(folder.profile())) {
      return files
          .filter(
              file ->
                  names(file.getFileName().toString())
                      || Files.isRegularFile(file) && names(content(file)))
          .toList();
    }
  }

  private static boolean names(String text) {
    return text.toLowerCase(Locale.ROOT).contains("tenthmark.") || text.contains("Tenthmark");
  }

  private static String content(Path file) {
    try {
      return Files.readString(file, StandardCharsets.ISO_8859_1);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private static Path extension() {
    return Profile.withExtension().extension().orElseThrow();
  }

  private static String version() throws IOException {
    try (ZipFile zip = new ZipFile(extension().toFile())) {
      Matcher version = VERSION.matcher(description(zip));
      assertThat(version.find()).isTrue();
      return version.group(1);
    }
  }

  /** The same extension under a lower version. */
  private Path older() throws IOException {
    Path older = Files.createDirectories(scratch.resolve("older")).resolve("tenthmark.oxt");
    try (ZipFile zip = new ZipFile(extension().toFile());
        ZipOutputStream copy = new ZipOutputStream(Files.newOutputStream(older))) {
      for (ZipEntry entry : zip.stream().toList()) {
        copy.putNextEntry(new ZipEntry(entry.getName()));
        copy.write(
            entry.getName().equals("description.xml")
                ? VERSION
                    .matcher(description(zip))
                    .replaceFirst("<version value=\"" + OLDER + "\"/>")
                    .getBytes(StandardCharsets.UTF_8)
                : zip.getInputStream(entry).readAllBytes());
      }
    }
    return older;
  }

  private static String description(ZipFile zip) throws IOException {
    return new String(
        zip.getInputStream(zip.getEntry("description.xml")).readAllBytes(), StandardCharsets.UTF_8);
  }
}
