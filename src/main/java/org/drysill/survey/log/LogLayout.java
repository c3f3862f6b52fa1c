package org.drysill.survey.log;

import java.time.ZoneId;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.drysill.survey.TemperatureUnit;

/**
 * How the file of a log was taken to be written, so that a reader can see what was recognised and
 * what was taken for granted.
 *
 * @param encoding name of its encoding
 * @param delimiter what stands between its fields
 * @param decimalMark its decimal mark
 * @param headerLine the line with the names of the columns, from 1
 * @param columns the name of the column by what it holds, such as {@code temperature}
 * @param dates the order of day, month and year
 * @param zone the time zone of its clock
 * @param zoneStated whether the survey or the file itself says so; where not, the zone is assumed
 * @param temperatureUnit unit of its temperatures
 * @param unitStated whether the survey or a name of a column says so
 * @param humidityAsFraction whether relative humidity runs to 1 instead of 100
 */
public record LogLayout(
    String encoding,
    char delimiter,
    char decimalMark,
    int headerLine,
    Map<String, String> columns,
    DateOrder dates,
    ZoneId zone,
    boolean zoneStated,
    TemperatureUnit temperatureUnit,
    boolean unitStated,
    boolean humidityAsFraction) {
  /** Copies the map. */
  public LogLayout {
    columns = Collections.unmodifiableMap(new LinkedHashMap<>(columns));
  }

  /** The same with other columns. */
  public LogLayout withColumns(Map<String, String> names) {
    return new LogLayout(
        encoding,
        delimiter,
        decimalMark,
        headerLine,
        names,
        dates,
        zone,
        zoneStated,
        temperatureUnit,
        unitStated,
        humidityAsFraction);
  }
}
