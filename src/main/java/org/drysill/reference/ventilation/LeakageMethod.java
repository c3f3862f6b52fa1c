package org.drysill.reference.ventilation;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * One published way from air changes at 50 Pa to infiltration: divided by the product of its
 * divisors and multiplied by its multipliers.
 *
 * @param id short name
 * @param name its name in the report
 * @param likely yes for the one whose result is the likely value
 * @param divisor divisor for every home
 * @param heights divisors by storeys; past the table the last holds
 * @param shelters factors by shelter
 * @param source where it comes from
 * @param note what the reader should know about it
 */
public record LeakageMethod(
    @Key(about = "Short name", example = "sherman") String id,
    @Key(about = "Its name in the report", example = "Sherman 1987") String name,
    @Key(about = "Yes for the one whose result is the likely value", example = "yes")
        boolean likely,
    @Key(about = "Divisor for every home", min = 1, example = "14..26") Optional<Quantity> divisor,
    @Key(about = "Divisors by storeys; past the table the last holds") List<HeightDivisor> heights,
    @Key(about = "Factors by shelter") List<ShelterFactor> shelters,
    @Key(about = "Where it comes from") Citation source,
    @Key(about = "What the reader should know about it") Optional<String> note) {
  /** Copies the lists. */
  public LeakageMethod {
    heights = List.copyOf(heights);
    shelters = List.copyOf(shelters);
  }

  /**
   * A divisor by storeys.
   *
   * @param storeys number of storeys
   * @param divisor the divisor
   */
  public record HeightDivisor(
      @Key(about = "Number of storeys", min = 1, example = "2") int storeys,
      @Key(about = "The divisor", min = 0.01, example = "0.8") double divisor) {}

  /**
   * A factor by shelter.
   *
   * @param shelter how much wind the home gets
   * @param divisor a divisor
   * @param multiplier or a multiplier
   */
  public record ShelterFactor(
      @Key(about = "How much wind the home gets", example = "normal") WindShelter shelter,
      @Key(about = "A divisor", min = 0.01, example = "1.2") Optional<Double> divisor,
      @Key(about = "Or a multiplier", min = 0, example = "0.07") Optional<Double> multiplier) {
    /** Refuses a row with none or both. */
    public ShelterFactor {
      if (divisor.isPresent() == multiplier.isPresent()) {
        throw new IllegalArgumentException("either divisor or multiplier");
      }
    }
  }
}
