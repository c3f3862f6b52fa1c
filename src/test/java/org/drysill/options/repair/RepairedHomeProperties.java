package org.drysill.options.repair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.assess.model.ZonedHome.Zone;
import org.drysill.options.OptionsBasis;
import org.drysill.options.effect.EffectStudy;
import org.drysill.options.site.Placings;
import org.drysill.physics.Range;
import org.drysill.physics.samples.TwoPieceNormal;

/** A leak of any size in any room of a flat, mended. */
class RepairedHomeProperties {
  private static final OptionsBasis BASIS = OptionsFixtures.basis();
  private static final String FLAT = OptionsFixtures.text("small-flat");

  @Property(tries = 25)
  void mending_a_leak_never_makes_any_room_damper_and_water_is_conserved(
      @ForAll @IntRange(min = 0, max = 1) int place,
      @ForAll @DoubleRange(min = 0.05, max = 4) double low,
      @ForAll @DoubleRange(min = 0, max = 6) double more,
      @ForAll @DoubleRange(min = -2.5, max = 2.5) double z) {
    String source = place == 0 ? "{kind: shower, times_per_week: 14}" : "lids_and_hood: no}";
    String leak =
        String.format(Locale.ROOT, ", {kind: leak, rate: %.3f..%.3f kg/day}", low, low + more);
    Assessment today = OptionsFixtures.assess(FLAT.replace(source, source + leak));
    EffectStudy effects = new EffectStudy(today, BASIS);
    Assessment then =
        RepairedHome.of(
                today,
                BASIS,
                new Placings(today, BASIS)
                        .of(BASIS.catalogue().measure("leak-repair").orElseThrow())
                        .candidates()
                        .stream()
                        .flatMap(c -> effects.of(c).stream())
                        .toList())
            .orElseThrow()
            .then();
    then.vapour()
        .rooms()
        .forEach(
            (room, vapour) -> {
              var now = today.vapour().of(room).orElseThrow().excess();
              assertThat(vapour.excess().high()).isLessThanOrEqualTo(now.high() * (1 + 1e-12));
              assertThat(vapour.excess().likely()).isLessThanOrEqualTo(now.likely() * (1 + 1e-12));
            });
    double gone = (low + more / 2) / 86_400 * effects.believed();
    assertThat(new EffectStudy(then, BASIS).water().likely())
        .isCloseTo(effects.water().likely() - gone, within(1e-8));
    double[] deviates = new double[then.model().states().unknowns()];
    deviates[deviates.length - 1] = z;
    double[] asFound = new double[today.model().states().unknowns()];
    var drawn = then.model().states().at(deviates).zones().zones();
    var found = today.model().states().at(asFound).zones().zones();
    for (int i = 0; i < drawn.size(); i++) {
      assertThat(drawn.get(i).waterKgS()).isBetween(0.0, found.get(i).waterKgS() * (1 + 1e-12));
    }
    double all = found.stream().mapToDouble(Zone::waterKgS).sum();
    double left = drawn.stream().mapToDouble(Zone::waterKgS).sum();
    if (TwoPieceNormal.at(new Range(low, low + more / 2, low + more), z) > 0) {
      assertThat(left).isLessThan(all);
    } else {
      assertThat(left).as("a leak drawn as none").isCloseTo(all, withinPercentage(1e-9));
    }
  }
}
