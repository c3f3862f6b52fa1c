package org.drysill.assess.ventilation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.provided.AirBalance;
import org.drysill.physics.Airflow;
import org.drysill.physics.Range;
import org.drysill.survey.FanKind;

/** What must hold of every home, whatever its numbers. */
class VentilationProperties {
  private static final double NEAR = 1e-9;

  /** A home whose every adequacy hangs on the numbers given. */
  private record Numbers(
      FanKind kind, double litresPerSecond, double areaMm2, double n50, double hours) {
    VentilationResult assess() {
      return assess(String.format(Locale.ROOT, "%.9f l/s", litresPerSecond));
    }

    VentilationResult assess(String flow) {
      return VentilationFixtures.assess(
          "england",
          String.format(
              Locale.ROOT,
              "floor_area: 45, storeys: 1, bedrooms: 1, airtightness: {n50: %.6f, basis: measured}",
              n50),
          String.format(
              Locale.ROOT,
              """
              - {id: living, use: living, floor_area: 30, windows: [{id: w, background_ventilator: %1$.6f mm2}]}
              - id: bath
                use: bathroom
                floor_area: 5
                windows: [{id: v, background_ventilator: %1$.6f mm2}]
                fans: [{id: fan, kind: %2$s, hours_per_day: %3$.6f h, power: 5 W, measured_flow: {value: %4$s, instrument: hood}}]
              """,
              areaMm2,
              kind.word(),
              hours,
              flow));
    }
  }

  private static int rank(Verdict verdict) {
    return switch (verdict) {
      case SHORT -> 0;
      case UNKNOWN -> 1;
      case MEETS -> 2;
    };
  }

  /** Every comparison of the richer home is at least as good as that of the poorer one. */
  private static void neverBetter(VentilationResult poorer, VentilationResult richer) {
    for (Finding poor : poorer.findings()) {
      Finding rich = VentilationFixtures.finding(richer, poor.id());
      assertThat(rank(poor.verdict()))
          .as(poor.id() + ": " + poor.because() + " / " + rich.because())
          .isLessThanOrEqualTo(rank(rich.verdict()));
    }
    neverMore(poorer.provided().wholeHome(), richer.provided().wholeHome());
    neverMore(poorer.provided().byFans(), richer.provided().byFans());
  }

  private static void neverMore(Figure less, Figure more) {
    assertThat(less.value().low()).isLessThanOrEqualTo(more.value().low() + 1e-15);
    assertThat(less.likely()).isLessThanOrEqualTo(more.likely() + 1e-15);
    assertThat(less.value().high()).isLessThanOrEqualTo(more.value().high() + 1e-15);
  }

  @Property(tries = 60)
  void adequacy_never_improves_when_a_flow_falls(
      @ForAll FanKind kind,
      @ForAll @DoubleRange(min = 0.1, max = 40) double flow,
      @ForAll @DoubleRange(min = 0, max = 12000) double area,
      @ForAll @DoubleRange(min = 1, max = 20) double n50,
      @ForAll @DoubleRange(min = 0, max = 24) double hours,
      @ForAll @DoubleRange(min = 0.2, max = 1) double share) {
    VentilationResult rich = new Numbers(kind, flow, area, n50, hours).assess();
    neverBetter(new Numbers(kind, flow * share, area, n50, hours).assess(), rich);
    neverBetter(new Numbers(kind, flow, area * share, n50, hours).assess(), rich);
    neverBetter(new Numbers(kind, flow, area, n50 * share, hours).assess(), rich);
    neverBetter(new Numbers(kind, flow, area, n50, hours * share).assess(), rich);
  }

  @Property(tries = 60)
  void as_much_air_goes_out_as_comes_in(
      @ForAll FanKind kind,
      @ForAll @DoubleRange(min = 0, max = 80) double flow,
      @ForAll @DoubleRange(min = 0, max = 12000) double area,
      @ForAll @DoubleRange(min = 1, max = 20) double n50,
      @ForAll @DoubleRange(min = 0, max = 24) double hours) {
    VentilationResult result = new Numbers(kind, flow, area, n50, hours).assess();
    AirBalance balance = result.provided().balance();
    assertThat(balance.residual()).isCloseTo(0, within(1e-9 * Math.max(1e-3, balance.in())));
    assertThat(balance.in()).isCloseTo(result.provided().wholeHome().likely(), within(1e-12));
    assertThat(balance.infiltration()).isGreaterThanOrEqualTo(-1e-12);
    assertThat(balance.exfiltration()).isGreaterThanOrEqualTo(-1e-12);
  }

  @Property(tries = 40)
  void the_unit_in_which_a_flow_was_written_does_not_matter(
      @ForAll FanKind kind,
      @ForAll @DoubleRange(min = 1, max = 40) double flow,
      @ForAll @DoubleRange(min = 1, max = 24) double hours) {
    Numbers home = new Numbers(kind, flow, 4000, 8, hours);
    Airflow air = Airflow.litresPerSecond(flow);
    VentilationResult litres = home.assess(written(air.litresPerSecond(), "l/s"));
    same(litres, home.assess(written(air.m3PerHour(), "m3/h")));
    same(litres, home.assess(written(air.cubicFeetPerMinute(), "cfm")));
  }

  private static String written(double number, String unit) {
    return String.format(Locale.ROOT, "%.12f %s", number, unit);
  }

  private static void same(VentilationResult a, VentilationResult b) {
    for (Finding finding : a.findings()) {
      Finding other = VentilationFixtures.finding(b, finding.id());
      assertThat(other.verdict()).as(finding.id()).isEqualTo(finding.verdict());
      assertThat(other.because()).isEqualTo(finding.because());
      near(finding.provided(), other.provided());
      near(finding.required(), other.required());
    }
    near(Optional.of(a.provided().wholeHome()), Optional.of(b.provided().wholeHome()));
  }

  private static void near(Optional<Figure> a, Optional<Figure> b) {
    assertThat(a.isPresent()).isEqualTo(b.isPresent());
    if (a.isPresent()) {
      assertThat(b.get().likely()).isCloseTo(a.get().likely(), within(NEAR * size(a.get())));
      assertThat(b.get().value().low())
          .isCloseTo(a.get().value().low(), within(NEAR * size(a.get())));
      assertThat(b.get().value().high())
          .isCloseTo(a.get().value().high(), within(NEAR * size(a.get())));
    }
  }

  private static double size(Figure figure) {
    return Math.max(1e-6, Math.abs(figure.value().high()));
  }

  /** Whatever rule asks: more floor, people, bedrooms or volume never ask for less. */
  @Property(tries = 60)
  void no_rule_asks_for_less_of_a_larger_home(
      @ForAll @DoubleRange(min = 20, max = 400) double floor,
      @ForAll @DoubleRange(min = 0, max = 60) double moreFloor,
      @ForAll @IntRange(min = 1, max = 8) int bedrooms,
      @ForAll @IntRange(min = 1, max = 9) int people) {
    List<RuleComparison> small = comparisons(floor, bedrooms, people);
    noneLess(small, comparisons(floor + moreFloor, bedrooms, people));
    noneLess(small, comparisons(floor, bedrooms + 1, people));
    noneLess(small, comparisons(floor, bedrooms, people + 1));
  }

  private static void noneLess(List<RuleComparison> small, List<RuleComparison> large) {
    for (int i = 0; i < small.size(); i++) {
      assertThat(large.get(i).id()).isEqualTo(small.get(i).id());
      Optional<Range> less = small.get(i).required().map(Figure::value);
      Optional<Range> more = large.get(i).required().map(Figure::value);
      assertThat(less.isPresent()).isEqualTo(more.isPresent());
      if (less.isPresent()) {
        assertThat(less.get().likely())
            .as(small.get(i).id())
            .isLessThanOrEqualTo(more.get().likely() + 1e-15);
      }
    }
  }

  private static List<RuleComparison> comparisons(double floor, int bedrooms, int people) {
    return VentilationFixtures.assess(
            "england",
            String.format(
                Locale.ROOT,
                "floor_area: %.6f, volume: 200, bedrooms: %d, occupants: {adults: %d}, storeys: 2,"
                    + " airtightness: {n50: 5 /h, basis: measured, weather_factor: 0.5}",
                floor,
                bedrooms,
                people),
            "- {id: hall, use: hall}")
        .comparisons();
  }
}
