package org.drysill.survey;

import java.util.Optional;
import org.drysill.survey.share.LeftOut;
import org.drysill.survey.share.Renamed;
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
 * @param temperatureUnit the unit of its temperatures
 * @param instrument the id of the instrument
 */
@Shorthand("file")
public record Logger(
    @Renamed(Renamed.As.FILE)
        @Key(about = "CSV file beside the survey", example = "logs/kitchen.csv", file = true)
        String file,
    @LeftOut @Key(about = "The names of its columns") Optional<LoggerColumns> columns,
    @Key(about = "Pattern of its date and time", example = "yyyy-MM-dd HH:mm")
        Optional<String> timePattern,
    @Key(about = "Its time zone", example = "Europe/London") Optional<String> zone,
    @Key(about = "Its delimiter", example = ";") Optional<String> delimiter,
    @Key(about = "Its decimal mark", example = ",") Optional<String> decimalMark,
    @Key(about = "The unit of its temperatures", example = "F")
        Optional<TemperatureUnit> temperatureUnit,
    @Renamed(Renamed.As.INSTRUMENT) @Key(about = "The id of the instrument", example = "log1")
        Optional<String> instrument) {
  private static final String TAB = "tab";

  /** The delimiter as a character; empty where none is given. */
  public Optional<Character> delimiterMark() {
    return delimiter.map(text -> text.equalsIgnoreCase(TAB) ? '\t' : text.charAt(0));
  }

  /** The decimal mark as a character; empty where none is given. */
  public Optional<Character> decimalMarkCharacter() {
    return decimalMark.map(text -> text.charAt(0));
  }

  /** True where the delimiter is one character, or the word that stands for a tab. */
  public boolean hasFitDelimiter() {
    return delimiter.map(text -> text.length() == 1 || text.equalsIgnoreCase(TAB)).orElse(true);
  }
}
