package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Basis;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.model.HomeState;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.IndoorVapour;
import org.drysill.assess.surfaces.RoomLimits.PlaceLimits;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.VapourOfRooms;
import org.drysill.assess.surfaces.months.MonthAir;
import org.drysill.assess.surfaces.months.MonthLimit;
import org.drysill.options.Sureness.InputKind;
import org.drysill.options.draws.Doubt;
import org.drysill.options.draws.Draws;
import org.drysill.physics.Range;
import org.drysill.physics.samples.TwoPieceNormal;
import org.drysill.reference.surfaces.SurfaceDefaults;

/**
 * What rooms hold and what their surfaces bear in each sample.
 *
 * <p>Temperature factors lie within their ranges, those of one window or corner together; outdoor
 * humidity within that of the climate. The mean vapour excess of a room follows the state of the
 * home; that of a room whose excess was logged, and of all where the readings do not tell rooms
 * apart, its own range.
 */
final class SampledSurfaces {
  private final Assessment assessment;
  private final HomeZones zones;
  private final Draws draws;
  private final Optional<List<HomeState>> states;
  private final VapourOfRooms vapours;
  private final double[] outdoors;
  private final List<Doubt> doubts = new ArrayList<>();
  private final Map<String, double[]> levels = new LinkedHashMap<>();
  private final IdentityHashMap<RoomState, SampledLimits> known = new IdentityHashMap<>();

  SampledSurfaces(
      Assessment assessment,
      HomeZones zones,
      SurfaceDefaults defaults,
      Draws draws,
      Optional<List<HomeState>> states) {
    this.assessment = assessment;
    this.zones = zones;
    this.draws = draws;
    this.states = states;
    this.vapours = new VapourOfRooms(assessment.vapour(), defaults);
    this.outdoors = draws.of("climate.humidity");
    if (assessment.home().climate().months().stream()
        .anyMatch(m -> m.relativeHumidity().isSpread())) {
      doubts.add(
          new Doubt(
              "climate.humidity",
              InputKind.CLIMATE,
              Optional.empty(),
              "the humidity outdoors",
              Basis.PUBLISHED,
              "the months of the reference climate",
              boxed(outdoors)));
    }
    for (RoomFacts room : assessment.home().rooms()) {
      levels.put(room.id(), level(room));
    }
    assessment.condensation().places().forEach(this::doubt);
  }

  /** The mean excess of a room in each sample, by today's likely one [1]. */
  double[] level(RoomState room) {
    return levels.get(room.limits().room());
  }

  /** What a room in a state bears. */
  SampledLimits limits(RoomState room) {
    return known.computeIfAbsent(room, this::found);
  }

  /** By what the vapour outdoors is more than is likely in each month of a sample [1]. */
  double[] outdoorTimes(int sample) {
    return assessment.home().climate().months().stream()
        .map(MonthAir::outdoorVapour)
        .mapToDouble(v -> Math.max(0, TwoPieceNormal.at(v, outdoors[sample])) / v.likely())
        .toArray();
  }

  /** How far off the temperature factor of a place is in each sample. */
  double[] deviates(PlaceLimits place) {
    return draws.of(factor(place.item()));
  }

  /** What is not known of them. */
  List<Doubt> doubts() {
    return List.copyOf(doubts);
  }

  private double[] level(RoomFacts room) {
    IndoorVapour vapour = vapours.of(room);
    if (states.isPresent() && !isLogged(vapour)) {
      int zone = zones.zoneOf(room.id());
      return states.get().stream().mapToDouble(s -> s.excess().get(zone)).toArray();
    }
    Range excess = vapour.excess();
    if (!excess.isSpread() || excess.likely() <= 0) {
      return IntStream.range(0, draws.samples()).mapToDouble(s -> 1).toArray();
    }
    String id = "excess." + (isLogged(vapour) ? room.id() : vapour.figure().orElse("home"));
    double[] level =
        Arrays.stream(draws.of(id))
            .map(z -> Math.max(0, TwoPieceNormal.at(excess, z)) / excess.likely())
            .toArray();
    if (doubts.stream().noneMatch(d -> d.id().equals(id))) {
      doubts.add(
          new Doubt(
              id,
              InputKind.EXCESS,
              Optional.of(room.id()),
              "how much moister the air of the " + room.name() + " is than outdoors",
              vapour.basis(),
              vapour.from(),
              boxed(level)));
    }
    return level;
  }

  private boolean isLogged(IndoorVapour vapour) {
    return assessment.logs().rooms().stream()
        .map(LoggedRoom::excessPressure)
        .anyMatch(f -> vapour.figure().equals(Optional.of(f.id())));
  }

  private void doubt(ColdPlace place) {
    String id = factor(place.item());
    double[] deviates = draws.of(id);
    Range factor = place.factor().figure().value();
    if (factor.isSpread() && doubts.stream().noneMatch(d -> d.id().equals(id))) {
      doubts.add(
          new Doubt(
              id,
              InputKind.SURFACE,
              Optional.of(place.item()),
              "how cold the surface is: " + place.roomName() + ", " + place.name(),
              place.factor().figure().basis(),
              place.factor().source().words(),
              boxed(deviates)));
    }
  }

  private static String factor(String item) {
    return "factor." + item;
  }

  private SampledLimits found(RoomState room) {
    List<PlaceLimits> places = room.limits().places();
    List<double[]> deviates = places.stream().map(this::deviates).toList();
    SampledLimits limits = new SampledLimits(draws.samples());
    IntStream.range(0, draws.samples())
        .parallel()
        .forEach(
            s -> {
              for (int p = 0; p < places.size(); p++) {
                boolean opaque = places.get(p).surface() == SurfaceClass.OPAQUE;
                lower(
                    opaque ? limits.mould[s] : limits.wet[s],
                    places.get(p),
                    deviates.get(p)[s],
                    outdoors[s]);
              }
            });
    return limits;
  }

  private static void lower(double[] limits, PlaceLimits place, double cold, double moist) {
    double factor = TwoPieceNormal.at(place.factor(), cold, 0, 1);
    for (int m = 0; m < limits.length; m++) {
      MonthLimit month = place.months().get(m);
      double vapour = Math.max(0, TwoPieceNormal.at(month.outdoorVapour(), moist));
      limits[m] = Math.min(limits[m], place.ratio(m, factor, vapour));
    }
  }

  private static List<Double> boxed(double[] values) {
    return Arrays.stream(values).boxed().toList();
  }
}
