package tenthmark.addin.checking;

import com.sun.star.uno.Exception;
import java.io.IOException;
import java.nio.file.CopyOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import tenthmark.addin.checking.CheckerRun.Output;
import tenthmark.addin.menu.RefusalException;
import tenthmark.addin.menu.Workplace;

/**
 * A copy for people without the extension, beside the document: values instead of LAB functions.
 */
public final class PlainCopy {

  private static final CopyOption[] REPLACE = {StandardCopyOption.REPLACE_EXISTING};
  private static final CopyOption[] NEW = {};

  private final Workplace workplace;
  private final FileFormat format;
  private final Path target;

  private PlainCopy(Workplace workplace, Path document) {
    this.workplace = workplace;
    this.format = FileFormat.of(document);
    this.target = beside(document, format);
  }

  /** Writes it; a file of that name is replaced only if the user says so. */
  public static void write(Workplace workplace, Path extension) throws Exception, IOException {
    Path document =
        workplace.spreadsheet().file().orElseThrow(() -> new RefusalException("plain.not-saved"));
    new PlainCopy(workplace, document).write(CheckerProgram.in(extension));
  }

  private static Path beside(Path document, FileFormat format) {
    String name = document.getFileName().toString();
    int dot = name.lastIndexOf('.') < 1 ? name.length() : name.lastIndexOf('.');
    return document.resolveSibling(name.substring(0, dot) + "-plain" + format.ending());
  }

  private void write(CheckerProgram program) throws Exception, IOException {
    boolean exists = Files.exists(target);
    if (exists && !workplace.conversation().confirm(say("plain.replace"))) {
      return;
    }
    program.onCopy(
        workplace,
        format,
        "plain.running",
        copy -> List.of("plain", copy.toString(), "--out", plain(copy).toString()),
        (output, copy) -> finish(output, copy, exists ? REPLACE : NEW));
  }

  private Path plain(Path copy) {
    return copy.resolveSibling("plain" + format.ending());
  }

  private void finish(Output output, Path copy, CopyOption[] options) throws IOException {
    String title = workplace.spreadsheet().title();
    if (!output.isDone() || !Files.exists(plain(copy))) {
      throw output.refusal("plain.failed", copy, title);
    }
    Files.move(plain(copy), target, options);
    String messages = output.messages(copy, title);
    workplace.conversation().tell((say("plain.done") + "\n" + messages).strip());
  }

  private String say(String key) {
    return workplace.texts().say(key, target.getFileName().toString());
  }
}
