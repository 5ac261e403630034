package tenthmark.addin.generator;

/** Text inside XML and HTML. */
final class Markup {

  private Markup() {}

  static String escape(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
