package tenthmark.addin;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "tenthmark", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule THE_EXTENSION_KNOWS_NO_CHECKER =
      noClasses()
          .that()
          .resideInAnyPackage("tenthmark", "tenthmark.addin..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("tenthmark.checker..", "org.apache.poi..");

  @ArchTest
  static final ArchRule NOTHING_IS_GENERATED_WHILE_IT_RUNS =
      noClasses()
          .that()
          .resideInAnyPackage("tenthmark", "tenthmark.addin")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("tenthmark.addin.generator..");
}
