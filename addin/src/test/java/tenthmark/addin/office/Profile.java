package tenthmark.addin.office;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a throwaway user profile holds when the office starts.
 *
 * @param extension an extension to install
 * @param settings entries of the office's registry, as its user layer spells them
 * @param java whether Java is switched on
 */
public record Profile(Optional<Path> extension, List<String> settings, boolean java) {

  private static final String LAYER =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <oor:items xmlns:oor="http://openoffice.org/2001/registry" \
      xmlns:xs="http://www.w3.org/2001/XMLSchema" \
      xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
      %s
      </oor:items>
      """;

  private static final String JAVA_SWITCHED_OFF =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <java xmlns="http://openoffice.org/2004/java/framework/1.0" \
      xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
      <enabled xsi:nil="false">false</enabled>
      </java>
      """;

  /** A profile with the extension that this build made. */
  public static Profile withExtension() {
    String path = System.getProperty("tenthmark.extension");
    if (path == null) {
      throw new IllegalStateException(
          "the system property tenthmark.extension does not name tenthmark.oxt; run these tests"
              + " with mvn verify -Preal-calc");
    }
    return new Profile(Optional.of(Path.of(path)), List.of(), true);
  }

  /** A profile without any extension. */
  public static Profile plain() {
    return new Profile(Optional.empty(), List.of(), true);
  }

  /** The same with the locale for numbers and separators, for instance de-DE. */
  public Profile inLocale(String locale) {
    return with("/org.openoffice.Setup/L10N", "ooSetupSystemLocale", locale);
  }

  /** The same with menus and texts in a language, for instance de, if the office has it. */
  public Profile inLanguage(String language) {
    return with("/org.openoffice.Office.Linguistic/General", "UILocale", language);
  }

  /** The same with the option that functions keep their English names in any language. */
  public Profile withEnglishFunctionNames() {
    return with("/org.openoffice.Office.Calc/Formula/Syntax", "EnglishFunctionName", "true");
  }

  /** The same without the windows that the office opens by itself over the first document. */
  public Profile withoutGreetings() {
    return with("/org.openoffice.Office.Common/Misc", "ShowTipOfTheDay", "false")
        .with("/org.openoffice.Office.Common/Misc", "FirstRun", "false");
  }

  /** The same with the office's own help in the browser, where it is not asked for leave first. */
  public Profile withHelpInBrowser() {
    return with("/org.openoffice.Office.Common/Help", "BuiltInHelpNotInstalledPopUp", "false");
  }

  /** The same with all formulas of .ods files computed anew when they are loaded. */
  public Profile withRecalculationOnLoad() {
    return with("/org.openoffice.Office.Calc/Formula/Load", "ODFRecalcMode", "0");
  }

  /** The same with Java switched off, as in the office's options. */
  public Profile withoutJava() {
    return new Profile(extension, settings, false);
  }

  private Profile with(String path, String property, String value) {
    List<String> more = new ArrayList<>(settings);
    more.add(
        "<item oor:path=\"%s\"><prop oor:name=\"%s\" oor:op=\"fuse\"><value>%s</value></prop></item>"
            .formatted(path, property, value));
    return new Profile(extension, more, java);
  }

  /** Writes the profile's files into its folder. */
  void write(Path profile) throws IOException {
    Path user = Files.createDirectories(profile.resolve("user"));
    Files.writeString(
        user.resolve("registrymodifications.xcu"), LAYER.formatted(String.join("\n", settings)));
    if (!java) {
      String machine = System.getProperty("os.arch").replace("amd64", "x86_64");
      Files.writeString(
          Files.createDirectories(user.resolve("config"))
              .resolve("javasettings_Linux_" + machine.toUpperCase(Locale.ROOT) + ".xml"),
          JAVA_SWITCHED_OFF);
    }
  }
}
