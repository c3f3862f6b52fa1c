package org.drysill.options.repair;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.drysill.assess.Assessment;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.model.MoistureModelResult;
import org.drysill.assess.surfaces.IndoorVapours;
import org.drysill.assess.surfaces.SurfaceAssessor;
import org.drysill.options.OptionsBasis;
import org.drysill.options.effect.ScaledVapour;
import org.drysill.options.effect.Studied;
import org.drysill.options.packs.RepairedZones;
import org.drysill.physics.Range;

/**
 * A home before and after its defects are mended.
 *
 * @param today what its survey means
 * @param then what it would mean with all of them mended
 */
public record RepairedHome(Assessment today, Assessment then) {

  /**
   * The home with its defects mended.
   *
   * @param today what its survey means
   * @param basis how its surfaces are judged
   * @param repairs what is mended, each with what it does by itself
   * @return empty where nothing is mended, or no outdoor air is known of
   */
  public static Optional<RepairedHome> of(
      Assessment today, OptionsBasis basis, List<Studied> repairs) {
    return Optional.of(repairs)
        .filter(all -> !all.isEmpty())
        .flatMap(all -> RepairedZones.of(today, basis, all))
        .map(zones -> new RepairedHome(today, then(today, basis, repairs, zones)));
  }

  /** As it was found, but with its fans as they are once mended. */
  public Assessment asFound() {
    return new Assessment(
        then.home(),
        today.ventilation(),
        today.humidity(),
        today.logs(),
        today.loggedAir(),
        today.moisture(),
        today.vapour(),
        today.condensation(),
        today.loggedSurfaces(),
        today.elements(),
        today.model(),
        today.recovery(),
        today.change(),
        today.timeline(),
        today.cautions(),
        today.assumptions());
  }

  private static Assessment then(
      Assessment today, OptionsBasis basis, List<Studied> repairs, RepairedZones zones) {
    Home home = RepairedFans.of(today.home(), repairs);
    Range ofHome = ofHome(today.home(), zones);
    IndoorVapours vapour = new ScaledVapour(today).times(zones::ratio, ofHome);
    return new Assessment(
        home,
        RepairedAir.of(today, repairs),
        RepairedHumidity.of(today.humidity(), ofHome),
        today.logs(),
        today.loggedAir(),
        RepairedWater.of(today, basis, repairs),
        vapour,
        SurfaceAssessor.assess(home, vapour, basis.tables()),
        today.loggedSurfaces(),
        today.elements(),
        model(today.model(), zones),
        today.recovery(),
        today.change(),
        today.timeline(),
        today.cautions(),
        today.assumptions());
  }

  /** What the readings tell stays; zones and states are those of the home as it is then. */
  private static MoistureModelResult model(MoistureModelResult today, RepairedZones zones) {
    return new MoistureModelResult(
        today.silent(),
        today.rooms(),
        today.unknowns(),
        today.glass(),
        today.together(),
        today.split(),
        today.zones().map(z -> zones.likely()),
        today.states().after(zones),
        today.assumptions());
  }

  /** The mean of the heated rooms by volume; of all rooms where none is heated. */
  private static Range ofHome(Home home, RepairedZones zones) {
    List<RoomFacts> heated = home.rooms().stream().filter(RoomFacts::heated).toList();
    List<RoomFacts> rooms = heated.isEmpty() ? home.rooms() : heated;
    return new Range(
        mean(rooms, r -> zones.ratio(r.id()).low()),
        mean(rooms, r -> zones.ratio(r.id()).likely()),
        mean(rooms, r -> zones.ratio(r.id()).high()));
  }

  private static double mean(List<RoomFacts> rooms, ToDoubleFunction<RoomFacts> of) {
    double volume = 0;
    double sum = 0;
    for (RoomFacts room : rooms) {
      volume += room.volume().likely();
      sum += room.volume().likely() * of.applyAsDouble(room);
    }
    return sum / volume;
  }
}
