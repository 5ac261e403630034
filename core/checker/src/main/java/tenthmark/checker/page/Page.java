package tenthmark.checker.page;

import static j2html.TagCreator.a;
import static j2html.TagCreator.body;
import static j2html.TagCreator.each;
import static j2html.TagCreator.footer;
import static j2html.TagCreator.head;
import static j2html.TagCreator.html;
import static j2html.TagCreator.meta;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.style;
import static j2html.TagCreator.title;

import j2html.TagCreator;
import j2html.tags.DomContent;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import tenthmark.checker.report.Program;
import tenthmark.checker.report.Provenance;
import tenthmark.measurement.wording.Sentences;

/** What every page has: one file that needs nothing from elsewhere and no script. */
final class Page {

  /** Forbids the browser to fetch or run anything, whatever might get into a page. */
  private static final String POLICY = "default-src 'none'; style-src 'unsafe-inline'";

  private Page() {}

  /** A whole document. */
  static String of(
      String heading,
      DomContent header,
      DomContent main,
      Optional<Provenance> provenance,
      Sentences texts) {
    return TagCreator.document(
            html(
                    head(
                        meta().withCharset("utf-8"),
                        meta()
                            .withName("viewport")
                            .withContent("width=device-width, initial-scale=1"),
                        meta().attr("http-equiv", "Content-Security-Policy").withContent(POLICY),
                        title(heading),
                        style(rawHtml(look()))),
                    body(
                        a(texts.say("page.skip")).withClass("skip").withHref("#content"),
                        header,
                        TagCreator.main(main).withId("content").attr("tabindex", "-1"),
                        footer(
                            p(Program.caution(texts)),
                            p(Program.written(texts)),
                            each(
                                provenance.map(Provenance::lines).orElse(List.of()),
                                line -> p(texts.say(line))))))
                .withLang(texts.language().code()))
        + "\n";
  }

  private static String look() {
    try (InputStream css = Page.class.getResourceAsStream("page.css")) {
      return new String(css.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
