package org.drysill.assess.moisture;

import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.reference.moisture.Per;
import org.drysill.reference.moisture.SourceKind;
import org.drysill.reference.moisture.SourceRate;
import org.drysill.reference.moisture.UsualCount;
import org.drysill.survey.Fuel;
import org.drysill.survey.MoistureSource;
import org.drysill.yaml.Quantity;

/**
 * A rate of the table with the number that multiplies it.
 *
 * @param rate the rate
 * @param perWeek how much of what it counts is in a week
 * @param told true where the survey gives that number
 */
record Counted(SourceRate rate, Range perWeek, boolean told) {
  private static final double DAYS_PER_WEEK = 7;
  private static final double WATTS_PER_KILOWATT = 1000;

  /** The rate that fits what the survey says of a source; else the preferred one as usual. */
  static Counted of(SourceKind kind, MoistureSource source, Range occupants) {
    return kind.rates().stream()
        .filter(rate -> fits(rate, source.fuel()))
        .flatMap(rate -> told(rate.per(), source).map(n -> new Counted(rate, n, true)).stream())
        .findFirst()
        .orElseGet(() -> usual(kind, source.fuel(), kind.usual().orElseThrow(), occupants));
  }

  /** The preferred rate, as often as usual. */
  static Counted usual(SourceKind kind, Optional<Fuel> fuel, UsualCount count, Range occupants) {
    SourceRate rate = kind.rates().stream().filter(r -> fits(r, fuel)).findFirst().orElseThrow();
    Range number = count.range();
    return new Counted(rate, count.eachPerson() ? number.times(occupants) : number, false);
  }

  /** Water given off [kg/s]. */
  Range production() {
    return Rates.perWeek(rate.amount().times(perWeek));
  }

  /** Loads of washing in a week; empty for what is not counted in loads. */
  Optional<Range> loadsPerWeek() {
    return rate.per() == Per.LOAD ? Optional.of(perWeek) : Optional.empty();
  }

  /** The number in words, such as {@code 4 loads a week}, or {@code 6 of them, all week}. */
  String said() {
    if (rate.per() == Per.ITEM_DAY) {
      return Words.range(perWeek.times(1 / DAYS_PER_WEEK)) + " of them, all week";
    }
    return Words.range(perWeek) + " " + rate.per().counted();
  }

  private static boolean fits(SourceRate rate, Optional<Fuel> fuel) {
    return rate.fuel().isEmpty() || rate.fuel().equals(fuel.map(Fuel::word));
  }

  private static Optional<Range> told(Per per, MoistureSource source) {
    return switch (per) {
      case LOAD -> source.loadsPerWeek().map(Quantity::range);
      case TIME -> source.timesPerWeek().map(Quantity::range);
      case HOUR -> source.hoursPerDay().map(Quantity::range).map(h -> h.times(DAYS_PER_WEEK));
      case ITEM_DAY -> source.count().map(Quantity::range).map(n -> n.times(DAYS_PER_WEEK));
      case KILOWATT_HOUR -> kilowattHours(source);
      case DAY, PERSON_DAY -> Optional.empty();
    };
  }

  private static Optional<Range> kilowattHours(MoistureSource source) {
    return source
        .hoursPerDay()
        .flatMap(
            hours ->
                source
                    .power()
                    .map(
                        power ->
                            hours
                                .range()
                                .times(power.range())
                                .times(DAYS_PER_WEEK / WATTS_PER_KILOWATT)));
  }
}
