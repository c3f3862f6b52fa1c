package org.drysill.report.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.QuotedAirChange;
import org.drysill.assess.ventilation.RuleComparison;
import org.drysill.physics.Airflow;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.RuleBars;
import org.drysill.report.chart.Tick;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** Every rule set and every figure that people are told on one axis, with what the home gets. */
final class RuleDots {
  private final Desk desk;
  private final Numbers numbers;
  private final List<RuleComparison> rules;

  RuleDots(Desk desk) {
    this.desk = desk;
    this.numbers = desk.numbers();
    this.rules = desk.subject().ventilation().comparisons();
  }

  Optional<ChartSpec> chart() {
    Figure provided = desk.subject().ventilation().provided().wholeHome();
    List<RuleBars.Row> rows = Stream.concat(sets().stream(), quoted().stream()).toList();
    double most =
        DoubleStream.concat(
                DoubleStream.of(numbers.onAxis(provided.value().high(), Unit.AIRFLOW)),
                rows.stream().flatMap(row -> row.values().stream()).mapToDouble(v -> v))
            .max()
            .orElse(0);
    if (most <= 0) {
      return Optional.empty();
    }
    Axis axis = Axis.fromZero(most, 6);
    String band = "this home gets " + numbers.full(provided.value(), Unit.AIRFLOW, Rounding.DOWN);
    return Optional.of(
        new RuleBars(
            new ChartText(
                title(),
                numbers.unit(Unit.AIRFLOW) + " below, " + numbers.unit(Unit.AIR_CHANGE) + " above",
                "Filled dots: what each rule set asks, one for each variant. Open dots: figures that"
                    + " people are told. Band: what the home gets, the likely value as a line",
                title()
                    + ". "
                    + Words.list(rows, row -> row.label() + " " + row.valueText())
                    + "; "
                    + band
                    + "."),
            axis,
            Optional.of(second(axis)),
            rows,
            Optional.of(new RuleBars.Band(numbers.onAxis(provided.value(), Unit.AIRFLOW), band))));
  }

  private String title() {
    List<Double> flows =
        rules.stream().flatMap(r -> r.required().stream()).map(Figure::likely).sorted().toList();
    if (flows.size() < 2) {
      return "What the rule set asks of this home";
    }
    return "For this home published rules ask between "
        + numbers.plain(flows.get(0), Unit.AIRFLOW, Rounding.UP)
        + " and "
        + numbers.one(flows.get(flows.size() - 1), Unit.AIRFLOW, Rounding.UP);
  }

  /** Air changes of this home, at the places of their flows. */
  private RuleBars.Second second(Axis flows) {
    Home home = desk.subject().home();
    double perHour =
        numbers.onAxis(Airflow.ofAirChange(1, home.volume().likely()).m3PerSecond(), Unit.AIRFLOW);
    List<Tick> ticks =
        Axis.fromZero(flows.max() / perHour, 6).ticks().stream()
            .map(tick -> new Tick(tick.at() * perHour, tick.label()))
            .filter(tick -> tick.at() <= flows.max())
            .toList();
    return new RuleBars.Second(numbers.unit(Unit.AIRFLOW), numbers.unit(Unit.AIR_CHANGE), ticks);
  }

  /** One row for each rule set, the governing one first, the others as their figures rise. */
  private List<RuleBars.Row> sets() {
    Map<String, List<RuleComparison>> sets =
        rules.stream()
            .collect(
                Collectors.groupingBy(RuleNames::setId, LinkedHashMap::new, Collectors.toList()));
    return sets.values().stream()
        .map(this::row)
        .sorted(
            Comparator.comparing((RuleBars.Row row) -> !row.governing())
                .thenComparingDouble(row -> row.values().isEmpty() ? 0 : row.values().get(0)))
        .toList();
  }

  private RuleBars.Row row(List<RuleComparison> variants) {
    RuleComparison first = variants.get(0);
    List<Double> flows =
        variants.stream().flatMap(v -> v.required().stream()).map(Figure::likely).toList();
    return new RuleBars.Row(
        Words.shortened(RuleNames.set(first, rules), 60),
        flows.stream().map(q -> numbers.onAxis(q, Unit.AIRFLOW)).toList(),
        between(flows),
        first.governing(),
        false);
  }

  private String between(List<Double> flows) {
    if (flows.isEmpty()) {
      return "not told";
    }
    String low = text(flows.stream().mapToDouble(q -> q).min().orElseThrow());
    String high = text(flows.stream().mapToDouble(q -> q).max().orElseThrow());
    return low.equals(high) ? low : low + "–" + high;
  }

  private String text(double flow) {
    return numbers.plain(flow, Unit.AIRFLOW, Rounding.UP);
  }

  private List<RuleBars.Row> quoted() {
    List<RuleBars.Row> rows = new ArrayList<>();
    for (QuotedAirChange quoted : desk.subject().ventilation().quoted()) {
      quoted.flow().ifPresent(flow -> rows.add(row(quoted, flow)));
    }
    return rows;
  }

  private RuleBars.Row row(QuotedAirChange quoted, Figure flow) {
    double volume = desk.subject().home().volume().likely();
    List<Double> flows =
        DoubleStream.of(quoted.airChange().low(), quoted.airChange().high())
            .distinct()
            .mapToObj(n -> Airflow.ofAirChange(n, volume).m3PerSecond())
            .toList();
    List<Double> places = flows.stream().map(q -> numbers.onAxis(q, flow.unit())).toList();
    return new RuleBars.Row(Told.words(numbers, quoted), places, between(flows), false, true);
  }
}
