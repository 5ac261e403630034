package tenthmark.addin.menu;

import java.util.ArrayList;
import java.util.List;

/** A conversation with a program: what is said is kept, and every question is answered no. */
final class Unattended implements Conversation {

  private final List<String> said = new ArrayList<>();

  @Override
  public void tell(String sentence) {
    said.add(sentence);
  }

  @Override
  public void warn(String sentence) {
    said.add(sentence);
  }

  @Override
  public boolean confirm(String question) {
    said.add(question);
    return false;
  }

  @Override
  public boolean canShowWindows() {
    return false;
  }

  /** All that was said, by lines. */
  String said() {
    return String.join("\n", said);
  }
}
