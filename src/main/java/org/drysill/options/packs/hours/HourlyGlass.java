package org.drysill.options.packs.hours;

/** What the panes that take water bear, in one state of them. */
public final class HourlyGlass {
  /** By pane and hour of the ring [kg/m³]. */
  final double[][] bears;

  private final double[][] least;

  /**
   * Panes.
   *
   * @param bears what each bears over the air outdoors, in the order of the ring [kg/m³]
   */
  public HourlyGlass(double[][] bears) {
    this.bears = bears.clone();
    this.least = new double[bears.length][];
    for (int p = 0; p < bears.length; p++) {
      least[p] = RingYear.least(bears[p]);
    }
  }

  /** The least that a pane bears in a half day [kg/m³]. */
  double least(int pane, int half) {
    return least[pane][half];
  }
}
