package org.drysill.assess.logs.air;

import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.Trace;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.physics.Range;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.survey.Logger;
import org.drysill.yaml.Quantity;

/** CO₂ outdoors: as logged, else as is usual; and what is doubtful of the difference. */
final class Co2Background {
  private static final double RECTANGULAR = Math.sqrt(3);
  private final Home home;
  private final ReadingRules rules;

  Co2Background(Home home, ReadingRules rules) {
    this.home = home;
    this.rules = rules;
  }

  /** CO₂ outdoors at a step [ppm]. */
  double ppm(Trace trace, int step) {
    double logged = trace.outdoorPpm(step);
    return Double.isNaN(logged) ? outdoor().likely() : logged;
  }

  /** Standard uncertainty of the difference that all readings share [ppm]. */
  double uncertaintyPpm(LoggedRoom room) {
    Optional<String> instrument =
        home.room(room.room()).flatMap(r -> r.room().logger()).flatMap(Logger::instrument);
    double read = outdoor().likely();
    Range error =
        new InstrumentErrors(home.survey(), rules.accuracy())
            .co2(new Quantity(read, read, read, ""), instrument);
    return Math.hypot(half(error), half(outdoor())) / RECTANGULAR;
  }

  /** What is usual outdoors [ppm]. */
  Range outdoor() {
    return rules.co2().outdoor().range();
  }

  private static double half(Range range) {
    return (range.high() - range.low()) / 2;
  }
}
