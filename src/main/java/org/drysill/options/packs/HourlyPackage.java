package org.drysill.options.packs;

import org.drysill.options.packs.hours.YearOutcome;

/** A package hour by hour in each sample. */
final class HourlyPackage {
  /** Mornings in a year on which the wettest pane is seen to be wet. */
  final int[] mornings;

  /** True where no month of a wall or corner is at risk, by the mean of its hours. */
  final boolean[] sound;

  HourlyPackage(int samples) {
    mornings = new int[samples];
    sound = new boolean[samples];
  }

  /** What became of it in a sample. */
  void take(int sample, YearOutcome outcome) {
    mornings[sample] = outcome.wetMornings();
    sound[sample] = outcome.sound();
  }
}
