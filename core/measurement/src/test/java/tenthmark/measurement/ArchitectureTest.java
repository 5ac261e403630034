package tenthmark.measurement;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Measurement stands alone: it knows no office program, no file format and no caller. */
@AnalyzeClasses(packages = "tenthmark.measurement", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule KNOWS_NO_OFFICE_PROGRAM_AND_NO_FILE_FORMAT =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "com.sun.star..", "ooo.connector..", "org.libreoffice..", "org.apache.poi..");

  @ArchTest
  static final ArchRule KNOWS_NO_CALLER =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("tenthmark.addin..", "tenthmark.checker..");

  @ArchTest
  static final ArchRule ONLY_WORKSHEET_FUNCTIONS_AND_THEIR_EXPLANATION_KNOW_THE_CATALOGUE =
      noClasses()
          .that()
          .resideOutsideOfPackages("..catalogue..", "..functions..", "..explanation..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("..catalogue..", "..functions..");

  @ArchTest
  static final ArchRule THE_CATALOGUE_KNOWS_NO_SINGLE_FUNCTION =
      noClasses()
          .that()
          .resideInAPackage("..catalogue..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("..functions..");

  @ArchTest
  static final ArchRule HAS_NO_CYCLES =
      slices().matching("tenthmark.measurement.(*)..").should().beFreeOfCycles();
}
