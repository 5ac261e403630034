package tenthmark.measurement.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Array formulas, unions, intersections, searches and errors that are dealt with. */
class ArrayFormulasTest {

  private final Follower follower = new Follower(new Formulas());

  /** A1 to A4 are 1, 2, 3, 4; B1 to B4 are 5, 7, 2, 3; B5 is a text. */
  private final Grid grid =
      new Grid()
          .put("A1", 1)
          .put("A2", 2)
          .put("A3", 3)
          .put("A4", 4)
          .put("B1", 5)
          .put("B2", 7)
          .put("B3", 2)
          .put("B4", 3)
          .put("B5", "steel")
          .put("C5", "brass");

  private CellModel model(String result, String input) {
    return follower.model(grid, Grid.address(result), java.util.List.of(Grid.address(input)));
  }

  private double slope(String result, String input, double at) {
    return model(result, input).linearised(at).sensitivities()[0];
  }

  // values and derivatives along A2 = 2 by hand
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{=SUM(A1:A4*B1:B4)} | 37 | 7",
        "{=SUM(A1:A2*{3;4})} | 11 | 4",
        "{=SUM(A1:A2*{3,4})} | 21 | 7",
        "=SUMPRODUCT(A1:A2,{3;4}) | 11 | 4",
        "=SUMPRODUCT(A1:A2*{-3;4}) | 5 | 4",
        "=INDEX({10,20;30,40},2,1)*A2 | 60 | 30",
        "=VLOOKUP(2,{1,5;2,7},2)*A2 | 14 | 7",
        "=SUM({1,2,+3})*A2 | 12 | 6",
        "=MATCH(\"b\",{\"a\",\"b\"},0)*A2 | 4 | 2",
        "=AVERAGE({TRUE,3})*A2 | 4 | 2",
        "{=SUM((A1:A4-AVERAGE(A1:A4))^2)} | 5 | -1",
        "{=SUM(IF(A1:A4>1.5;A1:A4;0))} | 9 | 1",
        "{=MAX(A1:A3*B1:B3)} | 14 | 7",
        "{=SUM(SQRT(A1:A4*A1:A4))} | 10 | 1",
        "{=SUM(IFERROR(A1:A4/(A1:A4-3);0))} | 1.5 | -3",
        "{=AVERAGE(A1:A4^2)} | 7.5 | 1",
        "{=SUM(A1:A4)*2} | 20 | 2",
        "{=A1:A4*3} | 3 | 0",
        "=SUM(A1:A2~A4~A2) | 9 | 2",
        "=SUM((A1:A2,A4)) | 7 | 1",
        "=SUM(A1:A3!A2:A4) | 5 | 1",
        "=SUM(A1:A3 A2:B4) | 5 | 1",
        "=A1:A4!A2:B2*10 | 20 | 10",
        "=INDEX(A1:B4;2;1)^2 | 4 | 4",
        "=INDEX(A1:A4;2)^2 | 4 | 4",
        "=INDEX(A1:A4;MATCH(7;B1:B4;0))^2 | 4 | 4",
        "=SUM(INDEX(A1:B4;0;1)) | 10 | 1",
        "=VLOOKUP(2.5;A1:B4;2) | 7 | 0",
        "=VLOOKUP(7;B1:C4;1;0)*A2 | 14 | 7",
        "=LOOKUP(3.5;A1:A4;B1:B4)*A2 | 4 | 2",
        "=CHOOSE(2;A1;A2^2;A3) | 4 | 4",
        "=IFS(A2>3;A1;A2>1;A2^2) | 4 | 4",
        "=SWITCH(B5;\"brass\";1;\"steel\";A2*3;0) | 6 | 3",
        "=IFERROR(A2^2;0) | 4 | 4",
        "=IFERROR(1/(A1-1);A2^2) | 4 | 4",
        "=IFERROR(SQRT(-A2);A2) | 2 | 1",
        "=IFNA(VLOOKUP(99;A1:B4;2;0);A2) | 2 | 1",
        "=SUMIF(A1:A4;\">1.5\") | 9 | 1",
        "=SUMIF(B1:B4;7;A1:A4)*A1 | 2 | 1",
        "=SUMIFS(A1:A4;B1:B4;\">2\";B1:B4;\"<6\") | 5 | 0",
        "=AVERAGEIF(A1:A4;\"<>1\") | 3 | 0.3333333333333333",
        "=COUNTIF(A1:A4;\">1.5\")*A2 | 6 | 3",
        "=LARGE(A1:A4;3)^2 | 4 | 4",
        "=SMALL(A1:A4;2)^2 | 4 | 4",
        "=PERCENTILE(A1:A4;0.5) | 2.5 | 0.5",
        "=FORECAST(5;A1:A4;A1:A4) | 5 | 0",
        "=FORECAST(3;B1:B4;A1:A4) | 3.7 | 0.44",
        "=FORECAST(A2;B1:B4;B1:B4) | 2 | 1",
        "=ISNUMBER(A2)*A2 | 2 | 1",
        "=ISTEXT(B5)*A2 | 2 | 1",
        "=COUNT(A1:B5)*A2 | 16 | 8",
        "=CONVERT(A2;\"in\";\"cm\") | 5.08 | 2.54",
        "=CONVERT(A2;\"C\";\"F\") | 35.6 | 1.8"
      })
  void areComputedAndCarriedThrough(String formula, double value, double slope) {
    grid.put("D1", formula);
    assertThat(model("D1", "A2").value(2)).isCloseTo(value, within(1e-12));
    assertThat(slope("D1", "A2", 2)).isCloseTo(slope, within(1e-12));
  }

  @Nested
  class OfSeveralCells {

    @Test
    void haveAValueForEachCell() {
      CellRange filled = new CellRange(Grid.SHEET, 3, 0, 3, 3);
      grid.put("D1", "{=A1:A4*B1:B4}", filled).put("D3", "{=A1:A4*B1:B4}", filled);
      grid.put("D2", "{=A1:A4*B1:B4}", filled).put("E1", "=D2+D3");
      assertThat(model("D2", "A2").value(2)).isEqualTo(14);
      assertThat(slope("D2", "A2", 2)).isEqualTo(7);
      assertThat(slope("D3", "A3", 3)).isEqualTo(2);
      assertThat(slope("D3", "A2", 2)).isZero();
      assertThat(slope("E1", "A2", 2)).isEqualTo(7);
    }

    @Test
    void repeatOneRowColumnOrValue() {
      CellRange filled = new CellRange(Grid.SHEET, 3, 0, 4, 3);
      grid.put("E4", "{=A1:A4*10+SUM(B1:B2)}", filled);
      assertThat(model("E4", "A4").value(4)).isEqualTo(52);
    }

    @Test
    void haveNoneBeyondTheArray() {
      CellRange filled = new CellRange(Grid.SHEET, 3, 0, 3, 9);
      grid.put("D9", "{=A1:A4*10}", filled);
      assertThatThrownBy(() -> model("D9", "A2").value(2)).hasMessageContaining("no value for");
    }
  }

  @Nested
  class Samples {

    /** Each sample is searched for on its own. */
    @Test
    void mayLeadToDifferentPlaces() {
      grid.put("D1", "=VLOOKUP(A9;A1:B4;2)").put("D2", "=INDEX(B1:B4;A9)");
      grid.put("D3", "=IFERROR(SQRT(A9-2);-1)").put("D4", "=IFS(A9>3;10;A9>2;20;TRUE;30)");
      java.util.List<double[]> at = java.util.List.of(new double[] {1.2, 2.5, 3.9});
      assertThat(model("D1", "A9").values(at, 3)).containsExactly(5, 7, 2);
      assertThat(model("D2", "A9").values(at, 3)).containsExactly(5, 7, 2);
      assertThat(model("D3", "A9").values(at, 3))
          .containsExactly(-1, Math.sqrt(0.5), Math.sqrt(1.9));
      assertThat(model("D4", "A9").values(at, 3)).containsExactly(30, 20, 10);
    }
  }

  @Nested
  class WhatStops {

    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "=A2*GAMMA(A2) | an uncertainty cannot be carried through the function GAMMA.",
          "=IFERROR(GAMMA(A2);0) | an uncertainty cannot be carried through the function GAMMA.",
          "=COUNT(GAMMA(A2);A2) | an uncertainty cannot be carried through the function GAMMA.",
          "=A2*(A1:A2~A4) | several ranges taken together stand where one is needed.",
          "=SUM(A1:A2!B1:B4)*A2 | the two ranges have no cell in common.",
          "=A2*VLOOKUP(9;A1:B4;2;0) | VLOOKUP does not find what it searches for.",
          "=A2*VLOOKUP(6;B1:B4;1) | VLOOKUP searches in numbers that are not in order; sort them,"
              + " or search for equal ones.",
          "=A2*INDEX(A1:A4;7) | place 7 is asked for, but there are 4.",
          "=A2*IFS(A1>5;1) | none of the conditions of IFS holds.",
          "=A2*SUMIF(B1:B5;\"*\") | the text \"*\" may stand for other texts in a search, which"
              + " depends on the document.",
          "=A2*LARGE(A1:A4;5) | LARGE with 5 is not defined for 4 numbers.",
          "=CONVERT(A2;\"lbm\";\"g\") | CONVERT with the unit lbm cannot be followed, because"
              + " programs differ in it; multiply by a number instead.",
          "=CONVERT(A2;\"m\";\"s\") | m cannot be converted to s: they measure different things.",
          "=A2*Nowhere.A1 | the workbook has no sheet Nowhere."
        })
    void isNamed(String formula, String sentence) {
      grid.onlySheet().put("D1", formula);
      assertThatThrownBy(() -> model("D1", "A2").linearised(2)).hasMessage("cell D1: " + sentence);
    }

    /** An input that decides where to look has no derivative where the place changes. */
    @Test
    void isAPlaceThatDependsOnAnInput() {
      grid.put("D1", "=INDEX(B1:B4;A2)").put("D2", "=VLOOKUP(A2;A1:B4;2)");
      assertThatThrownBy(() -> slope("D1", "A2", 2)).hasMessageContaining("jumps");
      assertThatThrownBy(() -> slope("D2", "A3", 2)).hasMessageContaining("jumps");
      grid.put("D3", "=VLOOKUP(A9;A1:B4;2)");
      assertThat(slope("D3", "A9", 2.5)).isZero();
    }
  }

  @Test
  void anArrayFormulaMayAlsoBeShownWithoutItsArea() {
    grid.put("D1", "{=SUM(A1:A2*2)}");
    assertThat(grid.at(Grid.address("D1")))
        .isEqualTo(new CellContent.Formula("{=SUM(A1:A2*2)}", Optional.empty()));
    assertThat(model("D1", "A2").value(2)).isEqualTo(6);
  }
}
