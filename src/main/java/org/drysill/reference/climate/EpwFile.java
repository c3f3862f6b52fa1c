package org.drysill.reference.climate;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.drysill.reference.climate.EpwProblems.Spot;
import org.drysill.reference.climate.HourlyWeather.Hour;

/**
 * Reads an hourly weather file in the EPW layout, by its published data dictionary (seen): eight
 * header lines, then one comma-separated record an interval. Codes for missing values are honoured,
 * relative humidities above 100 % taken as 100 and counted, leap days and several records an hour
 * allowed. The file must cover all twelve months.
 */
public final class EpwFile {
  private static final int HEADER_LINES = 8;

  private final EpwProblems problems;
  private final String fileName;
  private final List<Hour> hours = new ArrayList<>();
  private int supersaturated;

  private EpwFile(String fileName) {
    this.fileName = fileName;
    this.problems = new EpwProblems(fileName);
  }

  /**
   * Reads a file.
   *
   * @param text its text
   * @param fileName the name that problems are reported under
   */
  public static WeatherReading read(String text, String fileName) {
    return new EpwFile(fileName).read(text.startsWith("\uFEFF") ? text.substring(1) : text);
  }

  private WeatherReading read(String text) {
    Optional<EpwHeader> header = EpwHeader.of(text, HEADER_LINES, problems);
    header.ifPresent(h -> readRecords(h.rest()));
    if (problems.isEmpty() && header.isPresent()) {
      new EpwCoverage(hours, header.get().recordsPerHour())
          .check(problems, HEADER_LINES + hours.size());
    }
    return new WeatherReading(
        problems.isEmpty() ? header.map(this::weather) : Optional.empty(), problems.all());
  }

  private HourlyWeather weather(EpwHeader header) {
    return new HourlyWeather(
        fileName, header.place(), header.recordsPerHour(), hours, supersaturated);
  }

  private void readRecords(String rest) {
    try {
      CsvReader.builder()
          .allowExtraFields(true)
          .allowMissingFields(true)
          .ofCsvRecord(rest)
          .forEach(this::readRecord);
    } catch (CsvParseException broken) {
      problems.add(
          EpwCode.MALFORMED,
          new Spot(HEADER_LINES + 1 + hours.size(), 1, "", ""),
          "a row that cannot be taken apart",
          "fields between commas, as many in each row");
    }
  }

  private void readRecord(CsvRecord csv) {
    int line = HEADER_LINES + Math.toIntExact(csv.getStartingLineNumber());
    EpwRow row = new EpwRow(line, csv.getFields(), problems);
    if (row.isComplete()) {
      hours.add(hour(row));
    }
  }

  private Hour hour(EpwRow row) {
    OptionalDouble humidity = row.value(EpwField.RELATIVE_HUMIDITY);
    if (humidity.orElse(0) > 1) {
      supersaturated++;
      humidity = OptionalDouble.of(1);
    }
    return new Hour(
        whole(row, EpwField.MONTH),
        whole(row, EpwField.DAY),
        whole(row, EpwField.HOUR),
        row.value(EpwField.DRY_BULB),
        row.value(EpwField.DEW_POINT),
        humidity,
        row.value(EpwField.PRESSURE),
        row.value(EpwField.WIND_SPEED));
  }

  private static int whole(EpwRow row, EpwField field) {
    return (int) row.value(field).orElse(0);
  }
}
