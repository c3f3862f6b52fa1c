package org.drysill.assess.humidity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.humidity.HumidityResult.HomeAir;
import org.drysill.physics.Range;

/**
 * The mean air of the heated rooms, weighted by volume. Readings of a room count as one. Errors are
 * not divided by the number of readings: one instrument read them all, and its error is the same in
 * each.
 */
public final class HomeMean {
  private final Home home;
  private final Map<RoomFacts, List<RoomAir>> byRoom = new LinkedHashMap<>();
  private final boolean simultaneous;

  private HomeMean(Home home, List<RoomAir> readings) {
    this.home = home;
    List<RoomAir> heated =
        readings.stream().filter(r -> home.room(r.room()).orElseThrow().heated()).toList();
    List<RoomAir> best = heated.stream().filter(r -> r.outdoor().simultaneous()).toList();
    this.simultaneous = !best.isEmpty();
    for (RoomFacts room : home.rooms()) {
      List<RoomAir> own =
          (simultaneous ? best : heated).stream().filter(r -> r.room().equals(room.id())).toList();
      if (!own.isEmpty()) {
        byRoom.put(room, own);
      }
    }
  }

  /** The mean over the rooms of the readings; empty where no heated room was read. */
  public static Optional<HomeAir> of(Home home, List<RoomAir> readings) {
    HomeMean mean = new HomeMean(home, readings);
    return mean.byRoom.isEmpty() ? Optional.empty() : Optional.of(mean.air());
  }

  private HomeAir air() {
    Basis basis = simultaneous ? Basis.CALCULATED : Basis.ASSUMED;
    return new HomeAir(
        mean("temperature", "Mean air temperature", Basis.CALCULATED, RoomAir::temperature),
        mean("vapour_pressure", "Mean vapour pressure", Basis.CALCULATED, RoomAir::vapourPressure),
        mean("vapour_excess", "Mean vapour excess over outdoors", basis, RoomAir::excess),
        mean(
            "vapour_pressure_excess",
            "Mean vapour pressure excess over outdoors",
            basis,
            RoomAir::excessPressure),
        simultaneous,
        byRoom.keySet().stream().map(RoomFacts::id).toList());
  }

  private Figure mean(String suffix, String name, Basis basis, Function<RoomAir, Figure> what) {
    double volume = byRoom.keySet().stream().mapToDouble(r -> r.volume().likely()).sum();
    Range sum =
        byRoom.entrySet().stream()
            .map(e -> mean(e.getValue(), what).times(e.getKey().volume().likely() / volume))
            .reduce(Range.exactly(0), Range::plus);
    Unit unit = what.apply(byRoom.values().iterator().next().get(0)).unit();
    return new Figure(
        "home." + suffix, name + " of the home", sum, unit, basis, () -> working(what));
  }

  private static Range mean(List<RoomAir> readings, Function<RoomAir, Figure> what) {
    return readings.stream()
        .map(r -> what.apply(r).value())
        .reduce(Range.exactly(0), Range::plus)
        .times(1.0 / readings.size());
  }

  private Working working(Function<RoomAir, Figure> what) {
    List<Input> inputs =
        byRoom.values().stream()
            .flatMap(List::stream)
            .map(r -> Input.of("x(" + r.roomName() + ")", what.apply(r)))
            .toList();
    return new Working(
        "x = Σ V x(room) / Σ V over "
            + byRoom.size()
            + " of "
            + home.rooms().stream().filter(RoomFacts::heated).count()
            + " heated rooms, V the volume of a room",
        inputs,
        List.of(),
        Optional.of("Readings of one room count as one; errors are not divided by their number."));
  }
}
