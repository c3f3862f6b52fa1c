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
import org.drysill.reference.surfaces.SurfaceDefaults;

/**
 * The indoor vapour that each room is judged with: read in it, else the mean of the rooms that were
 * read, else the upper limit of a humidity class.
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
    return usable(room).orElseGet(this::byClass);
  }

  /** True where the vapour of a room had to be assumed. */
  boolean isAssumed(RoomFacts room) {
    return of(room).basis() == Basis.ASSUMED;
  }

  /** What it rests on in one sentence. */
  public String sentence(RoomFacts room) {
    String tooWarm =
        read.of(room.id())
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
    if (rooms.stream().anyMatch(r -> usable(r).isEmpty())) {
      found.add(asTheClass());
    }
    return found;
  }

  private Optional<IndoorVapour> usable(RoomFacts room) {
    return read.of(room.id()).filter(this::isUsable);
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
