package tenthmark.addin.sidebar;

import static com.sun.star.uno.UnoRuntime.queryInterface;
import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.accessibility.XAccessible;
import com.sun.star.accessibility.XAccessibleAction;
import com.sun.star.awt.XControl;
import com.sun.star.awt.XControlContainer;
import com.sun.star.awt.XFixedText;
import com.sun.star.awt.XListBox;
import com.sun.star.awt.XTextComponent;
import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XController2;
import com.sun.star.lang.XComponent;
import com.sun.star.ui.XToolPanel;
import com.sun.star.ui.XUIElement;
import com.sun.star.ui.XUIElementFactory;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Patience;
import tenthmark.addin.office.Workbook;

/** The panels of the sidebar, as the sidebar gets them from their factory. */
@ExtendWith(OfficeExtension.class)
class SidebarIT {

  private static final Path FAULTY =
      Path.of("../sample-workbooks/workbooks/first-lab-table-faulty.ods");

  @Test
  void hasADeckOfItsOwn(Office office) throws Exception {
    try (Workbook workbook = office.show()) {
      var decks =
          queryInterface(XController2.class, workbook.frame().getController())
              .getSidebar()
              .getDecks();
      assertThat(decks.getElementNames()).contains("org.tenthmark.calc.deck");
    }
  }

  @Test
  void explainsTheSelectedCellAsOneMovesAlong(Office office) throws Exception {
    try (Workbook workbook = office.open(FAULTY)) {
      workbook.select("M5");
      XControlContainer panel = panel("cell", workbook, office);
      assertThat(text("text", panel))
          .contains("M5 is LAB_TOTAL with contributions = the cells H5:L5")
          .containsPattern(
              "H5 \\(Crank arm, axle to pedal hole, Reading\\): 0.125\n\u2587{8} 38.5 %");
      workbook.select("N7");
      Patience.until(
          "the next explanation",
          () ->
              text("text", panel).startsWith("What is wrong:\nLAB_RESULT: Here uncertainty is M7"));
      assertThat(text("text", panel)).contains("which is blank and counts as 0");
      end(panel);
      workbook.select("M5");
    }
  }

  @Test
  void listsTheFindingsAndGoesToTheirCells(Office office) throws Exception {
    try (Workbook workbook = office.open(FAULTY)) {
      XControlContainer panel = panel("findings", workbook, office);
      queryInterface(
              XAccessibleAction.class,
              queryInterface(XAccessible.class, panel.getControl("check").getPeer())
                  .getAccessibleContext())
          .doAccessibleAction(0);
      XListBox list = queryInterface(XListBox.class, panel.getControl("list"));
      Patience.until("the findings", () -> list.getItemCount() > 0);
      assertThat(queryInterface(XFixedText.class, panel.getControl("summary")).getText())
          .matches("error: \\d+, warning: \\d+, note: \\d+\\. Records read: .*profile\\.");
      list.selectItemPos((short) 1, true);
      Patience.until("the cursor", () -> list.getItem((short) 1).contains("." + workbook.cursor()));
      assertThat(text("details", panel)).contains("Expected: ").contains("What to do: ");
      end(panel);
    }
  }

  private static XControlContainer panel(String name, Workbook workbook, Office office)
      throws Exception {
    XUIElementFactory factory =
        queryInterface(XUIElementFactory.class, office.service("tenthmark.addin.sidebar.Panels"));
    XUIElement element =
        factory.createUIElement(
            "private:resource/toolpanel/TenthmarkPanels/" + name,
            new PropertyValue[] {
              property("Frame", workbook.frame()),
              property("ParentWindow", workbook.frame().getContainerWindow())
            });
    return queryInterface(
        XControlContainer.class,
        queryInterface(XToolPanel.class, element.getRealInterface()).getWindow());
  }

  private static PropertyValue property(String name, Object value) {
    PropertyValue property = new PropertyValue();
    property.Name = name;
    property.Value = value;
    return property;
  }

  private static String text(String name, XControlContainer panel) {
    XControl control = panel.getControl(name);
    return queryInterface(XTextComponent.class, control).getText();
  }

  private static void end(XControlContainer panel) {
    queryInterface(XComponent.class, panel).dispose();
  }
}
