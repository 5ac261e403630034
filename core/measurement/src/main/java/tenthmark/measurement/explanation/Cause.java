package tenthmark.measurement.explanation;

import java.util.Optional;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.result.TextualNumber;
import tenthmark.measurement.wording.Sentences;

/**
 * Why a formula, or a part of it, has no value, or one that hardly can be meant.
 *
 * @param sentence what is wrong, for the student
 * @param function the LAB function that refuses or doubts an argument, if it is one
 */
record Cause(Kind kind, String sentence, Optional<Declaration> function) {

  /** What is wrong; each kind has its own advice. */
  enum Kind {
    /** A LAB function refuses an argument. */
    ARGUMENT,
    DIVISION,
    /** A text stands where a number belongs. */
    TEXT,
    /** A cell that is referred to holds an error of its own. */
    CELL,
    NAME,
    FUNCTION,
    /** A number in the formula has another decimal sign than the office's. */
    DECIMAL,
    CIRCLE,
    /** The formula cannot be read. */
    UNREADABLE,
    /** A function or an operation is not defined for these numbers. */
    UNDEFINED,
    /** A LAB function computes with 0 where a cell is blank. */
    BLANK,
    /** A LAB function is given a whole column, of which the office copies each cell. */
    WHOLE,
    /** A LAB function computes with arguments that are very unlikely. */
    UNLIKELY,
    /** Only the document's own program can tell. */
    UNKNOWN
  }

  static Cause of(Kind kind, String sentence) {
    return new Cause(kind, sentence, Optional.empty());
  }

  /** That a text looks like a number, if it does. */
  static Optional<Cause> ofTextualNumber(String place, String text, Sentences sentences) {
    return TextualNumber.in(text)
        .map(number -> number.typed(sentences.decimalSign()))
        .map(typed -> of(Kind.TEXT, sentences.say("why.text.number", place, text, typed)));
  }

  /** The sentence with the advice for its kind. */
  Explanation.Problem problem(Sentences sentences) {
    return new Explanation.Problem(sentence, sentences.say("fix." + kind));
  }
}
