package org.drysill.options.packs;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.assess.Assessment;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.model.ZonedHome;
import org.drysill.assess.model.ZonedHome.Zone;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.physics.flow.CombinedFlow;

/**
 * The zones that packages are reckoned on: the home as its readings leave it, else one zone with
 * the air that the survey gives it.
 *
 * @param home the zones
 * @param rooms the room of each zone, in the same order; empty where the home is one zone
 */
record HomeZones(ZonedHome home, List<RoomFacts> rooms) {
  /** Any temperature does where no pane takes water. */
  private static final double CELSIUS = 20;

  HomeZones {
    rooms = List.copyOf(rooms);
  }

  /** Empty where no outdoor air is known of, so that the vapour is not determined. */
  static Optional<HomeZones> of(Assessment assessment) {
    Optional<HomeZones> fitted =
        assessment.model().zones().map(home -> new HomeZones(home, rooms(assessment, home)));
    return fitted.or(() -> one(assessment.ventilation().provided()));
  }

  private static List<RoomFacts> rooms(Assessment assessment, ZonedHome home) {
    return home.zones().stream()
        .flatMap(z -> assessment.home().rooms().stream().filter(r -> r.id().equals(z.room())))
        .toList();
  }

  private static Optional<HomeZones> one(ProvidedAir air) {
    double supply = air.supply().likely();
    double extract = air.extract().likely();
    double leaks = air.infiltration().likely();
    return CombinedFlow.totalM3S(supply, extract, leaks) > 0
        ? Optional.of(new HomeZones(one(supply, extract, leaks), List.of()))
        : Optional.empty();
  }

  /** The home as one zone with these flows [m³/s]. */
  static ZonedHome one(double supply, double extract, double leaks) {
    return new ZonedHome(
        List.of(new Zone("", supply, extract, 1, 1, 1)),
        List.of(),
        List.of(),
        CombinedFlow.totalM3S(supply, extract, leaks),
        leaks,
        0,
        CELSIUS);
  }

  int size() {
    return home.zones().size();
  }

  /** The zone of a room; the hub for one that is none of the heated rooms. */
  int zoneOf(String room) {
    return IntStream.range(0, size())
        .filter(i -> home.zones().get(i).room().equals(room))
        .findFirst()
        .orElse(home.hub());
  }

  /** Parts of the rooms that people stay in, by floor area; of the hub where there are none. */
  double[] habitable() {
    return parts(true);
  }

  /** Equal parts of the wet rooms; of the hub where there are none. */
  double[] wet() {
    return parts(false);
  }

  private double[] parts(boolean habitable) {
    double[] parts = new double[size()];
    double all = 0;
    for (int i = 0; i < rooms.size(); i++) {
      RoomFacts room = rooms.get(i);
      parts[i] = habitable ? room.habitable() ? room.floorArea().likely() : 0 : room.wet() ? 1 : 0;
      all += parts[i];
    }
    if (all == 0) {
      parts[home.hub()] = 1;
      return parts;
    }
    for (int i = 0; i < parts.length; i++) {
      parts[i] /= all;
    }
    return parts;
  }
}
