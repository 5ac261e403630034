package tenthmark.checker.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static tenthmark.checker.workbook.Bounded.read;
import static tenthmark.checker.workbook.Bounded.refused;
import static tenthmark.checker.workbook.OdsFile.number;
import static tenthmark.checker.workbook.OdsFile.row;
import static tenthmark.checker.workbook.OdsFile.table;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tenthmark.measurement.formula.CellAddress;

/** Files made to do harm, or damaged in the oddest ways. */
@Timeout(300)
class HostileFilesTest {

  private static final String DAMAGED = "the file is damaged or cut short";
  private static final String UNPACKS = "the workbook unpacks to more data than is allowed";

  @TempDir Path folder;

  private Path file(String name) {
    return folder.resolve(name);
  }

  private static Content at(Workbook workbook, int column, int row) {
    String sheet = workbook.sheets().get(0).name();
    return workbook.at(new CellAddress(sheet, column, row)).orElseThrow().content();
  }

  private static List<Cell> cells(Workbook workbook) {
    return workbook.sheets().stream().flatMap(Sheet::cells).toList();
  }

  private static String inline(String text) {
    return "<c t=\"inlineStr\"><is><t xml:space=\"preserve\">" + text + "</t></is></c>";
  }

  @Nested
  class Archives {

    /** A part of zeros: a thousand bytes in it are one in the file. */
    private Path bomb(String name, long megabytes, String part) throws IOException {
      try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file(name)))) {
        entry(zip, "[Content_Types].xml", "spreadsheetml.sheet.main+xml");
        zip.putNextEntry(new ZipEntry(part));
        byte[] zeros = new byte[1 << 20];
        for (long i = 0; i < megabytes; i++) {
          zip.write(zeros);
        }
      }
      return file(name);
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
      zip.putNextEntry(new ZipEntry(name));
      zip.write(text.getBytes(StandardCharsets.UTF_8));
      zip.closeEntry();
    }

    @ParameterizedTest
    @ValueSource(strings = {"xl/worksheets/sheet1.xml", "xl/media/wheel.png", "unused.bin"})
    void thatUnpackToMuchAreRefused(String part) throws Exception {
      refused(bomb("a.xlsx", 150, part), UNPACKS);
    }

    @Test
    void withinArchivesAreNotUnpacked() throws Exception {
      Path inner = bomb("inner.zip", 60, "zeros.xml");
      Path outer = file("a.xlsx");
      try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(outer))) {
        entry(zip, "[Content_Types].xml", "spreadsheetml.sheet.main+xml");
        for (int i = 0; i < 16; i++) {
          zip.putNextEntry(new ZipEntry("layer" + i + ".zip"));
          zip.write(Files.readAllBytes(inner));
        }
      }
      refused(outer, "the file is damaged: it has no xl/workbook.xml");
    }

    @Test
    void ofVeryManyPartsAreRefused() throws Exception {
      try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file("a.xlsx")))) {
        for (int i = 0; i < 12_000; i++) {
          entry(zip, "xl/" + i + ".xml", "");
        }
      }
      refused(file("a.xlsx"), "the file holds more than 10000 parts");
    }

    @Test
    void mayHoldPhotographsAsLargeAsTheyAre() throws Exception {
      byte[] noise = new byte[2 << 20];
      new Random(7).nextBytes(noise);
      Path plain = XlsxFile.cells("<c><v>172.5</v></c>").write(file("plain.xlsx"));
      Path photos = file("photos.xlsx");
      try (var source = new java.util.zip.ZipFile(plain.toFile());
          ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(photos))) {
        for (ZipEntry entry : source.stream().toList()) {
          zip.putNextEntry(new ZipEntry(entry.getName()));
          zip.write(source.getInputStream(entry).readAllBytes());
        }
        for (int i = 0; i < 4; i++) {
          zip.putNextEntry(new ZipEntry("xl/media/photo" + i + ".jpeg"));
          zip.write(noise);
        }
      }
      Limits tight = Limits.DEFAULT.withInflatedBytes(1 << 20);

      assertThat(at(Bounded.evaluated(photos, tight, workbook -> workbook), 0, 0))
          .isEqualTo(new Content.Number(172.5));
    }

    @ParameterizedTest
    @ValueSource(strings = {"xl/worksheets/sheet2.xml", "XL/Worksheets/Sheet1.XML"})
    void thatHoldAPartTwiceAreRefused(String name) throws Exception {
      Path file =
          XlsxFile.cells("<c><v>1</v></c>")
              .part("xl/worksheets/sheet2.xml", "other")
              .write(file("a.xlsx"));
      replace(file, "xl/worksheets/sheet2.xml", name.replace('2', '1'));

      refused(file, "the file is damaged: it holds a part twice");
    }

    /** Changes a name in place, in the local header and in the directory. */
    private static void replace(Path file, String name, String other) throws IOException {
      String bytes = Files.readString(file, StandardCharsets.ISO_8859_1);
      Files.writeString(file, bytes.replace(name, other), StandardCharsets.ISO_8859_1);
    }

    @Test
    void whosePartsOverlapAreRefused() throws Exception {
      Path file =
          XlsxFile.cells("<c><v>1</v></c>")
              .part("xl/more.xml", "x".repeat(999))
              .write(file("a.xlsx"));
      byte[] content = Files.readAllBytes(file);
      ByteBuffer bytes = buffer(content);
      int first = directory(bytes, 0);
      int last = directory(bytes, 6);
      bytes.putInt(last + 42, bytes.getInt(first + 42));
      Files.write(file, content);

      refused(file, DAMAGED);
    }

    @ParameterizedTest
    @ValueSource(ints = {16, 24})
    void whoseHeadersLieAboutAPartAreRefused(int field) throws Exception {
      for (int value : new int[] {0, 1, 1000, Integer.MAX_VALUE, -1}) {
        Path file = XlsxFile.cells("<c><v>1</v></c>").write(file(field + "a.xlsx"));
        byte[] content = Files.readAllBytes(file);
        ByteBuffer bytes = buffer(content);
        bytes.putInt(directory(bytes, 5) + field, value);
        Files.write(file, content);

        refused(file, DAMAGED);
      }
    }

    @Test
    void whoseHeadersClaimALargePhotographAreRefused() throws Exception {
      Path file = bomb("a.xlsx", 150, "xl/media/wheel.png");
      byte[] content = Files.readAllBytes(file);
      ByteBuffer bytes = buffer(content);
      bytes.putInt(directory(bytes, 1) + 20, Integer.MAX_VALUE);
      Files.write(file, content);

      refused(file, UNPACKS);
    }

    private static ByteBuffer buffer(byte[] content) {
      return ByteBuffer.wrap(content).order(ByteOrder.LITTLE_ENDIAN);
    }

    /** Where an entry of the directory begins. */
    private static int directory(ByteBuffer bytes, int index) {
      int position = 0;
      for (int seen = -1; seen < index; position++) {
        if (bytes.getInt(position) == 0x02014b50) {
          seen++;
        }
      }
      return position - 1;
    }

    @Test
    void withOneByteChangedAreNeverReadAsOtherNumbers() throws Exception {
      Path whole =
          XlsxFile.cells("<c><v>172.5</v></c><c><f>A1*2</f><v>345</v></c>").write(file("a.xlsx"));
      Workbook right = read(whole);
      byte[] bytes = Files.readAllBytes(whole);
      Path changed = file("b.xlsx");
      for (int i = 0; i < bytes.length; i++) {
        byte[] copy = bytes.clone();
        copy[i] ^= 0x10;
        Files.write(changed, copy);
        try {
          assertThat(cells(WorkbookFile.read(changed))).isEqualTo(cells(right));
        } catch (UnreadableFileException refused) {
          assertThat(refused).hasMessageNotContaining("\n");
        }
      }
    }
  }

  @Nested
  class Truncated {

    @ParameterizedTest
    @ValueSource(strings = {"good.ods", "good.xlsx", "native-formulas.xls"})
    void filesAreRefusedWhereverTheyEnd(String name) throws Exception {
      byte[] whole = Files.readAllBytes(WorkbookFileTest.saved(name));
      Path cut = file(name);
      for (int length = 1; length < whole.length; length += 1 + whole.length / 300) {
        Files.write(cut, Arrays.copyOf(whole, length));
        try {
          // Only what no reader needs is missing: the padding at the end of an .xls file.
          assertThat(cells(WorkbookFile.read(cut)))
              .isEqualTo(cells(WorkbookFile.read(WorkbookFileTest.saved(name))));
        } catch (UnreadableFileException refused) {
          assertThat(refused.getMessage())
              .isIn(
                  DAMAGED,
                  "not a workbook: its content is neither .xlsx, .xlsm, .xls nor .ods",
                  "not a workbook: an Office file of another kind");
        }
      }
    }

    @Test
    void partsAreRefused() throws Exception {
      refused(XlsxFile.rows("<row r=\"1\"><c><v>1</v></c>").write(file("a.xlsx")), DAMAGED);
      refused(
          OdsFile.zip(file("a.ods"), "mimetype", OdsFile.MIME_TYPE, "content.xml", "<office"),
          DAMAGED);
      refused(
          OdsFile.zip(file("b.ods"), "mimetype", OdsFile.MIME_TYPE),
          "the file is damaged: it has no content.xml");
    }
  }

  @Nested
  class Entities {

    private static final String LAUGHS =
        "<!DOCTYPE x [<!ENTITY a \"ha\">"
            + "<!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;\">"
            + "<!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;\">"
            + "<!ENTITY d \"&c;&c;&c;&c;&c;&c;&c;&c;&c;&c;\">"
            + "<!ENTITY e \"&d;&d;&d;&d;&d;&d;&d;&d;&d;&d;\">"
            + "<!ENTITY f \"&e;&e;&e;&e;&e;&e;&e;&e;&e;&e;\">"
            + "<!ENTITY g \"&f;&f;&f;&f;&f;&f;&f;&f;&f;&f;\">]>";

    private Path xlsx(String prologue, String cell) throws IOException {
      return XlsxFile.cells(cell).prologue(prologue).write(file("a.xlsx"));
    }

    private Path ods(String prologue, String cell) throws IOException {
      return OdsFile.write(file("a.ods"), prologue, table(row(cell)));
    }

    private static String text(String text) {
      return "<table:table-cell office:value-type=\"string\"><text:p>"
          + text
          + "</text:p></table:table-cell>";
    }

    @Test
    void areNeverExpanded() throws Exception {
      refused(xlsx(LAUGHS, inline("&g;")), DAMAGED);
      refused(ods(LAUGHS, text("&g;")), DAMAGED);
      refused(xlsx(LAUGHS, "<c r=\"&g;\"><v>1</v></c>"), DAMAGED);
      refused(ods(LAUGHS, "<table:table-cell table:formula=\"&g;\"/>"), DAMAGED);
    }

    @Test
    void outsideTheFileAreNeverOpened() throws Exception {
      Path secret = Files.writeString(file("secret.txt"), "42");
      for (String address :
          List.of(secret.toUri().toString(), "http://127.0.0.1:9/x", "jar:file:///x.jar!/x")) {
        String prologue = "<!DOCTYPE x [<!ENTITY e SYSTEM \"" + address + "\">]>";
        refused(xlsx(prologue, inline("&e;")), DAMAGED);
        refused(ods(prologue, text("&e;")), DAMAGED);
      }
    }

    @Test
    void ofParametersAndForeignDocumentTypesAreNeverOpened() throws Exception {
      String external = "<!DOCTYPE x SYSTEM \"http://127.0.0.1:9/x.dtd\">";
      String parameter = "<!DOCTYPE x [<!ENTITY % p SYSTEM \"http://127.0.0.1:9/x.dtd\"> %p;]>";
      for (String prologue : List.of(external, parameter)) {
        assertThat(at(read(xlsx(prologue, "<c><v>1</v></c>")), 0, 0))
            .isEqualTo(new Content.Number(1));
        assertThat(at(read(ods(prologue, number(1))), 0, 0)).isEqualTo(new Content.Number(1));
      }
    }

    @Test
    void inStylesAreNotEvenRead() throws Exception {
      Path file =
          OdsFile.zip(
              file("a.ods"),
              "mimetype",
              OdsFile.MIME_TYPE,
              "styles.xml",
              LAUGHS + "<x>&g;</x>",
              "content.xml",
              content(table(row(number(1)))));
      assertThat(at(read(file), 0, 0)).isEqualTo(new Content.Number(1));
    }

    private String content(String tables) throws IOException {
      Path file = OdsFile.write(file("inner.ods"), tables);
      try (var zip = new java.util.zip.ZipFile(file.toFile())) {
        return new String(
            zip.getInputStream(zip.getEntry("content.xml")).readAllBytes(), StandardCharsets.UTF_8);
      }
    }
  }

  @Nested
  class Dimensions {

    @Test
    void atTheEdgeOfTheSheetAreRead() throws Exception {
      Workbook workbook =
          read(
              XlsxFile.rows("<row r=\"1048576\"><c r=\"XFD1048576\"><v>1</v></c></row>")
                  .write(file("a.xlsx")));
      assertThat(workbook.sheets().get(0).cells().map(cell -> cell.address().place()))
          .containsExactly("XFD1048576");
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "XFE1",
          "A1048577",
          "A0",
          "A-1",
          "ZZZZZZZZZ1",
          "A99999999999",
          "1A",
          "A",
          "1",
          ":",
          "A1:",
          "é1"
        })
    void pastTheEdgeAreRefused(String place) throws Exception {
      refused(XlsxFile.cells("<c r=\"" + place + "\"><v>1</v></c>").write(file("a.xlsx")), DAMAGED);
    }

    @Test
    void ofBlankRowsAndColumnsCostNothing() throws Exception {
      String rows =
          "<table:table-row table:number-rows-repeated=\"1048000\"><table:table-cell"
              + " table:number-columns-repeated=\"16384\"/></table:table-row>";
      assertThat(read(OdsFile.write(file("a.ods"), table(rows))).sheets().get(0).cells()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2147483648", "-1", "0", "1e9", ""})
    void thatAreNoCountsAreRefused(String count) throws Exception {
      for (String attribute :
          List.of(
              "columns-repeated", "columns-spanned", "rows-spanned", "matrix-columns-spanned")) {
        refused(
            OdsFile.write(
                file("a.ods"),
                table(
                    row(
                        "<table:table-cell table:number-"
                            + attribute
                            + "=\""
                            + count
                            + "\" office:value-type=\"float\" office:value=\"1\" table:formula=\"of:=1\"/>"))),
            DAMAGED);
      }
    }

    @Test
    void ofAnArrayFormulaOverAllCellsAreRefused() throws Exception {
      refused(
          XlsxFile.cells("<c r=\"A1\"><f t=\"array\" ref=\"A1:XFD1048576\">1</f></c>")
              .write(file("a.xlsx")),
          "the workbook holds more than 500000 cells");
    }

    @Test
    void ofAMillionMergedAreasAreRefused() throws Exception {
      StringBuilder merges = new StringBuilder();
      for (int i = 1; i <= 1_000_000; i++) {
        merges.append("<mergeCell ref=\"A").append(i).append(":B").append(i).append("\"/>");
      }
      refused(
          new XlsxFile()
              .sheet("<sheetData/><mergeCells>" + merges + "</mergeCells>")
              .write(file("a.xlsx")),
          "the workbook holds more than 50000 merged areas");
    }

    @Test
    void ofAMillionNamesAreRefused() throws Exception {
      StringBuilder names = new StringBuilder();
      for (int i = 0; i < 1_000_000; i++) {
        names.append("<definedName name=\"n").append(i).append("\">Sheet1!A1</definedName>");
      }
      refused(
          XlsxFile.cells("").names(names.toString()).write(file("a.xlsx")),
          "the workbook holds more than 20000 names");
    }

    @Test
    void ofAMillionCellsAreRefused() throws Exception {
      String row = "<row>" + "<c><v>1</v></c>".repeat(1000) + "</row>";
      refused(
          XlsxFile.rows(row.repeat(1000)).write(file("a.xlsx")),
          "the workbook holds more than 500000 cells");
    }

    @Test
    void ofHalfAMillionCellsAreRead() throws Exception {
      String row = "<row>" + "<c><v>1.25</v></c>".repeat(1000) + "</row>";
      assertThat(read(XlsxFile.rows(row.repeat(500)).write(file("a.xlsx"))).sheets().get(0).cells())
          .hasSize(500_000);
    }

    @Test
    void ofOneEndlessTextOrAttributeStayWithinMemory() throws Exception {
      String text = "x".repeat(40 << 20);
      assertThat(at(read(XlsxFile.cells(inline(text)).write(file("a.xlsx"))), 0, 0))
          .isInstanceOf(Content.Text.class);
      refused(XlsxFile.cells("<c r=\"" + text + "\"><v>1</v></c>").write(file("b.xlsx")), DAMAGED);
    }

    /** Java 24 and newer limit the depth to 100, far above what programs write. */
    @Test
    void ofDeeplyNestedElementsAreReadOrRefused() throws Exception {
      assertThat(at(read(nested(50)), 0, 0)).isEqualTo(new Content.Text("deep"));
      Path deepest = nested(200_000);
      if (Runtime.version().feature() < 24) {
        assertThat(at(read(deepest), 0, 0)).isEqualTo(new Content.Text("deep"));
      } else {
        refused(deepest, DAMAGED);
      }
    }

    private Path nested(int depth) throws Exception {
      String nested = "<text:span>".repeat(depth) + "deep" + "</text:span>".repeat(depth);
      return OdsFile.write(
          file("a.ods"),
          table(
              row(
                  "<table:table-cell office:value-type=\"string\"><text:p>"
                      + nested
                      + "</text:p></table:table-cell>")));
    }
  }

  @Nested
  class Numbers {

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "Infinity", "-Infinity", "1e999"})
    void thatAreNoneBecomeErrors(String value) throws Exception {
      Content error = new Content.Error("#NUM!");
      assertThat(
              at(read(XlsxFile.cells("<c><v>" + value + "</v></c>").write(file("a.xlsx"))), 0, 0))
          .isEqualTo(error);
      assertThat(
              at(
                  read(
                      OdsFile.write(
                          file("a.ods"),
                          table(
                              row(
                                  "<table:table-cell office:value-type=\"float\" office:value=\""
                                      + value
                                      + "\"/>")))),
                  0,
                  0))
          .isEqualTo(error);
    }

    @ParameterizedTest
    @ValueSource(strings = {"12,5", "one", "1 2"})
    void thatCannotBeReadRefuseTheFile(String value) throws Exception {
      refused(XlsxFile.cells("<c><v>" + value + "</v></c>").write(file("a.xlsx")), DAMAGED);
    }

    @Test
    void ofSharedTextsThatAreNowhereRefuseTheFile() throws Exception {
      for (String index : List.of("7", "-1", "x", "")) {
        refused(
            XlsxFile.cells("<c t=\"s\"><v>" + index + "</v></c>")
                .texts("<si><t>a</t></si>")
                .write(file("a.xlsx")),
            DAMAGED);
      }
    }
  }

  @Nested
  class Texts {

    @ParameterizedTest
    @ValueSource(
        strings = {
          "<script>alert(1)</script>",
          "\"><img src=x onerror=alert(1)>",
          "=cmd|'/c calc'!A1",
          "@SUM(1)",
          "+1;-2",
          "a,\"b\"\r\n=1",
          "]]>&amp;",
          "\u202Ereversed\u202C",
          "emoji \uD83D\uDEB2",
          "  soft  foam  "
        })
    void comeOutAsTheyAre(String text) throws Exception {
      String escaped =
          text.replace("&", "&amp;")
              .replace("<", "&lt;")
              .replace(">", "&gt;")
              .replace("\r", "_x000D_");
      assertThat(at(read(XlsxFile.cells(inline(escaped)).write(file("a.xlsx"))), 0, 0))
          .isEqualTo(new Content.Text(text));

      Path xls = file("a.xls");
      try (HSSFWorkbook workbook = new HSSFWorkbook();
          OutputStream target = Files.newOutputStream(xls)) {
        workbook.createSheet().createRow(0).createCell(0).setCellValue(text);
        workbook.write(target);
      }
      assertThat(at(read(xls), 0, 0)).isEqualTo(new Content.Text(text));
    }

    @Test
    void mayHoldControlCharactersAndHalfPairs() throws Exception {
      assertThat(
              at(
                  read(XlsxFile.cells(inline("a_x0000_b_x001B__xD800_c")).write(file("a.xlsx"))),
                  0,
                  0))
          .isEqualTo(new Content.Text("a\0b\u001B\uD800c"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"&#0;", "&#27;", "&#xD800;", "\0", "&#x110000;"})
    void thatXmlForbidsRefuseTheFile(String text) throws Exception {
      refused(XlsxFile.cells(inline(text)).write(file("a.xlsx")), DAMAGED);
      refused(
          OdsFile.write(
              file("a.ods"),
              table(
                  row(
                      "<table:table-cell office:value-type=\"string\"><text:p>"
                          + text
                          + "</text:p></table:table-cell>"))),
          DAMAGED);
    }

    @Test
    void ofManyRunsAreJoinedWithoutReadings() throws Exception {
      Path file =
          XlsxFile.cells("<c t=\"s\"><v>0</v></c>")
              .texts(
                  "<si><r><rPr><b/></rPr><t>brake </t></r><r><t>lever</t></r><rPh sb=\"0\" eb=\"1\"><t>reading</t></rPh></si>")
              .write(file("a.xlsx"));
      assertThat(at(read(file), 0, 0)).isEqualTo(new Content.Text("brake lever"));
    }
  }

  @Nested
  class Sheets {

    @Test
    void thatAreNoneAreRefused() throws Exception {
      refused(new XlsxFile().sheets("").write(file("a.xlsx")), "the workbook holds no sheet");
      refused(OdsFile.write(file("a.ods"), ""), "the workbook holds no sheet");
    }

    @Test
    void mayBeHiddenAndVeryHidden() throws Exception {
      for (String state : List.of("hidden", "veryHidden")) {
        Workbook workbook =
            read(
                XlsxFile.cells("<c><v>1</v></c>")
                    .sheets("<sheet name=\"Sheet1\" state=\"" + state + "\" r:id=\"rId1\"/>")
                    .write(file("a.xlsx")));
        assertThat(workbook.sheets().get(0).hidden()).isTrue();
        assertThat(at(workbook, 0, 0)).isEqualTo(new Content.Number(1));
      }
    }

    @Test
    void mayHaveAbsurdNames() throws Exception {
      for (String name : List.of("x".repeat(1 << 20), "", "it's [a] 'name'!", "=1+1")) {
        Workbook workbook =
            read(
                XlsxFile.cells("<c><v>1</v></c>")
                    .sheets("<sheet name=\"" + name + "\" r:id=\"rId1\"/>")
                    .write(file("a.xlsx")));
        assertThat(workbook.sheets().get(0).name()).isEqualTo(name);
      }
    }

    @Test
    void ofOnePartThatIsNamedAgainAndAgainCountEachTime() throws Exception {
      String row = "<row>" + "<c><v>1</v></c>".repeat(1000) + "</row>";
      refused(
          XlsxFile.rows(row.repeat(100))
              .sheets("<sheet name=\"s\" r:id=\"rId1\"/>".repeat(1000))
              .write(file("a.xlsx")),
          "the workbook holds more than 500000 cells");
    }

    @Test
    void thatPointElsewhereAreNeverFetched() throws Exception {
      Path file =
          XlsxFile.cells("<c><v>1</v></c>")
              .sheets("<sheet name=\"s\" r:id=\"rId9\"/>")
              .write(file("a.xlsx"));
      refused(file, "the workbook holds no sheet");
    }
  }

  @Nested
  class OtherContent {

    @Test
    void macrosStayUnread() throws Exception {
      Path file =
          XlsxFile.cells("<c><v>1</v></c>")
              .withMacros()
              .part("xl/vbaProject.bin", "not a macro")
              .write(file("a.xlsm"));
      assertThat(at(read(file), 0, 0)).isEqualTo(new Content.Number(1));
    }

    @Test
    void linksToOtherFilesStayTexts() throws Exception {
      Path file =
          XlsxFile.cells("<c><f>[1]Sheet1!A1</f><v>3</v></c>")
              .part("xl/externalLinks/externalLink1.xml", "<externalLink/>")
              .write(file("a.xlsx"));
      assertThat(at(read(file), 0, 0))
          .isEqualTo(
              new Content.Formula(
                  "[1]Sheet1!A1",
                  "[1]Sheet1!A1",
                  Optional.of(new Content.Number(3)),
                  Optional.empty()));
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "%PDF-1.7 spoke",
          "{\\rtf1 spoke}",
          "<html><table><tr><td>1",
          "GIF89a",
          "\u007fELF",
          "Rar!\u001a\u0007\0",
          "\0\0\0\0\0\0"
        })
    void ofAnotherTypeIsRefused(String content) throws Exception {
      refused(
          Files.writeString(file("a.xlsx"), content, StandardCharsets.ISO_8859_1),
          "not a workbook: its content is neither .xlsx, .xlsm, .xls nor .ods");
    }

    @Test
    void ofAnotherOfficeFileIsRefused() throws Exception {
      try (POIFSFileSystem container = new POIFSFileSystem();
          OutputStream target = Files.newOutputStream(file("a.xls"))) {
        container.createDocument(new java.io.ByteArrayInputStream(new byte[5000]), "WordDocument");
        container.writeFilesystem(target);
      }
      refused(file("a.xls"), "not a workbook: an Office file of another kind");
    }

    @Test
    void ofNoiseIsRefusedInOneLine() throws Exception {
      Random random = new Random(20261125);
      byte[][] magics = {
        {'P', 'K', 3, 4},
        {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1}
      };
      for (int i = 0; i < 500; i++) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(magics[i % 2]);
        byte[] noise = new byte[random.nextInt(4096)];
        random.nextBytes(noise);
        bytes.write(noise);
        Path file = Files.write(file("noise"), bytes.toByteArray());
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> WorkbookFile.read(file))
            .isInstanceOf(UnreadableFileException.class)
            .hasMessageNotContaining("\n");
      }
    }
  }

  @Nested
  class NamedTables {

    private static final String LINKS = "xl/worksheets/_rels/sheet1.xml.rels";

    private static String links(String kind, String target) {
      return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
          + ("<Relationship Id=\"rId1\" Type=\"x/" + kind + "\" Target=\"" + target + "\"/>")
              .repeat(1000)
          + "</Relationships>";
    }

    private static String table(int columns) {
      return "<table displayName=\"Pulls\" ref=\"A1:B3\">"
          + "<tableColumn name=\"Force\"/>".repeat(columns)
          + "</table>";
    }

    @Test
    void ofVeryManyColumnsAreRefused() throws Exception {
      refused(
          XlsxFile.cells("<c><f>SUM(Pulls[Force])</f></c>")
              .part(LINKS, links("table", "../tables/table1.xml"))
              .part("xl/tables/table1.xml", table(20_001))
              .write(file("a.xlsx")),
          "the workbook holds more than 20000 names");
    }

    @Test
    void areReadOnceHoweverOftenTheyAreLinked() throws Exception {
      Workbook workbook =
          read(
              XlsxFile.cells("<c><f>SUM(Pulls[Force])</f></c>")
                  .part(LINKS, links("table", "../tables/table1.xml"))
                  .part("xl/tables/table1.xml", table(100))
                  .write(file("a.xlsx")));

      assertThat(((Content.Formula) at(workbook, 0, 0)).text()).isEqualTo("SUM($A$2:$A$3)");
    }

    @ParameterizedTest
    @ValueSource(strings = {"table", "hyperlink"})
    void mayBeMissingAndOtherLinksMayLeadAnywhere(String kind) throws Exception {
      String target = kind.equals("table") ? "../tables/none.xml" : "#'My wheel'!A1";
      Workbook workbook =
          read(
              XlsxFile.cells("<c><f>SUM(Pulls[Force])</f></c>")
                  .part(LINKS, links(kind, target))
                  .write(file("a.xlsx")));

      assertThat(((Content.Formula) at(workbook, 0, 0)).text()).isEqualTo("SUM(Pulls[Force])");
    }

    @ParameterizedTest
    @CsvSource({"Pulls[, 1000", "'Pulls[[Force],', 500", "Pulls[&apos;[, 500", "Pulls[, 100000"})
    void inFormulasWithoutEndAreLeft(String part, int times) throws Exception {
      String formula = part.repeat(times);
      Workbook workbook =
          read(
              XlsxFile.cells("<c><f>" + formula + "</f></c>")
                  .part(LINKS, links("table", "../tables/table1.xml"))
                  .part("xl/tables/table1.xml", table(1))
                  .write(file("a.xlsx")));

      assertThat(((Content.Formula) at(workbook, 0, 0)).text())
          .isEqualTo(formula.replace("&apos;", "'"));
    }
  }
}
