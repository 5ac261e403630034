package tenthmark.checker.fuzz;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** What the fuzzers start from: workbooks that Calc saved, their parts, and formulas. */
final class Seeds {

  static final Path SAVED = Path.of("src/test/resources/saved-by-calc");

  private static final String[] FORMULAS = {
    "LAB_CARRY(A2,B1:B2,C1:C2)\n2*PI()*SQRT(B1/B2)",
    "AVERAGE(B1:B3)\nSTDEV(B1:B3)/SQRT(COUNT(B1:B3))\nSUMPRODUCT(B1:B3,C1:C3)",
    "LAB_READING(1,\"wide\",2)\nLAB_TOTAL(C1:C3)\nLAB_RESULT(B1,C1,\"mm\")",
    "IF(B1>1,\"a\"&REPT(\"b\",3),-B2^2%)\n{1,2;3,4}\nSUBSTITUTE(A1,\"a\",\"b\")",
    "LAB_CARRYTEXT(\"a*b^2\",\"a;b\",B1:B2,C1:C2)\nSheet1!$B$1:C$2\n'x y'!A1",
    "LAB_LINE(B1:B3,C1:C3)\nLAB_SIMULATE(A3,B1,C1,,10)\nB1*2",
    "INDEX(B:C,2,1)+VLOOKUP(173.5,B1:C3,2)\nOFFSET(B1,1,0)\nINDIRECT(\"B1\")",
    "TEXT(B1,\"0.00\")&LEFT(\"spoke\",2)\nDATE(2026,11,25)\nROUND(B1,-1)",
  };

  private Seeds() {}

  /** Writes what the fuzzers start from into a folder each. */
  public static void main(String... arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    Path files = Files.createDirectories(folder.resolve("WholeFileFuzzer"));
    try (var saved = Files.list(SAVED)) {
      for (Path file : saved.toList()) {
        Files.write(files.resolve(file.getFileName()), Files.readAllBytes(file));
      }
    }
    Path parts = Files.createDirectories(folder.resolve("PartFuzzer"));
    for (Part part : Part.values()) {
      ByteArrayOutputStream seed = new ByteArrayOutputStream();
      seed.write(part.ordinal());
      seed.write(part.original());
      Files.write(parts.resolve(part.name()), seed.toByteArray());
    }
    Path formulas = Files.createDirectories(folder.resolve("FormulaFuzzer"));
    int number = 0;
    for (String seed : FORMULAS) {
      Files.write(formulas.resolve("seed" + number++), seed.getBytes(StandardCharsets.UTF_8));
    }
  }
}
