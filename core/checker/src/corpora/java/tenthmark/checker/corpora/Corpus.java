package tenthmark.checker.corpora;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.TreeMap;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Collectors;

/**
 * Spreadsheets that no one here made: the test documents of Apache Tika 3.2.3 and of Drools
 * decision tables 8.44.0, both under the Apache licence, from their test jars on Maven Central.
 * Many were written by Excel 95 to 2016, LibreOffice, OpenOffice and other programs, some are
 * damaged or locked on purpose.
 */
final class Corpus {

  private static final List<String> LANDMARKS =
      List.of(
          "test-documents/testEXCEL.xlsx",
          "test-documents/testFooter.ods",
          "org/drools/decisiontable/");

  private static final String SPREADSHEET =
      "(?i).*\\.(xlsx|xlsm|xltx|xltm|xlsb|xls|xlt|ods|ots|fods)";

  private Corpus() {}

  /** Unpacks all spreadsheets, each once, in the order of their names. */
  static List<Path> unpackedTo(Path folder) throws IOException {
    TreeMap<String, Path> files = new TreeMap<>();
    for (String landmark : LANDMARKS) {
      Enumeration<URL> places = Corpus.class.getClassLoader().getResources(landmark);
      while (places.hasMoreElements()) {
        if (places.nextElement().openConnection() instanceof JarURLConnection jar) {
          unpack(jar.getJarFile(), folder, files);
        }
      }
    }
    return List.copyOf(files.values());
  }

  private static void unpack(JarFile jar, Path folder, TreeMap<String, Path> files) {
    List<JarEntry> entries =
        jar.stream()
            .filter(entry -> entry.getName().matches(SPREADSHEET))
            .collect(Collectors.toCollection(ArrayList::new));
    for (JarEntry entry : entries) {
      files.computeIfAbsent(
          entry.getName().replace('/', '.'), name -> copy(jar, entry, folder.resolve(name)));
    }
  }

  private static Path copy(JarFile jar, JarEntry entry, Path target) {
    try (var stream = jar.getInputStream(entry)) {
      Files.copy(stream, target);
      return target;
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }
}
