package tenthmark.checker.workbook;

import java.io.IOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import tenthmark.measurement.formula.SheetSize;

/** Reads .xlsx and .xlsm files (ECMA-376, part 1, chapter 18; either set of namespaces). */
final class XlsxReader {

  /** What one part of the archive is to another. */
  private record Relationship(String id, String type, String folder, String written) {

    boolean is(String kind) {
      return type.endsWith("/" + kind);
    }

    /** The part that it leads to; only some kinds lead to parts, others to places in a sheet. */
    String target() {
      return URI.create("/" + folder).resolve(written.replace('\\', '/')).getPath().substring(1);
    }
  }

  private record SheetEntry(String name, boolean hidden, String relationship) {}

  private record NameEntry(String name, Optional<Integer> sheet, String formula) {}

  private final Archive archive;
  private final Limits limits;
  private final Tally tally;
  private final List<SheetEntry> sheetEntries = new ArrayList<>();
  private final List<NameEntry> nameEntries = new ArrayList<>();

  XlsxReader(Archive archive, Limits limits) {
    this.archive = archive;
    this.limits = limits;
    this.tally = new Tally(limits);
  }

  Workbook read() throws IOException, UnreadableFileException {
    String main =
        relationships("").stream()
            .filter(relationship -> relationship.is("officeDocument"))
            .map(Relationship::target)
            .findFirst()
            .orElse("xl/workbook.xml");
    XmlPart.read(archive, main, limits, this::readIndex);
    List<Relationship> relationships = relationships(main);
    List<String> texts = texts(relationships);
    Map<Integer, NumberFormat> formats = formats(relationships);
    TableReferences tables = tables(relationships);
    List<Sheet> sheets = new ArrayList<>();
    Set<String> read = new HashSet<>();
    for (SheetEntry entry : sheetEntries) {
      Optional<Relationship> part = worksheet(entry, relationships);
      if (part.isPresent()) {
        Sheet.Builder sheet =
            XmlPart.read(
                archive,
                part.get().target(),
                limits,
                xml ->
                    new XlsxSheet(xml, entry.name(), entry.hidden(), texts, formats, tables, tally)
                        .read());
        addNotes(entry.name(), sheet, relationships(part.get().target()), read);
        sheets.add(sheet.build());
      }
    }
    return new Workbook(
        sheets, nameEntries.stream().map(entry -> definedName(entry, tables)).toList());
  }

  /**
   * The named tables on all sheets, which formulas on any sheet may call; each part is read once.
   */
  private TableReferences tables(List<Relationship> relationships)
      throws IOException, UnreadableFileException {
    TableReferences tables = new TableReferences();
    Set<String> parts = new HashSet<>();
    for (SheetEntry entry : sheetEntries) {
      Optional<Relationship> sheet = worksheet(entry, relationships);
      if (sheet.isPresent()) {
        for (Relationship other : relationships(sheet.get().target())) {
          if (other.is("table") && archive.has(other.target()) && parts.add(other.target())) {
            tables.add(
                XmlPart.read(
                    archive,
                    other.target(),
                    limits,
                    xml -> XlsxTable.read(xml, entry.name(), tally)));
          }
        }
      }
    }
    return tables;
  }

  /**
   * Adds what is noted on a sheet. A part belongs to one sheet: one that many claim is read once.
   *
   * @param read the parts that were read
   */
  private void addNotes(
      String name, Sheet.Builder sheet, List<Relationship> relationships, Set<String> read)
      throws IOException, UnreadableFileException {
    XlsxNotes notes = new XlsxNotes(name, sheet, tally);
    addNotes("threadedComment", notes::threads, relationships, read);
    addNotes("comments", notes::comments, relationships, read);
    addNotes("drawing", notes::drawing, relationships, read);
  }

  private void addNotes(
      String kind,
      XmlPart.Reading<Void> reading,
      List<Relationship> relationships,
      Set<String> read)
      throws IOException, UnreadableFileException {
    for (Relationship other : relationships) {
      if (other.is(kind) && archive.has(other.target()) && read.add(other.target())) {
        XmlPart.read(archive, other.target(), limits, reading);
      }
    }
  }

  /** Charts and dialogs may stand between the sheets of cells. */
  private static Optional<Relationship> worksheet(SheetEntry entry, List<Relationship> all) {
    return all.stream()
        .filter(relationship -> relationship.id().equals(entry.relationship()))
        .filter(relationship -> relationship.is("worksheet"))
        .findFirst();
  }

  private List<String> texts(List<Relationship> relationships)
      throws IOException, UnreadableFileException {
    for (Relationship relationship : relationships) {
      if (relationship.is("sharedStrings") && archive.has(relationship.target())) {
        return XmlPart.read(archive, relationship.target(), limits, XlsxText::table);
      }
    }
    return List.of();
  }

  /** Damaged styles say nothing of the numbers, which are there all the same. */
  private Map<Integer, NumberFormat> formats(List<Relationship> relationships)
      throws IOException, UnreadableFileException {
    for (Relationship relationship : relationships) {
      if (relationship.is("styles") && archive.has(relationship.target())) {
        return XmlPart.read(archive, relationship.target(), limits, XlsxStyles::formats);
      }
    }
    return Map.of();
  }

  private List<Relationship> relationships(String part)
      throws IOException, UnreadableFileException {
    String folder = part.substring(0, part.lastIndexOf('/') + 1);
    String name = folder + "_rels/" + part.substring(folder.length()) + ".rels";
    return archive.has(name)
        ? XmlPart.read(archive, name, limits, xml -> relationships(xml, folder))
        : List.of();
  }

  private static List<Relationship> relationships(XMLStreamReader xml, String folder)
      throws XMLStreamException {
    List<Relationship> found = new ArrayList<>();
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT
          && xml.getLocalName().equals("Relationship")
          && !"External".equals(xml.getAttributeValue(null, "TargetMode"))) {
        found.add(
            new Relationship(
                attribute(xml, "Id").orElse(""),
                attribute(xml, "Type").orElse(""),
                folder,
                attribute(xml, "Target").orElse("")));
      }
    }
    return found;
  }

  private Void readIndex(XMLStreamReader xml) throws XMLStreamException, UnreadableFileException {
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "sheet" -> sheetEntries.add(sheetEntry(xml));
          case "definedName" -> addName(xml);
          case "AlternateContent", "extLst" -> XmlPart.skip(xml);
          default -> {
            // Views, calculation settings and the like say nothing about the cells.
          }
        }
      }
    }
    return null;
  }

  private static SheetEntry sheetEntry(XMLStreamReader xml) {
    return new SheetEntry(
        XlsxText.unescaped(attribute(xml, "name").orElse("")),
        attribute(xml, "state").filter(state -> !state.equals("visible")).isPresent(),
        relationshipId(xml));
  }

  private static String relationshipId(XMLStreamReader xml) {
    for (int i = 0; i < xml.getAttributeCount(); i++) {
      if (xml.getAttributeLocalName(i).equals("id") && xml.getAttributeNamespace(i) != null) {
        return xml.getAttributeValue(i);
      }
    }
    return "";
  }

  private void addName(XMLStreamReader xml) throws XMLStreamException, UnreadableFileException {
    boolean function = attribute(xml, "function").filter(XlsxText::isTrue).isPresent();
    String name = attribute(xml, "name").orElse("");
    Optional<Integer> sheet = attribute(xml, "localSheetId").map(Integer::valueOf);
    String formula = XlsxText.content(xml);
    if (!function && !formula.isEmpty()) {
      tally.name();
      nameEntries.add(new NameEntry(name, sheet, formula));
    }
  }

  private DefinedName definedName(NameEntry entry, TableReferences tables) {
    return DefinedName.seenFromA1(
        entry.name(),
        entry
            .sheet()
            .filter(index -> index >= 0 && index < sheetEntries.size())
            .map(index -> sheetEntries.get(index).name()),
        FormulaText.uniform(tables.asRanges(entry.formula(), "", -1)),
        SheetSize.LARGE);
  }

  static Optional<String> attribute(XMLStreamReader xml, String name) {
    return Optional.ofNullable(xml.getAttributeValue(null, name));
  }
}
