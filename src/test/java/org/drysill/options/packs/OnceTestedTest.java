package org.drysill.options.packs;

import static org.assertj.core.api.Assertions.assertThat;

import org.drysill.OptionsFixtures;
import org.drysill.options.MeasurePackage;
import org.drysill.options.PackagesResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The package that is best once a spillage test is passed. */
class OnceTestedTest {
  private static PackagesResult of(String text) {
    return OptionsFixtures.study(text).packages().orElseThrow();
  }

  private static String burning(long seed, String kind) {
    return SmallHomes.of(seed)
        .replace(
            "  climate: {monthly",
            "  combustion_appliances: [{kind: " + kind + "}]\n  climate: {monthly");
  }

  /** A test that is passed makes of an open flue what a room-sealed appliance is from the start. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 4})
  void it_is_the_best_package_of_the_home_without_an_open_flue(long seed) {
    PackagesResult open = of(burning(seed, "open-flued fire"));
    PackagesResult sealed = of(burning(seed, "room-sealed boiler"));
    MeasurePackage best = sealed.best().get(0);
    assertThat(sealed.onceTested()).isEmpty();
    assertThat(open.best().get(0).safe()).isTrue();
    MeasurePackage tested = open.onceTested().orElse(open.best().get(0));
    assertThat(tested.titles()).isEqualTo(best.titles());
    assertThat(tested.annualCost().value()).isEqualTo(best.annualCost().value());
    assertThat(tested.spread().enough()).isEqualTo(best.spread().enough());
    open.onceTested().ifPresent(t -> assertThat(t.name()).isEqualTo("T"));
  }

  @Test
  void an_open_flue_keeps_a_cheaper_package_waiting() {
    assertThat(of(burning(1, "open-flued fire")).onceTested()).isPresent();
  }
}
