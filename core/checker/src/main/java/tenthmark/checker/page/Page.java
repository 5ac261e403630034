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
import static j2html.TagCreator.script;
import static j2html.TagCreator.style;
import static j2html.TagCreator.title;

import j2html.TagCreator;
import j2html.tags.DomContent;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import tenthmark.checker.report.Fingerprint;
import tenthmark.checker.report.Program;
import tenthmark.checker.report.Provenance;
import tenthmark.measurement.wording.Sentences;

/** What every page has: one file that needs nothing from elsewhere, and as a rule no script. */
final class Page {

  /** Forbids the browser to fetch or run anything, whatever might get into a page. */
  private static final String POLICY = "default-src 'none'; style-src 'unsafe-inline'";

  /** Of the scripts only ours, told by its check sum, whatever else might get into a page. */
  private static final String WITH_SCRIPT = POLICY + "; script-src 'sha256-%s'";

  private Page() {}

  /** A whole document. */
  static String of(
      String heading,
      DomContent header,
      DomContent main,
      Optional<Provenance> provenance,
      Sentences texts) {
    return of(heading, header, main, provenance, texts, Optional.empty());
  }

  /** The same with a script of ours at its end. */
  static String of(
      String heading,
      DomContent header,
      DomContent main,
      Optional<Provenance> provenance,
      Sentences texts,
      Optional<String> script) {
    return TagCreator.document(
            html(
                    head(
                        meta().withCharset("utf-8"),
                        meta()
                            .withName("viewport")
                            .withContent("width=device-width, initial-scale=1"),
                        meta()
                            .attr("http-equiv", "Content-Security-Policy")
                            .withContent(policy(script)),
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
                                line -> p(texts.say(line)))),
                        each(script.stream().toList(), code -> script(rawHtml(code)))))
                .withLang(texts.language().code()))
        + "\n";
  }

  private static String policy(Optional<String> script) {
    return script.map(code -> WITH_SCRIPT.formatted(checkSum(code))).orElse(POLICY);
  }

  /** As a policy names a script (Content Security Policy Level 3, 2.3.1). */
  private static String checkSum(String script) {
    byte[] digest = Fingerprint.sha256().digest(script.getBytes(StandardCharsets.UTF_8));
    return Base64.getEncoder().encodeToString(digest);
  }

  private static String look() {
    return resource("page.css");
  }

  /** A text beside this class. */
  static String resource(String name) {
    try (InputStream file = Page.class.getResourceAsStream(name)) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
