package org.drysill.reference.measures;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.reference.Spread;
import org.drysill.yaml.Key;

/**
 * Something that can be done.
 *
 * @param id stable short name
 * @param name its name in plain trade words, by which a survey leaves it out or prices it
 * @param title what it is, with room for the place after it
 * @param place to what it applies; one candidate for each such place of the survey
 * @param kinds the kinds of cold spot or fan to which it applies, by their words; all where empty
 * @param when what must be so, all of it, for it to be considered
 * @param changes what it changes, in plain words
 * @param beforeAll true for what mends a cause and so comes before every ranked measure
 * @param asIf as what the home is reckoned once a cause is mended, in words that can follow "as
 *     if", with {@code {place}} for its place
 * @param stopGap true for what relieves the sign while it is used and leaves the cause as it is
 * @param air the air that it moves
 * @param moisture the water that it keeps out of the air or takes from it
 * @param surface the surface that it makes warmer
 * @param warmth the room that it makes warmer
 * @param power electric power while it runs [W]
 * @param price its default price
 * @param lifeYears how long it lasts [a]
 * @param upkeep upkeep in a year, in the currency of the price
 * @param sideEffects what else it brings, in sentences
 * @param cautions the ids of the cautions that belong to it
 * @param prerequisites what must be so before it
 * @param exclusions the ids of measures that it cannot stand beside
 * @param benefits what it is good for besides money
 */
public record Measure(
    @Key(about = "Stable short name", example = "continuous-extract", id = true) String id,
    @Key(about = "Name in plain trade words", example = "continuous extract fan") String name,
    @Key(about = "Title", example = "Continuous extract fan") String title,
    @Key(about = "To what it applies", example = "wet room") MeasurePlace place,
    @Key(
            about = "Kinds of cold spot or fan",
            example = "[lintel, sill]",
            vocabulary = "kind of cold spot or fan")
        List<String> kinds,
    @Key(about = "What must be so", example = "[extract not met]") List<Condition> when,
    @Key(about = "What it changes, in plain words") String changes,
    @Key(about = "Mends a cause and comes before all", example = "no") Optional<Boolean> beforeAll,
    @Key(
            about = "As what the home is reckoned once it is done",
            example = "the leak {place} were mended")
        Optional<String> asIf,
    @Key(about = "Relieves the sign only, and while it is used", example = "no")
        Optional<Boolean> stopGap,
    @Key(about = "The air that it moves") Optional<AirEffect> air,
    @Key(about = "The water that it avoids or removes") Optional<MoistureEffect> moisture,
    @Key(about = "The surface that it makes warmer") Optional<SurfaceEffect> surface,
    @Key(about = "The room that it makes warmer") Optional<WarmthEffect> warmth,
    @Key(about = "Electric power while it runs, in W") Optional<Spread> power,
    @Key(about = "Its default price") MeasurePrice price,
    @Key(about = "How long it lasts, in years", min = 1, max = 200, example = "12") int lifeYears,
    @Key(about = "Upkeep in a year, in the currency of the price", example = "10") Spread upkeep,
    @Key(about = "What else it brings") List<String> sideEffects,
    @Key(about = "Cautions that belong to it", vocabulary = "caution") List<String> cautions,
    @Key(about = "What must be so before it") List<Prerequisite> prerequisites,
    @Key(about = "Measures that it cannot stand beside", vocabulary = "measure id")
        List<String> exclusions,
    @Key(about = "What it is good for besides money") MeasureBenefits benefits) {
  /** Copies the lists. */
  public Measure {
    kinds = List.copyOf(kinds);
    when = List.copyOf(when);
    sideEffects = List.copyOf(sideEffects);
    cautions = List.copyOf(cautions);
    prerequisites = List.copyOf(prerequisites);
    exclusions = List.copyOf(exclusions);
    if (!beforeAll.orElse(false)
        && Stream.of(air, moisture, surface, warmth).allMatch(Optional::isEmpty)) {
      throw new IllegalArgumentException(
          "air, moisture, surface or warmth that it changes, or before_all: yes");
    }
    if (!Spread.isNotNegative(power) || !Spread.isNotNegative(Optional.of(upkeep))) {
      throw new IllegalArgumentException("power and upkeep of 0 or more");
    }
  }

  /** True for what relieves the sign while it is used and leaves the cause as it is. */
  public boolean isStopGap() {
    return stopGap.orElse(false);
  }

  /** True for what mends a cause and so comes before every ranked measure. */
  public boolean isBeforeAll() {
    return beforeAll.orElse(false);
  }

  /** True for what ends a source of water for good, such as a leak that is mended. */
  public boolean endsSources() {
    return isBeforeAll() && air.isEmpty() && moisture.isPresent();
  }
}
