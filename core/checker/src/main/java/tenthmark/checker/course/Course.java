package tenthmark.checker.course;

import java.util.List;
import java.util.Optional;
import tenthmark.checker.record.HeadingWords;
import tenthmark.measurement.recording.Convention;

/**
 * What a course expects of its workbooks.
 *
 * @param name as reports show it; may be empty
 * @param convention by which measurements are written down
 * @param apparatus the instruments on the benches
 * @param quantities what is to be measured or calculated
 * @param headings the words by which column headings are recognised
 */
public record Course(
    String name,
    Convention convention,
    List<Apparatus> apparatus,
    List<ExpectedQuantity> quantities,
    HeadingWords headings) {

  /** A course without expectations of its own, under the classroom convention. */
  public static final Course PLAIN =
      new Course("", Convention.BENCH, List.of(), List.of(), HeadingWords.STANDARD);

  /** Copies the lists. */
  public Course {
    apparatus = List.copyOf(apparatus);
    quantities = List.copyOf(quantities);
  }

  /** The apparatus with a name of its own in the list. */
  public Optional<Apparatus> apparatus(String named) {
    return apparatus.stream().filter(item -> item.name().equals(named)).findFirst();
  }
}
