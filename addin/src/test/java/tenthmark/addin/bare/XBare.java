package tenthmark.addin.bare;

import com.sun.star.lib.uno.typeinfo.MethodTypeInfo;
import com.sun.star.lib.uno.typeinfo.ParameterTypeInfo;
import com.sun.star.lib.uno.typeinfo.TypeInfo;
import com.sun.star.uno.XInterface;

/** One worksheet function. */
public interface XBare extends XInterface {

  @SuppressWarnings("MutablePublicArray") // The bridge reads it under this name.
  TypeInfo[] UNOTYPEINFO = {
    new MethodTypeInfo("half", 0, 0), new ParameterTypeInfo("value", "half", 0, TypeInfo.ANY)
  };

  /** Half of a number. */
  double half(Object value);
}
