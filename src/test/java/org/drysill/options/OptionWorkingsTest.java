package org.drysill.options;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Figure;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The formula of a working with its values put in gives the figure that is printed. */
class OptionWorkingsTest {
  private static final String UNIT =
      "    fans: [{id: unit, kind: alternating heat recovery, measured_flow: {value: 6 l/s, instrument:"
          + " hood}, power: 4 W, run: continuous, declared_heat_recovery: 80 %}]\n";

  private static OptionsResult options(String home) {
    String text = OptionsFixtures.text(home);
    return OptionsFixtures.study(
        home.equals("small-flat")
            ? text.replace("  - id: bathroom\n", UNIT + "  - id: bathroom\n")
            : text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"small-flat", "wreck"})
  void energy_money_and_water_of_measures(String home) {
    OptionsResult options = options(home);
    List<RankedMeasure> measures = new ArrayList<>(options.ranked());
    measures.addAll(options.beyondBudget());
    assertThat(measures).hasSizeGreaterThan(8);
    for (RankedMeasure measure : measures) {
      MeasureMoney m = measure.money();
      MeasureEffect e = measure.effect();
      Stream.of(
              Stream.of(m.heatLost(), m.heatSaved(), m.electricity(), m.co2()),
              Stream.of(m.energyCost(), m.runningCost(), e.moisture(), e.excessChange())
                  .flatMap(Optional::stream),
              m.againstNothing().years().stream(),
              m.againstSameAir().stream().flatMap(p -> p.years().stream()))
          .flatMap(s -> s)
          .forEach(OptionWorkingsTest::isWorkedOut);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"small-flat", "wreck"})
  void sums_of_packages_and_what_fans_take(String home) {
    OptionsResult options = options(home);
    for (MeasurePackage p : options.packages().orElseThrow().best()) {
      Stream.of(
              p.firstCost(),
              p.annualCost(),
              p.runningCost(),
              p.heat(),
              p.electricity(),
              p.co2(),
              p.lacks())
          .forEach(OptionWorkingsTest::isWorkedOut);
    }
    List<Figure> ofFans =
        options.fansNow().stream()
            .flatMap(
                f ->
                    Stream.of(f.heatLost(), f.heatRecovered(), f.netKept(), f.netSaved(), f.cost())
                        .flatMap(Optional::stream))
            .toList();
    assertThat(ofFans).isNotEmpty();
    ofFans.forEach(OptionWorkingsTest::isWorkedOut);
    options.fansNow().stream()
        .flatMap(f -> f.worth().stream())
        .flatMap(w -> Stream.of(w.otherHeatLost(), w.savesYearly()))
        .forEach(OptionWorkingsTest::isWorkedOut);
  }

  private static void isWorkedOut(Figure figure) {
    assertThat(Arithmetic.of(figure))
        .as(figure.id() + ": " + figure.working().formula())
        .isCloseTo(figure.likely(), within(1e-6 * Math.max(1e-6, Math.abs(figure.likely()))));
  }
}
