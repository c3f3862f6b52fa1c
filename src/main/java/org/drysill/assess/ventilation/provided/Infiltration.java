package org.drysill.assess.ventilation.provided;

import java.util.List;
import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.physics.flow.LeakageDivisor;
import org.drysill.reference.ventilation.LeakageMethod;
import org.drysill.reference.ventilation.LeakageMethod.HeightDivisor;
import org.drysill.reference.ventilation.LeakageMethod.ShelterFactor;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.reference.ventilation.WindShelter;
import org.drysill.survey.Shelter;
import org.drysill.yaml.Quantity;

/**
 * The divisor N in n = n50 / N by every published method that is known, for a home of a height and
 * shelter. The methods differ by a factor of about two, so the range spans them all.
 */
final class Infiltration {
  private final List<LeakageMethod> methods;
  private final int storeys;
  private final WindShelter shelter;
  private final Optional<Double> weather;

  /**
   * Methods for a home.
   *
   * @param weather the divisor that warmth and wind of the cold season come to, where known
   */
  Infiltration(
      VentilationDefaults defaults, int storeys, WindShelter shelter, Optional<Double> weather) {
    this.methods = defaults.leakage();
    this.storeys = storeys;
    this.shelter = shelter;
    this.weather = weather;
  }

  /** A home of unknown shelter is taken as normal. */
  static WindShelter wind(Optional<Shelter> shelter) {
    return shelter.map(Infiltration::wind).orElse(WindShelter.NORMAL);
  }

  private static WindShelter wind(Shelter shelter) {
    return switch (shelter) {
      case EXPOSED -> WindShelter.EXPOSED;
      case NORMAL -> WindShelter.NORMAL;
      case SHELTERED -> WindShelter.SHELTERED;
    };
  }

  /** The method whose result is the likely one. */
  LeakageMethod likelyMethod() {
    return methods.stream().filter(LeakageMethod::likely).findFirst().orElseThrow();
  }

  /** The divisor: likely by the likely method, low and high over all, the weather's too. */
  Range divisor() {
    double likely = divisor(likelyMethod()).likely();
    double low = Math.min(likely, weather.orElse(likely));
    double high = Math.max(likely, weather.orElse(likely));
    for (LeakageMethod method : methods) {
      Range own = divisor(method);
      low = Math.min(low, own.low());
      high = Math.max(high, own.high());
    }
    return new Range(low, likely, high);
  }

  /** The divisor by one method. */
  Range divisor(LeakageMethod method) {
    Range base = method.divisor().map(Quantity::range).orElse(Range.exactly(1));
    return base.times(height(method) * shelter(method));
  }

  /** Infiltration as air changes [1/h] of a home with this n50 [1/h]. */
  Range airChangePerHour(Range n50) {
    Range divisor = divisor();
    return new Range(
        LeakageDivisor.airChangePerHour(n50.low(), divisor.high()),
        LeakageDivisor.airChangePerHour(n50.likely(), divisor.likely()),
        LeakageDivisor.airChangePerHour(n50.high(), divisor.low()));
  }

  private double height(LeakageMethod method) {
    return method.heights().stream()
        .filter(row -> row.storeys() <= storeys)
        .reduce((lower, higher) -> higher)
        .map(HeightDivisor::divisor)
        .orElse(1.0);
  }

  private double shelter(LeakageMethod method) {
    return method.shelters().stream()
        .filter(row -> row.shelter() == shelter)
        .findFirst()
        .map(Infiltration::asDivisor)
        .orElse(1.0);
  }

  private static double asDivisor(ShelterFactor row) {
    return row.divisor().orElseGet(() -> 1 / row.multiplier().orElseThrow());
  }
}
