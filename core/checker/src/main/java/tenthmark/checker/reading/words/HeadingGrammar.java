package tenthmark.checker.reading.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tenthmark.checker.unit.UnitReader;
import tenthmark.measurement.result.RecordText;

/**
 * Reads headings and labels as tokens in any order: quantity, symbol, role, qualifier and unit.
 * Words that no language's vocabulary has are the quantity's name. Each text is read once.
 */
public final class HeadingGrammar {

  private static final int LONGEST = 90;

  /** No heading is longer; what is longer is not searched. */
  private static final int LONGEST_SEARCHED = 500;

  private static final int MOST_WORDS = 11;
  private static final Pattern BLANKS = Pattern.compile("[\\s\\u00A0\\u2009\\u202F]+");
  private static final Pattern PLUS_MINUS = Pattern.compile("\\+\\s?/\\s?[-−–]|\\+[-−–]");
  private static final Pattern END = Pattern.compile("(?<![\\s:=≈])[\\s:=≈]++$");
  private static final Pattern NUMBERING =
      Pattern.compile("^(?:\\(\\d{1,2}\\)|\\(?\\p{Ll}\\)|\\d{1,2}[.)])\\s+(?=\\p{L})");
  private static final Pattern BRACKETS_AT_END =
      Pattern.compile("(?:\\([^()]*\\)|\\[[^\\[\\]]*\\])$");
  private static final Pattern GIVEN =
      Pattern.compile(
          "[(\\[]?[,;]?\\s{0,9}+±\\s*(?<size>\\d+(?:[.,]\\d+)?(?:[eE]-?\\d+)?)\\s*"
              + "(?<unit>%|[\\p{L}°µΩ][\\p{L}\\p{N}°µΩ/·^²³]*)?\\s*[)\\]]?");
  private static final Pattern PART_OF_ITSELF =
      Pattern.compile(
          "(?:[ΔδuU∆σ])\\s?[(_]?\\s*(?<of>[\\p{L}\\p{N}_]+)\\)?\\s*/\\s*\\|?(?:\\k<of>)\\|?"
              + "|[Δδu∆σ]\\s*/\\s*\\|?(?<whole>\\p{L}[\\p{N}_₀-₉]?)\\|?");

  /** In {@code p/p₀} two values of one quantity make a number. */
  private static final Pattern RATIO_TO_ANOTHER =
      Pattern.compile("\\(?(?<of>\\p{L}{1,3})\\s?/\\s?\\k<of>[₀-₉0-9_ₐ-ₜ]\\p{L}{0,3}\\)?");

  private static final Pattern MARKED_IN_BRACKETS =
      Pattern.compile("(?<![\\p{L}\\p{N}])(?<mark>[uUΔδ∆σsS])\\((?<of>[^()]{1,30})\\)");
  private static final Pattern BRACKETS =
      Pattern.compile("\\((?<round>[^()]*)\\)|\\[(?<square>[^\\[\\]]*)\\]");
  private static final Pattern FUNCTION =
      Pattern.compile(
          "(?<![\\p{L}])(?<name>ln|log|lg|log10|exp|sin|cos|tan)"
              + "(?:\\s?(?<of>\\([^()]*\\))|\\s(?<symbol>\\p{L}(?:[\\p{N}₀-₉]|_\\w)?)(?![\\p{L}\\p{N}]))");
  private static final Pattern MARKED =
      Pattern.compile("(?<mark>[Δδ∆σ]|[uσ]_)(?<of>[\\p{L}\\p{N}_'′²³₀-₉/()]+)");
  private static final Pattern SYMBOL =
      Pattern.compile(
          "\\p{L}(?:[\\p{N}₀-₉ₐ-ₜ'′²³]*|_\\{?[\\p{L}\\p{N}]{1,6}\\}?|[\\p{Lu}\\p{N}])"
              + "|\\p{IsGreek}[\\p{L}\\p{N}_]{0,4}|(?:ln|log|lg|sin|1/)\\s?\\(?\\p{L}[\\p{L}\\p{N}]?\\)?");
  private static final Pattern SUBSCRIPT =
      Pattern.compile("\\p{L}_.*|\\p{L}[\\p{N}₀-₉²³'′]*|\\p{IsGreek}.*|\\p{Ll}\\p{Lu}");

  /** A function at the start, be it behind a sign, is what the heading is about. */
  private static final int LATEST_FUNCTION = 2;

  private static final Pattern ABBREVIATED_UNIT =
      Pattern.compile("\\p{L}{2,5}\\.|\\p{Ll}\\.\\p{Ll}\\.");
  private static final Pattern SYMBOL_OF_TWO = Pattern.compile("\\p{Ll}\\p{Lu}.*");
  private static final int SHORTEST_ABBREVIATION = 4;
  private static final Pattern PRODUCT_UNIT =
      Pattern.compile("[\\p{L}°%µΩ.]{1,9}[/·*][\\p{L}°%µΩ.\\d]{1,9}");

  /** A symbol with its unit in brackets, or with a subscript, or a dash in place of a unit. */
  private static final Pattern NO_UNIT = Pattern.compile("\\s\\(|[₀-₉]|^[-–—]+$");

  /** A coverage factor, as in {@code U (k = 2)}. */
  private static final Pattern COVERAGE =
      Pattern.compile(
          "[,;]?\\s{0,9}+[(\\[]?(?<![\\p{L}\\p{N}])k\\s?=\\s?[1-4](?:[.,]\\d+)?"
              + "(?:[)\\]]|(?=[,;]|$))");

  private static final Set<String> SIGNS_OF_UNCERTAINTY = Set.of("u", "U", "σ", "s");
  private static final Pattern FACTORS = Pattern.compile("[/·*]");
  private static final Pattern UNIT_ENDS = Pattern.compile("[,;.](?:\\s|$)|\\s(?=\\()");
  private static final Pattern SEPARATORS = Pattern.compile("[\\s,;:]+");
  private static final String PLUS_OR_MINUS = "±";

  private final Vocabulary vocabulary;
  private final Map<String, Optional<Heading>> headings = new HashMap<>();
  private final Map<String, Boolean> units = new HashMap<>();

  /** A grammar over the words of a course. */
  public HeadingGrammar(Vocabulary vocabulary) {
    this.vocabulary = vocabulary;
  }

  /** The words that it knows. */
  public Vocabulary vocabulary() {
    return vocabulary;
  }

  /** What a text says as a heading; empty for a sentence, a number or a stated result. */
  public Optional<Heading> read(String text) {
    return text.length() > LONGEST_SEARCHED
        ? Optional.empty()
        : headings.computeIfAbsent(text, this::parsed);
  }

  /** Whether a text is a unit and nothing else, with or without brackets. */
  public boolean isUnit(String text) {
    if (text.length() > LONGEST_SEARCHED) {
      return false;
    }
    String bare = bare(text);
    return bare.indexOf(" / ") != 1
        && !NO_UNIT.matcher(bare).find()
        && Arrays.stream(bare.split(" "))
            .skip(1)
            .noneMatch(word -> vocabulary.says(Notion.IN, word))
        && units.computeIfAbsent(bare, HeadingGrammar::isUnitText);
  }

  /** A text without the brackets around it. */
  public static String bare(String text) {
    String stripped = text.strip();
    boolean bracketed =
        stripped.length() > 2
            && (stripped.startsWith("(") && stripped.endsWith(")")
                || stripped.startsWith("[") && stripped.endsWith("]"));
    return bracketed ? stripped.substring(1, stripped.length() - 1).strip() : stripped;
  }

  private static boolean isUnitText(String text) {
    return text.length() <= 20
        && !text.isEmpty()
        && !text.equals("1")
        && (text.equals("%")
            || UnitReader.STANDARD.read(text).known().isPresent()
            || PRODUCT_UNIT.matcher(text).matches() && isOfKnownUnit(text));
  }

  /** In {@code clicks/s} one factor at least is a unit, in a ratio of symbols none is. */
  private static boolean isOfKnownUnit(String text) {
    return Arrays.stream(FACTORS.split(text))
        .anyMatch(part -> UnitReader.STANDARD.read(part).known().isPresent());
  }

  /** The unit that a text begins with, before a comma or a bracket, or that it is. */
  public Optional<String> leadingUnit(String text) {
    String sentence = text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    if (isUnit(sentence) || isUnit(text)) {
      return Optional.of(bare(isUnit(sentence) ? sentence : text));
    }
    Matcher end = UNIT_ENDS.matcher(text);
    return end.find() && end.start() > 0
        ? Optional.of(text.substring(0, end.start()).strip()).filter(this::isUnit)
        : Optional.empty();
  }

  private Optional<Heading> parsed(String text) {
    String plain = PLUS_MINUS.matcher(BLANKS.matcher(text).replaceAll(" ").strip()).replaceAll("±");
    String bare = END.matcher(NUMBERING.matcher(plain).replaceFirst("")).replaceFirst("");
    Matcher coverage = COVERAGE.matcher(bare);
    boolean expanded = coverage.find() && coverage.start() > 0;
    if (expanded) {
      bare = coverage.replaceFirst(" ").strip();
    }
    int equals = bare.indexOf(" = ");
    String unit = "";
    if (equals > 0) {
      unit = unitAfter(bare.substring(equals + 3));
      bare = bare.substring(0, equals).strip();
    }
    if (bare.isEmpty()
        || bare.length() > LONGEST
        || SEPARATORS.split(bare, -1).length > MOST_WORDS
        || isAmount(bare)) {
      return Optional.empty();
    }
    Heading heading = new Reader(text, expanded).read(bare);
    return Optional.of(unit.isEmpty() ? heading : heading.in(unit));
  }

  /** The unit at the end of a formula: in brackets, after a comma or after "in". */
  private String unitAfter(String formula) {
    Matcher brackets = BRACKETS_AT_END.matcher(formula);
    if (brackets.find() && isUnit(brackets.group())) {
      return bare(brackets.group());
    }
    int blank = formula.lastIndexOf(' ');
    if (blank < 0 || !isUnit(formula.substring(blank + 1))) {
      return "";
    }
    String before = formula.substring(0, blank).strip();
    boolean joined =
        before.endsWith(",")
            || vocabulary.says(Notion.IN, before.substring(before.lastIndexOf(' ') + 1));
    return joined ? formula.substring(blank + 1) : "";
  }

  /** Whether a text is a number with a unit that is one, or a stated result: no heading. */
  public boolean isAmount(String text) {
    return !text.isEmpty()
        && (Character.isDigit(text.charAt(0)) || "+-−(±".indexOf(text.charAt(0)) >= 0)
        && RecordText.readFinite(text)
            .filter(
                record ->
                    record.uncertainty().isPresent()
                        || record.unit().isEmpty()
                        || isUnit(record.unit()))
            .isPresent();
  }

  /** One text that is being read. */
  private final class Reader {

    private final String text;
    private final boolean expanded;
    private final Set<Role> roles = EnumSet.noneOf(Role.class);
    private final Set<Qualifier> qualifiers = EnumSet.noneOf(Qualifier.class);
    private final List<String> name = new ArrayList<>();
    private String unit = "";
    private String symbol = "";
    private Optional<GivenUncertainty> given = Optional.empty();
    private Heading.Mark mark = Heading.Mark.NONE;
    private boolean pair;

    private Reader(String text, boolean expanded) {
      this.text = text;
      this.expanded = expanded;
    }

    /** A heading without "in %" at its end. */
    private String withoutPercent(String text) {
      String before = text.replaceFirst("\\s{0,9}+%\\s*+[)\\]]?$", "");
      int last = before.lastIndexOf(' ') + 1;
      String word = before.substring(last).replaceFirst("^[(\\[]", "");
      boolean joined = !before.equals(text) && says(word, Notion.IN);
      return (joined ? before.substring(0, last) : before)
          .replaceFirst("(?<!\\s)\\s*+(?:[(\\[]\\s*+)?$", "");
    }

    private Heading read(String bare) {
      Matcher itself = PART_OF_ITSELF.matcher(withoutPercent(bare));
      if (itself.matches()) {
        mark = Heading.Mark.SURE;
        roles.add(Role.UNCERTAINTY);
        qualifiers.add(Qualifier.RELATIVE);
        name.add(itself.group("of") == null ? itself.group("whole") : itself.group("of"));
        unit = bare.contains("%") ? "%" : "";
      } else {
        tokens(withoutUnit(withoutBrackets(withoutMarked(withoutGiven(bare)))));
      }
      if (unit.isEmpty() && RATIO_TO_ANOTHER.matcher(bare).matches()) {
        unit = "1";
      }
      if (expanded) {
        roles.add(Role.UNCERTAINTY);
        qualifiers.add(Qualifier.EXPANDED);
        name.removeIf(word -> name.size() == 1 && SIGNS_OF_UNCERTAINTY.contains(word));
      }
      nameSymbol();
      Set<Role> settled = Precedence.settled(roles, qualifiers, !name.isEmpty());
      boolean uncertain =
          settled.contains(Role.UNCERTAINTY)
              || settled.stream().anyMatch(Precedence::isContribution);
      if (roles.contains(Role.UNCERTAINTY) && uncertain) {
        mark = Heading.Mark.SURE;
      }
      return new Heading(
          text, settled, qualifiers, String.join(" ", name), symbol, unit, given, mark, pair);
    }

    private String withoutGiven(String bare) {
      Matcher found = GIVEN.matcher(bare);
      if (!found.find() || found.start() == 0 && found.end() == bare.length()) {
        return bare;
      }
      String size = found.group("size").replace(',', '.');
      String of = found.group("unit") == null ? "" : found.group("unit");
      if (!of.isEmpty() && !isUnit(of)) {
        return bare;
      }
      given = Optional.of(new GivenUncertainty(Double.parseDouble(size), of));
      return (bare.substring(0, found.start()) + " " + bare.substring(found.end())).strip();
    }

    /** {@code u(x)} and its like; a capital before a unit in brackets is a symbol of its own. */
    private String withoutMarked(String bare) {
      Matcher marked = MARKED_IN_BRACKETS.matcher(bare);
      if (!marked.find()) {
        return bare;
      }
      boolean letter = "UsS".contains(marked.group("mark"));
      if (letter && isUnit(marked.group("of"))) {
        return bare;
      }
      mark("Δδ∆".contains(marked.group("mark")) ? Heading.Mark.DELTA : Heading.Mark.SURE);
      return bare.substring(0, marked.start())
          + " "
          + marked.group("of")
          + " "
          + bare.substring(marked.end());
    }

    private void mark(Heading.Mark found) {
      mark = found;
      if (found == Heading.Mark.SURE) {
        roles.add(Role.UNCERTAINTY);
      }
    }

    /** A function of a quantity is a number without unit. */
    private String withoutBrackets(String bare) {
      Matcher function = FUNCTION.matcher(bare);
      if (function.find()) {
        unit = function.start() <= LATEST_FUNCTION ? "1" : unit;
        String of = function.group("of");
        name.add(
            of == null
                ? function.group("name") + " " + function.group("symbol")
                : function.group("name") + of.replace(" ", ""));
        return bare.substring(0, function.start()) + " " + bare.substring(function.end());
      }
      Matcher brackets = BRACKETS.matcher(bare);
      StringBuilder rest = new StringBuilder();
      int from = 0;
      while (brackets.find()) {
        rest.append(bare.substring(from, brackets.start())).append(' ');
        String inside =
            brackets.group("round") == null ? brackets.group("square") : brackets.group("round");
        inside(inside.strip(), bare.substring(0, brackets.start()), rest);
        from = brackets.end();
      }
      return rest.append(bare.substring(from)).toString().strip();
    }

    private void inside(String inside, String before, StringBuilder rest) {
      String last = inside.substring(inside.lastIndexOf(' ') + 1);
      if (isSymbolOf(inside, before)) {
        symbol = inside;
      } else if (isUnit(inside)) {
        unit = inside;
      } else if (inside.contains(" ")
          && says(inside.substring(0, inside.indexOf(' ')), Notion.IN)
          && isUnit(last)) {
        unit = last;
      } else if (inside.contains("/")
          && isUnit(inside.substring(inside.indexOf('/') + 1).strip())
          && SYMBOL.matcher(inside.substring(0, inside.indexOf('/')).strip()).matches()) {
        unit = inside.substring(inside.indexOf('/') + 1).strip();
        symbol = inside.substring(0, inside.indexOf('/')).strip();
      } else if (ABBREVIATED_UNIT.matcher(inside).matches()
          && vocabulary.rolesOfAbbreviation(inside.substring(0, inside.length() - 1)).isEmpty()) {
        unit = inside;
      } else {
        rest.append(inside).append(' ');
      }
    }

    /** In {@code Mass (m)} the small letter is the symbol, in {@code L (m)} the unit. */
    private boolean isSymbolOf(String inside, String before) {
      String words = before.strip();
      return inside.length() == 1
          && Character.isLowerCase(inside.charAt(0))
          && words.length() > 1
          && Character.toLowerCase(words.charAt(0)) == inside.charAt(0);
    }

    private boolean says(String word, Notion notion) {
      return vocabulary.says(notion, word);
    }

    private String withoutUnit(String whole) {
      String bare = unit.isEmpty() ? withoutUnitAfterIn(whole) : whole;
      for (int slash = bare.indexOf('/'); slash > 0; slash = bare.indexOf('/', slash + 1)) {
        String after = HeadingGrammar.bare(bare.substring(slash + 1));
        if (unit.isEmpty() && isUnit(after)) {
          unit = after;
          return bare.substring(0, slash).strip();
        }
      }
      String rest = bare.endsWith("/") ? bare.substring(0, bare.length() - 1).strip() : bare;
      int blank = rest.lastIndexOf(' ');
      if (blank > 0 && unit.isEmpty() && isUnit(rest.substring(blank + 1))) {
        String before = rest.substring(0, blank).strip();
        String last = rest.substring(blank + 1);
        boolean amount = Character.isDigit(before.charAt(before.length() - 1));
        if (before.endsWith(",") || !amount && isPlainlyUnit(last)) {
          unit = last;
          return before;
        }
      }
      return rest;
    }

    private String withoutUnitAfterIn(String bare) {
      int blank = bare.lastIndexOf(' ');
      int previous = blank < 0 ? -1 : bare.lastIndexOf(' ', blank - 1);
      if (previous > 0
          && says(bare.substring(previous + 1, blank), Notion.IN)
          && isUnit(bare.substring(blank + 1))) {
        unit = bare.substring(blank + 1);
        return bare.substring(0, previous).strip();
      }
      return bare;
    }

    /** So that {@code U V} is not taken apart, nor {@code time min}. */
    private boolean isPlainlyUnit(String last) {
      return last.codePoints().anyMatch(c -> "°%/²³µΩ".indexOf(c) >= 0)
          || last.length() == 2
              && vocabulary.roles(last).isEmpty()
              && !vocabulary.says(Notion.LINKING, last);
    }

    private void tokens(String bare) {
      String spaced = bare.replace(PLUS_OR_MINUS, " ± ");
      List<String> words = new ArrayList<>();
      for (String word : List.of(SEPARATORS.split(spaced.strip(), -1))) {
        if (!word.isEmpty() && !word.equals("/") && !word.equals("=")) {
          words.add(word);
        }
      }
      pair = isPair(words, bare);
      if (pair) {
        words.subList(pairAt(words), words.size()).clear();
      }
      for (int i = 0; i < words.size(); ) {
        i += isPer(words, i) ? 2 : taken(words, i);
      }
    }

    /** {@code Turns per second} are counted in 1/s. */
    private boolean isPer(List<String> words, int at) {
      boolean per =
          unit.isEmpty()
              && at > 0
              && at + 1 < words.size()
              && says(words.get(at), Notion.PER)
              && words.get(at + 1).length() > 2
              && isUnit(words.get(at + 1));
      if (per) {
        unit = "1/" + UnitReader.STANDARD.symbols(words.get(at + 1));
      }
      return per;
    }

    /** A value and, after a sign or a comma, its uncertainty. */
    private boolean isPair(List<String> words, String bare) {
      int at = pairAt(words);
      return at > 0
          && (words.get(at).equals(PLUS_OR_MINUS)
              || bare.contains(",")
                  && MARKED.matcher(words.get(at)).matches()
                  && words.get(at - 1).equals(markedOf(words.get(at))));
    }

    private int pairAt(List<String> words) {
      for (int i = 1; i < words.size(); i++) {
        if (words.get(i).equals(PLUS_OR_MINUS) || MARKED.matcher(words.get(i)).matches()) {
          return i;
        }
      }
      return -1;
    }

    private String markedOf(String word) {
      Matcher marked = MARKED.matcher(word);
      return marked.matches() ? marked.group("of") : "";
    }

    /** Takes the longest phrase that begins at a word and says how many words it has. */
    private int taken(List<String> words, int at) {
      String word = words.get(at);
      if (word.equals(PLUS_OR_MINUS)) {
        roles.add(Role.UNCERTAINTY);
        return 1;
      }
      Matcher marked = MARKED.matcher(word);
      if (marked.matches()) {
        mark("Δδ∆".contains(marked.group("mark")) ? Heading.Mark.DELTA : Heading.Mark.SURE);
        name.add(marked.group("of").replaceAll("[()]", ""));
        return 1;
      }
      boolean delta = word.equals("Δ") || word.equals("δ") || word.equals("∆");
      if (delta) {
        mark(Heading.Mark.DELTA);
        return 1;
      }
      for (int length = Math.min(vocabulary.longest(), words.size() - at); length > 0; length--) {
        String phrase = Phrase.uniform(String.join(" ", words.subList(at, at + length)));
        boolean joining = length == 1 && words.size() > 1 && isSmallWord(word);
        if (!joining && known(phrase, words.size() == length)) {
          return length;
        }
      }
      if (isAbbreviation(word, words.size() == 1)) {
        return 1;
      }
      if (!isJoining(word)) {
        name.add(word);
      }
      return 1;
    }

    /** A single letter stands for a role only where it stands alone. */
    private boolean known(String phrase, boolean alone) {
      if (phrase.length() == 1 && Character.isLetter(phrase.charAt(0))) {
        if (alone) {
          roles.addAll(vocabulary.rolesOf(phrase));
        }
        return false;
      }
      Set<Role> found = vocabulary.rolesOf(phrase);
      Qualifier qualifier = vocabulary.qualifier(phrase);
      if (qualifier != null && (found.isEmpty() || !alone)) {
        qualifiers.add(qualifier);
        narrow(found);
        return true;
      }
      if (found.isEmpty()) {
        return false;
      }
      narrow(found);
      return true;
    }

    /** Of words that stand for several roles, others beside them may leave only some. */
    private void narrow(Set<Role> found) {
      roles.addAll(found);
    }

    /** A word with a point at its end stands for all that begin so, if they mean one thing. */
    private boolean isAbbreviation(String word, boolean alone) {
      if (!word.endsWith(".") || word.length() < SHORTEST_ABBREVIATION) {
        return false;
      }
      Set<Role> found = vocabulary.rolesOfAbbreviation(word.substring(0, word.length() - 1));
      if (!alone && found.isEmpty()) {
        return false;
      }
      roles.addAll(found);
      return !found.isEmpty();
    }

    /** What joins words in one language may be an abbreviation in another. */
    private boolean isSmallWord(String word) {
      return word.length() == 2
          && word.equals(word.toLowerCase(Locale.ROOT))
          && says(word, Notion.LINKING);
    }

    /** In {@code dU} the second capital makes a symbol of what else is a small word. */
    private boolean isJoining(String word) {
      return vocabulary.says(Notion.LINKING, word)
              && word.length() > 1
              && !SYMBOL_OF_TWO.matcher(word).matches()
          || word.length() == 1 && !Character.isLetterOrDigit(word.charAt(0)) && !word.equals("#");
    }

    private void nameSymbol() {
      if (symbol.isEmpty() && name.size() == 1 && SYMBOL.matcher(name.get(0)).matches()) {
        symbol = name.get(0);
      } else if (symbol.isEmpty()) {
        name.stream()
            .filter(word -> SUBSCRIPT.matcher(word).matches())
            .findFirst()
            .ifPresent(found -> symbol = found);
      }
    }
  }
}
