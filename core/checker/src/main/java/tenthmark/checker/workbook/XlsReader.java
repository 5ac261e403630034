package tenthmark.checker.workbook;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.OldFileFormatException;
import org.apache.poi.hssf.usermodel.HSSFClientAnchor;
import org.apache.poi.hssf.usermodel.HSSFComment;
import org.apache.poi.hssf.usermodel.HSSFPatriarch;
import org.apache.poi.hssf.usermodel.HSSFShape;
import org.apache.poi.hssf.usermodel.HSSFShapeContainer;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFSimpleShape;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.util.CellRangeAddress;
import tenthmark.measurement.formula.CellRange;
import tenthmark.measurement.formula.SheetSize;

/** Reads .xls files through POI. */
final class XlsReader {

  private static final List<String> WORKBOOK_STREAMS = List.of("Workbook", "WORKBOOK", "BOOK");

  private final HSSFWorkbook source;
  private final Map<String, NumberFormat> formats = new HashMap<>();
  private final Tally tally;

  private XlsReader(HSSFWorkbook source, Limits limits) {
    this.source = source;
    this.tally = new Tally(limits);
  }

  static Workbook read(Path file, Limits limits) throws UnreadableFileException {
    try {
      if (Files.size(file) > limits.inflatedBytes()) {
        throw limits.tooLarge();
      }
      try (FileChannel channel = FileChannel.open(file);
          POIFSFileSystem container = new POIFSFileSystem(channel, true)) {
        requireWorkbook(container.getRoot());
        try (HSSFWorkbook source = new HSSFWorkbook(container.getRoot(), false)) {
          return new XlsReader(source, limits).workbook();
        }
      }
    } catch (EncryptedDocumentException locked) {
      throw Archive.isProtected();
    } catch (OldFileFormatException old) {
      throw tooOld();
    } catch (OutOfTimeException over) {
      throw over;
    } catch (IOException | RuntimeException damage) {
      OutOfTimeException.ifInterrupted();
      // POI reports damage by many unchecked exceptions; none may stop the files that follow.
      throw Archive.damaged(damage);
    }
  }

  static UnreadableFileException tooOld() {
    return new UnreadableFileException(
        "the workbook has a format from before 1997; save it as .xlsx or .ods first");
  }

  private static void requireWorkbook(DirectoryNode root) throws UnreadableFileException {
    if (root.hasEntryCaseInsensitive(Decryptor.DEFAULT_POIFS_ENTRY)) {
      throw Archive.isProtected();
    }
    if (root.hasEntryCaseInsensitive("Book")
        && WORKBOOK_STREAMS.stream().noneMatch(root::hasEntry)) {
      throw tooOld();
    }
    if (WORKBOOK_STREAMS.stream().noneMatch(root::hasEntry)) {
      throw new UnreadableFileException("not a workbook: an Office file of another kind");
    }
  }

  private Workbook workbook() throws UnreadableFileException {
    List<Sheet> sheets = new ArrayList<>();
    for (int i = 0; i < source.getNumberOfSheets(); i++) {
      sheets.add(sheet(i));
    }
    return new Workbook(sheets, names());
  }

  private Sheet sheet(int index) throws UnreadableFileException {
    Sheet.Builder sheet = new Sheet.Builder(Objects.requireNonNull(source.getSheetName(index)));
    if (source.getSheetVisibility(index) != SheetVisibility.VISIBLE) {
      sheet.hide();
    }
    for (Row row : source.getSheetAt(index)) {
      for (org.apache.poi.ss.usermodel.Cell cell : row) {
        Optional<Content> content = content(cell);
        if (content.isPresent()) {
          tally.cell(content.get());
          sheet.put(cell.getColumnIndex(), cell.getRowIndex(), content.get());
          sheet.format(cell.getColumnIndex(), cell.getRowIndex(), format(cell));
        }
      }
    }
    for (CellRangeAddress region : source.getSheetAt(index).getMergedRegions()) {
      tally.merged();
      sheet.merge(area(source.getSheetAt(index), region));
    }
    HSSFPatriarch drawing = drawing(source.getSheetAt(index));
    if (drawing != null) {
      addNotes(drawing, Optional.empty(), sheet);
    }
    return sheet.build();
  }

  private static HSSFPatriarch drawing(HSSFSheet sheet) {
    try {
      return sheet.getDrawingPatriarch();
    } catch (RuntimeException unreadable) {
      // A drawing of a kind that POI does not know: the cells are read all the same.
      return null;
    }
  }

  /**
   * Adds comments and the texts of shapes.
   *
   * @param group where the group lies that the shapes are in
   */
  private void addNotes(
      HSSFShapeContainer shapes, Optional<HSSFClientAnchor> group, Sheet.Builder sheet)
      throws UnreadableFileException {
    for (HSSFShape shape : shapes.getChildren()) {
      Optional<HSSFClientAnchor> anchor =
          shape.getAnchor() instanceof HSSFClientAnchor own ? Optional.of(own) : group;
      if (shape instanceof HSSFComment comment) {
        tally.note();
        sheet.comment(comment.getColumn(), comment.getRow(), author(comment), text(comment));
      } else if (shape instanceof HSSFSimpleShape simple && anchor.isPresent()) {
        tally.note();
        sheet.box(anchor.get().getCol1(), anchor.get().getRow1(), text(simple));
      } else if (shape instanceof HSSFShapeContainer container) {
        addNotes(container, anchor, sheet);
      }
    }
  }

  private static String author(HSSFComment comment) {
    return Objects.requireNonNullElse(comment.getAuthor(), "");
  }

  private static String text(HSSFSimpleShape shape) {
    try {
      return Objects.requireNonNullElse(shape.getString().getString(), "");
    } catch (RuntimeException none) {
      // POI tells in no other way that a shape, such as a line or a picture, has no text.
      return "";
    }
  }

  private NumberFormat format(org.apache.poi.ss.usermodel.Cell cell) {
    try {
      String code = Objects.requireNonNullElse(cell.getCellStyle().getDataFormatString(), "");
      return formats.computeIfAbsent(code, NumberFormat::of);
    } catch (RuntimeException damaged) {
      // A style that is nowhere says nothing of the cell; its number is there all the same.
      return NumberFormat.PLAIN;
    }
  }

  private static Optional<Content> content(org.apache.poi.ss.usermodel.Cell cell) {
    return cell.getCellType() == CellType.FORMULA
        ? Optional.of(formula(cell))
        : value(cell, cell.getCellType());
  }

  private static Content formula(org.apache.poi.ss.usermodel.Cell cell) {
    String written = written(cell);
    return new Content.Formula(written, FormulaText.uniform(written), stored(cell), array(cell));
  }

  private static Optional<Content> stored(org.apache.poi.ss.usermodel.Cell cell) {
    return mayHideAText(cell) ? Optional.empty() : value(cell, cell.getCachedFormulaResultType());
  }

  /** Calc stores 0 for a text that an array formula gives when it saves as .xls. */
  private static boolean mayHideAText(org.apache.poi.ss.usermodel.Cell cell) {
    return cell.isPartOfArrayFormulaGroup()
        && cell.getCachedFormulaResultType() == CellType.NUMERIC
        && cell.getNumericCellValue() == 0;
  }

  private static String written(org.apache.poi.ss.usermodel.Cell cell) {
    try {
      return cell.getCellFormula();
    } catch (RuntimeException unreadable) {
      // Tokens that POI cannot write out: evaluation will say so of this cell, the others go on.
      return "";
    }
  }

  private static Optional<CellRange> array(org.apache.poi.ss.usermodel.Cell cell) {
    return cell.isPartOfArrayFormulaGroup()
        ? Optional.of(area(cell.getSheet(), cell.getArrayFormulaRange()))
        : Optional.empty();
  }

  private static Optional<Content> value(org.apache.poi.ss.usermodel.Cell cell, CellType type) {
    return switch (type) {
      case NUMERIC -> Optional.of(Content.number(cell.getNumericCellValue()));
      case STRING ->
          Optional.of(
              new Content.Text(Objects.requireNonNull(cell.getRichStringCellValue().getString())));
      case BOOLEAN -> Optional.of(new Content.Logical(cell.getBooleanCellValue()));
      case ERROR ->
          Optional.of(new Content.Error(FormulaError.forInt(cell.getErrorCellValue()).getString()));
      default -> Optional.empty();
    };
  }

  private List<DefinedName> names() throws UnreadableFileException {
    List<DefinedName> names = new ArrayList<>();
    for (Name name : source.getAllNames()) {
      String formula = formula(name);
      if (formula != null) {
        tally.name();
        names.add(
            DefinedName.seenFromA1(
                name.getNameName(),
                name.getSheetIndex() < 0
                    ? Optional.empty()
                    : Optional.of(source.getSheetName(name.getSheetIndex())),
                FormulaText.uniform(formula),
                SheetSize.SMALL));
      }
    }
    return names;
  }

  private static String formula(Name name) {
    try {
      return name.isFunctionName() ? null : name.getRefersToFormula();
    } catch (RuntimeException unreadable) {
      // The same of a name: a formula that uses it is not checkable.
      return null;
    }
  }

  private static CellRange area(org.apache.poi.ss.usermodel.Sheet sheet, CellRangeAddress range) {
    return new CellRange(
        sheet.getSheetName(),
        range.getFirstColumn(),
        range.getFirstRow(),
        range.getLastColumn(),
        range.getLastRow());
  }
}
