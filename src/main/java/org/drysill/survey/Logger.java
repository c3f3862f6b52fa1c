package org.drysill.survey;

import java.util.Optional;
import org.drysill.yaml.Key;
import org.drysill.yaml.Shorthand;

/**
 * A log file of readings.
 *
 * @param file cSV file beside the survey
 * @param columns the names of its columns
 * @param timePattern pattern of its date and time
 * @param zone its time zone
 * @param delimiter its delimiter
 * @param decimalMark its decimal mark
 * @param instrument the id of the instrument
 */
@Shorthand("file")
public record Logger(
    @Key(about = "CSV file beside the survey", example = "logs/kitchen.csv", file = true)
        String file,
    @Key(about = "The names of its columns") Optional<LoggerColumns> columns,
    @Key(about = "Pattern of its date and time", example = "yyyy-MM-dd HH:mm")
        Optional<String> timePattern,
    @Key(about = "Its time zone", example = "Europe/London") Optional<String> zone,
    @Key(about = "Its delimiter", example = ";") Optional<String> delimiter,
    @Key(about = "Its decimal mark", example = ",") Optional<String> decimalMark,
    @Key(about = "The id of the instrument", example = "log1") Optional<String> instrument) {}
