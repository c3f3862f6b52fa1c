package org.drysill.options.packs.hours;

/** A pane that is followed. */
final class FollowedPane {
  private final PaneHours pane;
  private final int zone;
  private final double[] most;
  private final PaneHours.Film film;

  /**
   * A dry pane.
   *
   * @param zone the zone that it faces
   * @param most the most that the zone holds in each sample [kg/m³]
   */
  FollowedPane(PaneHours pane, int zone, double[] most) {
    this.pane = pane;
    this.zone = zone;
    this.most = most;
    this.film = new PaneHours.Film(most.length);
  }

  /** Its water. */
  PaneHours.Film film() {
    return film;
  }

  boolean mayChange(int half) {
    return !film.isDry() || !pane.isDryUpTo(most, half);
  }

  void take(int half, ZoneHalves zones) {
    if (mayChange(half)) {
      pane.follow(film, half, zones, zone);
    }
  }
}
