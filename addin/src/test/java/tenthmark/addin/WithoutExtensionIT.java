package tenthmark.addin;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tenthmark.addin.office.Office;
import tenthmark.addin.office.OfficeExtension;
import tenthmark.addin.office.Profile;
import tenthmark.addin.office.Workbook;
import tenthmark.addin.office.Workbook.Format;

/**
 * What happens to a file that a program without the extension opens and saves. The checker knows
 * the spellings that are pinned down here.
 */
@ExtendWith(OfficeExtension.class)
@TestInstance(Lifecycle.PER_CLASS)
class WithoutExtensionIT {

  private static final int UNKNOWN_NAME = 525;

  private Office office;
  private Office plain;
  private Workbook original;

  @BeforeAll
  void saveCopies(Office withExtension) throws Exception {
    office = withExtension;
    plain = Office.start(Profile.plain());
    original =
        office
            .create()
            .set("A1", 1)
            .set("B1", "=TENTHMARK.LAB.READING(A1;\"fine\";2)")
            .set("B2", "=TENTHMARK.LAB.READING(0)")
            .set("B3", "=TENTHMARK.LAB.RESULT(172.46;B1;\"mm\")")
            .set("B4", "=SQRT(TENTHMARK.LAB.READING(A1)*10)")
            .setMatrix("D1:G2", "=TENTHMARK.LAB.BUDGET(H1:J1)")
            .set("H1", "reading")
            .set("I1", "marks")
            .set("J1", 0.5)
            .recalculateHard();
  }

  @AfterAll
  void close() throws Exception {
    original.close();
    plain.close();
  }

  @Nested
  class AnOds {

    @Test
    void holdsFullNamesAndValues() throws Exception {
      assertThat(entry(original.save("own", Format.ODS), "content.xml"))
          .contains(
              "table:formula=\"of:=TENTHMARK.LAB.READING([.A1];&quot;fine&quot;;2)\""
                  + " office:value-type=\"float\" office:value=\"0.5\"")
          .contains(
              "table:formula=\"of:=TENTHMARK.LAB.READING(0)\" office:value-type=\"string\""
                  + " office:string-value=\"\" calcext:value-type=\"error\"><text:p>Err:502<")
          .contains(
              "table:formula=\"of:=TENTHMARK.LAB.RESULT(172.46;[.B1];&quot;mm&quot;)\""
                  + " office:value-type=\"string\" office:string-value=\"172.5 ± 0.5 mm\"")
          .contains(
              "table:number-matrix-columns-spanned=\"4\" table:number-matrix-rows-spanned=\"2\""
                  + " table:formula=\"of:=TENTHMARK.LAB.BUDGET([.H1:.J1])\"");
    }

    @Test
    void losesNamesInCapitalsAndAllValues() throws Exception {
      assertThat(entry(savedWithout(Format.ODS), "content.xml"))
          .contains(
              "table:formula=\"of:=tenthmark.lab.reading([.A1];&quot;fine&quot;;2)\""
                  + " office:value-type=\"string\" office:string-value=\"\""
                  + " calcext:value-type=\"error\"><text:p>#NAME?<")
          .contains("table:formula=\"of:=SQRT(tenthmark.lab.reading([.A1])*10)\"")
          .contains("table:formula=\"of:=tenthmark.lab.budget([.H1:.J1])\"")
          .doesNotContain("TENTHMARK.LAB");
    }
  }

  @Nested
  class AnXlsx {

    @Test
    void holdsFullNamesAndValues() throws Exception {
      assertThat(entry(original.save("own", Format.XLSX), "xl/worksheets/sheet1.xml"))
          .contains(
              "t=\"n\"><f aca=\"false\">TENTHMARK.LAB.READING(A1,&quot;fine&quot;,2)</f><v>0.5</v>")
          .contains("t=\"e\"><f aca=\"false\">TENTHMARK.LAB.READING(0)</f><v>#VALUE!</v>")
          .contains(
              "t=\"str\"><f aca=\"false\">TENTHMARK.LAB.RESULT(172.46,B1,&quot;mm&quot;)</f>"
                  + "<v>172.5 ± 0.5 mm</v>")
          .contains("<f aca=\"false\" t=\"array\" ref=\"D1:G2\">TENTHMARK.LAB.BUDGET(H1:J1)</f>");
    }

    @Test
    void losesNamesInCapitalsButKeepsNumbers() throws Exception {
      assertThat(entry(savedWithout(Format.XLSX), "xl/worksheets/sheet1.xml"))
          .contains(
              "t=\"n\"><f aca=\"false\">tenthmark.lab.reading(A1,&quot;fine&quot;,2)</f><v>0.5</v>")
          .contains("t=\"e\"><f aca=\"false\">tenthmark.lab.reading(0)</f><v>#NAME?</v>")
          .contains("t=\"n\"><f aca=\"false\">SQRT(tenthmark.lab.reading(A1)*10)</f><v>1</v>")
          .doesNotContain("TENTHMARK.LAB");
    }
  }

  @ParameterizedTest
  @EnumSource
  void theOtherProgramCannotCalculateIt(Format format) throws Exception {
    try (Workbook there = plain.open(original.save("there", format)).recalculateHard()) {
      assertThat(there.shown("B1")).isEqualTo("#NAME?");
      assertThat(there.error("B1")).isEqualTo(UNKNOWN_NAME);
      assertThat(there.formula("B1")).isEqualTo("=tenthmark.lab.reading(A1;\"fine\";2)");
    }
  }

  @ParameterizedTest
  @EnumSource
  void theFileCalculatesAgainWhenItComesBack(Format format) throws Exception {
    try (Workbook back = office.open(savedWithout(format))) {
      for (String cell : new String[] {"B1", "B2", "B3", "B4", "D1", "F1", "G2"}) {
        assertThat(back.shown(cell)).as(cell).isEqualTo(original.shown(cell));
        assertThat(back.formula(cell)).as(cell).isEqualTo(original.formula(cell));
      }
      back.set("A1", 2).recalculateHard();
      assertThat(back.number("B1")).isEqualTo(1);
    }
  }

  private Path savedWithout(Format format) throws Exception {
    try (Workbook there = plain.open(original.save("original", format))) {
      return there.save("saved-without", format);
    }
  }

  private static String entry(Path archive, String name) throws Exception {
    try (ZipFile zip = new ZipFile(archive.toFile())) {
      return new String(
          zip.getInputStream(zip.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
