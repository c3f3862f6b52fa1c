package org.drysill.assess.change.air;

import java.util.Optional;
import java.util.OptionalInt;
import org.drysill.assess.humidity.MeasuredAir;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.moisture.VapourBalance;
import org.drysill.reference.readings.LogSpellRules;
import org.drysill.survey.log.Log;
import org.drysill.survey.log.LogContent;
import org.drysill.survey.log.LoggedSeries;
import org.drysill.yaml.Quantity;

/**
 * The mean air of a room over the time for which it and outdoor air were both logged. The error of
 * a mean is that of the instrument, which no number of readings makes smaller, and the scatter of
 * the days, as root of the sum of squares.
 */
final class LoggedAir {
  private final InstrumentErrors errors;
  private final LogSpellRules rules;
  private final DayMeans temperature = new DayMeans();
  private final DayMeans humidity = new DayMeans();
  private final DayMeans pressure = new DayMeans();
  private final DayMeans excess = new DayMeans();
  private final DayMeans content = new DayMeans();
  private final DayMeans outdoorTemperature = new DayMeans();
  private final DayMeans outdoorHumidity = new DayMeans();
  private final DayMeans outdoorPressure = new DayMeans();
  private long begin = Long.MAX_VALUE;
  private long end = Long.MIN_VALUE;

  private LoggedAir(InstrumentErrors errors, LogSpellRules rules) {
    this.errors = errors;
    this.rules = rules;
  }

  /**
   * The mean of a room; empty where the logs have no time in common.
   *
   * @param errors of the instruments of the visit
   */
  static Optional<AirState> of(
      Log room, Log outdoor, InstrumentErrors errors, LogSpellRules rules) {
    LoggedAir air = new LoggedAir(errors, rules);
    series(room).ifPresent(r -> series(outdoor).ifPresent(o -> air.add(r, o)));
    return air.begin < air.end ? Optional.of(air.state(room, outdoor)) : Optional.empty();
  }

  private static Optional<LoggedSeries> series(Log log) {
    return log.content().map(LogContent::series);
  }

  private void add(LoggedSeries room, LoggedSeries outdoor) {
    for (int bin = 0; bin < room.size(); bin++) {
      long at = room.beginEpochS(bin);
      OptionalInt outside = outdoor.binAt(at + room.binSeconds() / 2);
      if (room.vapourPressure().isKnown(bin)
          && outside.isPresent()
          && outdoor.vapourPressure().isKnown(outside.getAsInt())) {
        add(room, bin, outdoor, outside.getAsInt());
        begin = Math.min(begin, at);
        end = Math.max(end, at + room.binSeconds());
      }
    }
  }

  private void add(LoggedSeries room, int bin, LoggedSeries outdoor, int outside) {
    long at = room.beginEpochS(bin);
    double seconds = room.vapourPressure().seconds(bin);
    temperature.add(at, seconds, room.temperature().mean(bin));
    humidity.add(at, seconds, room.humidity().mean(bin));
    pressure.add(at, seconds, room.vapourPressure().mean(bin));
    outdoorTemperature.add(at, seconds, outdoor.temperature().mean(outside));
    outdoorHumidity.add(at, seconds, outdoor.humidity().mean(outside));
    outdoorPressure.add(at, seconds, outdoor.vapourPressure().mean(outside));
    excess.add(
        at, seconds, room.vapourPressure().mean(bin) - outdoor.vapourPressure().mean(outside));
    content.add(
        at, seconds, room.vapourContent().mean(bin) - outdoor.vapourContent().mean(outside));
  }

  private AirState state(Log room, Log outdoor) {
    MeasuredAir inside = measured(room, temperature, humidity);
    MeasuredAir outside = measured(outdoor, outdoorTemperature, outdoorHumidity);
    double instruments = Math.hypot(inside.vapourPressureError(), outside.vapourPressureError());
    double days = scatter(excess);
    double contentByInstruments =
        VapourBalance.contentExcessKgM3(instruments, temperature.mean(), outdoorTemperature.mean());
    return new AirState(
        new Spell(true, excess.days(), 1 - excess.days() * 86400 / (end - begin)),
        bounded(temperature, inside.temperature()),
        meanAir(inside.humidity()),
        Range.around(excess.mean(), Math.hypot(instruments, days)),
        Range.around(content.mean(), Math.hypot(contentByInstruments, scatter(content))),
        bounded(outdoorTemperature, outside.temperature()),
        Range.around(
            outdoorPressure.mean(),
            Math.hypot(outside.vapourPressureError(), scatter(outdoorPressure))),
        true);
  }

  /** The humidity of air of the mean temperature and the mean vapour. */
  private Range meanAir(Range instrument) {
    double ratio =
        pressure.mean() / Iso13788Vapour.saturationPressureOverWaterPa(temperature.mean());
    return Range.around(ratio, Math.hypot(half(instrument), scatter(humidity)));
  }

  private Range bounded(DayMeans means, Range instrument) {
    return Range.around(means.mean(), Math.hypot(half(instrument), scatter(means)));
  }

  private double scatter(DayMeans means) {
    return means.error(rules.level().value(), rules.dayToDay().value());
  }

  private MeasuredAir measured(Log log, DayMeans celsius, DayMeans ratio) {
    return new MeasuredAir(
        errors.temperature(exactly(celsius.mean()), log.logger().instrument()),
        errors.humidity(exactly(ratio.mean()), log.logger().instrument()));
  }

  private static Quantity exactly(double value) {
    return new Quantity(value, value, value, "");
  }

  private static double half(Range range) {
    return (range.high() - range.low()) / 2;
  }
}
