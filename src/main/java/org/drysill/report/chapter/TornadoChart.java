package org.drysill.report.chapter;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Unit;
import org.drysill.options.Sureness;
import org.drysill.options.Sureness.Input;
import org.drysill.options.Sureness.Result;
import org.drysill.options.Sureness.ResultKind;
import org.drysill.options.Sureness.Share;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.Tornado;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** What makes a result of the best package unsure, the widest first. */
final class TornadoChart {
  private static final int ROWS = 8;
  private static final int LABEL = 70;

  /** Standard errors above which a share is no work of chance. */
  private static final double CERTAIN = 2;

  private final Numbers numbers;
  private final Sureness sure;
  private final Result result;

  private TornadoChart(Numbers numbers, Sureness sure, Result result) {
    this.numbers = numbers;
    this.sure = sure;
    this.result = result;
  }

  /** Of the result whose reach is most in doubt; empty where every result is beyond doubt. */
  static Optional<ChartSpec> of(Desk desk, Sureness sure) {
    return sure.results().stream()
        .filter(r -> r.target().isPresent() && off(r) < 1)
        .min(Comparator.comparingDouble(TornadoChart::off))
        .map(r -> new TornadoChart(desk.numbers(), sure, r).chart());
  }

  /** How far the target is from the middle, in parts of the way to the end on its side. */
  private static double off(Result result) {
    double by = result.target().orElseThrow() - result.spread().likely();
    double way =
        by < 0
            ? result.spread().likely() - result.spread().low()
            : result.spread().high() - result.spread().likely();
    return way > 0 ? Math.abs(by) / way : Double.MAX_VALUE;
  }

  /** An input and what it does to the result. */
  private record Pull(Input input, Share share) {}

  private ChartSpec chart() {
    List<Pull> all =
        sure.inputs().stream()
            .flatMap(i -> i.share(result.kind()).map(s -> new Pull(i, s)).stream())
            .sorted(Comparator.comparingDouble((Pull p) -> p.share().share()).reversed())
            .limit(ROWS)
            .toList();
    List<Pull> pulls =
        all.stream().filter(p -> p.equals(all.get(0)) || isBeyondChance(p.share())).toList();
    List<Tornado.Row> rows = pulls.stream().map(this::row).toList();
    String title =
        what()
            + " is in doubt, by nothing more than by "
            + Words.shortened(pulls.get(0).input().name(), LABEL);
    return new Tornado(
        new ChartText(
            title,
            unit(),
            sure.samples()
                + " samples; inputs beyond chance; each bar: the result where the input is in its lowest and in its"
                + " highest tenth",
            title + ". " + alt(pulls)),
        axis(pulls),
        onAxis(result.spread().likely()),
        result.target().map(this::onAxis),
        target(),
        rows);
  }

  private static boolean isBeyondChance(Share share) {
    return share.share() > CERTAIN * share.error();
  }

  private String what() {
    return switch (result.kind()) {
      case AIR -> "Whether package A gives enough air";
      case RESERVE -> "Whether package A keeps walls and corners free of mould";
      case COST, LEAD -> "Which of the best two packages costs less";
    };
  }

  private String target() {
    return switch (result.kind()) {
      case AIR -> "asked";
      case RESERVE -> "no risk from here on";
      case COST, LEAD -> "alike";
    };
  }

  private String unit() {
    return switch (result.kind()) {
      case AIR -> "outdoor air of the home with package A, " + numbers.unit(Unit.AIRFLOW);
      case RESERVE ->
          "moisture that the worst wall or corner bears, over the moisture that there is";
      case COST, LEAD ->
          "yearly cost of package B less that of package A, " + numbers.unit(Unit.MONEY_PER_YEAR);
    };
  }

  private double onAxis(double value) {
    return result.kind() == ResultKind.RESERVE ? value : numbers.onAxis(value, result.unit());
  }

  private Tornado.Row row(Pull pull) {
    return new Tornado.Row(
        Words.capital(Words.shortened(pull.input().name(), LABEL)),
        onAxis(pull.share().low()),
        onAxis(pull.share().high()),
        percent(pull.share().share()));
  }

  private static String percent(double share) {
    return Math.round(100 * share) + Numbers.JOIN + "%";
  }

  private Axis axis(List<Pull> pulls) {
    double[] all =
        Stream.concat(
                pulls.stream().flatMap(p -> Stream.of(p.share().low(), p.share().high())),
                Stream.concat(result.target().stream(), Stream.of(result.spread().likely())))
            .mapToDouble(this::onAxis)
            .sorted()
            .toArray();
    return Axis.around(all[0], all[all.length - 1], 5);
  }

  private String alt(List<Pull> pulls) {
    return Words.list(
            pulls,
            p ->
                p.input().name()
                    + ": "
                    + percent(p.share().share())
                    + ", from "
                    + said(p.share().low())
                    + " to "
                    + said(p.share().high()))
        + ".";
  }

  private String said(double value) {
    return result.kind() == ResultKind.RESERVE
        ? Double.toString(Math.round(100 * value) / 100.0)
        : numbers.plain(value, result.unit(), Rounding.NEAREST);
  }
}
