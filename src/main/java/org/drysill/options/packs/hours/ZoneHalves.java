package org.drysill.options.packs.hours;

import org.drysill.physics.zones.ExcessLanes;

/**
 * Zones in samples that go through half days, hour by hour only where someone looks or a pane may
 * be wet. Whoever goes through a half day that others have gone through finds it done.
 */
final class ZoneHalves {
  private static final int HOURS = RingYear.HALF_DAY;

  private final ExcessLanes zones;
  private final HourlyGlass glass;
  private final double[] mostAtPane;
  private final double[][] contents;
  private int gone;
  private boolean filledSteady;

  ZoneHalves(ExcessLanes zones, HourlyGlass glass) {
    this.zones = zones;
    this.glass = glass;
    this.mostAtPane = new double[zones.panes()];
    for (int p = 0; p < mostAtPane.length; p++) {
      mostAtPane[p] = zones.mostAtPane(p);
    }
    this.contents = new double[zones.zones() * HOURS][zones.lanes()];
    restart();
  }

  /** Back to the steady state. */
  void restart() {
    zones.restart();
    filledSteady = false;
    gone = -1;
  }

  /** The most that a zone holds in a sample [kg/m³]. */
  double most(int zone, int lane) {
    return zones.most(zone, lane);
  }

  /** Contents of a zone in an hour of the half day that was followed, by sample [kg/m³]. */
  double[] contents(int zone, int hour) {
    return contents[zone * HOURS + hour];
  }

  /** Goes through a half day at which nobody looks. */
  void pass(int half) {
    if (gone == half) {
      return;
    }
    gone = half;
    if (mayBeWet(half)) {
      filledSteady = false;
      for (int i = half * HOURS; i < (half + 1) * HOURS; i++) {
        zones.step(glass.bears, glass.from(i));
      }
    } else if (!zones.isSteady()) {
      filledSteady = false;
      zones.skip();
    }
  }

  /** Goes through a half day and notes the contents. */
  void follow(int half) {
    if (gone == half) {
      return;
    }
    gone = half;
    boolean wet = mayBeWet(half);
    if (!wet && zones.isSteady()) {
      fillSteady();
      return;
    }
    filledSteady = false;
    for (int k = 0; k < HOURS; k++) {
      if (wet) {
        zones.step(glass.bears, glass.from(half * HOURS + k));
      } else {
        zones.step();
      }
      note(k);
    }
  }

  private void note(int hour) {
    for (int z = 0; z < zones.zones(); z++) {
      zones.contents(z, contents(z, hour));
    }
  }

  private boolean mayBeWet(int half) {
    for (int p = 0; p < mostAtPane.length; p++) {
      if (mostAtPane[p] > glass.least(p, half)) {
        return true;
      }
    }
    return false;
  }

  private void fillSteady() {
    if (!filledSteady) {
      for (int k = 0; k < HOURS; k++) {
        note(k);
      }
      filledSteady = true;
    }
  }
}
