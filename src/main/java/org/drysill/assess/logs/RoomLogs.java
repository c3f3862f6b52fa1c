package org.drysill.assess.logs;

import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.humidity.MeasuredAir;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.survey.log.Log;
import org.drysill.survey.log.LogContent;

/** Makes what the log of one room says. */
final class RoomLogs {
  private static final double HOURS_A_DAY = 24;
  private final Outdoors outdoors;
  private final Optional<Log> outdoorLog;
  private final LogErrors errors;
  private final ReadingRules rules;
  private final double coverage;

  RoomLogs(
      Outdoors outdoors,
      Optional<Log> outdoorLog,
      LogErrors errors,
      ReadingRules rules,
      double coverage) {
    this.outdoors = outdoors;
    this.outdoorLog = outdoorLog;
    this.errors = errors;
    this.rules = rules;
    this.coverage = coverage;
  }

  /** Empty where the log holds no temperature together with humidity. */
  Optional<LoggedRoom> of(RoomFacts room, Log log) {
    return log.content()
        .filter(content -> content.series().vapourPressure().isLogged())
        .map(content -> of(room, log, content));
  }

  private LoggedRoom of(RoomFacts room, Log log, LogContent content) {
    Outdoors.Beside beside = outdoors.beside(content);
    Trace trace = beside.trace();
    MeasuredAir air =
        new MeasuredAir(
            errors.temperature(mean(trace, trace::celsius), log.logger().instrument()),
            errors.humidity(mean(trace, trace::humidity), log.logger().instrument()));
    double humidityError = air.humidity().high() - air.humidity().likely();
    RoomLogFigures figures = new RoomLogFigures(room, beside, air, outdoorError(beside));
    Calendar calendar = new Calendar(trace);
    List<PeriodMeans> months = calendar.months();
    Figure temperature = figures.temperature();
    return new LoggedRoom(
        room.id(),
        room.name(),
        beside.source(),
        beside.said(),
        trace.hours(i -> true) / HOURS_A_DAY,
        temperature,
        figures.humidity(),
        figures.content(),
        figures.excess(),
        figures.excessPressure(),
        figures.outdoorTemperature(),
        calendar.days(),
        calendar.weeks(),
        months,
        classes(beside, figures, calendar, months),
        new TimesAbove(room, trace, humidityError).all(rules.thresholds()),
        HourOfDay.of(trace),
        new MovingAverageCriteria(room, trace, humidityError, coverage).all(rules.criteria()),
        trace);
  }

  /** A climate tells nothing of one month. */
  private List<MonthClass> classes(
      Outdoors.Beside beside, RoomLogFigures figures, Calendar calendar, List<PeriodMeans> months) {
    return beside.source().simultaneous()
        ? new MonthClasses(rules.classes(), figures.error(), coverage).of(calendar, months)
        : List.of();
  }

  /** Error of the mean outdoor vapour pressure [Pa]. */
  private double outdoorError(Outdoors.Beside beside) {
    Trace trace = beside.trace();
    double pressure = paired(trace, trace::outdoorPressurePa);
    if (beside.source() == OutdoorSource.CLIMATE) {
      return rules.outdoor().dayVapourSpread().value() * pressure;
    }
    double celsius = paired(trace, trace::outdoorCelsius);
    Optional<String> instrument = outdoorLog.flatMap(l -> l.logger().instrument());
    Range temperature = errors.temperature(celsius, instrument);
    double humidity = Math.min(1, pressure / Iso13788Vapour.saturationPressureOverWaterPa(celsius));
    return new MeasuredAir(temperature, errors.humidity(humidity, instrument))
        .vapourPressureError();
  }

  private static double mean(Trace trace, IntToDoubleFunction quantity) {
    return Sums.over(0, trace.size(), quantity, trace::seconds).mean();
  }

  private static double paired(Trace trace, IntToDoubleFunction quantity) {
    return mean(trace, i -> trace.isPaired(i) ? quantity.applyAsDouble(i) : Double.NaN);
  }
}
