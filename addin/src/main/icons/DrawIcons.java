import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.imageio.ImageIO;

/**
 * Draws the icons of the menu: {@code java DrawIcons.java ../extension/icons}. Light and orange
 * lines on a dark tile with a light rim, so that they show on light, dark and high-contrast
 * backgrounds alike. Coordinates are those of the 16 pixel icon.
 */
class DrawIcons {

  static final Color TILE = new Color(0x0B3C49);
  static final Color RIM = new Color(0xDDE6EA);
  static final Color LINE = Color.WHITE;
  static final Color ACCENT = new Color(0xFFB347);

  static final Map<String, Consumer<Graphics2D>> ICONS =
      Map.ofEntries(
          Map.entry("new-table", DrawIcons::newTable),
          Map.entry("add-record", DrawIcons::addRecord),
          Map.entry("explain", DrawIcons::explain),
          Map.entry("spread", DrawIcons::spread),
          Map.entry("graph", DrawIcons::graph),
          Map.entry("check", DrawIcons::check),
          Map.entry("reading", DrawIcons::reading),
          Map.entry("remove-comments", DrawIcons::removeComments),
          Map.entry("plain-copy", DrawIcons::plainCopy),
          Map.entry("add-notice", DrawIcons::addNotice),
          Map.entry("reference", DrawIcons::reference));

  public static void main(String[] arguments) throws IOException {
    for (Map.Entry<String, Consumer<Graphics2D>> icon : ICONS.entrySet()) {
      for (int size : List.of(16, 26)) {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = image.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.scale(size / 16.0, size / 16.0);
        pen.setColor(RIM);
        pen.fill(new RoundRectangle2D.Double(0, 0, 16, 16, 4, 4));
        pen.setColor(TILE);
        pen.fill(new RoundRectangle2D.Double(0.8, 0.8, 14.4, 14.4, 3, 3));
        icon.getValue().accept(pen);
        File file = new File(arguments[0], icon.getKey() + "-" + size + ".png");
        ImageIO.write(image, "png", file);
      }
    }
  }

  static void newTable(Graphics2D pen) {
    table(pen, 3, 3, 13, 13);
  }

  static void addRecord(Graphics2D pen) {
    table(pen, 3, 3, 13, 8.4);
    lines(pen, ACCENT, 1.6, 8, 9.4, 8, 14);
    lines(pen, ACCENT, 1.6, 5.7, 11.7, 10.3, 11.7);
  }

  static void explain(Graphics2D pen) {
    Path2D bow = new Path2D.Double();
    bow.moveTo(5.3, 6);
    bow.curveTo(5.3, 1.8, 10.9, 2, 10.7, 5.8);
    bow.curveTo(10.6, 8, 8, 7.8, 8, 10);
    stroke(pen, LINE, 1.6);
    pen.draw(bow);
    dot(pen, 8, 12.6);
  }

  static void spread(Graphics2D pen) {
    pen.setColor(ACCENT);
    pen.fill(new Rectangle2D.Double(3, 3, 4.4, 3.4));
    stroke(pen, LINE, 1);
    pen.draw(new Rectangle2D.Double(3, 3, 4.4, 3.4));
    lines(pen, LINE, 1.4, 5.2, 8.6, 5.2, 13);
    lines(pen, LINE, 1.4, 3.4, 11.4, 5.2, 13.2, 7, 11.4);
    lines(pen, LINE, 1.4, 9.6, 4.7, 13, 4.7);
    lines(pen, LINE, 1.4, 11.4, 2.9, 13.2, 4.7, 11.4, 6.5);
    lines(pen, ACCENT, 1.4, 8.4, 8, 12.6, 12.4);
    lines(pen, ACCENT, 1.4, 10, 12.6, 12.8, 12.6, 12.8, 9.8);
  }

  static void graph(Graphics2D pen) {
    lines(pen, LINE, 1.2, 3.2, 2.8, 3.2, 13, 13.4, 13);
    lines(pen, ACCENT, 1.4, 4.6, 11.6, 12.8, 4);
    for (double[] point : new double[][] {{6, 9}, {9, 8.6}, {11.6, 4.2}}) {
      lines(pen, LINE, 1, point[0], point[1] - 2, point[0], point[1] + 2);
      dot(pen, point[0], point[1]);
    }
  }

  static void check(Graphics2D pen) {
    table(pen, 3, 3, 10, 10);
    lines(pen, ACCENT, 2, 6.6, 10.6, 9, 13, 13.4, 6.6);
  }

  static void reading(Graphics2D pen) {
    table(pen, 3, 3, 11, 11);
    stroke(pen, ACCENT, 1.6);
    pen.draw(new Ellipse2D.Double(7, 6.4, 4.6, 4.6));
    lines(pen, ACCENT, 1.8, 11.2, 10.6, 13.4, 12.8);
  }

  static void removeComments(Graphics2D pen) {
    stroke(pen, LINE, 1.1);
    Path2D bubble = new Path2D.Double();
    bubble.moveTo(2.8, 3.2);
    bubble.lineTo(13.2, 3.2);
    bubble.lineTo(13.2, 10);
    bubble.lineTo(7, 10);
    bubble.lineTo(4.5, 13);
    bubble.lineTo(4.5, 10);
    bubble.lineTo(2.8, 10);
    bubble.closePath();
    pen.draw(bubble);
    lines(pen, ACCENT, 1.5, 6, 4.9, 10, 8.3);
    lines(pen, ACCENT, 1.5, 10, 4.9, 6, 8.3);
  }

  static void plainCopy(Graphics2D pen) {
    stroke(pen, LINE, 1.1);
    pen.draw(new Rectangle2D.Double(3, 2.8, 7, 8.4));
    pen.setColor(TILE);
    pen.fill(new Rectangle2D.Double(6, 5.2, 7, 8.2));
    stroke(pen, ACCENT, 1.1);
    pen.draw(new Rectangle2D.Double(6, 5.2, 7, 8.2));
    lines(pen, LINE, 1, 7.8, 8, 11.2, 8);
    lines(pen, LINE, 1, 7.8, 10.6, 11.2, 10.6);
  }

  static void addNotice(Graphics2D pen) {
    stroke(pen, LINE, 1.1);
    pen.draw(new Rectangle2D.Double(2.8, 3, 10.4, 10));
    lines(pen, ACCENT, 1.7, 8, 5.2, 8, 8.6);
    dot(pen, 8, 11.1);
  }

  static void reference(Graphics2D pen) {
    lines(pen, LINE, 1.1, 8, 4.6, 5.6, 3.4, 2.8, 3.4, 2.8, 11.8, 5.6, 11.8, 8, 13, 8, 4.6);
    lines(pen, LINE, 1.1, 8, 4.6, 10.4, 3.4, 13.2, 3.4, 13.2, 11.8, 10.4, 11.8, 8, 13);
    lines(pen, ACCENT, 1, 4.4, 6, 6.2, 6.4);
    lines(pen, ACCENT, 1, 4.4, 8.4, 6.2, 8.8);
    lines(pen, ACCENT, 1, 9.8, 6.4, 11.6, 6);
    lines(pen, ACCENT, 1, 9.8, 8.8, 11.6, 8.4);
  }

  static void table(Graphics2D pen, double left, double top, double right, double bottom) {
    double head = top + 2.7;
    pen.setColor(ACCENT);
    pen.fill(new Rectangle2D.Double(left, top, right - left, head - top));
    stroke(pen, LINE, 1);
    pen.draw(new Rectangle2D.Double(left, top, right - left, bottom - top));
    lines(pen, LINE, 1, left, head, right, head);
    lines(pen, LINE, 1, (left + right) / 2, head, (left + right) / 2, bottom);
    if (bottom - head > 5) {
      lines(pen, LINE, 1, left, (head + bottom) / 2, right, (head + bottom) / 2);
    }
  }

  static void lines(Graphics2D pen, Color colour, double width, double... corners) {
    Path2D path = new Path2D.Double();
    path.moveTo(corners[0], corners[1]);
    for (int i = 2; i < corners.length; i += 2) {
      path.lineTo(corners[i], corners[i + 1]);
    }
    stroke(pen, colour, width);
    pen.draw(path);
  }

  static void dot(Graphics2D pen, double x, double y) {
    pen.setColor(ACCENT);
    pen.fill(new Ellipse2D.Double(x - 1.1, y - 1.1, 2.2, 2.2));
  }

  static void stroke(Graphics2D pen, Color colour, double width) {
    pen.setColor(colour);
    pen.setStroke(new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
  }
}
