package tenthmark.addin.checking;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tenthmark.addin.menu.RefusalException;

/**
 * The checker's runnable jar, and the Java that runs it.
 *
 * @param java the program
 */
record CheckerProgram(Path java, Path jar) {

  private static final String MEMORY = "-Xmx512m";

  /** The jar that the extension ships, with the Java that runs the extension. */
  static CheckerProgram in(Path extension) {
    Path programs = Path.of(System.getProperty("java.home"), "bin");
    Path java =
        Stream.of("java", "java.exe")
            .map(programs::resolve)
            .filter(Files::exists)
            .findFirst()
            .orElseThrow(() -> new RefusalException("checker.no-java", programs.toString()));
    Path jar = extension.resolve("tenthmark-checker.jar");
    if (!Files.exists(jar)) {
      throw new RefusalException("checker.missing");
    }
    return new CheckerProgram(java, jar);
  }

  /** Starts it; what it writes goes into files in a folder. */
  CheckerRun start(TemporaryFolder folder, List<String> arguments) throws IOException {
    List<String> line = new ArrayList<>(List.of(java.toString(), MEMORY, "-jar", jar.toString()));
    line.addAll(arguments);
    Process process =
        new ProcessBuilder(line)
            .redirectInput(
                ProcessBuilder.Redirect.from(Files.createFile(folder.file("in")).toFile()))
            .redirectOutput(folder.file(CheckerRun.OUT).toFile())
            .redirectError(folder.file(CheckerRun.ERR).toFile())
            .start();
    return new CheckerRun(process, folder);
  }
}
