package org.drysill.options.packs.hours;

/**
 * A pane that is followed.
 *
 * @param pane the pane
 * @param zone the zone that it faces
 * @param most the most that the zone holds [kg/m³]
 * @param film its water
 */
record FollowedPane(PaneHours pane, int zone, double most, PaneHours.Film film) {
  FollowedPane(PaneHours pane, int zone, double most) {
    this(pane, zone, most, new PaneHours.Film());
  }

  boolean mayChange(int half) {
    return !film.isDry() || !pane.isDryUpTo(most, half);
  }

  void take(int half, double[] contents) {
    if (mayChange(half)) {
      pane.follow(film, half, contents, zone * RingYear.HALF_DAY);
    }
  }
}
