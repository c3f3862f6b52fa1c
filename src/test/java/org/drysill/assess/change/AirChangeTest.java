package org.drysill.assess.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.assess.change.ChangeFixtures.OUTDOOR;
import static org.drysill.assess.change.ChangeFixtures.compare;
import static org.drysill.assess.change.ChangeFixtures.living;
import static org.drysill.assess.change.ChangeFixtures.visit;

import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.change.air.AirChange;
import org.drysill.assess.change.shown.ChangeWords;
import org.drysill.assess.change.shown.Shown;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The air of two visits on equal terms. */
class AirChangeTest {
  private static final String MILD = OUTDOOR.replace("5 C", "10.1 C");

  private static AirChange room(ChangeResult result) {
    return result.rooms().get(0);
  }

  private static Finding finding(ChangeResult result, String id) {
    return result.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void from_55_to_41_percent_is_14_points_and_a_quarter_less() {
    AirChange change = room(compare(living(20, 55), living(20, 41)));
    assertThat(change.humidity().points().likely()).isCloseTo(-0.14, within(1e-12));
    assertThat(change.humidity().points().unit()).isEqualTo(Unit.PERCENTAGE_POINT);
    assertThat(change.humidity().relative().orElseThrow().likely())
        .isCloseTo(-0.14 / 0.55, within(1e-12));
    assertThat(change.humidity().relative().orElseThrow().unit()).isEqualTo(Unit.PERCENT);
    assertThat(change.said())
        .startsWith(
            "Relative humidity 55 % to 41 %: 14 percentage points lower, about a quarter less;")
        .doesNotContain("14 %");
  }

  /** ½ point at each visit: √2 / 2 points together. */
  @Test
  void errors_of_both_visits_add_as_squares() {
    AirChange change = room(compare(living(20, 55), living(20, 41)));
    double error = change.humidity().points().value().high() - change.humidity().points().likely();
    assertThat(error).isCloseTo(0.005 * Math.sqrt(2), within(1e-12));
    double relative =
        change.humidity().relative().orElseThrow().value().high()
            - change.humidity().relative().orElseThrow().likely();
    assertThat(relative).isCloseTo(0.005 / 0.55 * Math.hypot(1, 41 / 55.0), within(1e-12));
  }

  /** Warmer air with the same water: ps(18) = 2062.7 Pa, ps(21) = 2485.3 Pa. */
  @Test
  void heating_lowers_the_humidity_and_takes_no_water_away() {
    double dry = 60 * 2062.68 / 2485.34;
    AirChange change = room(compare(living(18, 60), living(21, dry)));
    assertThat(change.humidity().fromMoisture().likely()).isCloseTo(0, within(1e-4));
    assertThat(change.humidity().fromTemperature().likely())
        .isCloseTo((dry - 60) / 100, within(1e-4));
    assertThat(change.shown()).isEqualTo(Shown.NOT_SHOWN);
    assertThat(change.said()).contains("within the error of both visits together");
  }

  @Test
  void at_one_temperature_all_of_the_change_is_moisture() {
    AirChange change = room(compare(living(20, 55), living(20, 41)));
    assertThat(change.humidity().fromTemperature().likely()).isZero();
    assertThat(change.humidity().fromMoisture().likely()).isCloseTo(-0.14, within(1e-12));
    assertThat(change.said())
        .contains(
            "+0.0 points by the temperature of the air, +0.0 by outdoor air and −14.0 by moisture");
  }

  @Test
  void a_fall_of_the_excess_beyond_the_errors_is_shown() {
    ChangeResult fell = compare(living(20, 55), living(20, 41));
    assertThat(room(fell).shown()).isEqualTo(Shown.FELL);
    assertThat(room(fell).excess().change().likely()).isCloseTo(-0.14 * 2336.95, within(0.01));
    assertThat(room(fell).said())
        .contains("it fell; the change is greater than the error of both visits together");
    assertThat(finding(fell, "change.vapour_excess").verdict()).isEqualTo(Verdict.MEETS);
    assertThat(finding(fell, "change.vapour_excess").settledBy()).isEmpty();
  }

  @Test
  void a_rise_is_shown_as_one() {
    ChangeResult rose = compare(living(20, 41), living(20, 55));
    assertThat(room(rose).shown()).isEqualTo(Shown.ROSE);
    assertThat(room(rose).said())
        .contains("it rose; the change is greater than the error of both visits together");
    assertThat(finding(rose, "change.vapour_excess").verdict()).isEqualTo(Verdict.SHORT);
  }

  @Test
  void what_the_instruments_may_have_made_is_not_shown() {
    ChangeResult same = compare(living(20, 55), living(20, 54.9));
    assertThat(room(same).shown()).isEqualTo(Shown.NOT_SHOWN);
    assertThat(finding(same, "change.vapour_excess").verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(finding(same, "change.vapour_excess").settledBy()).isPresent();
  }

  @Test
  void in_unlike_weather_nothing_is_shown() {
    ChangeResult unlike = compare(visit(OUTDOOR, living(20, 75)), visit(MILD, living(20, 41)));
    assertThat(unlike.outdoor().alike()).isFalse();
    assertThat(unlike.outdoor().said())
        .contains("5.0 °C before and 10.1 °C after", "further apart");
    assertThat(room(unlike).shown()).isEqualTo(Shown.NOT_SHOWN);
    assertThat(room(unlike).said())
        .contains("further apart than the 5 K up to which weather counts as alike");
    assertThat(finding(unlike, "change.outdoor").verdict()).isEqualTo(Verdict.SHORT);
    assertThat(finding(unlike, "change.outdoor").settledBy()).isPresent();
  }

  @Test
  void five_kelvin_apart_is_alike_still() {
    ChangeResult like =
        compare(
            visit(OUTDOOR, living(20, 75)), visit(OUTDOOR.replace("5 C", "10 C"), living(20, 41)));
    assertThat(like.outdoor().alike()).isTrue();
    assertThat(like.outdoor().said()).contains("within the 5 K");
    assertThat(finding(like, "change.outdoor").verdict()).isEqualTo(Verdict.MEETS);
    assertThat(like.outdoor().before().orElseThrow().working().inputs()).hasSize(2);
  }

  @Test
  void without_outdoor_air_at_both_visits_nothing_is_shown() {
    ChangeResult once = compare(visit(OUTDOOR, living(20, 75)), visit("", living(20, 41)));
    assertThat(once.outdoor().said()).contains("not read at both visits");
    assertThat(room(once).said())
        .contains("outdoor air was not read with the rooms at both visits");
    assertThat(finding(once, "change.outdoor").verdict()).isEqualTo(Verdict.UNKNOWN);
    ChangeResult other = compare(visit("", living(20, 75)), visit(OUTDOOR, living(20, 41)));
    assertThat(room(other).shown()).isEqualTo(Shown.NOT_SHOWN);
  }

  @Test
  void a_room_read_once_is_not_compared_and_is_named() {
    String bath = "\n- {id: bath, use: bathroom, readings: [%s]}";
    String read = bath.formatted(ChangeFixtures.reading(21, 70));
    ChangeResult later = compare(living(20, 55) + bath.formatted(""), living(20, 41) + read);
    assertThat(later.rooms()).extracting(AirChange::id).containsExactly("living");
    assertThat(later.notCompared())
        .containsExactly("Humidity of the bath: read at the later visit only");
    ChangeResult earlier = compare(living(20, 55) + read, living(20, 41) + bath.formatted(""));
    assertThat(earlier.notCompared())
        .containsExactly("Humidity of the bath: read at the earlier visit only");
    ChangeResult gone = compare(living(20, 55) + read, living(20, 41));
    assertThat(gone.notCompared()).containsExactly("The bath: in the earlier survey only");
  }

  /** The home is the mean of the rooms of both visits, so that a room read once cannot tilt it. */
  @Test
  void the_home_counts_the_rooms_of_both_visits_only() {
    String bath =
        "\n- {id: bath, use: bathroom, readings: [%s]}".formatted(ChangeFixtures.reading(21, 90));
    AirChange home = compare(living(20, 55), living(20, 41) + bath).home().orElseThrow();
    assertThat(home.id()).isEqualTo("home");
    assertThat(home.humidity().after().likely()).isCloseTo(0.41, within(1e-12));
    assertThat(home.humidity().points().id()).isEqualTo("change.home.humidity_points");
  }

  @Test
  void without_readings_of_both_visits_there_is_no_change_of_the_home() {
    ChangeResult none = compare(living(20, 55), "- {id: living, use: living}");
    assertThat(none.home()).isEmpty();
    assertThat(finding(none, "change.vapour_excess").because()).contains("not read");
    assertThat(finding(none, "change.lasting").verdict()).isEqualTo(Verdict.UNKNOWN);
    assertThat(none.caution()).contains("two moments cannot prove a lasting change");
  }

  @Test
  void every_figure_of_the_change_has_a_working() {
    AirChange c = room(compare(living(18, 60), living(21, 41)));
    List<Figure> derived =
        List.of(
            c.humidity().points(),
            c.humidity().relative().orElseThrow(),
            c.humidity().fromTemperature(),
            c.humidity().fromMoisture(),
            c.humidity().fromOutdoors().orElseThrow(),
            c.humidity().fromIndoors().orElseThrow(),
            c.excess().change(),
            c.excess().contentChange());
    assertThat(derived).allSatisfy(f -> assertThat(f.working().inputs()).isNotEmpty());
    assertThat(c.temperatureBefore().working().formula()).contains("mean of the readings");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.55 | 0.41 | 55 % to 41 %: 14 percentage points lower, about a quarter less",
        "0.41 | 0.55 | 41 % to 55 %: 14 percentage points higher, about a third more",
        "0.80 | 0.40 | 80 % to 40 %: 40 percentage points lower, about half less",
        "0.60 | 0.59 | 60 % to 59 %: 1 percentage point lower, less by 2 % of what it was",
        "0.50 | 0.504 | 50 % to 50 %: the same",
        "0.50 | 0.70 | 50 % to 70 %: 20 percentage points higher, more by 40 % of what it was"
      })
  void points_and_shares_in_words(double before, double after, String words) {
    assertThat(ChangeWords.humidity(before, after)).isEqualTo(words);
  }
}
