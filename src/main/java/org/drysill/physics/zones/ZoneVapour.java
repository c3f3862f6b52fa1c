package org.drysill.physics.zones;

/** Vapour in zones, and the water that settles in them. */
public final class ZoneVapour {
  private final double[] content;
  private final double[] settling;

  ZoneVapour(double[] content, double[] settling) {
    this.content = content;
    this.settling = settling;
  }

  /** Vapour content of a zone [kg/m³]. */
  public double content(int zone) {
    return content[zone];
  }

  /** What settles on a pane [kg/s]. */
  public double settling(int pane) {
    return settling[pane];
  }
}
