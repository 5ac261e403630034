package tenthmark.measurement.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whatever stands in a cell, the engine gives a number or a sentence, on a small stack too. */
@Tag("slow")
class DamagedFormulasTest {

  private static final int CASES = 20_000;
  private static final long SMALL_STACK = 384 * 1024;

  private static final List<String> PIECES =
      List.of(
          "(",
          ")",
          "[",
          "]",
          "{",
          "}",
          "'",
          "\"",
          ";",
          ",",
          ":",
          "!",
          ".",
          "$",
          "#",
          "#REF!",
          "%",
          "^",
          "-",
          "+",
          "*",
          "/",
          "&",
          "=",
          "<",
          ">",
          "~",
          "|",
          " ",
          "\n",
          "\u00a0",
          "A1",
          "$A$1",
          "A1:B2",
          "A:A",
          "1:1",
          "$:$",
          "Sheet1!",
          "$Sheet1.",
          "'a b'!",
          "[.A1]",
          "[$x.A1:.B2]",
          "SUM(",
          "IF(",
          "SUMPRODUCT(",
          "COUNT(",
          "1e",
          "1e999",
          "1e-999",
          ".5.",
          "é",
          "𝛼",
          "TRUE",
          "of:=",
          "INDIRECT(",
          "LAB_CARRY(",
          "B1",
          "XFD1048576",
          "ZZZ9999999");

  @Test
  void giveANumberOrASentence() throws InterruptedException {
    AtomicReference<Throwable> failure = new AtomicReference<>();
    Thread thread = new Thread(null, this::tryThemAll, "small stack", SMALL_STACK);
    thread.setUncaughtExceptionHandler((any, problem) -> failure.set(problem));
    thread.start();
    thread.join();
    assertThat(failure.get()).isNull();
  }

  private void tryThemAll() {
    Random random = new Random(51);
    RandomFormulas source =
        new RandomFormulas(52, List.of("A1", "A2", "B1"), List.of("SUM(A1:B2)", "SUM(A:A;%s)"));
    for (int i = 0; i < CASES; i++) {
      String text = "=" + damaged(source.any(), random);
      try {
        computed(text);
      } catch (FormulaException problem) {
        assertThat(problem.getMessage()).as(text).matches("(?s).+\\.");
      } catch (RuntimeException | StackOverflowError unexpected) {
        throw new AssertionError(text, unexpected);
      }
    }
  }

  private static void computed(String text) {
    Grid grid = new Grid().usedRows(10).put("A1", 1.5).put("A2", -2).put("B2", "a").put("C1", text);
    CellModel model =
        new Follower(new Formulas())
            .model(grid, Grid.address("C1"), List.of(Grid.address("A1"), Grid.address("A2")));
    Linearised linearised = model.linearised(1.5, -2);
    assertThat(linearised.value()).isFinite();
    assertThat(linearised.sensitivities()).doesNotContain(Double.NaN);
  }

  private static String damaged(String formula, Random random) {
    StringBuilder text = new StringBuilder(formula);
    for (int times = random.nextInt(4); times >= 0; times--) {
      int place = random.nextInt(text.length() + 1);
      String piece = PIECES.get(random.nextInt(PIECES.size()));
      switch (random.nextInt(3)) {
        case 0 -> text.insert(place, piece);
        case 1 -> text.insert(place, piece.repeat(1 + random.nextInt(150)));
        default -> text.delete(place, Math.min(text.length(), place + 1 + random.nextInt(5)));
      }
    }
    return text.toString();
  }
}
