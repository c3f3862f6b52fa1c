package org.drysill.assess.humidity;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.drysill.yaml.Moment;

/** When something was read, in words. */
final class Moments {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private Moments() {}

  /** Such as {@code " of 22 January 2026, 09:40"}; empty where it is not written. */
  static String said(Optional<Moment> at) {
    return at.map(
            m -> " of " + date(m.date()) + m.time().map(t -> ", " + TIME.format(t)).orElse(""))
        .orElse("");
  }

  /** The name of the month is that of its constant: no locale data of the platform is asked. */
  private static String date(LocalDate date) {
    String month = date.getMonth().name();
    return date.getDayOfMonth()
        + " "
        + month.charAt(0)
        + month.substring(1).toLowerCase(Locale.ROOT)
        + " "
        + date.getYear();
  }
}
