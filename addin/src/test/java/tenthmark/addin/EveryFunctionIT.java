package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.addin.EveryFunction.everything;
import static tenthmark.addin.EveryFunction.on;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.addin.EveryFunction.Variant;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;
import tenthmark.addin.office.Workbook.Format;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Kind;
import tenthmark.measurement.catalogue.Parameter;

/** Every function of the catalogue in a real sheet. */
@ExtendWith(OfficeExtension.class)
@TestInstance(Lifecycle.PER_CLASS)
class EveryFunctionIT {

  private static final int ILLEGAL_ARGUMENT = 502;
  private static final int ILLEGAL_PARAMETER = 504;
  private static final int DIVISION_BY_ZERO = 532;

  /** Calc writes computed numbers into an .xlsx file with so many digits. */
  private static final int DIGITS_IN_XLSX = 15;

  private static final int DIGITS_OF_DOUBLE = 17;

  private Workbook workbook;

  @BeforeAll
  void callThemAll(Office office) throws Exception {
    workbook = EveryFunction.in(office);
  }

  @AfterAll
  void close() throws Exception {
    workbook.close();
  }

  static Stream<Declaration> declarations() {
    return EveryFunction.declarations();
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void printsTheResultOfItsExample(Declaration declaration) throws Exception {
    String cell = on(declaration, EveryFunction.EXAMPLE);
    String expected = declaration.example().result();
    assertThat(workbook.error(cell)).isZero();
    if (workbook.isText(cell)) {
      assertThat(workbook.shown(cell)).isEqualTo(expected);
    } else {
      BigDecimal printed = new BigDecimal(expected);
      assertThat(
              new BigDecimal(workbook.number(cell)).setScale(printed.scale(), RoundingMode.HALF_UP))
          .isEqualTo(printed);
    }
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void saysWhatIsMissingWithoutArguments(Declaration declaration) throws Exception {
    String cell = on(declaration, EveryFunction.WITHOUT_ARGUMENTS);
    List<Parameter<?>> parameters = declaration.parameters();
    if (parameters.isEmpty() || parameters.get(0).isOptional()) {
      assertThat(workbook.error(cell)).isZero();
    } else if (parameters.get(0).form() == Kind.Form.REFERENCE) {
      assertThat(workbook.error(cell)).isEqualTo(ILLEGAL_PARAMETER);
    } else if (tells(declaration)) {
      assertThat(workbook.shown(cell))
          .startsWith(declaration.displayName() + ": ")
          .contains(parameters.get(0).name());
    } else {
      assertThat(workbook.error(cell)).isEqualTo(ILLEGAL_ARGUMENT);
    }
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void passesOnTheErrorOfACell(Declaration declaration) throws Exception {
    for (Variant variant : EveryFunction.variants(declaration)) {
      if (variant.passesAnError()) {
        assertThat(workbook.error(on(declaration, variant.cell())))
            .as(variant.call().formula())
            .isEqualTo(DIVISION_BY_ZERO);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void takesOrRefusesATextAndABlankCell(Declaration declaration) throws Exception {
    for (Variant variant : EveryFunction.variants(declaration)) {
      String cell = on(declaration, variant.cell());
      if (!variant.passesAnError()) {
        assertThat(workbook.error(cell))
            .as(variant.call().formula())
            .isIn(tells(declaration) ? List.of(0) : List.of(0, ILLEGAL_ARGUMENT));
        assertThat(workbook.number(cell)).as(variant.call().formula()).isFinite();
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void readsTheSameFromItsFile(Format format, Office office) throws Exception {
    try (Workbook reopened = office.open(workbook.save("every-function", format))) {
      int digits = format == Format.XLSX ? DIGITS_IN_XLSX : DIGITS_OF_DOUBLE;
      assertThat(everything(reopened, digits))
          .containsExactlyElementsOf(everything(workbook, digits));
      assertThat(everything(reopened.recalculateHard(), DIGITS_OF_DOUBLE))
          .containsExactlyElementsOf(everything(workbook, DIGITS_OF_DOUBLE));
    }
  }

  /** Whether a bad argument gives a sentence rather than an error. */
  private static boolean tells(Declaration declaration) {
    return switch (declaration.result()) {
      case TEXT, TABLE -> true;
      case NUMBER, EITHER -> false;
    };
  }
}
