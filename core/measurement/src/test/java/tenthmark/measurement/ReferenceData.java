package tenthmark.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** Published data and certified values. */
public final class ReferenceData {

  private ReferenceData() {}

  /** The rows of numbers below the heading of a file under {@code /reference}. */
  public static List<double[]> rows(String file) {
    return lines(file).stream()
        .map(line -> Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray())
        .toList();
  }

  /** The lines below the heading of a file under {@code /reference}. */
  public static List<String> lines(String file) {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                ReferenceData.class.getResourceAsStream("/reference/" + file),
                StandardCharsets.UTF_8))) {
      return reader.lines().skip(1).toList();
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** Asserts that a number agrees with a certified one to so many significant digits. */
  public static void assertDigits(double actual, String certified, double digits) {
    assertThat(digits(actual, certified))
        .as("digits of %s that agree with %s", actual, certified)
        .isGreaterThanOrEqualTo(digits);
  }

  /** Logarithm of the relative error, the measure of NIST StRD; 15 if there is none. */
  public static double digits(double actual, String certified) {
    double expected = Double.parseDouble(certified);
    double error = Math.abs((actual - expected) / expected);
    return Math.min(15, -Math.log10(error));
  }
}
