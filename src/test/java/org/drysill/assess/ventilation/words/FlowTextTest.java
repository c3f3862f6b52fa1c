package org.drysill.assess.ventilation.words;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.drysill.physics.Range;
import org.drysill.reference.rules.ReportUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is there is rounded down, what is asked is rounded up. */
class FlowTextTest {
  private static final FlowText METRIC = new FlowText(ReportUnits.METRIC);
  private static final FlowText IP = new FlowText(ReportUnits.INCH_POUND);

  @ParameterizedTest
  @CsvSource({
    "0.0300, 30 l/s, 30 l/s",
    "0.02999, 29.9 l/s, 30 l/s",
    "0.03001, 30 l/s, 30.1 l/s",
    "0, 0 l/s, 0 l/s"
  })
  void flows_are_rounded_towards_the_failing_side(double flow, String provided, String required) {
    assertThat(METRIC.provided(flow)).isEqualTo(provided);
    assertThat(METRIC.required(flow)).isEqualTo(required);
  }

  /** 50 cfm are 23.597 l/s. */
  @Test
  void inch_pound_readers_get_whole_cubic_feet() {
    assertThat(IP.provided(0.0236)).isEqualTo("50 cfm");
    assertThat(IP.required(0.0236)).isEqualTo("51 cfm");
    assertThat(IP.provided(new Range(0.0236, 0.03, 0.0472))).isEqualTo("50 to 100 cfm");
  }

  /** 15 l/s are 54 m³/h exactly. */
  @Test
  void hourly_readers_get_cubic_metres_an_hour_and_the_areas_of_metric_readers() {
    FlowText hourly = new FlowText(ReportUnits.METRIC_HOURLY);
    assertThat(hourly.provided(0.015)).isEqualTo("54 m³/h");
    assertThat(hourly.required(0.01501)).isEqualTo("54.1 m³/h");
    assertThat(hourly.ventilator(0.004)).isEqualTo(METRIC.ventilator(0.004));
    assertThat(hourly.opening(0.55)).isEqualTo(METRIC.opening(0.55));
  }

  @Test
  void a_range_whose_ends_read_the_same_is_one_number() {
    assertThat(METRIC.provided(new Range(0.01001, 0.01002, 0.01003))).isEqualTo("10 l/s");
    assertThat(METRIC.provided(new Range(0.0100, 0.0105, 0.0110))).isEqualTo("10 to 11 l/s");
    assertThat(METRIC.provided(new Range(0.0100, 0.0105, 0.0111))).isEqualTo("10.0 to 11.1 l/s");
  }

  /** As tables print it, unless what is asked would no longer lie between the printed ends. */
  @Test
  void a_range_around_what_is_asked_has_the_ends_of_the_tables() {
    Range wide = new Range(0.02023, 0.037, 0.06536);
    assertThat(METRIC.provided(wide, 0.031)).isEqualTo("20 to 65 l/s");
    assertThat(METRIC.provided(wide, 0.0203)).isEqualTo("20 to 65 l/s");
    assertThat(METRIC.provided(wide, 0.0652)).isEqualTo("20.2 to 65.3 l/s");
    assertThat(METRIC.provided(new Range(0.002, 0.0084, 0.0212), 0.013))
        .isEqualTo("2.0 to 21.2 l/s");
  }

  /** 2500 mm² are 3.875 in²; 0.5 m² are 5.382 ft². */
  @Test
  void areas_have_the_units_of_their_readers() {
    assertThat(METRIC.ventilator(0.0024999)).isEqualTo("2499 mm²");
    assertThat(METRIC.ventilatorRequired(0.0024991)).isEqualTo("2500 mm²");
    assertThat(IP.ventilator(0.0025)).isEqualTo("3.8 in²");
    assertThat(IP.ventilatorRequired(0.0025)).isEqualTo("3.9 in²");
    assertThat(METRIC.opening(0.999)).isEqualTo("0.99 m²");
    assertThat(METRIC.openingRequired(0.991)).isEqualTo("1.00 m²");
    assertThat(IP.opening(0.5)).isEqualTo("5.38 ft²");
    assertThat(IP.openingRequired(0.5)).isEqualTo("5.39 ft²");
  }

  @Property(tries = 200)
  void no_rounding_makes_a_home_look_better_than_it_is(
      @ForAll @DoubleRange(min = 0, max = 1) double flow) {
    double provided = number(METRIC.provided(flow));
    double required = number(METRIC.required(flow));
    assertThat(provided).isLessThanOrEqualTo(flow * 1000 + 1e-8);
    assertThat(required).isGreaterThanOrEqualTo(flow * 1000 - 1e-8);
    assertThat(required - provided).isLessThan(0.1 + 1e-8);
  }

  private static double number(String text) {
    return Double.parseDouble(text.substring(0, text.indexOf(' ')));
  }
}
