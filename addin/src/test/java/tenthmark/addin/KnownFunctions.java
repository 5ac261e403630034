package tenthmark.addin;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XIndexAccess;
import com.sun.star.sheet.FunctionArgument;
import com.sun.star.uno.UnoRuntime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import tenthmark.addin.office.Office;

/** The functions that Calc's function wizard knows, each with its properties by name. */
record KnownFunctions(Map<String, Map<String, Object>> properties) {

  static KnownFunctions of(Office office) throws Exception {
    XIndexAccess descriptions =
        UnoRuntime.queryInterface(
            XIndexAccess.class, office.service("com.sun.star.sheet.FunctionDescriptions"));
    Map<String, Map<String, Object>> known = new TreeMap<>();
    for (int i = 0; i < descriptions.getCount(); i++) {
      Map<String, Object> properties =
          Arrays.stream((PropertyValue[]) descriptions.getByIndex(i))
              .collect(Collectors.toMap(property -> property.Name, property -> property.Value));
      known.put((String) properties.get("Name"), properties);
    }
    return new KnownFunctions(known);
  }

  Set<String> names() {
    return properties.keySet();
  }

  String description(String function) {
    return (String) properties.get(function).get("Description");
  }

  List<FunctionArgument> arguments(String function) {
    return List.of((FunctionArgument[]) properties.get(function).get("Arguments"));
  }
}
