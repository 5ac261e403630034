package tenthmark.addin.generator;

import tenthmark.measurement.catalogue.Kind;
import tenthmark.measurement.catalogue.Parameter;
import tenthmark.measurement.catalogue.ResultKind;

/** A UNO type as the interface definition, Java and its type information spell it. */
enum UnoType {
  /** A value of any type: number, text, nothing, or a rectangle of values. */
  ANY("any", "Object", true),
  /** Any number of further values. */
  SEQUENCE("sequence<any>", "Object[]", true),
  /** A rectangle of values. */
  TABLE("sequence< sequence<any> >", "Object[][]", true),
  /** The cells themselves. */
  CELL_RANGE("com::sun::star::table::XCellRange", "com.sun.star.table.XCellRange", false),
  /** The calling document. */
  PROPERTY_SET("com::sun::star::beans::XPropertySet", "com.sun.star.beans.XPropertySet", false),
  /** A number. */
  DOUBLE("double", "double", false),
  /** A text. */
  STRING("string", "String", false);

  private final String idl;
  private final String java;
  private final boolean any;

  UnoType(String idl, String java, boolean any) {
    this.idl = idl;
    this.java = java;
    this.any = any;
  }

  static UnoType of(Parameter<?> parameter) {
    if (parameter.isRepeated()) {
      return SEQUENCE;
    }
    return parameter.form() == Kind.Form.REFERENCE ? CELL_RANGE : ANY;
  }

  static UnoType of(ResultKind result) {
    return switch (result) {
      case NUMBER -> DOUBLE;
      case TEXT -> STRING;
      case EITHER -> ANY;
      case TABLE -> TABLE;
    };
  }

  String idl() {
    return idl;
  }

  String java() {
    return java;
  }

  /** Whether Java's type does not tell that the UNO type is an any. */
  boolean isAny() {
    return any;
  }
}
