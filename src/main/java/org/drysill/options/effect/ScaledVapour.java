package org.drysill.options.effect;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.drysill.assess.Assessment;
import org.drysill.assess.Basis;
import org.drysill.assess.OutdoorClimate;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.IndoorVapour;
import org.drysill.assess.surfaces.IndoorVapours;
import org.drysill.assess.surfaces.months.MonthRow;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;

/** The indoor vapour of a home with its excess multiplied; rooms without a reading too. */
public record ScaledVapour(Assessment assessment) {

  /** All rooms alike. */
  IndoorVapours times(Range ratio) {
    return times(room -> ratio, ratio);
  }

  /**
   * Each room by its own ratio.
   *
   * @param ratios of a room, by the survey's id [1]
   * @param home of the home as a whole [1]
   */
  public IndoorVapours times(Function<String, Range> ratios, Range home) {
    Map<String, IndoorVapour> rooms = new LinkedHashMap<>();
    for (RoomFacts room : assessment.home().rooms()) {
      assessment
          .vapour()
          .of(room.id())
          .or(() -> judged(room))
          .ifPresent(v -> rooms.put(room.id(), scaled(v, ratios.apply(room.id()))));
    }
    return new IndoorVapours(assessment.vapour().home().map(v -> scaled(v, home)), rooms);
  }

  /**
   * The excess by which the surfaces of a room were judged in the coldest month, where none was
   * read. Its reckoned ends are those of the judgement.
   */
  private Optional<IndoorVapour> judged(RoomFacts room) {
    OutdoorClimate.Month coldest =
        assessment.home().climate().months().stream()
            .min(Comparator.comparingDouble(OutdoorClimate.Month::temperature))
            .orElseThrow();
    double outdoors =
        coldest.relativeHumidity().likely()
            * Iso13788Vapour.saturationPressureOverWaterPa(coldest.temperature());
    return assessment.condensation().places().stream()
        .filter(p -> p.room().equals(room.id()))
        .map(p -> row(p, coldest.number()).vapourPressure().likely() - outdoors)
        .map(excess -> assumed(Math.max(0, excess), coldest.temperature()))
        .findFirst();
  }

  private static MonthRow row(ColdPlace place, int month) {
    return place.months().rows().get(month - 1);
  }

  private static IndoorVapour assumed(double excess, double outdoor) {
    return new IndoorVapour(
        Range.exactly(excess),
        outdoor,
        Basis.ASSUMED,
        "the humidity that was assumed",
        Optional.empty(),
        List.of());
  }

  private static IndoorVapour scaled(IndoorVapour vapour, Range ratio) {
    Range e = vapour.excess();
    Range positive =
        new Range(Math.max(0, e.low()), Math.max(0, e.likely()), Math.max(0, e.high()));
    return new IndoorVapour(
        positive.times(ratio),
        vapour.outdoor(),
        vapour.basis(),
        vapour.from(),
        vapour.figure(),
        vapour.sources());
  }
}
