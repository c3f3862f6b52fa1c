package org.drysill.options.money;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.OptionsFixtures.find;

import java.util.regex.Pattern;
import org.drysill.OptionsFixtures;
import org.drysill.options.OptionsResult;
import org.drysill.options.Payback;
import org.junit.jupiter.api.Test;

class SameAirTest {
  private static final String FLAT = OptionsFixtures.text("small-flat");

  /** The same flat in the climate of the English Midlands. */
  private static final String MIDLANDS =
      Pattern.compile("climate: \\{monthly[^\n]*")
          .matcher(FLAT)
          .replaceFirst("climate: uk-midlands");

  /**
   * Common practice among those who reckon: in a small home a pair of recovery units takes in the
   * order of a century to repay what it costs more than a plain extract fan. By hand:
   *
   * <pre>
   * extra first cost 1500 − 450 = 1050
   * October to May at 20 °C: 3083 K·d, 1224 · 3083 · 0.024 / 0.85 = 106.5 kWh for each l/s
   * extract fan, 10.81 l/s: heat 1151.8 kWh, 69.11 a year; for 9 l/s of it 57.54;
   *   with 26.3 kWh · 0.27 = 7.10 and 10 of upkeep                           74.64 a year
   * pair, 9 l/s: heat 429.1 kWh, 25.75; 52.6 kWh · 0.27 = 14.19; upkeep 20    59.94 a year
   * 1050 / (74.64 − 59.94) = 71 years
   * </pre>
   */
  @Test
  void recovery_in_a_small_home_pays_in_the_order_of_a_century() {
    Payback pair =
        find(OptionsFixtures.study(MIDLANDS), "single-room-recovery-pair.home")
            .money()
            .againstSameAir()
            .orElseThrow();
    double years = pair.years().orElseThrow().likely();
    assertThat(years).isBetween(60.0, 200.0).isCloseTo(71.4, within(0.5));
    assertThat(pair.words())
        .startsWith(
            "Against the same air by continuous extract fan it pays for itself after 72 years")
        .endsWith("it lasts about 15 years: in its own life, never.");
  }

  @Test
  void the_cheapest_way_is_compared_with_none() {
    OptionsResult options = OptionsFixtures.study(FLAT);
    assertThat(find(options, "window-ventilator").money().againstSameAir().orElseThrow().kind())
        .isEqualTo(Payback.Kind.CHEAPEST);
    assertThat(find(options, "wall-ventilator").money().againstSameAir().orElseThrow().against())
        .isEqualTo("the same air by background ventilator in the window");
  }

  @Test
  void what_brings_no_air_and_what_brings_most_have_no_such_comparison() {
    OptionsResult options = OptionsFixtures.study(FLAT);
    assertThat(find(options, "double-glazing.living-n").money().againstSameAir()).isEmpty();
    assertThat(find(options, "balanced-heat-recovery.home").money().againstSameAir()).isEmpty();
  }

  @Test
  void without_prices_there_is_nothing_to_compare_with() {
    String foreign = FLAT.replace("currency: GBP", "currency: SEK");
    assertThat(find(OptionsFixtures.study(foreign), "window-ventilator").money().againstSameAir())
        .isEmpty();
    Payback unknown =
        find(
                OptionsFixtures.study(
                    foreign
                        + "options: {prices: {background ventilator through the wall: 2000}}\n"),
                "window-ventilator")
            .money()
            .againstSameAir()
            .orElseThrow();
    assertThat(unknown.kind()).isEqualTo(Payback.Kind.NOT_TOLD);
  }
}
