package tenthmark.samples.classset;

import java.math.BigDecimal;

/** How a student computes uncertainties. */
enum Method {
  /** With the LAB functions. */
  LAB("LAB functions") {
    @Override
    Object reading(Scale scale, boolean shown) {
      return shown
          ? "=LAB_READING({division},{spacing},{ends})"
          : "=LAB_READING(%s,\"%s\",%s)"
              .formatted(shown(scale.division()), scale.spacing(), scale.ends());
    }

    @Override
    Object physical(double near, double far) {
      return "=LAB_FUZZY(" + shown(near) + "," + shown(far) + ")";
    }

    @Override
    Object display(double digit, double percent, int counts) {
      return "=LAB_DISPLAY(%s,{value},%s,%s)".formatted(shown(digit), shown(percent), counts);
    }

    @Override
    Object timing() {
      return "=LAB_HANDTIMED()";
    }

    @Override
    Object total(double typed) {
      return "=LAB_TOTAL({contributions})";
    }

    @Override
    Object carried() {
      return "=LAB_CARRY({value},{m.value}:{V.value},{m.uncertainty}:{V.uncertainty})";
    }
  },
  /** With formulas of the spreadsheet; sums. */
  SUMS("own formulas, straight sums") {
    @Override
    Object total(double typed) {
      return "=SUM({contributions})";
    }

    @Override
    Object carried() {
      return "={value}*({m.uncertainty}/{m.value}+{V.uncertainty}/{V.value})";
    }
  },
  /** With formulas of the spreadsheet; roots of sums of squares. */
  ROOTS("own formulas, in quadrature") {
    @Override
    Object total(double typed) {
      return "=SQRT(SUMSQ({contributions}))";
    }

    @Override
    Object carried() {
      return "={value}*SQRT(({m.uncertainty}/{m.value})^2+({V.uncertainty}/{V.value})^2)";
    }
  },
  /** Uncertainties typed in; the carried one by the extremes. */
  TYPED("typed-in uncertainties, extremes for the calculated one") {
    @Override
    Object reading(Scale scale, boolean shown) {
      return scale.reading();
    }

    @Override
    Object total(double typed) {
      return typed;
    }

    @Override
    Object carried() {
      return "=(({m.value}+{m.uncertainty})/({V.value}-{V.uncertainty})"
          + "-({m.value}-{m.uncertainty})/({V.value}+{V.uncertainty}))/2";
    }
  };

  private final String words;

  Method(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }

  /** The reading uncertainty; by reference where the table shows what it follows from. */
  Object reading(Scale scale, boolean shown) {
    String fraction = scale.spacing().equals("wide") ? "0.1" : "0.25";
    return shown
        ? "={division}*" + fraction + "*{ends}"
        : "=" + shown(scale.division()) + "*" + fraction + "*" + scale.ends();
  }

  /** The physical uncertainty of two soft ends. */
  Object physical(double near, double far) {
    return near / 2 + far / 2;
  }

  /** The instrument uncertainty of a display. */
  Object display(double digit, double percent, int counts) {
    return "={value}*%s/100+%s*%s".formatted(shown(percent), counts, shown(digit));
  }

  /** The timing uncertainty. */
  Object timing() {
    return 0.2;
  }

  /**
   * The total of the contributions.
   *
   * @param typed rounded, if it is typed in
   */
  abstract Object total(double typed);

  /** The uncertainty of the density. */
  abstract Object carried();

  /** A number as a spreadsheet keeps it in a formula: 2, not 2.0. */
  private static String shown(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
