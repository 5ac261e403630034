package tenthmark.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tenthmark.checker.report.FileChecker;
import tenthmark.checker.workbook.Limits;
import tenthmark.samples.classset.ClassSet;
import tenthmark.samples.classset.Submission;
import tenthmark.samples.plan.Copy;

class ClassSetTest {

  private static final Path CLASS_SET = Saved.WORKBOOKS.resolve("class-set");
  private static final FileChecker CHECKER =
      FileChecker.load(LabsTest.profile(ClassSet.profile()), Limits.DEFAULT);

  static List<Submission> submissions() {
    return ClassSet.all();
  }

  private static Path file(Submission submission) {
    return CLASS_SET.resolve(submission.fileName() + "." + submission.format());
  }

  @ParameterizedTest
  @MethodSource("submissions")
  void theCheckerFindsEveryPlantedMistakeAndNothingElse(Submission submission) {
    assertThat(Saved.findings(CHECKER, file(submission)))
        .containsExactlyInAnyOrderElementsOf(ClassSet.expected(submission));
  }

  @ParameterizedTest
  @MethodSource("submissions")
  void filesHoldWhatTheCodeWrites(Submission submission, @TempDir Path folder) throws Exception {
    assertThat(Saved.inputs(file(submission)))
        .isEqualTo(Saved.inputs(submission.plan().written(Copy.COMPLETED), folder));
  }

  @Test
  void theFolderHoldsThirtySubmissionsWithTheirListAndProfile() throws Exception {
    assertThat(submissions()).hasSize(30);
    assertThat(CLASS_SET.resolve("class-set.md")).hasContent(ClassSet.list());
    assertThat(CLASS_SET.resolve("class-set.yaml")).hasContent(ClassSet.profile());
    assertThat(CLASS_SET.resolveSibling("class-set-roster.csv")).hasContent(ClassSet.roster());
    assertThat(CLASS_SET.resolveSibling("class-set-remarks.csv")).hasContent(ClassSet.remarks());
    try (Stream<Path> files = Files.list(CLASS_SET)) {
      assertThat(files).hasSize(32);
    }
  }

  @Test
  void noTwoStudentsReadTheSame() throws Exception {
    Set<Object> seen = new HashSet<>();
    for (Submission submission : submissions()) {
      assertThat(seen.add(submission.readings())).as(submission.student()).isTrue();
    }
  }
}
