package tenthmark.addin.office;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Stands where an office looks for the system's browser, and keeps the addresses that it is given.
 *
 * @param folder where the programs are that the office is to find first
 */
record FakeBrowser(Path folder) {

  private static final String PROGRAM =
      """
      #!/bin/sh
      printf '%s\\n' "$1" >>"$(dirname "$0")/opened.txt"
      """;

  /** The one of a user's folder. */
  static FakeBrowser in(Path home) {
    return new FakeBrowser(home.resolve("bin"));
  }

  void install() throws IOException {
    Path program = Files.createDirectories(folder).resolve("xdg-open");
    Files.writeString(program, PROGRAM);
    program.toFile().setExecutable(true);
    Files.createFile(opened());
  }

  List<String> addresses() throws IOException {
    return Files.readAllLines(opened());
  }

  private Path opened() {
    return folder.resolve("opened.txt");
  }
}
