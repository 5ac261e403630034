package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who unpacks an archive of the release can follow every link and see every picture in it. */
class ReleasedPagesTest {

  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();
  private static final HtmlRenderer RENDERER =
      HtmlRenderer.builder()
          .extensions(List.of(TablesExtension.create(), HeadingAnchorExtension.create()))
          .build();

  @ParameterizedTest
  @ValueSource(strings = {"samples.xml", "checker-files.xml"})
  void linksStayInTheArchive(String descriptor) throws Exception {
    Map<Path, Path> files = ReleasedArchive.of(descriptor).files();
    List<String> astray = new ArrayList<>();
    for (Path page : files.keySet()) {
      if (page.toString().matches(".*\\.(md|html)")) {
        links(html(files.get(page)))
            .filter(link -> !leadsSomewhere(link, page, files))
            .forEach(link -> astray.add(page + ": " + link));
      }
    }
    assertThat(files.keySet()).anyMatch(file -> file.toString().endsWith(".md"));
    assertThat(astray).isEmpty();
  }

  private static Stream<String> links(Document page) {
    return Stream.concat(
            page.select("[href]").eachAttr("href").stream(),
            page.select("[src]").eachAttr("src").stream())
        .filter(link -> !link.startsWith("https://"));
  }

  private static boolean leadsSomewhere(String link, Path page, Map<Path, Path> files) {
    String[] parts = link.split("#", 2);
    Path target = parts[0].isEmpty() ? page : page.resolveSibling(parts[0]).normalize();
    return files.containsKey(target)
        && (parts.length == 1 || html(files.get(target)).getElementById(parts[1]) != null);
  }

  private static Document html(Path page) {
    try {
      String text = Files.readString(page);
      return Jsoup.parse(
          page.toString().endsWith(".md") ? RENDERER.render(PARSER.parse(text)) : text);
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
