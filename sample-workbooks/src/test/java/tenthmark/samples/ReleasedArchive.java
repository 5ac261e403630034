package tenthmark.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * What an archive of the release takes from the repository, as the descriptor in {@code
 * install-notes/release} lists it: path within the archive to file. What the release build itself
 * makes is not among it.
 */
record ReleasedArchive(Map<Path, Path> files) {

  private static final Path REPOSITORY = Path.of("..");

  static ReleasedArchive of(String descriptor) throws Exception {
    Element root =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(REPOSITORY.resolve("install-notes/release").resolve(descriptor).toFile())
            .getDocumentElement();
    Map<Path, Path> files = new TreeMap<>();
    for (Element set : elements(root, "fileSet")) {
      Path folder = source(text(set, "directory"));
      for (Path file : included(folder, set)) {
        files.put(inside(text(set, "outputDirectory")).resolve(folder.relativize(file)), file);
      }
    }
    return new ReleasedArchive(files);
  }

  private static Path source(String directory) {
    return REPOSITORY.resolve(directory.replace("${maven.multiModuleProjectDirectory}/", ""));
  }

  private static Path inside(String outputDirectory) {
    return Path.of(outputDirectory.replaceFirst("^/", ""));
  }

  private static List<Path> included(Path folder, Element set) throws IOException {
    List<Path> included = new ArrayList<>();
    for (Element include : elements(set, "include")) {
      String pattern = "glob:" + folder + "/" + include.getTextContent();
      try (Stream<Path> walk = Files.walk(folder)) {
        walk.filter(Files::isRegularFile)
            .filter(folder.getFileSystem().getPathMatcher(pattern)::matches)
            .forEach(included::add);
      }
    }
    return included;
  }

  private static List<Element> elements(Element parent, String name) {
    NodeList found = parent.getElementsByTagName(name);
    return IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i)).toList();
  }

  private static String text(Element parent, String name) {
    return elements(parent, name).get(0).getTextContent();
  }
}
