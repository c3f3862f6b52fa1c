package org.drysill.assess.surfaces;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.RoomFacts;
import org.drysill.physics.Range;
import org.drysill.physics.moisture.HumidityClass;
import org.drysill.reference.surfaces.SurfaceDefaults;

/**
 * The indoor vapour that each room is judged with: read where it was, else the upper limit of a
 * humidity class.
 */
final class VapourOfRooms {
  private final IndoorVapours read;
  private final SurfaceDefaults defaults;

  VapourOfRooms(IndoorVapours read, SurfaceDefaults defaults) {
    this.read = read;
    this.defaults = defaults;
  }

  /** The vapour of a room. */
  IndoorVapour of(RoomFacts room) {
    return read.of(room.id()).filter(this::isUsable).orElseGet(this::byClass);
  }

  /** True where the vapour of a room had to be assumed. */
  boolean isAssumed(RoomFacts room) {
    return of(room).basis() == Basis.ASSUMED;
  }

  /** What it rests on in one sentence. */
  String sentence(RoomFacts room) {
    String tooWarm =
        read.of(room.id())
            .filter(v -> !isUsable(v))
            .map(
                v ->
                    " It was too warm outdoors (%s °C) for the readings to say what winter does."
                        .formatted(Words.number(v.outdoor())))
            .orElse("");
    IndoorVapour vapour = of(room);
    return "%s: %s Pa above outdoors at %s °C, from %s.%s"
        .formatted(
            Words.capital(room.name()),
            Words.whole(vapour.excess().likely()),
            Words.number(vapour.outdoor()),
            vapour.from(),
            tooWarm);
  }

  private boolean isUsable(IndoorVapour vapour) {
    return !vapour.isTooWarm(defaults.warmestForVapour().likely());
  }

  private IndoorVapour byClass() {
    int number = (int) defaults.fallbackClass().likely();
    HumidityClass assumed =
        Arrays.stream(HumidityClass.values())
            .filter(c -> c.number() == number)
            .findFirst()
            .orElseThrow();
    double limit = assumed.upperLimitPa(0).orElseThrow();
    return new IndoorVapour(
        Range.exactly(limit),
        0,
        Basis.ASSUMED,
        "the upper limit of humidity class " + assumed.number(),
        Optional.empty(),
        List.of(defaults.fallbackClass().source()));
  }
}
