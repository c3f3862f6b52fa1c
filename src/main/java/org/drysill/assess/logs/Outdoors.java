package org.drysill.assess.logs;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorClimate;
import org.drysill.assess.readings.NearestReading;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.survey.OutdoorReading;
import org.drysill.survey.log.LogContent;
import org.drysill.survey.log.LoggedSeries;
import org.drysill.yaml.Moment;

/** Finds the outdoor air of a room's log: an outdoor log, else readings, else the climate. */
final class Outdoors {
  private final Home home;
  private final Optional<LogContent> log;
  private final ReadingRules rules;
  private final double coverage;

  /**
   * The outdoor air of a home.
   *
   * @param log the outdoor log, where it can be used
   * @param coverage least share of a room's time that a source must cover [1]
   */
  Outdoors(Home home, Optional<LogContent> log, ReadingRules rules, double coverage) {
    this.home = home;
    this.log = log;
    this.rules = rules;
    this.coverage = coverage;
  }

  /**
   * Outdoor air and where it comes from.
   *
   * @param said the source in words
   */
  record Beside(OutdoorSource source, String said, Trace trace) {}

  /** The trace of a room beside the best outdoor air that covers enough of it. */
  Beside beside(LogContent room) {
    return byLog(room).or(() -> byReadings(room)).orElseGet(() -> byClimate(room));
  }

  private Optional<Beside> byLog(LogContent room) {
    if (log.isEmpty()) {
      return Optional.empty();
    }
    LoggedSeries series = log.get().series();
    Grid grid = Grid.of(room.series(), series.binSeconds());
    OutdoorSteps steps = OutdoorSteps.of(series, grid);
    return enough(new Beside(OutdoorSource.LOG, "the outdoor log", Trace.of(room, grid, steps)));
  }

  private Optional<Beside> byReadings(LogContent room) {
    List<OutdoorReading> complete =
        home.survey().outdoorReadings().stream().filter(r -> r.humidity().isPresent()).toList();
    Grid grid = Grid.of(room.series(), 0);
    OutdoorSteps steps = OutdoorSteps.unknown(grid);
    for (int i = 0; i < grid.size(); i++) {
      int step = i;
      NearestReading.within(
              Optional.of(moment(local(grid, i, room.layout().zone()))),
              complete.stream().filter(r -> r.at().isPresent()).toList(),
              OutdoorReading::at,
              rules.pairing().withinHours())
          .ifPresent(
              r -> steps.put(step, r.temperature().value(), r.humidity().orElseThrow().value()));
    }
    return enough(
        new Beside(
            OutdoorSource.READINGS, "outdoor readings near in time", Trace.of(room, grid, steps)));
  }

  private Beside byClimate(LogContent room) {
    Grid grid = Grid.of(room.series(), 0);
    OutdoorSteps steps = OutdoorSteps.unknown(grid);
    for (int i = 0; i < grid.size(); i++) {
      int number = local(grid, i, room.layout().zone()).getMonthValue();
      OutdoorClimate.Month month = home.climate().months().get(number - 1);
      steps.put(i, month.temperature(), month.relativeHumidity().likely());
    }
    return new Beside(
        OutdoorSource.CLIMATE,
        "the months of the climate " + home.climate().name() + ", for want of an outdoor log",
        Trace.of(room, grid, steps));
  }

  private Optional<Beside> enough(Beside beside) {
    Trace trace = beside.trace();
    double all = trace.hours(i -> true);
    double paired = trace.hours(trace::isPaired);
    return all > 0 && paired >= coverage * all ? Optional.of(beside) : Optional.empty();
  }

  private static LocalDateTime local(Grid grid, int step, ZoneId zone) {
    return LocalDateTime.ofInstant(Instant.ofEpochSecond(grid.beginEpochS(step)), zone);
  }

  private static Moment moment(LocalDateTime at) {
    return new Moment(at.toLocalDate(), Optional.of(at.toLocalTime()));
  }
}
