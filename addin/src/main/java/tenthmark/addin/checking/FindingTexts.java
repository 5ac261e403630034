package tenthmark.addin.checking;

import tenthmark.measurement.wording.Sentences;

/** Findings in words; the checker says in the same language what was found and expected. */
final class FindingTexts {

  private final Sentences texts;

  FindingTexts(Sentences texts) {
    this.texts = texts;
  }

  /** In one line, with the place. */
  String inOneLine(Finding finding) {
    return texts.say(
        "finding.line", finding.sheet(), finding.cell(), severity(finding), finding.found());
  }

  /** With what is expected and how to put it right. */
  String inFull(Finding finding) {
    return texts.say(
        "finding.full", severity(finding), finding.found(), finding.expected(), finding.fix());
  }

  private String severity(Finding finding) {
    return texts.say("finding." + finding.severity());
  }
}
