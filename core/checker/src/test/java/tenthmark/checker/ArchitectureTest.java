package tenthmark.checker;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import tenthmark.checker.rules.Rule;

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
              "tenthmark.checker.handout..",
              "tenthmark.checker.copy..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.poi..");

  /** A rule that asked another would find less where a course turns that one off. */
  @ArchTest
  static final ArchRule noRuleKnowsAnother =
      classes()
          .that()
          .implement(Rule.class)
          .should(
              new ArchCondition<JavaClass>("depend on no other rule") {
                @Override
                public void check(JavaClass rule, ConditionEvents events) {
                  rule.getDirectDependenciesFromSelf().stream()
                      .filter(dependency -> isOtherRule(dependency.getTargetClass(), rule))
                      .forEach(
                          dependency ->
                              events.add(
                                  SimpleConditionEvent.violated(
                                      rule, dependency.getDescription())));
                }
              });

  private static boolean isOtherRule(JavaClass target, JavaClass rule) {
    return target.isAssignableTo(Rule.class) && !target.isInterface() && !target.equals(rule);
  }
}
