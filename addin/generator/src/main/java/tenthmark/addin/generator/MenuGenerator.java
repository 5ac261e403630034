package tenthmark.addin.generator;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import tenthmark.addin.generator.MenuConfiguration.Entry;
import tenthmark.measurement.wording.Language;

/** Writes the configuration of the extension's menu and toolbar. */
public final class MenuGenerator {

  private static final String SEPARATOR = "-";

  private MenuGenerator() {}

  /**
   * Writes files of the extension below {@code extension}.
   *
   * @param arguments the folder to write to, the file that lists the commands in the order of the
   *     menu, and the folder with the texts in each language
   */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0], "extension");
    List<String> lines = Files.readAllLines(Path.of(arguments[1]));
    Map<String, Properties> texts = texts(Path.of(arguments[2]), lines);
    List<Entry> entries = lines.stream().map(line -> entry(line, texts)).toList();
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("Addons.xcu"), MenuConfiguration.addons(entries));
    Files.writeString(folder.resolve("ProtocolHandler.xcu"), MenuConfiguration.protocol());
    Files.writeString(folder.resolve("CalcWindowState.xcu"), MenuConfiguration.toolbar());
  }

  private static Map<String, Properties> texts(Path folder, List<String> lines) throws IOException {
    Map<String, Properties> texts = new LinkedHashMap<>();
    for (Language language : Language.values()) {
      String suffix = language == Language.ENGLISH ? "" : "_" + language.code();
      Path file = folder.resolve("dialogs" + suffix + ".properties");
      texts.put(LanguageTag.of(language), read(file, lines));
    }
    return texts;
  }

  private static Properties read(Path file, List<String> lines) throws IOException {
    Properties texts = new Properties();
    try (Reader reader = Files.newBufferedReader(file)) {
      texts.load(reader);
    }
    List<String> missing =
        lines.stream()
            .filter(line -> !line.equals(SEPARATOR))
            .map(MenuGenerator::key)
            .filter(key -> !texts.containsKey(key))
            .toList();
    if (!missing.isEmpty()) {
      throw new IllegalStateException("missing in " + file.getFileName() + ": " + missing);
    }
    return texts;
  }

  private static Entry entry(String line, Map<String, Properties> texts) {
    if (line.equals(SEPARATOR)) {
      return new Entry.Separator();
    }
    Map<String, String> titles = new LinkedHashMap<>();
    texts.forEach((language, own) -> titles.put(language, own.getProperty(key(line))));
    return new Entry.Item(line, titles);
  }

  private static String key(String command) {
    return "menu." + command;
  }
}
