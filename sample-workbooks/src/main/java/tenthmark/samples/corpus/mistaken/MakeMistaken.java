package tenthmark.samples.corpus.mistaken;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import tenthmark.samples.corpus.MakeCorpus;

/** Draws the twins with mistakes into a folder, as {@link MakeCorpus} draws correct workbooks. */
public final class MakeMistaken {

  private MakeMistaken() {}

  /** Takes one argument: the folder to write to. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    for (Twin twin : Twins.all()) {
      MakeCorpus.writeWorkbook(twin.mistaken(), folder);
      Files.writeString(folder.resolve(twin.name() + ".mistakes.yaml"), twin.text());
    }
  }
}
