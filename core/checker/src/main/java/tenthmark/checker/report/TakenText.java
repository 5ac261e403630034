package tenthmark.checker.report;

import tenthmark.checker.reading.Taken;
import tenthmark.measurement.wording.Message;

/** What a cell was taken for, in words. */
public final class TakenText {

  private TakenText() {}

  /** In a few words, whichever record it belongs to. */
  public static Message of(Taken taken) {
    if (taken instanceof Taken.Part part) {
      return part.field().inWords();
    }
    if (taken instanceof Taken.Heading heading) {
      return Message.of("taken.heading", heading.field().inWords());
    }
    if (taken instanceof Taken.Other other) {
      return ReadingText.role(other.role());
    }
    return taken instanceof Taken.NotRead notRead
        ? Message.of("taken.not-read", notRead.why())
        : Message.of("taken.reason");
  }
}
