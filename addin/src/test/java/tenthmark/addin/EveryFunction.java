package tenthmark.addin;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.Workbook;
import tenthmark.measurement.catalogue.Catalogue;
import tenthmark.measurement.catalogue.Declaration;
import tenthmark.measurement.catalogue.Kind;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;
import tenthmark.measurement.catalogue.Value;
import tenthmark.measurement.catalogue.WorksheetFunction;

/**
 * A workbook that calls every function of the catalogue, whatever it is, with good, blank and bad
 * arguments. Each function has a sheet: its example's cells from A1 on, its example from K1 on, and
 * variants of it in column J.
 */
final class EveryFunction {

  static final String EXAMPLE = "K1";
  static final String WITHOUT_ARGUMENTS = "J1";
  static final String ERROR_CELL = "H30";

  private static final String TEXT_CELL = "H31";
  private static final String BLANK_CELL = "H32";
  private static final String EXAMPLE_TABLE = "K1:P12";
  private static final String CALLS = "J1:P30";

  private EveryFunction() {}

  /** A call with one argument of the example replaced, and the cell that holds it. */
  record Variant(String cell, Kind.Form form, String argument, Call call) {

    /** Whether Calc hands over the error of a cell itself. */
    boolean passesAnError() {
      return argument.equals(ERROR_CELL) && form != Kind.Form.REFERENCE;
    }
  }

  static Stream<Declaration> declarations() {
    return Catalogue.load().functions().stream().map(WorksheetFunction::declaration);
  }

  static Workbook in(Office office) throws Exception {
    Workbook workbook = office.create();
    for (Declaration declaration : declarations().toList()) {
      layOut(workbook, declaration);
    }
    return workbook.recalculateHard();
  }

  static String on(Declaration declaration, String address) {
    return declaration.name() + "." + address;
  }

  private static void layOut(Workbook workbook, Declaration declaration) throws Exception {
    workbook.addSheet(declaration.name());
    writeCells(workbook, declaration.name(), declaration);
    workbook.set(on(declaration, ERROR_CELL), "=1/0");
    workbook.set(on(declaration, TEXT_CELL), "a text that fits nowhere");
    Call example = Call.example(declaration);
    if (declaration.result() == ResultKind.TABLE) {
      workbook.setMatrix(on(declaration, EXAMPLE_TABLE), example.formula());
    } else {
      workbook.set(on(declaration, EXAMPLE), example.formula());
    }
    workbook.set(on(declaration, WITHOUT_ARGUMENTS), Call.of(declaration).formula());
    for (Variant variant : variants(declaration)) {
      workbook.set(on(declaration, variant.cell()), variant.call().formula());
    }
  }

  /** The cells of a function's example on a sheet. */
  static void writeCells(Workbook workbook, String sheet, Declaration declaration)
      throws Exception {
    List<List<Value>> rows = declaration.example().cells();
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < rows.get(row).size(); column++) {
        String cell = sheet + "." + (char) ('A' + column) + (row + 1);
        Value value = rows.get(row).get(column);
        if (value instanceof Value.Numeric numeric) {
          workbook.set(cell, numeric.number());
        } else if (value instanceof Value.Text text) {
          workbook.set(cell, text.text());
        }
      }
    }
  }

  static List<Variant> variants(Declaration declaration) {
    Call example = Call.example(declaration);
    List<Variant> variants = new ArrayList<>();
    for (int index = 0; index < example.arguments().size(); index++) {
      for (String argument : List.of(ERROR_CELL, TEXT_CELL, BLANK_CELL)) {
        variants.add(
            new Variant(
                "J" + (variants.size() + 2),
                formOf(declaration, index),
                argument,
                example.with(index, argument)));
      }
    }
    return variants;
  }

  private static Kind.Form formOf(Declaration declaration, int index) {
    List<Parameter<?>> parameters = declaration.parameters();
    return parameters.get(Math.min(index, parameters.size() - 1)).form();
  }

  /** Formulas and values, errors by what they show, of every cell that holds a call. */
  static List<String> everything(Workbook workbook, int digits) throws Exception {
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
