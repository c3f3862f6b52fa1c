package org.drysill.assess.ventilation.required;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.drysill.physics.Airflow;
import org.drysill.physics.Range;
import org.drysill.reference.rules.FloorStep;
import org.drysill.reference.rules.Rate;
import org.drysill.reference.rules.RateStep;

/**
 * A rate in a home [m³/s].
 *
 * @param facts the facts of the home
 * @param parts what the terms ask that the rate combines
 */
record RateInHome(RuleFacts facts, List<Demand> parts) implements Rate.Cases<Range> {
  private static final Range NOTHING = Range.exactly(0);

  @Override
  public Range greatestOf(Rate.GreatestOf rate) {
    return rates().reduce(NOTHING, RateInHome::greater);
  }

  @Override
  public Range sumOf(Rate.SumOf rate) {
    return rates().reduce(NOTHING, Range::plus);
  }

  @Override
  public Range differenceOf(Rate.DifferenceOf rate) {
    List<Range> all = rates().toList();
    Range less = all.stream().skip(1).reduce(NOTHING, Range::plus);
    return greater(all.get(0).minus(less), NOTHING);
  }

  /** Below the table its first rate holds; past it each further bedroom adds what is printed. */
  @Override
  public Range byBedrooms(Rate.ByBedrooms rate) {
    RateStep last = rate.steps().get(rate.steps().size() - 1);
    int further = Math.max(0, facts.bedrooms() - last.count());
    double more = rate.perFurther().map(q -> q.value() * further).orElse(0.0);
    return Range.exactly(step(rate.steps(), facts.bedrooms()) + more);
  }

  @Override
  public Range byFloorAndBedrooms(Rate.ByFloorAndBedrooms rate) {
    Range area = facts.floorAreaM2();
    return new Range(
        inTable(rate.rows(), area.low()),
        inTable(rate.rows(), area.likely()),
        inTable(rate.rows(), area.high()));
  }

  private double inTable(List<FloorStep> rows, double areaM2) {
    FloorStep row = rows.get(0);
    for (FloorStep next : rows) {
      row = areaM2 > next.above().value() ? next : row;
    }
    return step(row.steps(), facts.bedrooms());
  }

  @Override
  public Range byMainRooms(Rate.ByMainRooms rate) {
    return Range.exactly(step(rate.steps(), facts.mainRooms().orElseThrow()));
  }

  @Override
  public Range perPerson(Rate.PerPerson rate) {
    Range persons =
        switch (rate.counted()) {
          case OCCUPANTS -> facts.occupants();
          case BEDROOMS_PLUS_ONE -> byBedrooms();
          case DESIGN_OCCUPANCY -> greater(byBedrooms(), facts.occupants());
        };
    return persons.times(rate.rate().value());
  }

  @Override
  public Range perFloorArea(Rate.PerFloorArea rate) {
    return facts.floorAreaM2().times(rate.rate().value() / rate.area().value());
  }

  /** Grows with the floor area up to its turning point, and is held there. */
  @Override
  public Range floorPolynomial(Rate.FloorPolynomial rate) {
    double square = rate.perM4().value();
    double turn = square < 0 ? -rate.perM2().value() / (2 * square) : Double.POSITIVE_INFINITY;
    DoubleUnaryOperator flow =
        area -> {
          double held = Math.min(area, turn);
          return rate.constant().value() + held * (rate.perM2().value() + held * square);
        };
    Range area = facts.floorAreaM2();
    return new Range(
        flow.applyAsDouble(area.low()),
        flow.applyAsDouble(area.likely()),
        flow.applyAsDouble(area.high()));
  }

  @Override
  public Range perRoom(Rate.PerRoom rate) {
    return facts.rooms().orElseThrow().stream()
        .filter(room -> rate.rooms().stream().anyMatch(room::isOf))
        .map(room -> inRoom(rate, room))
        .reduce(NOTHING, Range::plus);
  }

  @Override
  public Range airChange(Rate.AirChange rate) {
    return facts.volumeM3().times(Airflow.ofAirChange(rate.perHour().value(), 1).m3PerSecond());
  }

  @Override
  public Range leakageCredit(Rate.LeakageCredit rate) {
    Rate.LeakageCredit.HeightFactor height = rate.heights().get(0);
    for (Rate.LeakageCredit.HeightFactor next : rate.heights()) {
      height = next.storeys() <= facts.storeys() ? next : height;
    }
    return facts
        .leakageAt50PaM3S()
        .times(facts.weatherFactor().orElseThrow())
        .times(rate.share() * height.factor());
  }

  @Override
  public Range fixed(Rate.Fixed rate) {
    return Range.exactly(rate.rate().value());
  }

  private static Range inRoom(Rate.PerRoom rate, RuleFacts.Room room) {
    Range byArea = rate.perM2().map(q -> room.floorAreaM2().times(q.value())).orElse(NOTHING);
    Range both = byArea.plus(Range.exactly(rate.each().map(q -> q.value()).orElse(0.0)));
    return greater(both, Range.exactly(rate.least().map(q -> q.value()).orElse(0.0)));
  }

  private Range byBedrooms() {
    return Range.exactly(facts.bedrooms() + 1);
  }

  private Stream<Range> rates() {
    return parts.stream().map(part -> part.rate().orElseThrow());
  }

  /** The row of the greatest number that is not above the one of the home. */
  private static double step(List<RateStep> steps, int count) {
    RateStep row = steps.get(0);
    for (RateStep next : steps) {
      row = next.count() <= count ? next : row;
    }
    return row.rate().value();
  }

  private static Range greater(Range a, Range b) {
    return new Range(
        Math.max(a.low(), b.low()), Math.max(a.likely(), b.likely()), Math.max(a.high(), b.high()));
  }
}
