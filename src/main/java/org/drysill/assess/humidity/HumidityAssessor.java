package org.drysill.assess.humidity;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.drysill.assess.Assumption;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.reference.readings.ReadingRules;

/** Reads out of the spot readings of a visit what they say about moisture in the air. */
public final class HumidityAssessor {
  private HumidityAssessor() {}

  /** Assesses the readings of a home without logs. */
  public static HumidityResult assess(Home home, ReadingRules rules) {
    return assess(home, rules, List.of());
  }

  /**
   * Assesses the readings of a home.
   *
   * @param logged what logs show of the criteria that no single reading can judge; where there is
   *     nothing they stay untold
   */
  public static HumidityResult assess(Home home, ReadingRules rules, List<Finding> logged) {
    InstrumentErrors errors = new InstrumentErrors(home.survey(), rules.accuracy());
    List<RoomAir> readings = new RoomAirs(home, rules, errors).all();
    List<Co2Air> co2 = new Co2Airs(rules.co2(), errors).all(home);
    List<Assumption> assumptions = new ArrayList<>(errors.assumptions());
    assumptions.addAll(outdoorAssumption(home, readings, rules));
    return new HumidityResult(
        readings,
        co2,
        HomeMean.of(home, readings),
        new HumidityFindings(rules).all(home, readings, logged),
        assumptions);
  }

  private static List<Assumption> outdoorAssumption(
      Home home, List<RoomAir> readings, ReadingRules rules) {
    String rooms =
        readings.stream()
            .filter(r -> !r.outdoor().simultaneous())
            .map(RoomAir::roomName)
            .distinct()
            .collect(Collectors.joining(", "));
    if (rooms.isEmpty()) {
      return List.of();
    }
    return List.of(
        new Assumption(
            "humidity.outdoor",
            "Outdoor air at the readings of: " + rooms,
            "vapour of the month in the climate "
                + home.climate().name()
                + ", plus or minus "
                + rules.outdoor().dayVapourSpread().written(),
            "temperature and humidity were not both read outdoors near in time",
            "Read temperature and humidity outdoors, in the shade and away from the wall, at each"
                + " visit.",
            rules.outdoor().source()));
  }
}
