package tenthmark.checker.page;

import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;

import j2html.tags.DomContent;
import java.util.List;
import java.util.Optional;

/** Tables that scroll by themselves where the window is narrow. */
final class Tables {

  /** So many columns fit the width of a phone. */
  private static final int NARROW = 3;

  private Tables() {}

  /** A table that can be reached and scrolled with the keyboard. */
  static DomContent scrolling(String caption, List<String> headings, List<DomContent> rows) {
    return div(table(
                caption(caption),
                thead(tr(each(headings, heading -> th(heading).attr("scope", "col")))),
                tbody(each(rows, row -> row)))
            .withCondClass(headings.size() > NARROW, "wide"))
        .withClass("scroll")
        .attr("role", "region")
        .attr("aria-label", caption)
        .attr("tabindex", "0");
  }

  /** A number, or an empty cell. */
  static DomContent number(Optional<Double> number, Wording wording) {
    return td(number.map(wording::number).orElse("")).withClass("number");
  }

  /** How many of something. */
  static DomContent count(long count) {
    return td(Long.toString(count)).withClass("number");
  }
}
