package tenthmark.checker.submission;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How the paths of submissions are made up, such as <code>{section}/{last}_{first}_{id}_{any}
 * </code>: words in braces stand for parts, the rest for itself, a slash for the step into a folder
 * or archive. Only {any} spans several steps. Each part is as short as it can be for the whole to
 * fit; no pair of piece and place is tried twice, so the time grows with the square of the length.
 */
public final class PathPattern {

  /** One piece of a pattern: a part, or text that stands for itself. */
  private record Piece(Part part, String text) {}

  /** What is wrong with a pattern, in a line of our own. */
  public static final class MalformedException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private MalformedException(String line) {
      super(line);
    }
  }

  private static final Pattern BRACES = Pattern.compile("\\{([^{}]*)\\}|([^{}]+)|[{}]");

  /** No name of a file is longer; what is longer is not searched. */
  private static final int LONGEST = 1000;

  private final String text;
  private final List<Piece> pieces;

  private PathPattern(String text, List<Piece> pieces) {
    this.text = text;
    this.pieces = List.copyOf(pieces);
  }

  /**
   * Reads a pattern.
   *
   * @throws MalformedException with a line that says what is wrong
   */
  public static PathPattern of(String text) {
    List<Piece> pieces = new ArrayList<>();
    Matcher braces = BRACES.matcher(text);
    while (braces.find()) {
      pieces.add(piece(braces));
    }
    requireOnce(pieces);
    requireApart(pieces);
    return new PathPattern(text, pieces);
  }

  private static Piece piece(Matcher braces) {
    if (braces.group(2) != null) {
      return new Piece(null, braces.group(2));
    }
    Part part = braces.group(1) == null ? null : Part.of(braces.group(1));
    if (part == null) {
      throw new MalformedException(
          braces.group()
              + " is no part of a name; parts are "
              + Stream.of(Part.values())
                  .map(known -> "{" + known.word() + "}")
                  .collect(Collectors.joining(", ")));
    }
    return new Piece(part, "");
  }

  private static void requireOnce(List<Piece> pieces) {
    Set<Part> found = EnumSet.noneOf(Part.class);
    for (Piece piece : pieces) {
      if (piece.part() != null && piece.part() != Part.ANY && !found.add(piece.part())) {
        throw new MalformedException("{" + piece.part().word() + "} stands there twice");
      }
    }
    if (!found.contains(Part.ID) && !found.contains(Part.NAME) && !found.contains(Part.LAST)) {
      throw new MalformedException("it tells no student: {id}, {name} or {last} is missing");
    }
  }

  private static void requireApart(List<Piece> pieces) {
    for (int next = 1; next < pieces.size(); next++) {
      if (pieces.get(next).part() != null && pieces.get(next - 1).part() != null) {
        throw new MalformedException("nothing stands between two parts");
      }
    }
  }

  /** The pattern as it was written. */
  public String text() {
    return text;
  }

  /**
   * What a path says, if it is made up so.
   *
   * @param path its steps are separated by slashes; without the ending of the file
   */
  Optional<Label> read(String path) {
    if (path.length() > LONGEST) {
      return Optional.empty();
    }
    Map<Part, String> parts = new EnumMap<>(Part.class);
    return fits(path, 0, 0, parts, new HashSet<>()) ? Optional.of(label(parts)) : Optional.empty();
  }

  /**
   * Whether the pieces from an index on fit the path from a place on; then the parts are filled in.
   *
   * @param failed pieces and places known not to fit, so that no pair is tried twice
   */
  private boolean fits(
      String path, int piece, int from, Map<Part, String> parts, Set<Long> failed) {
    if (piece == pieces.size()) {
      return from == path.length();
    }
    if (failed.contains(key(piece, from))) {
      return false;
    }
    Piece next = pieces.get(piece);
    boolean fits =
        next.part() == null
            ? path.startsWith(next.text(), from)
                && fits(path, piece + 1, from + next.text().length(), parts, failed)
            : part(path, piece, from, parts, failed);
    if (!fits) {
      failed.add(key(piece, from));
    }
    return fits;
  }

  private boolean part(
      String path, int piece, int from, Map<Part, String> parts, Set<Long> failed) {
    Part part = pieces.get(piece).part();
    int slash = part == Part.ANY ? -1 : path.indexOf('/', from);
    int last = slash < 0 ? path.length() : slash;
    for (int to = piece + 1 == pieces.size() ? last : from; to <= last; to++) {
      String text = path.substring(from, to);
      if (part.holds(text) && fits(path, piece + 1, to, parts, failed)) {
        parts.put(part, text);
        return true;
      }
    }
    return false;
  }

  private static long key(int piece, int from) {
    return (long) piece << Integer.SIZE | from;
  }

  private static Label label(Map<Part, String> parts) {
    return new Label(
        Optional.ofNullable(parts.get(Part.ID)),
        name(parts),
        Optional.ofNullable(parts.get(Part.SECTION)),
        parts.containsKey(Part.ATTEMPT)
            ? OptionalInt.of(Integer.parseInt(parts.get(Part.ATTEMPT)))
            : OptionalInt.empty(),
        Optional.ofNullable(parts.get(Part.TIME)).flatMap(HandInTime::read));
  }

  private static Optional<String> name(Map<Part, String> parts) {
    String name =
        Stream.of(Part.NAME, Part.FIRST, Part.LAST)
            .filter(parts::containsKey)
            .map(part -> parts.get(part).replace('_', ' ').strip())
            .collect(Collectors.joining(" "));
    return name.isEmpty() ? Optional.empty() : Optional.of(name);
  }
}
