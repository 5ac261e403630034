package tenthmark.checker.workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Writes small .xlsx files by hand, so that tests can put anything into them. */
public final class XlsxFile {

  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String RELATIONSHIPS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String TYPE =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";

  private String prologue = "";
  private String type = TYPE;
  private String sheets = "<sheet name=\"Sheet1\" sheetId=\"1\" r:id=\"rId1\"/>";
  private String names = "";
  private String texts = "";
  private String sheet = "<sheetData/>";
  private final List<String> others = new ArrayList<>();

  /** A workbook with these rows on its one sheet. */
  public static XlsxFile rows(String rows) {
    return new XlsxFile().sheet("<sheetData>" + rows + "</sheetData>");
  }

  /** A workbook with these cells in its first row. */
  public static XlsxFile cells(String cells) {
    return rows("<row r=\"1\">" + cells + "</row>");
  }

  XlsxFile sheet(String content) {
    sheet = content;
    return this;
  }

  XlsxFile prologue(String text) {
    prologue = text;
    return this;
  }

  XlsxFile sheets(String elements) {
    sheets = elements;
    return this;
  }

  public XlsxFile names(String elements) {
    names = "<definedNames>" + elements + "</definedNames>";
    return this;
  }

  XlsxFile texts(String elements) {
    texts = elements;
    return this;
  }

  XlsxFile withMacros() {
    type = "application/vnd.ms-excel.sheet.macroEnabled.main+xml";
    return this;
  }

  XlsxFile part(String name, String content) {
    others.add(name);
    others.add(content);
    return this;
  }

  public Path write(Path file) throws IOException {
    List<String> parts =
        new ArrayList<>(
            List.of(
                "[Content_Types].xml",
                "<Types><Override PartName=\"/xl/workbook.xml\" ContentType=\""
                    + type
                    + "\"/></Types>",
                "_rels/.rels",
                relationships(relationship("rId1", "officeDocument", "xl/workbook.xml")),
                "xl/workbook.xml",
                "<workbook xmlns=\""
                    + MAIN
                    + "\" xmlns:r=\""
                    + RELATIONSHIPS
                    + "\"><sheets>"
                    + sheets
                    + "</sheets>"
                    + names
                    + "</workbook>",
                "xl/_rels/workbook.xml.rels",
                relationships(
                    relationship("rId1", "worksheet", "worksheets/sheet1.xml")
                        + relationship("rId2", "sharedStrings", "sharedStrings.xml")),
                "xl/sharedStrings.xml",
                "<sst xmlns=\"" + MAIN + "\">" + texts + "</sst>",
                "xl/worksheets/sheet1.xml",
                prologue + "<worksheet xmlns=\"" + MAIN + "\">" + sheet + "</worksheet>"));
    parts.addAll(others);
    return OdsFile.zip(file, parts.toArray(String[]::new));
  }

  private static String relationships(String all) {
    return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + all
        + "</Relationships>";
  }

  private static String relationship(String id, String kind, String target) {
    return "<Relationship Id=\""
        + id
        + "\" Type=\""
        + RELATIONSHIPS
        + "/"
        + kind
        + "\" Target=\""
        + target
        + "\"/>";
  }
}
