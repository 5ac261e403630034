package tenthmark.checker;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(
    packages = "tenthmark.checker",
    importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule theCheckerNeedsNoOfficeProgram =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.sun.star..", "tenthmark.addin..");

  @ArchTest
  static final ArchRule onlyReadingEvaluatingAndCopyingKnowPoi =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "tenthmark.checker.workbook..",
              "tenthmark.checker.evaluation..",
              "tenthmark.checker.plain..",
              "tenthmark.checker.copy..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.poi..");
}
