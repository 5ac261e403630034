package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
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
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;
import tenthmark.addin.office.Workbook.Format;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Kind;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;

/**
 * Every function of the catalogue, whatever it is, with good, blank and bad arguments in a real
 * sheet. Each function has a sheet: its example's cells from A1 on, its example from K1 on, and
 * variants of it in column J.
 */
@ExtendWith(OfficeExtension.class)
@TestInstance(Lifecycle.PER_CLASS)
class EveryFunctionIT {

  private static final int ILLEGAL_ARGUMENT = 502;
  private static final int ILLEGAL_PARAMETER = 504;
  private static final int DIVISION_BY_ZERO = 532;

  /** Calc writes computed numbers into an .xlsx file with so many digits. */
  private static final int DIGITS_IN_XLSX = 15;

  private static final int DIGITS_OF_DOUBLE = 17;

  private static final String EXAMPLE = "K1";
  private static final String EXAMPLE_TABLE = "K1:P12";

  private static final String CALLS = "J1:P30";

  private static final String ERROR_CELL = "H30";
  private static final String TEXT_CELL = "H31";
  private static final String BLANK_CELL = "H32";

  private Workbook workbook;

  @BeforeAll
  void callThemAll(Office office) throws Exception {
    workbook = office.create();
    for (Declaration declaration : declarations().toList()) {
      layOut(declaration);
    }
    workbook.recalculateHard();
  }

  @AfterAll
  void close() throws Exception {
    workbook.close();
  }

  static Stream<Declaration> declarations() {
    return Catalogue.load().functions().stream().map(WorksheetFunction::declaration);
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void printsTheResultOfItsExample(Declaration declaration) throws Exception {
    String cell = on(declaration, EXAMPLE);
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
    String cell = on(declaration, variantCell(0));
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
    for (Variant variant : variants(declaration)) {
      if (variant.argument().equals(ERROR_CELL)) {
        assertThat(workbook.error(on(declaration, variant.cell())))
            .as(variant.call().formula())
            .isEqualTo(DIVISION_BY_ZERO);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("declarations")
  void takesOrRefusesATextAndABlankCell(Declaration declaration) throws Exception {
    for (Variant variant : variants(declaration)) {
      String cell = on(declaration, variant.cell());
      if (!variant.argument().equals(ERROR_CELL)) {
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

  /** A call with one argument of the example replaced, and the cell that holds it. */
  private record Variant(String cell, String argument, Call call) {}

  private void layOut(Declaration declaration) throws Exception {
    workbook.addSheet(declaration.name());
    writeCells(declaration);
    workbook.set(on(declaration, ERROR_CELL), "=1/0");
    workbook.set(on(declaration, TEXT_CELL), "a text that fits nowhere");
    Call example = Call.example(declaration);
    if (declaration.result() == ResultKind.TABLE) {
      workbook.setMatrix(on(declaration, EXAMPLE_TABLE), example.formula());
    } else {
      workbook.set(on(declaration, EXAMPLE), example.formula());
    }
    workbook.set(on(declaration, variantCell(0)), Call.of(declaration).formula());
    for (Variant variant : variants(declaration)) {
      workbook.set(on(declaration, variant.cell()), variant.call().formula());
    }
  }

  private void writeCells(Declaration declaration) throws Exception {
    List<List<Value>> rows = declaration.example().cells();
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < rows.get(row).size(); column++) {
        String cell = on(declaration, (char) ('A' + column) + "" + (row + 1));
        Value value = rows.get(row).get(column);
        if (value instanceof Value.Numeric numeric) {
          workbook.set(cell, numeric.number());
        } else if (value instanceof Value.Text text) {
          workbook.set(cell, text.text());
        }
      }
    }
  }

  private static List<Variant> variants(Declaration declaration) {
    Call example = Call.example(declaration);
    List<Variant> variants = new ArrayList<>();
    for (int index = 0; index < example.arguments().size(); index++) {
      if (formOf(declaration, index) != Kind.Form.REFERENCE) {
        for (String argument : List.of(ERROR_CELL, TEXT_CELL, BLANK_CELL)) {
          String cell = variantCell(variants.size() + 1);
          variants.add(new Variant(cell, argument, example.with(index, argument)));
        }
      }
    }
    return variants;
  }

  private static Kind.Form formOf(Declaration declaration, int index) {
    List<Parameter<?>> parameters = declaration.parameters();
    return parameters.get(Math.min(index, parameters.size() - 1)).form();
  }

  /** Whether a bad argument gives a sentence rather than an error. */
  private static boolean tells(Declaration declaration) {
    return switch (declaration.result()) {
      case TEXT, TABLE -> true;
      case NUMBER, EITHER -> false;
    };
  }

  private static String variantCell(int index) {
    return "J" + (index + 1);
  }

  private static String on(Declaration declaration, String address) {
    return declaration.name() + "." + address;
  }

  /** Formulas and values, errors by what they show, of every cell that holds a call. */
  private static List<String> everything(Workbook workbook, int digits) throws Exception {
    List<String> all = new ArrayList<>();
    for (Declaration declaration : declarations().toList()) {
      String[][] formulas = workbook.formulas(on(declaration, CALLS));
      Object[][] values = workbook.values(on(declaration, CALLS));
      for (int row = 0; row < formulas.length; row++) {
        for (int column = 0; column < formulas[row].length; column++) {
          String cell = on(declaration, (char) ('J' + column) + "" + (row + 1));
          all.add(
              cell
                  + " "
                  + formulas[row][column]
                  + " "
                  + (values[row][column] instanceof Double number
                      ? new BigDecimal(number).round(new MathContext(digits))
                      : workbook.shown(cell)));
        }
      }
    }
    return all;
  }
}
