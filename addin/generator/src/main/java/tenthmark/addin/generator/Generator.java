package tenthmark.addin.generator;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.WorksheetFunction;
import tenthmark.measurement.wording.Language;

/** Writes everything that follows from the catalogue, below one folder. */
public final class Generator {

  private Generator() {}

  /**
   * Writes Java sources below {@code java} and files of the extension below {@code extension}.
   *
   * @param arguments the folder
   */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    for (Map.Entry<String, String> file : files(declarations()).entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue());
    }
  }

  static List<Declaration> declarations() {
    return Catalogue.load().functions().stream().map(WorksheetFunction::declaration).toList();
  }

  /** The text of each file by its path. */
  static Map<String, String> files(List<Declaration> declarations) {
    declarations.forEach(ReservedWords::refuseIn);
    declarations.forEach(Method::check);
    Map<String, String> files = new LinkedHashMap<>();
    files.put("java/tenthmark/XLab.java", UnoInterface.of(declarations));
    files.put("java/tenthmark/addin/Lab.java", Implementation.of(declarations));
    files.put("extension/tenthmark.idl", InterfaceDefinition.of(declarations));
    files.put("extension/CalcAddIns.xcu", Configuration.of(declarations));
    for (Language language : Language.values()) {
      ReferencePage page = new ReferencePage(declarations, language);
      files.put("extension/" + page.name() + ".html", page.text());
      for (String section : page.sections()) {
        files.put("extension/" + page.name() + "/" + section + ".html", page.signpost(section));
      }
    }
    return files;
  }
}
