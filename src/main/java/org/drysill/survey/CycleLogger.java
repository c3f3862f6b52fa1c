package org.drysill.survey;

import java.util.Optional;
import org.drysill.survey.share.LeftOut;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Key;
import org.drysill.yaml.Shorthand;

/**
 * A log file of temperatures through the cycles of a heat recovery unit, every few seconds.
 *
 * @param file cSV file beside the survey
 * @param columns the names of its columns
 * @param timePattern pattern of its date and time
 * @param zone its time zone
 * @param delimiter its delimiter
 * @param decimalMark its decimal mark
 * @param temperatureUnit the unit of its temperatures
 */
@Shorthand("file")
public record CycleLogger(
    @Renamed(Renamed.As.FILE)
        @Key(about = "CSV file beside the survey", example = "logs/cycle.csv", file = true)
        String file,
    @LeftOut @Key(about = "The names of its columns") Optional<CycleColumns> columns,
    @Key(about = "Pattern of its date and time", example = "yyyy-MM-dd HH:mm:ss")
        Optional<String> timePattern,
    @Key(about = "Its time zone", example = "Europe/London") Optional<String> zone,
    @Key(about = "Its delimiter", example = ";") Optional<String> delimiter,
    @Key(about = "Its decimal mark", example = ",") Optional<String> decimalMark,
    @Key(about = "The unit of its temperatures", example = "F")
        Optional<TemperatureUnit> temperatureUnit) {

  /** The same file as a plain log of one of its columns: both are written alike. */
  public Logger reduced(Optional<String> temperature) {
    return new Logger(
        file,
        Optional.of(
            new LoggerColumns(
                columns.flatMap(CycleColumns::date),
                columns.flatMap(CycleColumns::time),
                temperature,
                Optional.empty(),
                Optional.empty())),
        timePattern,
        zone,
        delimiter,
        decimalMark,
        temperatureUnit,
        Optional.empty());
  }
}
