package org.drysill.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.drysill.report.chart.CostStack.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Charts of packages stay legible whatever their parts are. */
class PackageChartsTest {
  private static final double WIDTH = 620;
  private static final List<Pattern> PATTERNS = List.of(Pattern.values());

  private static CostStack stack(double... values) {
    List<CostStack.Part> parts = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      parts.add(
          new CostStack.Part(
              "replacements " + Math.round(values[i]),
              values[i],
              PATTERNS.get(i % PATTERNS.size())));
    }
    CostStack.Bar bar = new CostStack.Bar("A", "12,345", parts);
    return new CostStack(
        new ChartText("t", "GBP", "s", "a"), Axis.around(-3000, 20_000, 5), List.of(bar, bar));
  }

  @ParameterizedTest
  @CsvSource({
    "2000, 1500, 800, 400, 900, -700",
    "1, 1, 1, 1, 1, -1",
    "20000, 1, 1, 1, 1, -3000",
    "0.4, 19000, 1, 1, 1, -1",
    "300, 1, 1, -900, -1800, -100"
  })
  void names_of_parts_never_meet(
      double first, double again, double upkeep, double power, double heat, double left) {
    Noted.painted(stack(first, again, upkeep, power, heat, left), WIDTH).assertThatNoWordsOverlap();
  }

  @Test
  void a_sum_has_its_name_its_total_and_every_part_in_words() {
    assertThat(Noted.painted(stack(2000, 500), WIDTH).words())
        .contains("A", "12,345", "replacements 2000", "replacements 500");
  }

  private static Tornado tornado(double atLow, double atHigh, double target) {
    List<Tornado.Row> rows =
        Collections.nCopies(
            4, new Tornado.Row("How cold the surface is: North corner", atLow, atHigh, "38 %"));
    return new Tornado(
        new ChartText("t", "1", "s", "a"),
        Axis.around(0.5, 1.9, 5),
        1.1,
        Optional.of(target),
        "no risk from here on",
        rows);
  }

  @ParameterizedTest
  @CsvSource({"0.6, 1.6, 1", "1.6, 0.6, 1.8", "1.1, 1.1, 0.5", "1.2, 1.5, 1.2"})
  void words_of_a_tornado_never_meet(double atLow, double atHigh, double target) {
    Noted canvas = Noted.painted(tornado(atLow, atHigh, target), WIDTH);
    canvas.assertThatNoWordsOverlap();
    assertThat(canvas.words()).contains("38 %", "input low", "input high", "no risk from here on");
  }

  private static MonthPairs pairs(int before, int after) {
    List<Integer> was = Collections.nCopies(12, before);
    List<Integer> is = Collections.nCopies(12, after);
    return new MonthPairs(
        new ChartText("t", "places", "s", "a"),
        "today",
        "with package A",
        MonthLines.JULY_FIRST,
        List.of(
            new MonthPairs.Panel("Walls, corners and reveals at risk of mould", was, is),
            new MonthPairs.Panel("Windows with wet glass on a cold night", is, was)));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "5, 0", "0, 3", "7, 7", "88, 12"})
  void counts_by_month_never_meet(int before, int after) {
    Noted.painted(pairs(before, after), WIDTH).assertThatNoWordsOverlap();
  }

  @Test
  void a_month_without_risk_before_and_after_has_one_nought() {
    assertThat(Noted.painted(pairs(0, 0), WIDTH).words()).filteredOn("0"::equals).hasSize(24);
    assertThat(Noted.painted(pairs(5, 0), WIDTH).words()).filteredOn("0"::equals).hasSize(24);
    assertThat(Noted.painted(pairs(5, 0), WIDTH).words()).filteredOn("5"::equals).hasSize(24);
  }
}
