package tenthmark.addin.menu.command;

import com.google.auto.service.AutoService;
import com.sun.star.system.SystemShellExecuteFlags;
import com.sun.star.system.XSystemShellExecute;
import com.sun.star.uno.Exception;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import tenthmark.addin.menu.Command;
import tenthmark.addin.menu.RefusalException;
import tenthmark.addin.menu.Workplace;
import tenthmark.measurement.wording.Language;

/** Opens the reference of the functions in the browser: the page in the user's language, if any. */
@AutoService(Command.class)
public final class OpenReference implements Command {

  @Override
  public String name() {
    return "reference";
  }

  @Override
  public void run(Workplace workplace) throws Exception {
    open(workplace, Optional.empty());
  }

  /**
   * Opens it.
   *
   * @param section the function to begin with
   */
  static void open(Workplace workplace, Optional<String> section) throws Exception {
    Path page = page(ExtensionFolder.of(workplace), workplace.locale().language());
    Path opened = section.map(name -> signpost(page, name)).filter(Files::exists).orElse(page);
    workplace
        .service(XSystemShellExecute.class, "com.sun.star.system.SystemShellExecute")
        .execute(opened.toUri().toString(), "", SystemShellExecuteFlags.URIS_ONLY);
  }

  /**
   * The page that leads on to a section: a system's browser is not told what follows a {@code #}.
   */
  static Path signpost(Path page, String section) {
    String folder = page.getFileName().toString().replaceFirst("\\.html$", "");
    return page.resolveSibling(folder).resolve(section + ".html");
  }

  static Path page(Path folder, Language language) {
    return Stream.of("function-reference-" + language.code() + ".html", "function-reference.html")
        .map(folder::resolve)
        .filter(Files::exists)
        .findFirst()
        .orElseThrow(() -> new RefusalException("reference.missing"));
  }
}
