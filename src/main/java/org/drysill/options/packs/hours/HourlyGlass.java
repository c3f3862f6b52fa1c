package org.drysill.options.packs.hours;

import org.drysill.physics.weather.HourlyYear;

/** What the panes that take water bear, in one state of them. */
public final class HourlyGlass {
  /** Hour by hour in the order of the ring, pane after pane [kg/m³]. */
  final double[] bears;

  private final int panes;
  private final double[][] least;

  /**
   * Panes.
   *
   * @param bears what each bears over the air outdoors, in the order of the ring [kg/m³]
   */
  public HourlyGlass(double[][] bears) {
    this.panes = bears.length;
    this.bears = new double[panes * HourlyYear.HOURS];
    this.least = new double[panes][];
    for (int p = 0; p < panes; p++) {
      least[p] = RingYear.least(bears[p]);
      for (int i = 0; i < HourlyYear.HOURS; i++) {
        this.bears[i * panes + p] = bears[p][i];
      }
    }
  }

  /** Where an hour begins. */
  int from(int hour) {
    return hour * panes;
  }

  /** The least that a pane bears in a half day [kg/m³]. */
  double least(int pane, int half) {
    return least[pane][half];
  }
}
