package org.drysill.options.packs;

import java.util.List;
import org.drysill.assess.Assessment;
import org.drysill.assess.OutdoorHours;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.surfaces.VapourOfRooms;
import org.drysill.assess.surfaces.year.YearsAgain;
import org.drysill.options.OptionsBasis;
import org.drysill.options.packs.FabricStates.PaneState;
import org.drysill.physics.air.MoistAir;

/** What a home is hour by hour whatever is done to it: its hours outdoors, its air, its vapour. */
final class HomeHours {
  static final double SECONDS_PER_HOUR = 3600;

  private final YearsAgain years;
  private final double[] stores;
  private final VapourOfRooms vapours;
  private final List<RoomFacts> rooms;
  private final double contentPerPa;

  HomeHours(Assessment assessment, OptionsBasis basis, HomeZones zones) {
    this.years =
        new YearsAgain(
            OutdoorHours.of(assessment.home().climate(), basis.tables().hours().weather()),
            basis.tables());
    this.stores = stores(assessment, zones, basis.defaults().store().likely());
    this.vapours = new VapourOfRooms(assessment.vapour(), basis.tables().defaults());
    this.rooms = assessment.home().rooms();
    this.contentPerPa = MoistAir.vapourContentKgM3(zones.home().celsius(), 1);
  }

  /** The years of its surfaces. */
  YearsAgain years() {
    return years;
  }

  /** What stores vapour in each zone [m³]. */
  double[] stores() {
    return stores.clone();
  }

  /** Likely vapour excess of a room today by hour [Pa]. */
  double[] excess(RoomState state) {
    RoomFacts room =
        rooms.stream().filter(r -> r.id().equals(state.limits().room())).findFirst().orElseThrow();
    return years.excess(vapours.of(room)::excessAt);
  }

  /** What a pane bears over the air outdoors by hour [kg/m³]. */
  double[] bears(PaneState pane) {
    double[] bears = years.bears(pane.factor(), pane.setpoint());
    for (int h = 0; h < bears.length; h++) {
      bears[h] *= contentPerPa;
    }
    return bears;
  }

  /** What the air of each zone holds; of the home as one zone the air of all heated rooms. */
  private static double[] stores(Assessment assessment, HomeZones zones, double times) {
    List<RoomFacts> rooms = zones.rooms();
    return rooms.isEmpty()
        ? new double[] {times * assessment.home().volume().likely()}
        : rooms.stream().mapToDouble(r -> times * r.volume().likely()).toArray();
  }
}
