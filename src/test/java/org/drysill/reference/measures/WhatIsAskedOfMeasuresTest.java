package org.drysill.reference.measures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The measures that a survey of a damp home has to know, and what has to be known of each. */
class WhatIsAskedOfMeasuresTest {
  private static final MeasureCatalogue CATALOGUE = MeasureCatalogue.read();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "intermittent-extract",
        "humidity-extract",
        "continuous-extract",
        "central-extract",
        "positive-input",
        "single-room-recovery-pair",
        "single-room-recovery",
        "balanced-heat-recovery",
        "window-ventilator",
        "wall-ventilator",
        "door-undercut",
        "hood-to-outside",
        "duct-repair",
        "fan-repair",
        "sleeve-replacement",
        "secondary-glazing",
        "double-glazing",
        "triple-glazing",
        "reveal-insulation",
        "internal-wall-insulation",
        "external-wall-insulation",
        "cavity-fill",
        "loft-hatch",
        "heating-pattern",
        "lids-and-hood",
        "purge-habit",
        "vented-dryer",
        "condenser-dryer",
        "heat-pump-dryer",
        "drying-room",
        "dehumidifier",
        "desiccant-dehumidifier",
        "leak-repair",
        "damp-survey"
      })
  void it_is_there(String id) {
    assertThat(CATALOGUE.measure(id)).isPresent();
  }

  static Stream<Measure> measures() {
    return CATALOGUE.measures().stream();
  }

  @ParameterizedTest
  @MethodSource("measures")
  void it_says_when_it_applies_what_it_changes_and_what_it_costs(Measure measure) {
    assertThat(measure.when()).isNotEmpty();
    assertThat(measure.changes()).endsWith(".");
    MeasurePrice price = measure.price();
    assertThat(price.low()).isBetween(0.0, price.likely());
    assertThat(price.high()).isGreaterThanOrEqualTo(price.likely());
    assertThat(price.source().document()).isNotBlank();
    assertThat(measure.lifeYears()).isPositive();
    assertThat(measure.upkeep().range().low()).isNotNegative();
    assertThat(measure.cautions()).isNotNull();
    assertThat(measure.sideEffects()).isNotEmpty().allMatch(s -> s.endsWith("."));
    assertThat(measure.prerequisites()).allMatch(p -> p.says().endsWith("."));
  }

  /** A fan has a power; a machine has electricity by the kilogram or the load. */
  @Test
  void whatever_runs_on_electricity_says_how_much() {
    assertThat(measures())
        .filteredOn(m -> m.air().flatMap(AirEffect::fan).isPresent())
        .isNotEmpty()
        .allSatisfy(m -> assertThat(m.power()).as(m.id()).isPresent());
    assertThat(measures())
        .filteredOn(m -> !m.isBeforeAll())
        .filteredOn(m -> m.name().contains("dryer") || m.name().contains("dehumidifier"))
        .hasSize(5)
        .allSatisfy(
            m ->
                assertThat(
                        m.moisture().orElseThrow().kwhPerLoad().isPresent()
                            || m.moisture().orElseThrow().kwhPerKg(18).isPresent())
                    .as(m.id())
                    .isTrue());
  }

  @Test
  void a_dehumidifier_takes_less_water_for_more_electricity_in_a_cold_room() {
    MoistureEffect machine = CATALOGUE.measure("dehumidifier").orElseThrow().moisture().get();
    double previous = 0;
    for (double celsius : new double[] {5, 8, 10.5, 13, 15, 18, 21, 24, 30}) {
      double water = machine.removedKgPerDay(celsius).orElseThrow().likely();
      assertThat(water).isGreaterThanOrEqualTo(previous);
      previous = water;
    }
    // On a straight line between 13 °C (0.9) and 18 °C (0.63); beyond the ends as at the ends.
    assertThat(machine.kwhPerKg(15.5).orElseThrow().likely()).isEqualTo((0.9 + 0.63) / 2);
    assertThat(machine.kwhPerKg(-5)).isEqualTo(machine.kwhPerKg(8));
    assertThat(machine.kwhPerKg(40)).isEqualTo(machine.kwhPerKg(24));
    MoistureEffect dryer = CATALOGUE.measure("vented-dryer").orElseThrow().moisture().get();
    assertThat(dryer.removedKgPerDay(18)).isEmpty();
  }

  @Test
  void temperatures_of_machines_rise() {
    assertThat(measures().flatMap(m -> m.moisture().stream()).map(MoistureEffect::byTemperature))
        .allSatisfy(
            points ->
                assertThat(points.stream().map(AtTemperature::celsius).toList())
                    .isSorted()
                    .doesNotHaveDuplicates());
  }

  @Test
  void side_effects_that_do_harm_are_named() {
    assertSays("positive-input", "pushed into the fabric");
    assertSays("internal-wall-insulation", "needs ventilation");
    assertSays("external-wall-insulation", "needs ventilation");
    assertSays("continuous-extract", "sound level");
    for (String extract :
        List.of("intermittent-extract", "continuous-extract", "central-extract")) {
      assertThat(CATALOGUE.measure(extract).orElseThrow().cautions())
          .contains("open-flue-with-extract");
    }
  }

  private static void assertSays(String id, String words) {
    assertThat(CATALOGUE.measure(id).orElseThrow().sideEffects())
        .as(id)
        .anyMatch(s -> s.contains(words));
  }

  @Test
  void prerequisites_name_measures_that_exist_and_only_beside_a_condition() {
    Set<String> ids = measures().map(Measure::id).collect(Collectors.toCollection(TreeSet::new));
    assertThat(measures().flatMap(m -> m.prerequisites().stream()))
        .isNotEmpty()
        .allMatch(p -> ids.containsAll(p.by()))
        .allMatch(p -> !p.isForTheSite() || p.by().isEmpty());
  }
}
