package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.samples.guide.RulePage;

/** Runs what the guides show. */
class GuidesTest {

  private static final Path GUIDES = Path.of("guides");

  static List<MarkdownPage> pages() throws IOException {
    try (Stream<Path> files = Files.list(GUIDES)) {
      return files
          .filter(file -> file.toString().endsWith(".md"))
          .sorted()
          .map(MarkdownPage::read)
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void formulasGiveWhatThePageSays(MarkdownPage page, @TempDir Path folder) throws Exception {
    List<String> differences = new ArrayList<>();
    for (PageSheet sheet : PageSheet.of(page)) {
      differences.addAll(sheet.differences(folder));
    }
    assertThat(differences).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void everyFormulaIsShownWithWhatItGives(MarkdownPage page) {
    assertThat(PageSheet.shown(page)).isEqualTo(PageSheet.formulas(page));
  }

  @ParameterizedTest
  @MethodSource("pages")
  void commandsPrintWhatThePageSays(MarkdownPage page, @TempDir Path folder) throws Exception {
    List<CommandExample> commands = CommandExample.of(page);
    if (!commands.isEmpty()) {
      copy(Saved.WORKBOOKS, folder);
    }
    for (CommandExample command : commands) {
      command.check(folder);
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void profilesCanBeUsed(MarkdownPage page) {
    assertThat(page.blocks("yaml")).allSatisfy(LabsTest::profile);
  }

  @Test
  void picturesAreSmallAndShown() throws IOException {
    List<String> shown = pages().stream().flatMap(page -> page.links().stream()).toList();
    try (Stream<Path> pictures = Files.list(GUIDES.resolve("pictures"))) {
      assertThat(pictures)
          .isNotEmpty()
          .allSatisfy(picture -> assertThat(Files.size(picture)).isLessThan(100_000))
          .allSatisfy(picture -> assertThat(shown).contains("pictures/" + picture.getFileName()));
    }
  }

  static Stream<Declaration> functions() {
    return Catalogue.load().functions().stream().map(function -> function.declaration());
  }

  @ParameterizedTest
  @MethodSource("functions")
  void theStudentsPageShowsEveryFunctionAtWork(Declaration function) {
    MarkdownPage page = MarkdownPage.read(GUIDES.resolve("student.md"));
    assertThat(
            Stream.concat(page.code().stream(), page.blocks("calc").stream())
                .filter(code -> code.startsWith("=" + function.displayName() + "(")))
        .as("examples of %s on guides/student.md", function.displayName())
        .isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("functions")
  void thePageOnNumbersNamesTheSourceOfEveryFunction(Declaration function) {
    Stream<String> lines =
        MarkdownPage.read(GUIDES.resolve("numbers.md"))
            .source()
            .lines()
            .filter(line -> line.startsWith("| " + function.displayName() + " |"));
    assertThat(lines)
        .as(
            "the line of %s on guides/numbers.md, which ends with its source",
            function.displayName())
        .singleElement(InstanceOfAssertFactories.STRING)
        .endsWith("| " + function.source() + " |");
  }

  /** Where this fails: cp target/raw/guides/rules.md guides/ */
  @Test
  void thePageOnRulesIsWhatTheRulesDeclare() {
    assertThat(GUIDES.resolve("rules.md")).hasContent(RulePage.text());
  }

  static Stream<String> rules() {
    return RuleCatalogue.load().ids().stream().sorted();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void theInstructorsPageSpeaksOfEveryRule(String rule) {
    boolean named = MarkdownPage.read(GUIDES.resolve("instructor.md")).code().contains(rule);
    assertThat(named).as("whether guides/instructor.md has %s", rule).isTrue();
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = to.resolve(from.relativize(file));
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
  }
}
