package tenthmark.addin.checking;

import com.sun.star.table.XCell;
import com.sun.star.uno.Exception;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import tenthmark.addin.document.SheetCells;
import tenthmark.addin.menu.RefusalException;
import tenthmark.addin.menu.Workplace;
import tenthmark.measurement.wording.Sentences;

/** The findings in a spreadsheet in words, and the way to their cells. */
public final class FindingPlaces {

  private final Workplace workplace;
  private final Sentences texts;
  private final FindingTexts words;

  /** Those of the spreadsheet at a workplace. */
  public FindingPlaces(Workplace workplace) {
    this.workplace = workplace;
    this.texts = workplace.texts();
    this.words = new FindingTexts(texts);
  }

  /** How many there are of each severity, how much was read, and by which profile. */
  public String summary(CheckedFile file, Optional<Path> profile) {
    String counts =
        Stream.of("error", "warning", "note")
            .map(severity -> texts.say("finding." + severity) + ": " + count(file, severity))
            .collect(Collectors.joining(", "));
    String read =
        texts.say(
            "check.read",
            Integer.toString(file.reading().records()),
            Integer.toString(file.reading().numbersNotRead()));
    String course =
        profile
            .map(path -> texts.say("check.profile", path.getFileName().toString()))
            .orElseGet(() -> texts.say("check.no-profile"));
    return String.join(" ", counts + ".", read, course);
  }

  private static long count(CheckedFile file, String severity) {
    return file.findings().stream().filter(finding -> finding.severity().equals(severity)).count();
  }

  /** Each in one line, with its place. */
  public List<String> inLines(CheckedFile file) {
    return file.findings().stream().map(words::inOneLine).toList();
  }

  /** Each with what is expected and how to put it right. */
  public List<String> inFull(CheckedFile file) {
    return file.findings().stream().map(words::inFull).toList();
  }

  /** Selects the cell of a finding; it is returned. */
  public XCell goTo(Finding finding) throws Exception {
    SheetCells sheet =
        workplace
            .spreadsheet()
            .sheet(finding.sheet())
            .orElseThrow(() -> new RefusalException("check.no-sheet", finding.sheet()));
    XCell cell = sheet.cell(finding.cell());
    workplace.spreadsheet().select(cell);
    return cell;
  }
}
