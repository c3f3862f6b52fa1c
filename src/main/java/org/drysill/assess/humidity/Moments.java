package org.drysill.assess.humidity;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.drysill.yaml.Moment;

/** When something was read, in words. */
final class Moments {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private Moments() {}

  /** Such as {@code " of 2026-01-22 09:40"}; empty where it is not written. */
  static String said(Optional<Moment> at) {
    return at.map(m -> " of " + m.date() + m.time().map(t -> " " + TIME.format(t)).orElse(""))
        .orElse("");
  }
}
