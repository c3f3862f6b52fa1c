package org.drysill.report.rules;

import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.QuotedAirChange;
import org.drysill.report.words.Numbers;

/** Air-change figures that people are told, in words. */
final class Told {
  private Told() {}

  /** The figure with what it is a figure of. */
  static String words(Numbers numbers, QuotedAirChange quoted) {
    String meaning = quoted.meaning().replaceAll("\\.$", "");
    return airChange(numbers, quoted)
        + Numbers.JOIN
        + numbers.unit(Unit.AIR_CHANGE)
        + ": "
        + meaning;
  }

  /** The figure alone, without its unit. */
  static String airChange(Numbers numbers, QuotedAirChange quoted) {
    String bounds = numbers.bounds(quoted.airChange(), Unit.AIR_CHANGE);
    return bounds.isEmpty() ? numbers.spread(quoted.airChange(), Unit.AIR_CHANGE) : bounds;
  }
}
