package tenthmark.measurement.formula;

/**
 * A piece of a formula's text.
 *
 * @param text as written; without the quotes of a text or a sheet's name
 * @param position where it starts, counted from 1
 */
record Token(Kind kind, String text, int position) {

  /** What a piece is. */
  enum Kind {
    NUMBER,
    TEXT,
    WORD,
    SHEET,
    BRACKETED,
    SIGN,
    END
  }

  boolean isSign(String sign) {
    return kind == Kind.SIGN && text.equals(sign);
  }
}
