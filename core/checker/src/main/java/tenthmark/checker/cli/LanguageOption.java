package tenthmark.checker.cli;

import java.util.Arrays;
import java.util.Iterator;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import tenthmark.measurement.wording.Language;

/** {@code --language}: what people read, whatever the language of the machine. */
final class LanguageOption {

  /** The codes, offered by shell completion. */
  static final class Codes implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Arrays.stream(Language.values()).map(Language::code).iterator();
    }
  }

  /** Reads a code. */
  static final class Reader implements ITypeConverter<Language> {
    @Override
    public Language convert(String code) {
      return Language.ofCode(code)
          .orElseThrow(
              () ->
                  new TypeConversionException(
                      code + " is none of " + String.join(", ", new Codes())));
    }
  }

  @Option(
      names = "--language",
      paramLabel = "LANGUAGE",
      description =
          "Language of rules, findings and reports: ${COMPLETION-CANDIDATES}. Without it the"
              + " profile's, else en. Ids, headings of CSV and messages stay English.",
      converter = Reader.class,
      completionCandidates = Codes.class)
  private Language language;

  Optional<Language> language() {
    return Optional.ofNullable(language);
  }
}
