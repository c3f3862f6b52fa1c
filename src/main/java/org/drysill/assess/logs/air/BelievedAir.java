package org.drysill.assess.logs.air;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.air.AirChangeOfLog.Tracer;
import org.drysill.physics.Range;

/** The air change by a log beside what ventilation says that the room gets. */
final class BelievedAir {
  private final LoggedRoom room;
  private final Tracer tracer;
  private final Figure believed;

  BelievedAir(LoggedRoom room, Tracer tracer, Figure believed) {
    this.room = room;
    this.tracer = tracer;
    this.believed = believed;
  }

  Finding against(Figure found, Optional<Figure> hardlyAbove) {
    double low = found.value().low();
    double high = hardlyAbove.map(Figure::likely).orElse(found.value().high());
    Range expected = believed.value();
    boolean less = high < expected.low();
    boolean more = low > expected.high();
    Verdict verdict = less ? Verdict.SHORT : agreeing(hardlyAbove.isPresent() && !more);
    return new Finding(
        found.id() + ".believed",
        "Air change of the " + room.roomName() + " by its log against what it is believed to get",
        Optional.of(room.room()),
        verdict,
        Direction.AGREES,
        Optional.of(found),
        Optional.of(believed),
        said(less, more, hardlyAbove.isPresent()),
        verdict == Verdict.UNKNOWN
            ? Optional.of("Log CO₂ in the room; its decays tell the air change, not a bound alone.")
            : Optional.empty(),
        List.of());
  }

  /** A bound that excludes nothing agrees with everything, and so tells nothing. */
  private static Verdict agreeing(boolean bound) {
    return bound ? Verdict.UNKNOWN : Verdict.MEETS;
  }

  private String said(boolean less, boolean more, boolean bound) {
    String log = "The " + tracer.word() + " of the " + room.roomName() + " falls ";
    if (less) {
      return log
          + "more slowly than the air that this room is believed to get would make it: the room"
          + " gets less air than believed.";
    }
    if (more) {
      return log
          + "faster than the outdoor air that this room is believed to get would make it: it gets"
          + " more, or air of other rooms takes part.";
    }
    return bound
        ? log
            + "at a pace that the air this room is believed to get allows; vapour gives no more"
            + " than a bound."
        : log
            + "as the air that this room is believed to get would make it, within the bounds of"
            + " both.";
  }
}
