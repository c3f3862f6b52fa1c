package org.drysill.assess.humidity;

import java.util.ArrayList;
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
        unread(),
        mean(
            "outdoor_temperature",
            "Mean outdoor temperature at the readings",
            basis,
            r -> r.outdoor().temperature()),
        simultaneous,
        byRoom.keySet().stream().map(RoomFacts::id).toList());
  }

  private Figure mean(String suffix, String name, Basis basis, Function<RoomAir, Figure> what) {
    Unit unit = what.apply(byRoom.values().iterator().next().get(0)).unit();
    return new Figure(
        "home." + suffix,
        name + " of the home",
        mean(what),
        unit,
        basis,
        () ->
            working(
                what,
                "Readings of one room count as one; errors are not divided by their number."));
  }

  private Range mean(Function<RoomAir, Figure> what) {
    double volume = byRoom.keySet().stream().mapToDouble(r -> r.volume().likely()).sum();
    return byRoom.entrySet().stream()
        .map(e -> mean(e.getValue(), what).times(e.getKey().volume().likely() / volume))
        .reduce(Range.exactly(0), Range::plus);
  }

  /** What a room that was not read may have: the mean, within the driest and the dampest room. */
  private Figure unread() {
    List<Range> rooms =
        byRoom.values().stream().map(own -> mean(own, RoomAir::excessPressure)).toList();
    Range bounds =
        new Range(
            rooms.stream().mapToDouble(Range::low).min().orElseThrow(),
            mean(RoomAir::excessPressure).likely(),
            rooms.stream().mapToDouble(Range::high).max().orElseThrow());
    return new Figure(
        "home.vapour_pressure_excess_unread",
        "Vapour pressure excess over outdoors of rooms that were not read",
        bounds,
        Unit.PASCAL,
        Basis.ASSUMED,
        () ->
            working(
                RoomAir::excessPressure,
                "Assumed of rooms without a reading. Bounds: the driest and the dampest room that"
                    + " was read, each with the errors of its instruments."));
  }

  private static Range mean(List<RoomAir> readings, Function<RoomAir, Figure> what) {
    return readings.stream()
        .map(r -> what.apply(r).value())
        .reduce(Range.exactly(0), Range::plus)
        .times(1.0 / readings.size());
  }

  private Working working(Function<RoomAir, Figure> what, String note) {
    List<Input> inputs = new ArrayList<>();
    byRoom.forEach(
        (room, own) -> {
          own.forEach(r -> inputs.add(Input.of("x(" + room.name() + ")", what.apply(r))));
          inputs.add(Input.of("V(" + room.name() + ")", room.volume()));
        });
    return new Working(
        "x = Σ V x(room) / Σ V over "
            + byRoom.size()
            + " of "
            + home.rooms().stream().filter(RoomFacts::heated).count()
            + " heated rooms, V the volume of a room",
        inputs,
        List.of(),
        Optional.of(note));
  }
}
