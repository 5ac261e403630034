package tenthmark.addin.explaining;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.accessibility.AccessibleRole;
import com.sun.star.accessibility.XAccessible;
import com.sun.star.accessibility.XAccessibleContext;
import com.sun.star.awt.XExtendedToolkit;
import com.sun.star.frame.DispatchResultState;
import com.sun.star.frame.XDispatch;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.lang.IndexOutOfBoundsException;
import com.sun.star.lang.XComponent;
import com.sun.star.util.URL;
import com.sun.star.util.XURLTransformer;
import com.sun.star.view.XSelectionSupplier;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Workbook;

/** The command that explains the selected cell, in a table of a wheel's rim. Numbers invented. */
@ExtendWith(OfficeExtension.class)
class ExplainCellIT {

  private Office office;
  private Workbook workbook;

  @BeforeEach
  void create(Office running) throws Exception {
    office = running;
    workbook = office.create();
    workbook.set("A1", "quantity").set("B1", "value").set("C1", "uncertainty");
    workbook.set("A2", "rim mass / kg").set("B2", 0.42).set("C2", 0.005);
    workbook.set("A3", "rim radius / m").set("B3", 0.311).set("C3", 0.011);
    workbook.set("A4", "inertia").set("B4", "=B2*B3^2");
    workbook.set("C4", "=TENTHMARK.LAB.CARRY(B4;B2:B3;C2:C3)");
    workbook.set("C5", "=TENTHMARK.LAB.READING(-1)");
  }

  @AfterEach
  void close() throws Exception {
    workbook.close();
  }

  @Test
  void showsWhatMakesUpACarriedUncertainty() throws Exception {
    assertThat(explained("C4"))
        .contains("The formula:\n=LAB_CARRY(B4,B2:B3,C2:C3)")
        .contains("B4 is B2 (rim mass / kg, value) times B3 (rim radius / m, value) squared.")
        .contains("What makes up the uncertainty (LAB_CARRY):")
        .containsPattern("B3 \\(rim radius / m, value\\) +0.311 +0.011 +0.2612 +0.002874 +85.6 %");
  }

  @Test
  void saysWhatIsWrongFirst() throws Exception {
    assertThat(explained("C5"))
        .startsWith(
            """
            What is wrong:
            LAB_READING: division is -1; it must be a number greater than zero.

            What to do:
            """);
  }

  @Test
  void explainsAnOrdinaryFormulaAndAnEmptyCell() throws Exception {
    assertThat(explained("B4")).contains("In words:\nB4 is B2 (rim mass / kg, value) times");
    assertThat(explained("F9")).isEqualTo("In words:\nF9 is empty.");
  }

  @Test
  void namesEveryControlOfItsWindowForScreenReaders() throws Exception {
    select("C4");
    URL[] url = {new URL()};
    url[0].Complete = "tenthmark:explain";
    queryInterface(XURLTransformer.class, office.service("com.sun.star.util.URLTransformer"))
        .parseStrict(url);
    XDispatch command =
        queryInterface(XDispatchProvider.class, workbook.frame()).queryDispatch(url[0], "_self", 0);
    command.dispatch(url[0], new com.sun.star.beans.PropertyValue[0]);
    Object window = window("Explain cell C4");
    try {
      List<XAccessibleContext> all = inside(context(window)).toList();
      assertThat(names(all, AccessibleRole.TEXT, AccessibleRole.SCROLL_PANE))
          .contains("The formula:", "In words:", "What makes up the uncertainty (LAB_CARRY):");
      assertThat(names(all, AccessibleRole.PUSH_BUTTON))
          .containsExactly("Explain the selected cell", "Help", "Close");
    } finally {
      queryInterface(XComponent.class, window).dispose();
    }
  }

  private void select(String cell) throws Exception {
    queryInterface(XSelectionSupplier.class, workbook.frame().getController())
        .select(workbook.range(cell));
  }

  private String explained(String cell) throws Exception {
    select(cell);
    var result = workbook.dispatch("tenthmark:explain");
    assertThat(result.State).isEqualTo(DispatchResultState.SUCCESS);
    return (String) result.Result;
  }

  private Object window(String title) throws Exception {
    XExtendedToolkit toolkit =
        queryInterface(XExtendedToolkit.class, office.service("com.sun.star.awt.Toolkit"));
    for (int i = 0; i < toolkit.getTopWindowCount(); i++) {
      Object window = toolkit.getTopWindow(i);
      if (context(window).getAccessibleName().startsWith(title)) {
        return window;
      }
    }
    throw new AssertionError("no window " + title);
  }

  private static XAccessibleContext context(Object window) {
    return queryInterface(XAccessible.class, window).getAccessibleContext();
  }

  private static Stream<XAccessibleContext> inside(XAccessibleContext context) {
    List<XAccessibleContext> children = new ArrayList<>();
    for (int i = 0; i < context.getAccessibleChildCount(); i++) {
      try {
        children.add(context.getAccessibleChild(i).getAccessibleContext());
      } catch (IndexOutOfBoundsException gone) {
        throw new AssertionError(gone);
      }
    }
    return Stream.concat(Stream.of(context), children.stream().flatMap(ExplainCellIT::inside));
  }

  private static List<String> names(List<XAccessibleContext> all, short... roles) {
    return all.stream()
        .filter(
            context -> {
              for (short role : roles) {
                if (context.getAccessibleRole() == role) {
                  return true;
                }
              }
              return false;
            })
        .map(XAccessibleContext::getAccessibleName)
        .toList();
  }
}
