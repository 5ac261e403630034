package tenthmark.checker.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Contrast as WCAG 2.2 defines it: success criteria 1.4.3 (text) and 1.4.11 (other parts). */
class PageStyleTest {

  private static final Pattern COLOUR = Pattern.compile("#([0-9a-f]{6}|[0-9a-f]{3})\\b");

  private static String css() throws Exception {
    try (var stream = Page.class.getResourceAsStream("page.css")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** All colours in the values of a property. */
  private static List<Integer> colours(String property) throws Exception {
    return Pattern.compile("(?:^|[ {;])" + property + ":([^;}]*)")
        .matcher(css())
        .results()
        .flatMap(found -> COLOUR.matcher(found.group(1)).results())
        .map(found -> found.group(1))
        .map(hex -> hex.length() == 3 ? hex.replaceAll("(.)", "$1$1") : hex)
        .map(hex -> Integer.parseInt(hex, 16))
        .toList();
  }

  private static double channel(int value) {
    double part = value / 255.0;
    return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
  }

  private static double luminance(int colour) {
    return 0.2126 * channel(colour >> 16 & 0xff)
        + 0.7152 * channel(colour >> 8 & 0xff)
        + 0.0722 * channel(colour & 0xff);
  }

  private static double contrast(int one, int other) {
    double light = Math.max(luminance(one), luminance(other));
    double dark = Math.min(luminance(one), luminance(other));
    return (light + 0.05) / (dark + 0.05);
  }

  @Test
  void contrastOfBlackOnWhiteIsTwentyOne() {
    assertThat(contrast(0, 0xffffff)).isEqualTo(21, within(1e-9));
  }

  @Test
  void textStandsOutFromEveryBackground() throws Exception {
    assertThat(colours("color")).hasSizeGreaterThan(2);
    assertThat(colours("background")).contains(0xffffff, 0xf2f2f2);
    for (int text : colours("color")) {
      assertThat(colours("background")).allMatch(background -> contrast(text, background) >= 4.5);
    }
  }

  @Test
  void theFocusAndTheMarksOfSeverityStandOutFromThePage() throws Exception {
    assertThat(colours("outline")).hasSize(1).allMatch(c -> contrast(c, 0xffffff) >= 3);
    assertThat(colours("border-left-color")).hasSize(3).allMatch(c -> contrast(c, 0xffffff) >= 3);
  }

  @Test
  void everyMarkOfACellHasAStyleOfItsOwn() throws Exception {
    String css = css();
    assertThat(Mark.values())
        .extracting(Mark::style)
        .allSatisfy(style -> assertThat(css).contains("." + style + " {"))
        .doesNotHaveDuplicates();
  }
}
