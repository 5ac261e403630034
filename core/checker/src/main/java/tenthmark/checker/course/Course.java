package tenthmark.checker.course;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tenthmark.checker.reading.TableGuide;
import tenthmark.checker.reading.words.Vocabulary;
import tenthmark.measurement.recording.Convention;

/**
 * What a course expects of its workbooks.
 *
 * @param name as reports show it; may be empty
 * @param convention by which measurements are written down
 * @param combineRequired whether only the convention's way of combining contributions is right
 * @param apparatus the instruments on the benches
 * @param quantities what is to be measured or calculated
 * @param headings the words by which column headings are recognised
 * @param tables how single tables are to be read, whatever their headings
 */
public record Course(
    String name,
    Convention convention,
    boolean combineRequired,
    List<Apparatus> apparatus,
    List<ExpectedQuantity> quantities,
    Vocabulary headings,
    List<TableGuide> tables) {

  /** A course without expectations of its own, under the classroom convention. */
  public static final Course PLAIN =
      new Course("", Convention.BENCH, false, List.of(), List.of(), Vocabulary.STANDARD, List.of());

  /** Copies the lists. */
  public Course {
    apparatus = List.copyOf(apparatus);
    quantities = List.copyOf(quantities);
    tables = List.copyOf(tables);
  }

  /**
   * The one apparatus that a text mentions; empty for none and for several. Beside a steel rule a
   * plain rule is not mentioned.
   */
  public Optional<Apparatus> apparatusMentioned(String text) {
    Map<Apparatus, String> mentioned = new HashMap<>();
    apparatus.forEach(item -> item.nameWithin(text).ifPresent(name -> mentioned.put(item, name)));
    List<Apparatus> most =
        mentioned.keySet().stream()
            .filter(
                item ->
                    mentioned.values().stream()
                        .noneMatch(
                            name ->
                                name.contains(mentioned.get(item))
                                    && !name.equals(mentioned.get(item))))
            .toList();
    return most.size() == 1 ? Optional.of(most.get(0)) : Optional.empty();
  }

  /** The apparatus with this name in the list. */
  public Optional<Apparatus> apparatus(String named) {
    return apparatus.stream().filter(item -> item.name().equals(named)).findFirst();
  }
}
