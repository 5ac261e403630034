package tenthmark.checker.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A path of the command line. Where its name is not in the encoding of the locale, as one in
 * Latin-1 in a locale with UTF-8, Java replaces what it cannot read; the file is then the one in
 * its folder whose name reads the same.
 */
final class NamedPath implements ITypeConverter<Path> {

  private static final String UNREADABLE = "\uFFFD";

  @Override
  public Path convert(String text) {
    try {
      Path path = Path.of(text);
      return text.contains(UNREADABLE) && !Files.exists(path) ? found(path) : path;
    } catch (InvalidPathException unreadable) {
      throw new TypeConversionException(
          "'" + text + "' has letters that the locale does not know; set LC_ALL=C.UTF-8");
    }
  }

  private static Path found(Path path) {
    Path found = path.isAbsolute() ? path.getRoot() : Path.of("");
    for (Path step : path) {
      Path next = found.resolve(step);
      found = Files.exists(next) ? next : among(found, step);
    }
    return found;
  }

  private static Path among(Path folder, Path name) {
    try (Stream<Path> files = Files.list(folder.toString().isEmpty() ? Path.of(".") : folder)) {
      List<Path> alike =
          files
              .map(Path::getFileName)
              .filter(file -> file.toString().equals(name.toString()))
              .toList();
      if (alike.size() > 1) {
        throw new TypeConversionException(
            "'" + name + "' may be several files, whose names are not in UTF-8; name their folder");
      }
      return folder.resolve(alike.isEmpty() ? name : alike.get(0));
    } catch (IOException unreadable) {
      return folder.resolve(name);
    }
  }
}
