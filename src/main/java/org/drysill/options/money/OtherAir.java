package org.drysill.options.money;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.physics.Airflow;
import org.drysill.reference.measures.AirEffect;
import org.drysill.reference.measures.AirMove;
import org.drysill.reference.measures.FlowRate;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.MeasurePlace;
import org.drysill.survey.RoomUse;

/**
 * The measures that move the air of a heat-recovery unit without recovering its heat: by day and
 * night, and at its place where there are such.
 *
 * @param home the home
 * @param measures all published measures
 * @param same the part of a flow that counts as the same [1]
 */
record OtherAir(Home home, List<Measure> measures, double same) {
  private static final double ALL_DAY = 24;

  /** Those at the unit's place; else those that draw the same air through the home. */
  List<Measure> of(FanFlow unit) {
    List<Measure> able = measures.stream().filter(m -> moves(m, unit)).toList();
    List<Measure> here = able.stream().filter(m -> isHere(m, unit)).toList();
    return here.isEmpty() ? able.stream().filter(this::isSomewhere).toList() : here;
  }

  /** True where a measure would be in the unit's own room. */
  boolean isHere(Measure measure, FanFlow unit) {
    return home.room(unit.room()).filter(r -> fits(measure.place(), r)).isPresent();
  }

  private boolean isSomewhere(Measure measure) {
    return measure.place() == MeasurePlace.HOME
        || home.rooms().stream().anyMatch(r -> r.wet() && fits(measure.place(), r));
  }

  private static boolean fits(MeasurePlace place, RoomFacts room) {
    return switch (place) {
      case WET_ROOM -> room.wet();
      case KITCHEN ->
          room.room().use() == RoomUse.KITCHEN || room.room().use() == RoomUse.KITCHEN_DINING;
      case HABITABLE_ROOM -> room.habitable();
      case ROOM -> true;
      case HOME, WINDOW, COLD_SPOT, FAN -> false;
    };
  }

  private boolean moves(Measure measure, FanFlow unit) {
    return !measure.isBeforeAll()
        && measure.air().filter(a -> brings(a) && isSteady(a) && reaches(a, unit)).isPresent();
  }

  private static boolean brings(AirEffect air) {
    return switch (air.moves()) {
      case EXTRACT, SUPPLY, INFILTRATION -> air.declaredRecovery().isEmpty();
      case EXCHANGE, TRANSFER -> false;
    };
  }

  private static boolean isSteady(AirEffect air) {
    return air.hoursPerDay().filter(h -> h.range().likely() < ALL_DAY).isEmpty();
  }

  /** A fan is set to the flow; an opening has the flow that it has. */
  private boolean reaches(AirEffect air, FanFlow unit) {
    Optional<Double> stated =
        air.litresPerSecond()
            .map(l -> l.range().likely() * Airflow.litresPerSecond(1).m3PerSecond());
    return air.rate() != FlowRate.STATED
        ? air.moves() != AirMove.INFILTRATION
        : stated.filter(q -> q >= same * FanCosts.moved(unit).likely()).isPresent();
  }
}
