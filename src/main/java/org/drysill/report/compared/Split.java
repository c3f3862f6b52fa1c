package org.drysill.report.compared;

import java.util.ArrayList;
import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.change.air.HumidityChange;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.SourceBars;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** The change of relative humidity by its causes, in whole points that add up. */
public final class Split {
  private final HumidityChange humidity;
  private final Numbers numbers;
  private final List<Part> parts = new ArrayList<>();

  private record Part(String name, Figure figure) {}

  /** The split of a change. */
  public Split(HumidityChange humidity, Numbers numbers) {
    this.humidity = humidity;
    this.numbers = numbers;
    parts.add(new Part("Temperature of the rooms", humidity.fromTemperature()));
    if (humidity.fromIndoors().isPresent()) {
      parts.add(new Part("Vapour of outdoor air", humidity.fromOutdoors().orElseThrow()));
      parts.add(new Part("Moisture and air indoors", humidity.fromIndoors().get()));
    } else {
      parts.add(new Part("Vapour in the rooms", humidity.fromMoisture()));
    }
  }

  /** Such as {@code −5 by the temperature of the rooms, 0 by the vapour of outdoor air}. */
  public String said() {
    List<Long> whole = whole();
    List<String> all = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      all.add(signed(whole.get(i)) + " by " + within(parts.get(i).name()));
    }
    return Words.list(all);
  }

  /** A bar for each cause, and the whole. */
  public ChartSpec chart() {
    List<Long> whole = whole();
    List<SourceBars.Row> rows = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      rows.add(row(parts.get(i).name(), parts.get(i).figure(), whole.get(i), false));
    }
    long sum = whole.stream().mapToLong(Long::longValue).sum();
    rows.add(row("Relative humidity, all in all", humidity.points(), sum, true));
    String title = "What moved the relative humidity of the home";
    return new SourceBars(
        new ChartText(
            title,
            "percentage points, after less before",
            "Bars: likely; thin lines: errors of the instruments. Parts are the mean over all"
                + " orders in which they can change, and add up to the whole.",
            title + ": " + said() + "; all in all " + signed(sum) + " percentage points."),
        axis(),
        rows);
  }

  private SourceBars.Row row(String name, Figure figure, long whole, boolean sum) {
    return new SourceBars.Row(
        name, numbers.onAxis(figure.value(), Unit.PERCENTAGE_POINT), signed(whole), sum);
  }

  private Axis axis() {
    List<Figure> all = new ArrayList<>(parts.stream().map(Part::figure).toList());
    all.add(humidity.points());
    double low = all.stream().mapToDouble(f -> onAxis(f.value().low())).min().orElse(0);
    double high = all.stream().mapToDouble(f -> onAxis(f.value().high())).max().orElse(0);
    return Axis.around(Math.min(0, low), Math.max(0, high), 5);
  }

  private double onAxis(double ratio) {
    return numbers.onAxis(ratio, Unit.PERCENTAGE_POINT);
  }

  private List<Long> whole() {
    return WholeParts.of(parts.stream().map(p -> onAxis(p.figure().likely())).toList());
  }

  private static String within(String name) {
    String words = Words.within(name);
    return words.startsWith("moisture") ? words : "the " + words;
  }

  private static String signed(long points) {
    return points > 0 ? "+" + points : points < 0 ? "−" + -points : "0";
  }
}
