package tenthmark.checker.output;

import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import tenthmark.checker.report.FileReport;
import tenthmark.checker.rules.Finding;
import tenthmark.checker.rules.RuleCatalogue;
import tenthmark.checker.rules.Severity;
import tenthmark.measurement.wording.Message;
import tenthmark.measurement.wording.Sentences;

/** JUnit XML: each workbook is a test suite, in which each rule is a test case. */
final class TestReport {

  /** What XML 1.0 (clause 2.2) cannot hold. */
  private static final Pattern UNWRITABLE =
      Pattern.compile("[^\\t\\n\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

  private final XMLStreamWriter xml;
  private final List<String> rules;
  private final Sentences texts;
  private final Function<Path, String> name;

  private TestReport(
      XMLStreamWriter xml, RuleCatalogue rules, Sentences texts, Function<Path, String> name) {
    this.xml = xml;
    this.rules = rules.rules().stream().map(rule -> rule.declaration().id()).toList();
    this.texts = texts;
    this.name = name;
  }

  /**
   * The whole document.
   *
   * @param texts what is said of findings, in one language
   */
  static String write(
      List<FileReport> reports, RuleCatalogue rules, Sentences texts, Function<Path, String> name) {
    StringWriter text = new StringWriter();
    try {
      XMLStreamWriter xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
      xml.writeStartDocument("UTF-8", "1.0");
      xml.writeStartElement("testsuites");
      TestReport report = new TestReport(xml, rules, texts, name);
      for (FileReport workbook : reports) {
        report.suite(workbook);
      }
      xml.writeEndDocument();
      xml.close();
    } catch (XMLStreamException impossible) {
      throw new IllegalStateException(impossible);
    }
    return text.append('\n').toString();
  }

  private void suite(FileReport report) throws XMLStreamException {
    boolean checked = report.problem().isEmpty();
    long failures = rules.stream().filter(rule -> !failures(report, rule).isEmpty()).count();
    xml.writeStartElement("testsuite");
    attribute("name", name.apply(report.file()));
    attribute("tests", String.valueOf(checked ? rules.size() : 1));
    attribute("failures", String.valueOf(failures));
    attribute("errors", checked ? "0" : "1");
    attribute("skipped", "0");
    attribute("time", "0");
    if (checked) {
      for (String rule : rules) {
        rule(report, rule);
      }
    } else {
      begin(report, "can be checked");
      xml.writeStartElement("error");
      attribute("message", report.problem().orElseThrow());
      xml.writeEndElement();
      xml.writeEndElement();
    }
    xml.writeEndElement();
  }

  private void rule(FileReport report, String rule) throws XMLStreamException {
    List<Finding> failures = failures(report, rule);
    List<Finding> notes =
        findings(report, rule).stream().filter(finding -> !isFailure(finding)).toList();
    begin(report, rule);
    if (!failures.isEmpty()) {
      xml.writeStartElement("failure");
      attribute("message", line(failures.get(0)));
      xml.writeCharacters(lines(failures));
      xml.writeEndElement();
    }
    if (!notes.isEmpty()) {
      xml.writeStartElement("system-out");
      xml.writeCharacters(lines(notes));
      xml.writeEndElement();
    }
    xml.writeEndElement();
  }

  private void begin(FileReport report, String test) throws XMLStreamException {
    xml.writeStartElement("testcase");
    attribute("classname", name.apply(report.file()));
    attribute("name", test);
    attribute("time", "0");
  }

  private static List<Finding> findings(FileReport report, String rule) {
    return report.findings().stream().filter(found -> found.rule().id().equals(rule)).toList();
  }

  private static List<Finding> failures(FileReport report, String rule) {
    return findings(report, rule).stream().filter(TestReport::isFailure).toList();
  }

  /** Notes are no failures, nor is what follows from another finding. */
  private static boolean isFailure(Finding finding) {
    return finding.rule().severity() != Severity.NOTE && !finding.follows();
  }

  private String lines(List<Finding> findings) {
    return writable(findings.stream().map(this::line).collect(Collectors.joining("\n")));
  }

  private String line(Finding finding) {
    return texts.say(
        Message.of("test.finding", finding.cell(), finding.said(), finding.expected()));
  }

  private void attribute(String attribute, String value) throws XMLStreamException {
    xml.writeAttribute(attribute, writable(value));
  }

  private static String writable(String text) {
    return UNWRITABLE.matcher(text).replaceAll(" ");
  }
}
