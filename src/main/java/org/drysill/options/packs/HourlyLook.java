package org.drysill.options.packs;

import java.util.Arrays;
import java.util.Collection;
import org.drysill.options.HourlySpread;
import org.drysill.physics.Range;
import org.drysill.physics.samples.Quantiles;

/**
 * Packages hour by hour: any at the likely values, some in all samples.
 *
 * @param likely at the likely values, which are one sample without deviates
 * @param hourly in samples
 * @param sampled by month in the same samples
 */
record HourlyLook(HourlySamples likely, HourlySamples hourly, SampledPackages sampled) {
  /**
   * Looks at packages at once, which is quicker than one by one, and first in many samples: loops
   * that have begun with rows of one are compiled as if they always were short, and take twice as
   * long from then on.
   */
  void look(Collection<PackValue> values) {
    hourly.look(values);
    likely.look(values);
  }

  /** Mornings in a year on which the wettest pane is likely seen to be wet. */
  int wetMornings(PackValue value) {
    return likely.of(value).mornings[0];
  }

  /** A package in all samples. */
  HourlySpread of(PackValue value) {
    HourlyPackage hours = hourly.of(value);
    SampledPackage months = sampled.of(value);
    Range some = Quantiles.nineInTen(Arrays.stream(hours.mornings).asDoubleStream().toArray());
    double most = wetMornings(value);
    return new HourlySpread(
        new Range(Math.min(some.low(), most), most, Math.max(some.high(), most)),
        months.chance(s -> hours.sound[s]),
        months.chance(s -> hours.sound[s] && months.hasAir(s)));
  }
}
