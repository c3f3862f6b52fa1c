package org.drysill.options.money;

import org.drysill.assess.RoomFacts;
import org.drysill.options.site.Candidate;
import org.drysill.options.site.Site;
import org.drysill.reference.measures.OptionDefaults;
import org.drysill.reference.measures.PriceUnit;
import org.drysill.survey.Wall;
import org.drysill.survey.Window;

/**
 * How many units of its price a measure needs.
 *
 * @param side a side of a window that was not measured [m]
 */
record Areas(double side) {
  static Areas of(OptionDefaults defaults) {
    return new Areas(defaults.windowSide().likely());
  }

  /** Area of a window [m²]. */
  double of(Window window) {
    return window.width().map(q -> q.value()).orElse(side)
        * window.height().map(q -> q.value()).orElse(side);
  }

  double count(Candidate candidate, PriceUnit unit) {
    return switch (unit) {
      case PAIR, HOME -> 1;
      case EACH, WINDOW -> candidate.sites().size();
      case ROOM -> Math.max(1, candidate.rooms().size());
      case SQUARE_METRE -> area(candidate);
    };
  }

  private double area(Candidate candidate) {
    double windows =
        candidate.sites().stream().flatMap(s -> s.window().stream()).mapToDouble(this::of).sum();
    boolean walls = candidate.sites().stream().map(Site::spot).anyMatch(s -> s.isPresent());
    return walls
        ? candidate.rooms().stream().mapToDouble(Areas::outsideWall).sum()
        : Math.max(1, windows);
  }

  /** The built-up walls of a room; one side of a square room where none was surveyed [m²]. */
  static double outsideWall(RoomFacts room) {
    double surveyed =
        room.room().walls().stream()
            .map(Wall::area)
            .flatMap(a -> a.stream())
            .mapToDouble(q -> q.value())
            .sum();
    return surveyed > 0 ? surveyed : Math.sqrt(room.floorArea().likely()) * room.height().likely();
  }
}
