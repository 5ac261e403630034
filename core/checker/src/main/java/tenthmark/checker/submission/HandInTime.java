package tenthmark.checker.submission;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A time in a name, from the year on: {@code 2026-09-14-10-33-05}, {@code 20260914T1033}, {@code
 * 2026.09.14}. Signs between its numbers say nothing.
 */
final class HandInTime {

  private static final Pattern TIME = Pattern.compile("[0-9][0-9 T:._-]{7,22}");

  private HandInTime() {}

  static Optional<LocalDateTime> read(String text) {
    if (!TIME.matcher(text).matches()) {
      return Optional.empty();
    }
    String digits = text.replaceAll("[^0-9]", "");
    return switch (digits.length()) {
      case 8 -> of(digits + "000000");
      case 12 -> of(digits + "00");
      case 14 -> of(digits);
      default -> Optional.empty();
    };
  }

  private static Optional<LocalDateTime> of(String digits) {
    try {
      return Optional.of(
          LocalDateTime.of(
              Integer.parseInt(digits.substring(0, 4)),
              number(digits, 4),
              number(digits, 6),
              number(digits, 8),
              number(digits, 10),
              number(digits, 12)));
    } catch (DateTimeException none) {
      return Optional.empty();
    }
  }

  private static int number(String digits, int from) {
    return Integer.parseInt(digits.substring(from, from + 2));
  }
}
