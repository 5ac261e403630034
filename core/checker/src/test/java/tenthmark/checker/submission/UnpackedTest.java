package tenthmark.checker.submission;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Students are invented. */
class UnpackedTest {

  private static final String PHOTO = "a photograph";

  @TempDir Path folder;

  private Unpacked unpacked;

  @BeforeEach
  void begin() throws IOException {
    unpacked = Unpacked.in(ArchiveLimits.DEFAULT);
  }

  @AfterEach
  void end() throws IOException {
    unpacked.close();
  }

  private Path file(String name) {
    return folder.resolve(name);
  }

  private List<HandedIn> files(Path archive) {
    return unpacked.files(archive);
  }

  private List<String> names(Path archive) {
    return files(archive).stream()
        .map(found -> folder.relativize(found.path()).toString().replace('\\', '/'))
        .toList();
  }

  @Nested
  class WhatWasHandedIn {

    @Test
    void isFoundInNestedFoldersAndArchives() throws IOException {
      byte[] inner = new Zip().with("Ada/deep/lab.ods", "inner").bytes();
      Path zip =
          new Zip()
              .with("Doe_Jane_12345_Lab 3 (final)(2).xlsx", "outer")
              .with("a/b/c/lab.xls", "below")
              .with("Brook_Ada_10001.zip", inner)
              .write(file("section.zip"));

      List<HandedIn> found = files(zip);

      assertThat(found)
          .extracting(one -> folder.relativize(one.path()).toString().replace('\\', '/'))
          .containsExactly(
              "section.zip/Doe_Jane_12345_Lab 3 (final)(2).xlsx",
              "section.zip/a/b/c/lab.xls",
              "section.zip/Brook_Ada_10001.zip/Ada/deep/lab.ods");
      assertThat(found).extracting(HandedIn::kind).containsOnly(FileKind.WORKBOOK);
      assertThat(Files.readString(found.get(2).content())).isEqualTo("inner");
      assertThat(found).extracting(HandedIn::base).containsOnly(zip.getNameCount());
    }

    @Test
    void isToldFromStraysAndFromWhatProgramsLeave() {
      Path zip =
          new Zip()
              .with("Doe_Jane_12345_report.pdf", PHOTO)
              .with("__MACOSX/._lab.xlsx", "")
              .with("~$lab.xlsx", "")
              .with("Thumbs.db", "")
              .write(file("section.zip"));

      assertThat(files(zip))
          .containsExactly(
              HandedIn.stray(zip.resolve("Doe_Jane_12345_report.pdf"), zip.getNameCount()));
    }

    @ParameterizedTest
    @CsvSource({"xl/a.xml, [Content_Types].xml", "content.xml, mimetype"})
    void isAWorkbookUnderTheNameOfAnArchiveToo(String one, String other) {
      Path zip = new Zip().with(one, "").with(other, "").write(file("lab.zip"));

      assertThat(files(zip)).containsExactly(HandedIn.workbook(zip, zip.getNameCount() - 1));
    }

    /** Zip archives of Windows have names in an old code page (APPNOTE.TXT, appendix D). */
    @ParameterizedTest
    @ValueSource(strings = {"IBM437", "UTF-8"})
    void keepsItsNameInWhateverEncoding(String encoding) throws IOException {
      Path zip = file("section.zip");
      try (ZipArchiveOutputStream out = new ZipArchiveOutputStream(zip)) {
        out.setEncoding(encoding);
        out.setUseLanguageEncodingFlag(false);
        out.setCreateUnicodeExtraFields(ZipArchiveOutputStream.UnicodeExtraFieldPolicy.NEVER);
        out.putArchiveEntry(new ZipArchiveEntry("Müller_José_b1.ods"));
        out.closeArchiveEntry();
      }

      assertThat(names(zip)).containsExactly("section.zip/Müller_José_b1.ods");
    }
  }

  @Nested
  class HostileArchives {

    @ParameterizedTest
    @CsvSource({
      "../../evil.ods, evil.ods",
      "/etc/evil.ods, etc/evil.ods",
      "C:\\temp\\evil.ods, C_/temp/evil.ods",
      "a/./..//evil.ods, a/evil.ods",
      "a/CON?<>.ods, a/CON___.ods"
    })
    void leadNowhereElse(String name, String path) {
      assertThat(names(new Zip().with(name, "").write(file("s.zip"))))
          .containsExactly("s.zip/" + path);
    }

    @Test
    void areNotUnpackedBeyondTheLimits() throws IOException {
      byte[] zeros = new byte[3 << 20];
      Path zip =
          new Zip()
              .with("a.ods", zeros)
              .with("b.ods", "small")
              .with("c.ods", new byte[1 << 20])
              .with("d.ods", new byte[1 << 20])
              .write(file("s.zip"));

      try (Unpacked little = Unpacked.in(new ArchiveLimits(5L << 20, 2L << 20, 10, 3))) {
        assertThat(little.files(zip))
            .extracting(found -> found.problem().orElse("read"))
            .containsExactly("it is larger than 2 MiB", "read", "read", "read");
      }
      try (Unpacked little = Unpacked.in(new ArchiveLimits(1L << 20, 4L << 20, 10, 3))) {
        assertThat(little.files(zip))
            .extracting(found -> found.problem().orElse("read"))
            .startsWith("the archive unpacks to more data than is allowed");
      }
    }

    @Test
    void holdNoMoreFilesThanAllowed() throws IOException {
      Zip zip = new Zip();
      for (int i = 0; i < 12; i++) {
        zip.with(i + ".pdf", "");
      }
      try (Unpacked little = Unpacked.in(new ArchiveLimits(1 << 20, 1 << 20, 10, 3))) {
        assertThat(little.files(zip.write(file("s.zip"))))
            .extracting(found -> found.problem().orElse("read"))
            .containsExactly("there are more than 10 files in archives");
      }
    }

    @Test
    void mayNotNestForEver() {
      byte[] inner = new Zip().with("lab.ods", "").bytes();
      for (int layer = 0; layer < 5; layer++) {
        inner = new Zip().with("layer.zip", inner).bytes();
      }
      Path zip = new Zip().with("Ada.zip", inner).with("Ben.ods", "").write(file("s.zip"));

      assertThat(files(zip))
          .extracting(found -> found.problem().orElse("read"))
          .containsExactly("it lies in too many archives", "read");
    }

    @Test
    void losesOnlyWhatIsDamaged() throws IOException {
      byte[] bytes =
          new Zip().with("a.ods", "0123456789".repeat(99)).with("b.ods", "whole").bytes();
      int data = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("a.ods") + "a.ods".length();
      bytes[data + 2] ^= 0x55;
      Path zip = Files.write(file("s.zip"), bytes);

      assertThat(files(zip))
          .extracting(found -> found.problem().orElse("read"))
          .containsExactly("it is damaged in the archive", "read");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 3, 40, 90})
    void areNamedWhereTheyAreCutShort(int length) throws IOException {
      byte[] whole = new Zip().with("lab.ods", "a table").bytes();
      Path zip = Files.write(file("s.zip"), Arrays.copyOf(whole, length));

      assertThat(files(zip))
          .containsExactly(
              HandedIn.problem(zip, zip.getNameCount() - 1, "the archive is damaged or cut short"));
    }

    @Test
    void cannotHideAFileBehindAnother() throws IOException {
      Path zip = new Zip().with("a.ods", "one").with("b.ods", "two").write(file("s.zip"));
      String twice = Files.readString(zip, StandardCharsets.ISO_8859_1).replace("b.ods", "a.ods");
      Files.writeString(zip, twice, StandardCharsets.ISO_8859_1);

      assertThat(files(zip))
          .extracting(found -> found.path().getFileName() + ": " + found.problem().orElse("read"))
          .containsExactly(
              "a.ods: read",
              "a.ods (once more): the archive holds another file of this name, and only the"
                  + " first is checked");
    }

    @Test
    void lockedFilesAreNamed() throws IOException {
      byte[] bytes = new Zip().with("a.ods", "one").bytes();
      String text = new String(bytes, StandardCharsets.ISO_8859_1);
      bytes[6] |= 1;
      bytes[text.indexOf("PK\1\2") + 8] |= 1;
      Path zip = Files.write(file("s.zip"), bytes);

      assertThat(files(zip))
          .extracting(found -> found.problem().orElse("read"))
          .containsExactly("it is locked by a password in the archive");
    }

    @Test
    void haveNoNameOrOneThatIsTooLong() {
      Path zip =
          new Zip().with("../..", "").with("a".repeat(300) + ".ods", "").write(file("s.zip"));

      assertThat(files(zip))
          .extracting(found -> found.problem().orElse("read"))
          .containsOnly("its name in the archive cannot be used")
          .hasSize(2);
    }
  }

  @Test
  void nothingIsLeftBehind() throws IOException {
    Path zip = new Zip().with("lab.ods", "a table").write(file("s.zip"));
    Path content = files(zip).get(0).content();
    assertThat(content).exists();

    unpacked.close();

    assertThat(content.getParent()).doesNotExist();
  }

  @Test
  void theOldCodePageIsThere() {
    assertThat(Charset.isSupported("IBM437")).isTrue();
  }
}
