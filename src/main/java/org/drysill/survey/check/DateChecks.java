package org.drysill.survey.check;

import static org.drysill.survey.check.CheckList.each;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.drysill.survey.Fan;
import org.drysill.survey.Filter;
import org.drysill.survey.Instrument;
import org.drysill.survey.Prices;
import org.drysill.survey.Room;
import org.drysill.survey.Survey;
import org.drysill.survey.TimelineEvent;
import org.drysill.yaml.Moment;

/** Dates stand in a sensible order around the day of the visit. */
final class DateChecks {
  private static final int MOST_DAYS_FROM_VISIT = 1;
  private static final int CALIBRATION_MONTHS = 12;

  /** A survey may be kept up to date after its visit, but not for long; judgement. */
  private static final int MOST_MONTHS_AFTER = 12;

  private final LocalDate visit;
  private final CheckList list;

  private DateChecks(LocalDate visit, CheckList list) {
    this.visit = visit;
    this.list = list;
  }

  static void check(Survey survey, CheckList list) {
    DateChecks checks = new DateChecks(survey.visit().date(), list);
    each(survey.visit().instruments(), "visit.instruments", checks::calibration);
    checks.timeline(survey.visit().timeline());
    each(survey.visit().timeline(), "visit.timeline", (e, at) -> checks.notLongAfter(e.date(), at));
    survey.prices().flatMap(Prices::date).ifPresent(day -> checks.notLongAfter(day, "prices"));
    each(survey.outdoorReadings(), "outdoor_readings", (r, path) -> checks.near(r.at(), path));
    each(survey.rooms(), "rooms", checks::room);
  }

  private void room(Room room, String path) {
    each(room.readings(), path + ".readings", (r, at) -> near(r.at(), at));
    each(
        room.windows(),
        path + ".windows",
        (w, at) -> each(w.readings(), at + ".readings", (r, in) -> near(r.at(), in)));
    each(
        room.coldSpots(),
        path + ".cold_spots",
        (s, at) -> each(s.readings(), at + ".readings", (r, in) -> near(r.at(), in)));
    each(room.fans(), path + ".fans", this::fan);
  }

  private void fan(Fan fan, String path) {
    fan.measuredFlow().ifPresent(f -> near(f.at(), path + ".measured_flow"));
    fan.boostFlow().ifPresent(f -> near(f.at(), path + ".boost_flow"));
    each(fan.heatRecoveryTests(), path + ".heat_recovery_tests", (t, at) -> near(t.at(), at));
    fan.filter()
        .flatMap(Filter::changed)
        .filter(this::isLongAfter)
        .ifPresent(day -> longAfter(day, path + ".filter.changed"));
  }

  private void near(Optional<Moment> at, String path) {
    at.map(Moment::date)
        .filter(day -> Math.abs(ChronoUnit.DAYS.between(visit, day)) > MOST_DAYS_FROM_VISIT)
        .ifPresent(
            day ->
                list.add(
                    SurveyCode.READING_FAR_FROM_VISIT,
                    path + ".at",
                    day.toString(),
                    "a day near the visit of " + visit));
  }

  private void notLongAfter(LocalDate day, String path) {
    if (isLongAfter(day)) {
      longAfter(day, path + ".date");
    }
  }

  private boolean isLongAfter(LocalDate day) {
    return day.isAfter(visit.plusMonths(MOST_MONTHS_AFTER));
  }

  private void longAfter(LocalDate day, String key) {
    list.add(
        SurveyCode.LONG_AFTER_VISIT,
        key,
        day.toString(),
        "a day up to twelve months after the visit of " + visit);
  }

  private void calibration(Instrument instrument, String path) {
    instrument.calibrated().ifPresent(day -> calibration(day, path + ".calibrated"));
  }

  private void calibration(LocalDate day, String key) {
    if (day.isAfter(visit)) {
      list.add(
          SurveyCode.CALIBRATED_AFTER_VISIT,
          key,
          day.toString(),
          "a calibration before the visit of " + visit);
    } else if (day.plusMonths(CALIBRATION_MONTHS).isBefore(visit)) {
      list.add(
          SurveyCode.CALIBRATION_OLD,
          key,
          day.toString(),
          "a calibration within the twelve months before the visit of " + visit);
    }
  }

  private void timeline(List<TimelineEvent> events) {
    for (int i = 1; i < events.size(); i++) {
      LocalDate earlier = events.get(i - 1).date();
      LocalDate day = events.get(i).date();
      if (day.isBefore(earlier)) {
        list.add(
            SurveyCode.TIMELINE_OUT_OF_ORDER,
            "visit.timeline[" + i + "].date",
            day.toString(),
            "a day that is not before " + earlier + " above it");
      }
    }
  }
}
