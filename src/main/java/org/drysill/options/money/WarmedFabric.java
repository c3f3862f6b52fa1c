package org.drysill.options.money;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.elements.WallWithin;
import org.drysill.options.OptionsBasis;
import org.drysill.options.site.Candidate;
import org.drysill.options.site.WallsTold;
import org.drysill.physics.Range;
import org.drysill.reference.Spread;
import org.drysill.survey.Wall;
import org.drysill.survey.Window;

/**
 * By how much less heat windows and walls lose with a measure, Σ A·(U − U') [W/K]. A wall is that
 * whose price is paid: the built-up walls of a room, each by its layers; else one side of it. Where
 * no layers are known the U-value is that of such walls as the survey names; of others nothing is
 * said.
 */
record WarmedFabric(Assessment assessment, OptionsBasis basis) {
  private static final Range ZERO = Range.exactly(0);

  /** What a measure spares [W/K]. */
  Range lessLost(Candidate candidate) {
    return after(candidate)
        .map(after -> windows(candidate, after).plus(walls(candidate, after)))
        .orElse(ZERO);
  }

  /** True where walls get warmer of which nothing tells what they lose. */
  boolean leavesOutAWall(Candidate candidate) {
    return after(candidate).isPresent()
        && candidate.sites().stream().anyMatch(s -> s.spot().isPresent())
        && usual().isEmpty()
        && candidate.rooms().stream()
            .anyMatch(
                r -> sized(r).isEmpty() || sized(r).stream().anyMatch(w -> built(w).isEmpty()));
  }

  private static Optional<Range> after(Candidate candidate) {
    return candidate.measure().surface().flatMap(s -> s.uValueAfter().map(Spread::range));
  }

  private Range windows(Candidate candidate, Range after) {
    return candidate.sites().stream()
        .flatMap(s -> s.window().stream())
        .map(w -> less(before(w), after).times(Areas.of(basis.defaults()).of(w)))
        .reduce(ZERO, Range::plus);
  }

  private Optional<Range> before(Window window) {
    return window
        .uValue()
        .map(q -> q.range())
        .or(() -> window.glazing().flatMap(g -> basis.glazing().find(g)).map(g -> g.ug().range()));
  }

  private Range walls(Candidate candidate, Range after) {
    return candidate.sites().stream().anyMatch(s -> s.spot().isPresent())
        ? candidate.rooms().stream().map(r -> walls(r, after)).reduce(ZERO, Range::plus)
        : ZERO;
  }

  private Range walls(RoomFacts room, Range after) {
    List<Wall> sized = sized(room);
    return sized.isEmpty()
        ? less(usual(), after).times(Areas.outsideWall(room))
        : sized.stream()
            .map(w -> less(built(w).or(this::usual), after).times(w.area().orElseThrow().value()))
            .reduce(ZERO, Range::plus);
  }

  private static List<Wall> sized(RoomFacts room) {
    return room.room().walls().stream().filter(w -> w.area().isPresent()).toList();
  }

  private Optional<Range> built(Wall wall) {
    return assessment.elements().walls().stream()
        .filter(w -> w.id().equals(wall.id()))
        .map(WallWithin::uValue)
        .map(u -> u.value())
        .findFirst();
  }

  private Optional<Range> usual() {
    WallsTold walls = WallsTold.of(assessment.home());
    if (walls.areInsulated()) {
      return Optional.empty();
    }
    if (walls.are("solid")) {
      return Optional.of(basis.defaults().solidWallU().range());
    }
    return walls.are("cavity")
        ? Optional.of(basis.defaults().cavityWallU().range())
        : Optional.empty();
  }

  /** Never below nothing, and nothing where it is not known what is lost today. */
  private static Range less(Optional<Range> before, Range after) {
    return before
        .map(b -> b.minus(after))
        .map(d -> new Range(Math.max(0, d.low()), Math.max(0, d.likely()), Math.max(0, d.high())))
        .orElse(ZERO);
  }
}
