package tenthmark.addin.generator;

import tenthmark.measurement.wording.Language;

/**
 * A page that leads on to one section of the reference. The office can only open a file, and what
 * follows a {@code #} is lost on the way to the browser.
 */
final class Signpost {

  private Signpost() {}

  static String to(String page, String section, Language language, String text) {
    return """
        <!DOCTYPE html>
        <html lang="%3$s">
        <head>
        <meta charset="utf-8"/>
        <title>%4$s</title>
        <meta http-equiv="refresh" content="0; url=../%1$s#%2$s"/>
        </head>
        <body>
        <p><a href="../%1$s#%2$s">%4$s</a></p>
        </body>
        </html>
        """
        .formatted(page, section, language.code(), text);
  }
}
