package tenthmark.checker.page;

import static j2html.TagCreator.each;
import static j2html.TagCreator.tag;

import j2html.tags.ContainerTag;
import j2html.tags.DomContent;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import tenthmark.checker.classroom.Distribution;
import tenthmark.checker.classroom.Distribution.Value;
import tenthmark.checker.course.AcceptedValue;
import tenthmark.measurement.wording.Message;

/**
 * The values of a distribution with their error bars, one above the other by size, beside the
 * accepted value. A value far from all others would squeeze them together: it is drawn as a
 * triangle at the edge.
 */
final class Chart {

  private static final double WIDTH = 400;
  private static final double MARGIN = 14;
  private static final double TOP = 10;
  private static final double AXIS = 34;
  private static final double TALLEST = 420;
  private static final double STEP = 14;
  private static final int TICKS = 4;

  /** Beyond it a value is drawn at the edge, so that no sum of ends overflows. */
  private static final double LARGEST = 1e150;

  /** So many times the middle half of the values is far from all others. */
  private static final double FAR = 3;

  private final String id;
  private final Distribution distribution;
  private final Wording wording;
  private final List<Value> values;
  private final double step;
  private final double low;
  private final double high;

  private Chart(String id, Distribution distribution, Wording wording) {
    this.id = id;
    this.distribution = distribution;
    this.wording = wording;
    this.values =
        distribution.values().stream().sorted(Comparator.comparing(Value::value)).toList();
    this.step = Math.min(STEP, TALLEST / values.size());
    List<Double> ends = ends();
    double least = ends.stream().min(Comparator.naturalOrder()).orElseThrow();
    double most = ends.stream().max(Comparator.naturalOrder()).orElseThrow();
    double room = most > least ? (most - least) / 20 : Math.max(Math.abs(most) / 100, 1e-12);
    this.low = least - room;
    this.high = most + room;
  }

  /**
   * The chart as inline SVG.
   *
   * @param id unique on the page
   */
  static DomContent of(String id, Distribution distribution, Wording wording) {
    return new Chart(id, distribution, wording).svg();
  }

  /** How many values are drawn as triangles at the edge. */
  static long outside(Distribution distribution, Wording wording) {
    Chart chart = new Chart("", distribution, wording);
    return chart.values.stream().filter(value -> !chart.isInside(value.value())).count();
  }

  private List<Double> ends() {
    List<Value> drawable =
        values.stream().filter(value -> Math.abs(value.value()) < LARGEST).toList();
    List<Double> ends = new ArrayList<>();
    if (drawable.isEmpty()) {
      return List.of(0.0);
    }
    double first = drawable.get(drawable.size() / 4).value();
    double third = drawable.get(drawable.size() * 3 / 4).value();
    double middle = drawable.get(drawable.size() / 2).uncertainty().orElse(0.0);
    double near = FAR * Math.min(LARGEST, Math.max(third - first, middle));
    for (Value value : drawable) {
      if (near == 0 || (value.value() >= first - near && value.value() <= third + near)) {
        double bar = Math.min(value.uncertainty().orElse(0.0), near);
        ends.add(value.value() - bar);
        ends.add(value.value() + bar);
      }
    }
    distribution
        .accepted()
        .ifPresent(
            accepted -> {
              ends.add(accepted.value() - accepted.uncertainty());
              ends.add(accepted.value() + accepted.uncertainty());
            });
    return ends;
  }

  private boolean isInside(double value) {
    return value >= low && value <= high;
  }

  private DomContent svg() {
    double height = TOP + values.size() * step + AXIS;
    return tag("svg")
        .attr("viewBox", "0 0 " + text(WIDTH) + " " + text(height))
        .attr("role", "img")
        .attr("aria-labelledby", id + "-title " + id + "-text")
        .with(
            tag("title").withText(distribution.quantity()).attr("id", id + "-title"),
            tag("desc").withText(description()).attr("id", id + "-text"),
            each(distribution.accepted().stream().toList(), accepted -> accepted(accepted, height)),
            each(
                IntStream.range(0, values.size()).boxed().toList(),
                index -> value(values.get(index), TOP + (index + 0.5) * step)),
            axis(height - AXIS));
  }

  private String description() {
    Message range =
        Message.counted(
            "class.values",
            values.size(),
            Wording.figure(values.get(0).value()),
            Wording.figure(values.get(values.size() - 1).value()),
            distribution.unit());
    return wording.say(
        "class.chart",
        Wording.accepted(distribution)
            .map(value -> Message.of("list.further", range, Message.of("class.accepted", value)))
            .orElse(range));
  }

  private DomContent accepted(AcceptedValue accepted, double height) {
    double left = x(accepted.value() - accepted.uncertainty());
    double right = x(accepted.value() + accepted.uncertainty());
    double middle = x(accepted.value());
    double bottom = height - AXIS;
    return tag("g")
        .with(
            tag("rect")
                .attr("class", "accepted-range")
                .attr("x", text(left))
                .attr("y", text(0))
                .attr("width", text(right - left))
                .attr("height", text(bottom)),
            line("accepted", middle, 0, middle, bottom));
  }

  private DomContent value(Value value, double y) {
    if (!isInside(value.value())) {
      boolean left = value.value() < low;
      double tip = left ? 2 : WIDTH - 2;
      double base = left ? 10 : WIDTH - 10;
      return tag("polygon")
          .attr("class", "value")
          .attr(
              "points",
              text(tip)
                  + ","
                  + text(y)
                  + " "
                  + text(base)
                  + ","
                  + text(y - 4)
                  + " "
                  + text(base)
                  + ","
                  + text(y + 4));
    }
    Optional<Double> size = value.uncertainty().filter(bar -> bar > 0);
    return tag("g")
        .with(
            each(
                size.stream().toList(),
                bar -> line("bar", x(value.value() - bar), y, x(value.value() + bar), y)),
            tag("circle")
                .attr("class", "value")
                .attr("cx", text(x(value.value())))
                .attr("cy", text(y))
                .attr("r", text(Math.min(3.5, step / 2))));
  }

  private DomContent axis(double y) {
    return tag("g")
        .with(
            line("axis", MARGIN, y, WIDTH - MARGIN, y),
            each(
                ticks(),
                tick ->
                    tag("g")
                        .with(
                            line("axis", x(tick.doubleValue()), y, x(tick.doubleValue()), y + 5),
                            label(x(tick.doubleValue()), y + 19, wording.number(tick)))));
  }

  private static ContainerTag<?> label(double x, double y, String text) {
    return tag("text")
        .withText(text)
        .attr("x", text(x))
        .attr("y", text(y))
        .attr("text-anchor", "middle");
  }

  /** Round numbers within the range: steps of 1, 2 or 5 times a power of ten. */
  private List<BigDecimal> ticks() {
    double rough = (high - low) / TICKS;
    BigDecimal power = BigDecimal.ONE.scaleByPowerOfTen((int) Math.floor(Math.log10(rough)));
    BigDecimal unit =
        List.of(1, 2, 5, 10).stream()
            .map(factor -> power.multiply(BigDecimal.valueOf(factor)))
            .filter(size -> size.doubleValue() >= rough)
            .findFirst()
            .orElse(power.multiply(BigDecimal.TEN));
    List<BigDecimal> ticks = new ArrayList<>();
    BigDecimal tick = BigDecimal.valueOf(low).divide(unit, 0, RoundingMode.CEILING).multiply(unit);
    while (tick.doubleValue() <= high && ticks.size() <= TICKS) {
      ticks.add(tick);
      tick = tick.add(unit);
    }
    return ticks;
  }

  private static DomContent line(String look, double x1, double y1, double x2, double y2) {
    return tag("line")
        .attr("class", look)
        .attr("x1", text(x1))
        .attr("y1", text(y1))
        .attr("x2", text(x2))
        .attr("y2", text(y2));
  }

  /** Where a value lies across the chart, at most at its edges. */
  private double x(double value) {
    double part = (value - low) / (high - low);
    return MARGIN + Math.max(0, Math.min(1, part)) * (WIDTH - 2 * MARGIN);
  }

  private static String text(double length) {
    return String.format(Locale.ROOT, "%.1f", length);
  }
}
