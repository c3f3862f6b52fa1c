package org.drysill.reference.climate;

import java.time.LocalDate;
import java.util.Locale;
import java.util.function.Function;

/** Weather files for tests, in the EPW layout, of invented weather. */
public final class EpwText {
  private EpwText() {}

  /** A header for a number of records an hour. */
  public static String header(int recordsPerHour) {
    return "LOCATION,Testham,-,Nowhere,invented,000000,52.0,-1.0,0.0,100.0\n"
        + "DESIGN CONDITIONS,0\n"
        + "TYPICAL/EXTREME PERIODS,0\n"
        + "GROUND TEMPERATURES,0\n"
        + "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0\n"
        + "COMMENTS 1,a \"comment with one quote\n"
        + "COMMENTS 2,\n"
        + "DATA PERIODS,1,"
        + recordsPerHour
        + ",Data,Sunday, 1/ 1,12/31\n";
  }

  /** A year of records. */
  public static String year(int year, int recordsPerHour, Function<Stamp, String> record) {
    StringBuilder text = new StringBuilder(header(recordsPerHour));
    LocalDate day = LocalDate.of(year, 1, 1);
    while (day.getYear() == year) {
      for (int hour = 1; hour <= 24; hour++) {
        for (int part = 1; part <= recordsPerHour; part++) {
          text.append(record.apply(new Stamp(day, hour, 60 * part / recordsPerHour))).append('\n');
        }
      }
      day = day.plusDays(1);
    }
    return text.toString();
  }

  /** A record with the fields that the program reads; the others are filled with zeros. */
  public static String record(
      Stamp stamp, double dryBulb, double dewPoint, double rh, double wind) {
    return String.format(
        Locale.ROOT,
        "%d,%d,%d,%d,%d,?9?9,%.1f,%.1f,%.1f,101325,0,0,300,0,0,0,0,0,0,0,180,%.1f,5,5",
        stamp.day().getYear(),
        stamp.day().getMonthValue(),
        stamp.day().getDayOfMonth(),
        stamp.hour(),
        stamp.minute(),
        dryBulb,
        dewPoint,
        rh,
        wind);
  }

  /**
   * When a record ends.
   *
   * @param day the day
   * @param hour 1 to 24
   * @param minute 1 to 60
   */
  public record Stamp(LocalDate day, int hour, int minute) {}
}
