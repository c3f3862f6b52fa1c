package org.drysill.assess.model;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.drysill.physics.Range;
import org.drysill.physics.zones.fit.Forward;
import org.drysill.physics.zones.fit.LogNormal;
import org.drysill.physics.zones.fit.Posterior;
import org.drysill.physics.zones.fit.RobustFit;
import org.drysill.reference.model.ModelDefaults;

/** The home after its readings: what is believed of it then, and what the readings cannot be. */
final class FittedHome {
  private final HomeModel model;
  private final List<Reading> readings;
  private final RobustFit fit;

  /**
   * Fits.
   *
   * @param homeExcess mean excess of the home [kg/m³], above 0
   */
  FittedHome(HomeModel model, List<Reading> readings, double homeExcess, ModelDefaults defaults) {
    this.model = model;
    this.readings = List.copyOf(readings);
    double[] errors = errors(homeExcess);
    for (int i = 0; i < errors.length; i++) {
      errors[i] *= defaults.momentOfRoom().likely();
    }
    this.fit =
        RobustFit.of(
            forward(),
            readings.stream().mapToDouble(Reading::excess).toArray(),
            errors,
            model.unknowns().count(),
            defaults.limitOfMiss().likely());
  }

  HomeModel model() {
    return model;
  }

  List<Reading> readings() {
    return readings;
  }

  Posterior posterior() {
    return fit.posterior();
  }

  /** The home in its most likely state. */
  ZonedHome zoned() {
    double[] z = new double[model.unknowns().count()];
    for (int k = 0; k < z.length; k++) {
      z[k] = posterior().mean(k);
    }
    return model.zoned(z);
  }

  /** By how much the model misses a reading, in standard deviations; above 0 where it is damper. */
  double miss(int reading) {
    return fit.miss(reading);
  }

  /** True where the model cannot explain a reading, which was then left out. */
  boolean leftOut(int reading) {
    return fit.leftOut(reading);
  }

  /** A positive quantity after the readings: the interval that holds it in 95 of 100 cases. */
  Range positive(ToDoubleFunction<double[]> quantity) {
    return posterior().positive(quantity).range();
  }

  /** A quantity of either sign after the readings. */
  Range either(ToDoubleFunction<double[]> quantity) {
    return Range.around(
        posterior().value(quantity), LogNormal.Z95 * posterior().deviation(quantity));
  }

  /** What an instrument would read in a room of a reading [kg/m³]. */
  double read(int reading, double[] z) {
    return forward().at(z)[reading];
  }

  /**
   * What a room swings by: its excess as believed, brought to the level of the home, and at least
   * that of the home. Not the reading itself, or a reading that is far off would excuse itself.
   */
  private double[] errors(double homeExcess) {
    double[] believed = model.excess(new double[model.unknowns().count()]);
    double mean = readings.stream().mapToDouble(r -> believed[r.room()]).average().orElse(1);
    return readings.stream()
        .mapToDouble(r -> homeExcess * Math.max(1, believed[r.room()] / mean))
        .toArray();
  }

  private Forward forward() {
    return z -> {
      double[] excess = model.excess(z);
      return readings.stream()
          .mapToDouble(
              r ->
                  excess[r.room()]
                      + r.outdoorError() * z[Unknowns.OUTDOOR]
                      + r.instrumentError() * z[Unknowns.INSTRUMENT])
          .toArray();
    };
  }
}
