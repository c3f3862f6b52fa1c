package org.drysill.options.packs.hours;

import java.util.List;
import org.drysill.physics.zones.ExcessSteps;
import org.drysill.physics.zones.Pane;

/** Zones that go through half days, hour by hour only where someone looks or a pane may be wet. */
final class ZoneHalves {
  private static final int HOURS = RingYear.HALF_DAY;

  private final ExcessSteps zones;
  private final HourlyGlass glass;
  private final double[] mostAtPane;
  private final double[] contents;
  private boolean filledSteady;

  ZoneHalves(ExcessSteps zones, List<Pane> panes, HourlyGlass glass) {
    this.zones = zones;
    this.glass = glass;
    this.mostAtPane = panes.stream().mapToDouble(p -> zones.most(p.zone())).toArray();
    this.contents = new double[zones.zones() * HOURS];
  }

  /** Contents of the last half day that was followed [kg/m³]: zone after zone, hour by hour. */
  double[] contents() {
    return contents;
  }

  /** Goes through a half day at which nobody looks. */
  void pass(int half) {
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
      for (int z = 0; z < zones.zones(); z++) {
        contents[z * HOURS + k] = zones.content(z);
      }
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
      for (int i = 0; i < contents.length; i++) {
        contents[i] = zones.content(i / HOURS);
      }
      filledSteady = true;
    }
  }
}
