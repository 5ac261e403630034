package tenthmark.checker.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.SheetSize;

/**
 * A workbook as tests write it down: sheets of rows of numbers, texts and nulls for blank cells; a
 * text that begins with an equals sign is a formula.
 */
public final class Grid {

  /** A formula together with the value that a program stored with it. */
  public record Stored(String formula, Object value) {}

  /** A cell of a formula that fills an area. */
  public record Matrix(String formula, CellRange area) {}

  private record Page(
      String name,
      List<List<Object>> rows,
      List<CellRange> merged,
      List<Note> notes,
      Map<CellRange, String> formats,
      boolean hidden) {}

  /** A comment on a cell, or a text that lies on it. */
  private record Note(CellRange cell, boolean comment, String text) {}

  private final List<Page> pages = new ArrayList<>();
  private final List<DefinedName> names = new ArrayList<>();

  public static Grid sheet(String name) {
    return new Grid().andSheet(name);
  }

  public Grid andSheet(String name) {
    return andPage(name, false);
  }

  /** A sheet that is hidden. */
  public Grid andHiddenSheet(String name) {
    return andPage(name, true);
  }

  private Grid andPage(String name, boolean hidden) {
    pages.add(
        new Page(
            name,
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>(),
            new HashMap<>(),
            hidden));
    return this;
  }

  /** Merges cells of the last sheet, counted from 0. */
  public Grid merge(int left, int top, int right, int bottom) {
    Page page = pages.get(pages.size() - 1);
    page.merged().add(new CellRange(page.name(), left, top, right, bottom));
    return this;
  }

  /** A comment on a cell of the last sheet, such as B3. */
  public Grid comment(String cell, String text) {
    return note(cell, true, text);
  }

  /** Shows a number of the last sheet in a format, such as 0.0" mm". */
  public Grid format(String cell, String code) {
    Page page = pages.get(pages.size() - 1);
    page.formats().put(A1.range(page.name(), cell), code);
    return this;
  }

  /** A box of text whose upper left corner lies on a cell of the last sheet, such as B3. */
  public Grid box(String cell, String text) {
    return note(cell, false, text);
  }

  private Grid note(String cell, boolean comment, String text) {
    Page page = pages.get(pages.size() - 1);
    page.notes().add(new Note(A1.range(page.name(), cell), comment, text));
    return this;
  }

  public Grid row(Object... cells) {
    pages.get(pages.size() - 1).rows().add(Arrays.asList(cells));
    return this;
  }

  public Grid name(String name, String formula) {
    names.add(DefinedName.seenFromA1(name, Optional.empty(), formula, SheetSize.LARGE));
    return this;
  }

  /** The model itself, as a reader would give it. */
  public Workbook workbook() {
    return new Workbook(pages.stream().map(Grid::sheet).toList(), names);
  }

  private static Sheet sheet(Page page) {
    Sheet.Builder sheet = new Sheet.Builder(page.name());
    for (int row = 0; row < page.rows().size(); row++) {
      List<Object> cells = page.rows().get(row);
      for (int column = 0; column < cells.size(); column++) {
        if (cells.get(column) != null) {
          sheet.put(column, row, content(cells.get(column)));
        }
      }
    }
    page.merged().forEach(sheet::merge);
    for (Note note : page.notes()) {
      if (note.comment()) {
        sheet.comment(note.cell().left(), note.cell().top(), "", note.text());
      } else {
        sheet.box(note.cell().left(), note.cell().top(), note.text());
      }
    }
    page.formats()
        .forEach((cell, code) -> sheet.format(cell.left(), cell.top(), NumberFormat.of(code)));
    if (page.hidden()) {
      sheet.hide();
    }
    return sheet.build();
  }

  private static Content content(Object cell) {
    if (cell instanceof Stored stored) {
      return formula(stored.formula(), Optional.of(content(stored.value())));
    }
    if (cell instanceof Matrix matrix) {
      String written = matrix.formula().substring(1);
      return new Content.Formula(
          written, FormulaText.uniform(written), Optional.empty(), Optional.of(matrix.area()));
    }
    if (cell instanceof Number number) {
      return new Content.Number(number.doubleValue());
    }
    if (cell instanceof Boolean logical) {
      return new Content.Logical(logical);
    }
    String text = (String) cell;
    if (text.startsWith("=")) {
      return formula(text, Optional.empty());
    }
    return text.startsWith("#") || text.startsWith("Err:")
        ? new Content.Error(text)
        : new Content.Text(text);
  }

  private static Content formula(String formula, Optional<Content> stored) {
    String written = formula.substring(1);
    return new Content.Formula(written, FormulaText.uniform(written), stored, Optional.empty());
  }

  /** Writes the grid as an .xlsx file. */
  public Path xlsx(Path file) {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream target = Files.newOutputStream(file)) {
      for (Page page : pages) {
        XSSFSheet sheet = workbook.createSheet(page.name());
        for (int row = 0; row < page.rows().size(); row++) {
          List<Object> cells = page.rows().get(row);
          for (int column = 0; column < cells.size(); column++) {
            if (cells.get(column) != null) {
              write(
                  sheet.getRow(row) == null
                      ? sheet.createRow(row).createCell(column)
                      : sheet.getRow(row).createCell(column),
                  cells.get(column));
            }
          }
        }
      }
      for (DefinedName defined : names) {
        var name = workbook.createName();
        name.setNameName(defined.name());
        name.setRefersToFormula(defined.formula());
      }
      workbook.write(target);
      return file;
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  /** Formulas go in unparsed, because POI refuses the dots of stored names. */
  private static void write(XSSFCell cell, Object content) {
    if (content instanceof Stored stored) {
      write(cell, stored.value());
      cell.getCTCell().addNewF().setStringValue(stored.formula().substring(1));
      if (stored.value() instanceof String) {
        cell.getCTCell().setT(STCellType.STR);
        cell.getCTCell().setV((String) stored.value());
      }
    } else if (content instanceof Number number) {
      cell.setCellValue(number.doubleValue());
    } else if (content instanceof Boolean logical) {
      cell.setCellValue(logical);
    } else if (((String) content).startsWith("=")) {
      cell.getCTCell().addNewF().setStringValue(((String) content).substring(1));
    } else {
      cell.setCellValue((String) content);
    }
  }
}
