package tenthmark.samples.template;

import static com.sun.star.uno.UnoRuntime.queryInterface;

import com.sun.star.document.XDocumentPropertiesSupplier;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.Workbook;
import tenthmark.samples.plan.Copy;

/**
 * Has a real Calc compute the templates and their filled-in copies, draw their graphs, and save.
 */
public final class MakeTemplates {

  private static final Map<Copy, Map<String, String>> FILTERS =
      Map.of(
          Copy.START,
          Map.of(".ots", "calc8_template", ".xltx", "Calc MS Excel 2007 XML Template"),
          Copy.COMPLETED,
          Map.of(".ods", "calc8", ".xlsx", "Calc MS Excel 2007 XML"));

  private MakeTemplates() {}

  /** Takes one argument: the folder to write to. */
  public static void main(String[] arguments) throws Exception {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    try (Office office = Office.start(Profile.withExtension())) {
      for (Template template : Template.all()) {
        for (Copy copy : Copy.values()) {
          make(template, copy, office, folder);
        }
      }
    }
  }

  private static void make(Template template, Copy copy, Office office, Path folder)
      throws Exception {
    Path written = Files.createTempDirectory("tenthmark-template-").resolve("written.xlsx");
    try (XSSFWorkbook workbook = template.plan().written(copy);
        OutputStream out = Files.newOutputStream(written)) {
      workbook.write(out);
    }
    try (Workbook workbook = office.open(written).recalculateHard()) {
      if (template.graph().isPresent()) {
        CalcGraph.draw(template.graph().get(), template.plan().places(), workbook, office);
      }
      title(workbook, template.plan().title());
      for (Map.Entry<String, String> format : FILTERS.get(copy).entrySet()) {
        String name = template.fileName(copy) + format.getKey();
        Files.copy(
            workbook.save(name, format.getValue()),
            folder.resolve(name),
            StandardCopyOption.REPLACE_EXISTING);
      }
    }
    Files.delete(written);
    Files.delete(written.getParent());
  }

  /** The Templates dialog shows the title of a document. */
  private static void title(Workbook workbook, String title) {
    queryInterface(XDocumentPropertiesSupplier.class, workbook.document())
        .getDocumentProperties()
        .setTitle(title);
  }
}
