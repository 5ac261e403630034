package tenthmark.samples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/** A page in Markdown, and what a test asks of it. */
record MarkdownPage(String name, String source, Node document) {

  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();

  static MarkdownPage of(String name, String source) {
    return new MarkdownPage(name, source, PARSER.parse(source));
  }

  static MarkdownPage read(Path file) {
    try {
      return of(file.getFileName().toString(), Files.readString(file));
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** What a node holds, each below the other. */
  static Stream<Node> children(Node node) {
    return Stream.iterate(node.getFirstChild(), child -> child != null, Node::getNext);
  }

  /** The words of a node. */
  static String text(Node node) {
    StringBuilder text = new StringBuilder();
    node.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Text words) {
            text.append(words.getLiteral());
          }

          @Override
          public void visit(Code code) {
            text.append(code.getLiteral());
          }
        });
    return text.toString().strip();
  }

  /** The code within sentences and tables. */
  List<String> code() {
    List<String> code = new ArrayList<>();
    document.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Code found) {
            code.add(found.getLiteral());
          }
        });
    return code;
  }

  /** The fenced blocks of a language. */
  List<String> blocks(String language) {
    return children(document)
        .filter(FencedCodeBlock.class::isInstance)
        .map(FencedCodeBlock.class::cast)
        .filter(block -> language.equals(block.getInfo()))
        .map(FencedCodeBlock::getLiteral)
        .toList();
  }

  /** Where its links and pictures lead. */
  List<String> links() {
    List<String> links = new ArrayList<>();
    document.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Link link) {
            links.add(link.getDestination());
            visitChildren(link);
          }

          @Override
          public void visit(Image image) {
            links.add(image.getDestination());
          }
        });
    return links;
  }

  @Override
  public String toString() {
    return name;
  }
}
