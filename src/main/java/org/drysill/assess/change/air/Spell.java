package org.drysill.assess.change.air;

import java.util.Locale;

/**
 * Over what a mean of air was taken.
 *
 * @param logged true for a log, false for the readings of a visit
 * @param days time that is covered indoors and outdoors [d]; 0 for readings
 * @param gapShare share of the time from its start to its end without readings
 */
public record Spell(boolean logged, double days, double gapShare) {
  /** The moment of a visit. */
  static Spell readings() {
    return new Spell(false, 0, 0);
  }

  /** Days to one decimal, as they are printed and compared. */
  double roundedDays() {
    return Math.round(days * 10) / 10.0;
  }

  /** In words, such as {@code a log of 13.9 days}. */
  public String said() {
    return logged
        ? String.format(Locale.ROOT, "a log of %.1f days", roundedDays())
        : "the readings of the visit";
  }
}
