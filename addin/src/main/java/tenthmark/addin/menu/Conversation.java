package tenthmark.addin.menu;

/** What a command says to its user and asks. */
public interface Conversation {

  /** Says a sentence. */
  void tell(String sentence);

  /** Says that something went wrong. */
  void warn(String sentence);

  /** Whether the user says yes. */
  boolean confirm(String question);

  /** Whether somebody is there to look at a window. */
  boolean canShowWindows();
}
