package org.drysill.survey.check;

import static org.drysill.survey.check.CheckList.each;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Optional;
import org.drysill.survey.Fan;
import org.drysill.survey.Logger;
import org.drysill.survey.Survey;
import org.drysill.survey.log.DateOrder;

/** What a survey says of a log can be followed when the log is read. */
final class LoggerChecks {
  private final CheckList list;

  private LoggerChecks(CheckList list) {
    this.list = list;
  }

  static void check(Survey survey, CheckList list) {
    LoggerChecks checks = new LoggerChecks(list);
    survey.outdoorLogger().ifPresent(logger -> checks.logger(logger, "outdoor_logger"));
    each(
        survey.rooms(),
        "rooms",
        (room, path) -> {
          room.logger().ifPresent(logger -> checks.logger(logger, path + ".logger"));
          each(room.fans(), path + ".fans", checks::fan);
        });
  }

  private void fan(Fan fan, String path) {
    each(
        fan.heatRecoveryTests(),
        path + ".heat_recovery_tests",
        (test, at) ->
            test.log().ifPresent(log -> logger(log.reduced(Optional.empty()), at + ".log")));
  }

  private void logger(Logger logger, String path) {
    logger.zone().ifPresent(zone -> zone(zone, path + ".zone"));
    logger
        .timePattern()
        .filter(pattern -> DateOrder.of(pattern).isEmpty())
        .ifPresent(
            pattern ->
                list.add(
                    SurveyCode.PATTERN_WITHOUT_DATE,
                    path + ".time_pattern",
                    CheckList.quote(pattern),
                    "a pattern with year, month and day, such as dd/MM/yyyy HH:mm"));
    if (!logger.hasFitDelimiter()) {
      mark(logger.delimiter().orElseThrow(), path + ".delimiter", "one character, or tab");
    }
    logger
        .decimalMark()
        .filter(mark -> !mark.equals(".") && !mark.equals(","))
        .ifPresent(mark -> mark(mark, path + ".decimal_mark", "\".\" or \",\""));
  }

  private void mark(String found, String key, String expected) {
    list.add(SurveyCode.NOT_A_MARK, key, CheckList.quote(found), expected);
  }

  private void zone(String written, String key) {
    try {
      ZoneId.of(written);
    } catch (DateTimeException unknown) {
      list.addUnknownZone(key, written, ZoneId.getAvailableZoneIds());
    }
  }
}
