package tenthmark.addin.generator;

/**
 * A page that leads on to one section of the reference. The office can only open a file, and what
 * follows a {@code #} is lost on the way to the browser.
 */
final class Signpost {

  private Signpost() {}

  static String to(String page, String section) {
    return """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8"/>
        <title>%2$s in the Tenthmark function reference</title>
        <meta http-equiv="refresh" content="0; url=../%1$s#%2$s"/>
        </head>
        <body>
        <p><a href="../%1$s#%2$s">%2$s in the Tenthmark function reference</a></p>
        </body>
        </html>
        """
        .formatted(page, section);
  }
}
