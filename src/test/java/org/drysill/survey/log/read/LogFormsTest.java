package org.drysill.survey.log.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.drysill.survey.log.LogFixtures.in;
import static org.drysill.survey.log.LogFixtures.logger;
import static org.drysill.survey.log.LogFixtures.measured;
import static org.drysill.survey.log.LogFixtures.named;
import static org.drysill.survey.log.LogFixtures.read;
import static org.drysill.survey.log.LogFixtures.timed;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.drysill.survey.Logger;
import org.drysill.survey.TemperatureUnit;
import org.drysill.survey.log.Log;
import org.drysill.survey.log.LogCode;
import org.drysill.survey.log.LogContent;
import org.drysill.yaml.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The forms in which loggers write: all of them say 19.5 °C and 61 % at ten, 20 °C and 60 % after.
 */
class LogFormsTest {
  private static final Logger LOG = logger("log.csv");

  @TempDir private Path folder;

  private static void isTheRoom(Log log) {
    assertThat(log.problems()).isEmpty();
    LogContent content = log.content().orElseThrow();
    assertThat(content.quality().notes()).isEmpty();
    assertThat(content.figures().rowsUsed()).isEqualTo(2);
    assertThat(content.figures().first()).isEqualTo("2026-01-22T10:00:00Z");
    assertThat(content.figures().last()).isEqualTo("2026-01-22T10:10:00Z");
    assertThat(content.series().temperature().mean(0)).isCloseTo(19.5, within(1e-9));
    assertThat(content.series().humidity().mean(0)).isCloseTo(0.61, within(1e-9));
    assertThat(content.series().temperature().mean(1)).isCloseTo(20, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        // named columns among others
        "Id,Time,Dew point,Temp,RH\n1,2026-01-22 10:00,9,19.5,61\n2,2026-01-22 10:10,9,20,60\n",
        // the T and the Z of ISO 8601, an offset
        "timestamp,temperature,humidity\n2026-01-22T10:00:00Z,19.5,61\n2026-01-22T10:10:00Z,20,60\n",
        "timestamp,temperature,humidity\n2026-01-22T11:00+01:00,19.5,61\n2026-01-22T11:10+01:00,20,60\n",
        // seconds and milliseconds since 1970
        "ts,temp,hum\n1769076000,19.5,61\n1769076600,20,60\n",
        "ts,temp,hum\n1769076000000,19.5,61\n1769076600000,20,60\n",
        // decimal commas between semicolons, days first
        "Datum;Temperatur (°C);Feuchte (%)\n22.01.2026 10:00;19,5;61,0\n22.01.2026 10:10;20,0;60,0\n",
        // decimal commas within quotation marks between commas
        "Date,Temp,RH\n\"22/01/2026 10:00\",\"19,5\",\"61,0\"\n\"22/01/2026 10:10\",\"20,0\",\"60,0\"\n",
        // months first, half days
        "Date Time,Temp,RH\n01/22/2026 10:00:00 AM,19.5,61\n01/22/2026 10:10:00 AM,20,60\n",
        // tabs and bars
        "Date\tTemp\tRH\n2026-01-22 10:00\t19.5\t61\n2026-01-22 10:10\t20\t60\n",
        "Date|Temp|RH\n2026-01-22 10:00|19.5|61\n2026-01-22 10:10|20|60\n",
        // a number before each row, and no name above it
        "\"Date\",\"Temp\",\"RH\"\n\"1\",\"2026-01-22 10:00\",19.5,61\n\"2\",\"2026-01-22 10:10\",20,60\n",
        // a preamble and a line of units
        "Logger,L-17\nPlace,hall\n\nDate,Temp,RH\n,°C,%\n2026-01-22 10:00,19.5,61\n2026-01-22 10:10,20,60\n",
        // date and time apart
        "Date,Time,Temp,RH\n2026-01-22,10:00,19.5,61\n2026-01-22,10:10,20,60\n",
        // spaces, units, empty lines, line ends of another system, a comma too many
        "Date,Temp,RH\r\n2026-01-22 10:00, 19.5 °C, 61 %\r\n\r\n2026-01-22 10:10, 20 , 60\r\n",
        "Date,Temp,RH\n2026-01-22 10:00,19.5,61,\n2026-01-22 10:10,20,60,\n",
        // fractions for percent, Fahrenheit for Celsius
        "Date,Temp,RH\n2026-01-22 10:00,19.5,0.61\n2026-01-22 10:10,20,0.60\n",
        "Date,Temp (°F),RH\n2026-01-22 10:00,67.1,61\n2026-01-22 10:10,68,60\n",
        // the name of the month; a date in one piece; other languages
        "Date,Temp,RH\n22-Jan-2026 10:00,19.5,61\n22-Jan-2026 10:10,20,60\n",
        "Date,Temp,RH\n202601221000,19.5,61\n202601221010,20,60\n",
        "Horodatage;Température;Humidité\n2026-01-22 10:00;19,5;61\n2026-01-22 10:10;20;60\n",
        // an offset in the name of the column
        "\"Date Time, GMT+01:00\",Temp,RH\n2026-01-22 11:00,19.5,61\n2026-01-22 11:10,20,60\n",
        // newest first
        "Date,Temp,RH\n2026-01-22 10:10,20,60\n2026-01-22 10:00,19.5,61\n",
      })
  void the_same_room_reads_the_same_however_it_is_written(String text) {
    isTheRoom(read(folder, text));
  }

  @Test
  void encodings_are_recognised() {
    String text = "Zeit;Temp °C;RH\n22.01.2026 10:00;19,5;61\n22.01.2026 10:10;20;60\n";
    isTheRoom(read(folder, text, Charset.forName("windows-1252"), LOG));
    isTheRoom(read(folder, '\uFEFF' + text, StandardCharsets.UTF_8, LOG));
    isTheRoom(read(folder, '\uFEFF' + text, StandardCharsets.UTF_16LE, LOG));
    isTheRoom(read(folder, '\uFEFF' + text, StandardCharsets.UTF_16BE, LOG));
    isTheRoom(read(folder, text, StandardCharsets.UTF_16LE, LOG));
  }

  @Test
  void the_survey_settles_what_the_file_leaves_open() {
    String ambiguous = "Date,Temp,RH\n04/03/2026 10:00,19.5,61\n04/03/2026 10:10,20,60\n";
    assertThat(only(read(folder, ambiguous)).code()).isEqualTo(LogCode.DATES_AMBIGUOUS.code());
    assertThat(only(read(folder, ambiguous)).expected()).contains("dd/MM/yyyy");
    Log dayFirst = read(folder, ambiguous, timed("dd/MM/yyyy HH:mm", LOG));
    assertThat(dayFirst.content().orElseThrow().figures().first())
        .isEqualTo("2026-03-04T10:00:00Z");
    Log monthFirst = read(folder, ambiguous, timed("M/d/yyyy HH:mm", LOG));
    assertThat(monthFirst.content().orElseThrow().figures().first())
        .isEqualTo("2026-04-03T10:00:00Z");
    String warm = "Date,T,RH\n2026-01-22 10:00,67.1,61\n2026-01-22 10:10,68,60\n";
    assertThat(only(read(folder, warm)).code()).isEqualTo(LogCode.UNIT_AMBIGUOUS.code());
    isTheRoom(read(folder, warm, measured(TemperatureUnit.FAHRENHEIT, LOG)));
    String local = "Date,T,RH\n2026-01-22 11:00,19.5,61\n2026-01-22 11:10,20,60\n";
    isTheRoom(read(folder, local, in("Europe/Paris", LOG)));
  }

  @Test
  void the_order_of_dates_shows_where_a_day_passes() {
    StringBuilder text = new StringBuilder("Date,Temp,RH\n");
    for (int hour = 0; hour < 72; hour++) {
      text.append("0%d/02/2026 %02d:00,20,50%n".formatted(1 + hour / 24, hour % 24));
    }
    Log log = read(folder, text.toString());
    assertThat(log.content().orElseThrow().figures().last()).isEqualTo("2026-02-03T23:00:00Z");
  }

  @Test
  void one_file_serves_several_rooms() {
    String text =
        """
        Date,Hall T,Hall RH,Bath T,Bath RH
        2026-01-22 10:00,19.5,61,23,80
        2026-01-22 10:10,20,60,24,81
        """;
    isTheRoom(read(folder, text, named("Hall T", "Hall RH", "", LOG)));
    Log bath = read(folder, text, named("Bath T", "", "", LOG));
    assertThat(bath.content().orElseThrow().series().temperature().mean(0)).isEqualTo(23);
    assertThat(bath.content().orElseThrow().series().humidity().isLogged()).isFalse();
    assertThat(only(read(folder, text)).code()).isEqualTo(LogCode.SEVERAL_COLUMNS.code());
  }

  @Test
  void what_cannot_be_used_says_why_and_where() {
    Problem column =
        only(
            read(
                folder,
                "Logger 17\nDate,Temp,RH\n2026-01-22 10:00,19.5,61\n",
                named("Temmp", "RH", "", LOG)));
    assertThat(column.code()).isEqualTo(LogCode.NO_SUCH_COLUMN.code());
    assertThat(column.place().line()).isEqualTo(2);
    assertThat(column.suggestion()).contains("Temp");
    assertThat(column.severity()).isEqualTo(Problem.Severity.WARNING);
    assertThat(only(read(folder, "")).code()).isEqualTo(LogCode.NO_TABLE.code());
    assertThat(only(read(folder, "a,b\nc,d\n")).code()).isEqualTo(LogCode.NO_TABLE.code());
    assertThat(only(read(folder, "2026-01-22 10:00,19.5\n")).code())
        .isEqualTo(LogCode.COLUMN_NOT_FOUND.code());
    assertThat(only(read(folder, "Date,Lux\n2026-01-22 10:00,19.5\n")).code())
        .isEqualTo(LogCode.COLUMN_NOT_FOUND.code());
    assertThat(only(read(folder, "Date,Temp,Temp\n2026-01-22 10:00,19,20\n")).code())
        .isEqualTo(LogCode.SEVERAL_COLUMNS.code());
    assertThat(only(read(folder, "Date,Temp\n1970-01-01 00:00,19\n1970-01-01 00:10,19\n")).code())
        .isEqualTo(LogCode.NO_USABLE_ROW.code());
    byte[] archive = new byte[4000];
    for (int i = 0; i < archive.length; i++) {
      archive[i] = (byte) (i * 31 % 251);
    }
    assertThat(only(read(folder, archive, LOG)).code()).isEqualTo(LogCode.NOT_TEXT.code());
    Log gone =
        new LogReader(folder, org.drysill.survey.log.LogFixtures.LIMITS)
            .read(logger("nowhere.csv"), java.util.Optional.empty());
    assertThat(only(gone).code()).isEqualTo(LogCode.UNREADABLE.code());
  }

  private static Problem only(Log log) {
    assertThat(log.content()).isEmpty();
    assertThat(log.problems()).hasSize(1);
    return log.problems().get(0);
  }
}
