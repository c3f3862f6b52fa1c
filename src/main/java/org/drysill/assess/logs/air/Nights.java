package org.drysill.assess.logs.air;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.humidity.SteadyCarbonDioxide;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.Trace;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.readings.ReadingRules;

/**
 * The late night of bedrooms, when people have slept there for hours: q = G / (C − Cb) by sleeper,
 * however many there are. Before a steady state it comes out too high.
 */
final class Nights {
  private static final int FROM = 3;
  private static final int TO = 6;
  private static final double PPM = 1e-6;
  private static final Citation STEADY =
      Citation.of("ASTM E741", "2011", "steady concentration", How.MEMORY);
  private final Co2Background background;
  private final ReadingRules rules;
  private final double leastPpm;

  /**
   * For logs of CO₂.
   *
   * @param leastPpm a smaller excess than this tells nothing [ppm]
   */
  Nights(Co2Background background, ReadingRules rules, double leastPpm) {
    this.background = background;
    this.rules = rules;
    this.leastPpm = leastPpm;
  }

  /** Empty where no night was logged, or nobody slept there. */
  Optional<NightAir> of(LoggedRoom room) {
    Trace trace = room.trace();
    double sum = 0;
    int steps = 0;
    for (int i = 0; i < trace.size(); i++) {
      int hour = trace.begin(i).getHour();
      if (hour >= FROM && hour < TO && !Double.isNaN(trace.ppm(i))) {
        sum += trace.ppm(i) - background.ppm(trace, i);
        steps++;
      }
    }
    double mean = steps > 0 ? sum / steps : 0;
    double error = 2 * background.uncertaintyPpm(room);
    return mean - error > 0 && mean >= leastPpm
        ? Optional.of(made(room, Range.around(mean, error)))
        : Optional.empty();
  }

  private NightAir made(LoggedRoom room, Range mean) {
    Figure excess =
        new Figure(
            "log." + room.room() + ".co2_night_excess",
            "CO₂ over outdoors in the "
                + room.roomName()
                + " from 3 to 6 at night, mean of the log",
            mean,
            Unit.PPM,
            Basis.MEASURED,
            () ->
                new Working(
                    "mean of C − Cb",
                    List.of(
                        Input.of(
                            "Cb", "CO₂ outdoors", background.outdoor(), Unit.PPM, Basis.ASSUMED)),
                    List.of(rules.co2().outdoorSource()),
                    Optional.of("Bounds: accuracy of the sensor and doubt about outdoor air.")));
    Range emission = rules.co2().perSleeper().range();
    Figure perSleeper =
        new Figure(
            "log." + room.room() + ".air_per_sleeper",
            "Fresh air for each sleeper in the " + room.roomName(),
            emission.dividedBy(mean.times(PPM)),
            Unit.AIRFLOW,
            Basis.ASSUMED,
            () ->
                SteadyCarbonDioxide.working(
                    emission,
                    excess,
                    List.of(STEADY, rules.co2().perSleeperSource()),
                    "Near a steady state after hours of sleep; before it, too high. Nights"
                        + " without a sleeper, and children, who breathe out less, make it too high"
                        + " as well."));
    return new NightAir(room.room(), room.roomName(), excess, perSleeper);
  }
}
