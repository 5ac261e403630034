package tenthmark.addin.menu;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The icons of the commands on light, dark and high-contrast backgrounds. There is one set: each is
 * a dark tile with a light rim, so that tile or rim stands out from any background, and its lines
 * stand out from the tile. WCAG 2.1, success criterion 1.4.11 wants 3 to 1.
 */
class IconsTest {

  private static final double ENOUGH = 3;
  private static final Path FOLDER = Path.of("src/main/extension/icons");
  private static final List<Color> BACKGROUNDS =
      List.of(Color.WHITE, new Color(0xF0F0F0), new Color(0x2B2B2B), Color.BLACK);

  static Stream<Arguments> icons() {
    return Commands.load().all().stream()
        .flatMap(
            command ->
                Stream.of(16, 26).map(size -> Arguments.of(command.name() + "-" + size, size)));
  }

  @ParameterizedTest
  @MethodSource("icons")
  void standOutFromEveryBackground(String name, int size) throws Exception {
    BufferedImage icon = read(name, size);
    int middle = size / 2;
    for (Color background : BACKGROUNDS) {
      Color rim = shown(icon, middle, 0, background);
      Color tile = shown(icon, middle, 1, background);
      assertThat(Math.max(contrast(rim, background), contrast(tile, background)))
          .as(name + " on " + background)
          .isGreaterThanOrEqualTo(ENOUGH);
    }
  }

  @ParameterizedTest
  @MethodSource("icons")
  void haveLinesThatStandOutFromTheirTile(String name, int size) throws Exception {
    BufferedImage icon = read(name, size);
    Color tile = shown(icon, size / 2, 1, Color.WHITE);
    List<Color> inside = new ArrayList<>();
    for (int x = 2; x < size - 2; x++) {
      for (int y = 2; y < size - 2; y++) {
        Color one = shown(icon, x, y, Color.WHITE);
        if (contrast(one, tile) >= ENOUGH) {
          inside.add(one);
        }
      }
    }
    assertThat(inside.size()).as(name).isBetween(size * size / 12, size * size * 2 / 3);
  }

  private static BufferedImage read(String name, int size) throws Exception {
    Path file = FOLDER.resolve(name + ".png");
    assertThat(file).exists();
    BufferedImage icon = ImageIO.read(file.toFile());
    assertThat(icon.getWidth()).isEqualTo(size);
    assertThat(icon.getHeight()).isEqualTo(size);
    return icon;
  }

  /** A point as it is seen, which is a mixture where it is half transparent. */
  private static Color shown(BufferedImage icon, int x, int y, Color background) {
    Color own = new Color(icon.getRGB(x, y), true);
    double part = own.getAlpha() / 255.0;
    return new Color(
        mixed(own.getRed(), background.getRed(), part),
        mixed(own.getGreen(), background.getGreen(), part),
        mixed(own.getBlue(), background.getBlue(), part));
  }

  private static int mixed(int own, int background, double part) {
    return (int) Math.round(own * part + background * (1 - part));
  }

  /** WCAG 2.1, definition of the contrast ratio. */
  private static double contrast(Color one, Color other) {
    double first = luminance(one);
    double second = luminance(other);
    return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
  }

  private static double luminance(Color colour) {
    return 0.2126 * linear(colour.getRed())
        + 0.7152 * linear(colour.getGreen())
        + 0.0722 * linear(colour.getBlue());
  }

  private static double linear(int component) {
    double share = component / 255.0;
    return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
