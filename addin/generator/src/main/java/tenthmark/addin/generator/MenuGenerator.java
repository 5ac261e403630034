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

  private MenuGenerator() {}

  /**
   * Writes files of the extension below {@code extension}.
   *
   * @param arguments the folder to write to, the file that lists the commands in the order of the
   *     menu, and the folder with the texts in each language
   */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0], "extension");
    Map<String, Properties> texts = texts(Path.of(arguments[2]));
    List<Entry> entries =
        Files.readAllLines(Path.of(arguments[1])).stream().map(line -> entry(line, texts)).toList();
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("Addons.xcu"), MenuConfiguration.addons(entries));
    Files.writeString(folder.resolve("ProtocolHandler.xcu"), MenuConfiguration.protocol());
    Files.writeString(folder.resolve("CalcWindowState.xcu"), MenuConfiguration.toolbar());
  }

  private static Map<String, Properties> texts(Path folder) throws IOException {
    Map<String, Properties> texts = new LinkedHashMap<>();
    for (Language language : Language.values()) {
      String suffix = language == Language.ENGLISH ? "" : "_" + language.code();
      Properties properties = new Properties();
      try (Reader reader =
          Files.newBufferedReader(folder.resolve("dialogs" + suffix + ".properties"))) {
        properties.load(reader);
      }
      texts.put(LanguageTag.of(language), properties);
    }
    return texts;
  }

  private static Entry entry(String line, Map<String, Properties> texts) {
    if (line.equals("-")) {
      return new Entry.Separator();
    }
    Map<String, String> titles = new LinkedHashMap<>();
    texts.forEach((language, own) -> titles.put(language, title(line, language, own)));
    return new Entry.Item(line, titles);
  }

  private static String title(String command, String language, Properties texts) {
    String title = texts.getProperty("menu." + command);
    if (title == null) {
      throw new IllegalStateException("no text menu." + command + " in " + language);
    }
    return title;
  }
}
