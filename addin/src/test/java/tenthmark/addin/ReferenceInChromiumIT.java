package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.addin.office.Patience;
import tenthmark.checker.page.Browser;

/** The function reference as it is shipped, in a real headless Chromium. */
class ReferenceInChromiumIT {

  private static final Path FOLDER = Path.of("target/generated-extension/extension");
  private static final Path PAGE = FOLDER.resolve("function-reference.html").toAbsolutePath();
  private static final int ENTER = 13;
  private static final int TAB = 9;

  @TempDir static Path folder;

  private static Browser browser;

  @BeforeAll
  static void start() throws Exception {
    browser = Browser.start(folder.resolve("profile"));
  }

  @AfterAll
  static void close() throws Exception {
    if (browser != null) {
      browser.close();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {360, 1280})
  void fitsTheWidthOfTheWindow(int width) throws Exception {
    browser.open(PAGE, width);
    JsonNode shown = browser.evaluate("document.documentElement.scrollWidth");
    assertThat(shown.asInt()).isLessThanOrEqualTo(width);
  }

  @Test
  void asksForNothingButItself() throws Exception {
    browser.open(PAGE, 1280);
    assertThat(browser.requests()).containsExactly(PAGE.toUri().toString());
  }

  @Test
  void isReadByKeyboardAloneWithTheFocusShown() throws Exception {
    browser.open(PAGE, 360);
    assertThat(browser.tabThrough()).hasSizeGreaterThan(30).doesNotContain(false);
  }

  @Test
  void beginsWithALinkToTheContent() throws Exception {
    browser.open(PAGE, 1280);
    browser.press("Tab", TAB);
    assertThat(browser.evaluate("document.activeElement.textContent").asText())
        .isEqualTo("Skip to the content");
    browser.press("Enter", ENTER);
    assertThat(browser.evaluate("document.activeElement.id").asText()).isEqualTo("content");
  }

  @Test
  void showsTextWithEnoughContrast() throws Exception {
    browser.open(PAGE, 1280);
    assertThat(browser.contrasts())
        .hasSizeGreaterThan(100)
        .allMatch(contrast -> contrast.asDouble() >= 4.5);
  }

  @Test
  void isReachedAtAFunctionByItsSignpost() throws Exception {
    browser.open(FOLDER.resolve("function-reference/LAB_READING.html").toAbsolutePath(), 1280);
    Patience.until(
        "the page at the function", () -> address().equals(PAGE.toUri() + "#LAB_READING"));
    assertThat(
            browser
                .evaluate("document.getElementById('LAB_READING').getBoundingClientRect().top")
                .asDouble())
        .isBetween(-1.0, 100.0);
  }

  /** Where the browser is; nowhere while it goes from one page to the next. */
  private String address() throws Exception {
    try {
      return browser.evaluate("document.readyState === 'complete' ? location.href : ''").asText();
    } catch (AssertionError leaving) {
      return "";
    }
  }
}
