package tenthmark.checker.page;

import java.util.EnumSet;
import java.util.Set;
import tenthmark.checker.reading.Taken;
import tenthmark.checker.record.Field;
import tenthmark.measurement.wording.Message;

/** What a cell was taken for, as a page marks it: by a colour, a border and a word. */
enum Mark {
  HEADING("mark.heading"),
  NAME("mark.name"),
  VALUE("mark.value"),
  UNIT("mark.unit"),
  UNCERTAINTY("mark.uncertainty"),
  CONTRIBUTION("mark.contribution"),
  METHOD("mark.method"),
  REASON("mark.reason"),
  OTHER("mark.other"),
  UNREAD("mark.unread");

  private static final Set<Field> NAMES = EnumSet.of(Field.QUANTITY, Field.SYMBOL);
  private static final Set<Field> VALUES = EnumSet.of(Field.VALUE, Field.RESULT);
  private static final Set<Field> REASONS = EnumSet.of(Field.RATIONALE, Field.REMARK);

  private final String key;

  Mark(String key) {
    this.key = key;
  }

  static Mark of(Taken taken) {
    if (taken instanceof Taken.Part part) {
      return of(part.field());
    }
    if (taken instanceof Taken.Heading) {
      return HEADING;
    }
    if (taken instanceof Taken.Other) {
      return OTHER;
    }
    return taken instanceof Taken.NotRead ? UNREAD : REASON;
  }

  private static Mark of(Field field) {
    if (NAMES.contains(field)) {
      return NAME;
    }
    if (VALUES.contains(field)) {
      return VALUE;
    }
    if (REASONS.contains(field)) {
      return REASON;
    }
    if (Field.CONTRIBUTIONS.contains(field)) {
      return CONTRIBUTION;
    }
    return switch (field) {
      case UNIT -> UNIT;
      case UNCERTAINTY -> UNCERTAINTY;
      default -> METHOD;
    };
  }

  /** The class of its style. */
  String style() {
    return key.replace('.', '-');
  }

  /** What it means. */
  Message meaning() {
    return Message.of(key);
  }
}
