package org.drysill.report.words;

import org.drysill.assess.Unit;
import org.drysill.physics.Range;

/** Hears of every value that is put into words. */
@FunctionalInterface
public interface Ear {
  /** Hears nothing. */
  Ear NONE = (kept, unit, text) -> {};

  /**
   * A value was put into words.
   *
   * @param kept the value as it is kept, with its bounds where these are told too
   * @param unit the unit in which it is kept
   * @param text the words
   */
  void heard(Range kept, Unit unit, String text);
}
