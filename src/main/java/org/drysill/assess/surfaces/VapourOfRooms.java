package org.drysill.assess.surfaces;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.RoomFacts;
import org.drysill.physics.Range;
import org.drysill.physics.moisture.HumidityClass;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.Sourced;
import org.drysill.reference.surfaces.SurfaceDefaults;

/**
 * The indoor vapour that each room is judged with: read in it, else the mean of the rooms that were
 * read, else the upper limit of a humidity class. A room without heating and reading has as much as
 * an unoccupied building may have: warm rooms tell nothing of it.
 */
public final class VapourOfRooms {
  private final IndoorVapours read;
  private final SurfaceDefaults defaults;

  /**
   * The vapour of rooms.
   *
   * @param read what was read
   * @param defaults what is taken where nothing was
   */
  public VapourOfRooms(IndoorVapours read, SurfaceDefaults defaults) {
    this.read = read;
    this.defaults = defaults;
  }

  /** The vapour of a room. */
  public IndoorVapour of(RoomFacts room) {
    return usable(room).orElseGet(() -> room.heated() ? byClass() : unheated());
  }

  /** True where the vapour of a room had to be assumed. */
  boolean isAssumed(RoomFacts room) {
    return of(room).basis() == Basis.ASSUMED;
  }

  /** What it rests on in one sentence. */
  public String sentence(RoomFacts room) {
    String tooWarm =
        known(room)
            .filter(v -> !isUsable(v))
            .map(
                v ->
                    " It was too warm outdoors (%s °C) for the readings to say what winter does."
                        .formatted(Words.number(v.outdoor())))
            .orElse("");
    return "%s: %s.%s".formatted(Words.capital(room.name()), said(of(room)), tooWarm);
  }

  /** What had to be taken for the vapour of these rooms. */
  List<Assumption> assumptions(List<RoomFacts> rooms) {
    List<Assumption> found = new ArrayList<>();
    List<RoomFacts> unread =
        rooms.stream().filter(r -> !read.isRead(r.id()) && usable(r).isPresent()).toList();
    if (!unread.isEmpty()) {
      found.add(asTheOthers(unread));
    }
    List<RoomFacts> untold = rooms.stream().filter(r -> usable(r).isEmpty()).toList();
    if (untold.stream().anyMatch(RoomFacts::heated)) {
      found.add(asTheClass());
    }
    List<RoomFacts> cold = untold.stream().filter(r -> !r.heated()).toList();
    if (!cold.isEmpty()) {
      found.add(asUnoccupied(cold));
    }
    return found;
  }

  private Optional<IndoorVapour> usable(RoomFacts room) {
    return known(room).filter(this::isUsable);
  }

  private Optional<IndoorVapour> known(RoomFacts room) {
    return room.heated() || read.isRead(room.id()) ? read.of(room.id()) : Optional.empty();
  }

  private boolean isUsable(IndoorVapour vapour) {
    return !vapour.isTooWarm(defaults.warmestForVapour().likely());
  }

  private Assumption asTheOthers(List<RoomFacts> unread) {
    return new Assumption(
        "surface.indoor_vapour_unread",
        "Moisture of the air in rooms that were not read: "
            + unread.stream().map(RoomFacts::name).collect(Collectors.joining(", ")),
        said(of(unread.get(0))),
        "air mixes through doors; the bounds are the driest and the dampest room that was read",
        "Read temperature and humidity in these rooms too.",
        new Citation(
            "Mean of the rooms that were read, weighted by their volume",
            Optional.empty(),
            Optional.empty(),
            How.ASSUMPTION));
  }

  private Assumption asTheClass() {
    return new Assumption(
        "surface.indoor_vapour",
        "Moisture of the indoor air by month",
        "upper limit of humidity class " + Words.whole(defaults.fallbackClass().likely()),
        "the editions of the standard rank dwellings differently, the class lies in the middle",
        "Read temperature and humidity indoors and outdoors together, in cold weather.",
        defaults.fallbackClass().source());
  }

  private Assumption asUnoccupied(List<RoomFacts> rooms) {
    return new Assumption(
        "surface.indoor_vapour_unheated",
        "Moisture of the air in rooms without heating: "
            + rooms.stream().map(RoomFacts::name).collect(Collectors.joining(", ")),
        said(unheated()),
        "they were not read in cold weather, and the air of heated rooms tells nothing of them",
        "Read temperature and humidity in these rooms and outdoors together, in cold weather.",
        defaults.unheatedClass().source());
  }

  private static String said(IndoorVapour vapour) {
    Range excess = vapour.excess();
    String bounds =
        excess.isSpread()
            ? " (%s to %s)".formatted(Words.whole(excess.low()), Words.whole(excess.high()))
            : "";
    return "%s%s Pa above outdoors at %s °C, from %s"
        .formatted(
            Words.whole(excess.likely()), bounds, Words.number(vapour.outdoor()), vapour.from());
  }

  private IndoorVapour byClass() {
    HumidityClass assumed = of(defaults.fallbackClass());
    return new IndoorVapour(
        Range.exactly(assumed.upperLimitPa(0).orElseThrow()),
        0,
        Basis.ASSUMED,
        "the upper limit of humidity class " + assumed.number(),
        Optional.empty(),
        List.of(defaults.fallbackClass().source()));
  }

  private IndoorVapour unheated() {
    double limit = of(defaults.unheatedClass()).upperLimitPa(0).orElseThrow();
    return new IndoorVapour(
        new Range(0, limit / 2, limit),
        0,
        Basis.ASSUMED,
        "the humidity class of unoccupied buildings",
        Optional.empty(),
        List.of(defaults.unheatedClass().source()));
  }

  private static HumidityClass of(Sourced number) {
    return Arrays.stream(HumidityClass.values())
        .filter(c -> c.number() == (int) number.likely())
        .findFirst()
        .orElseThrow();
  }
}
