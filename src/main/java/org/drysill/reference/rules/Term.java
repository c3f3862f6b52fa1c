package org.drysill.reference.rules;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.reference.Citation;
import org.drysill.yaml.Key;

/**
 * One part of a rate: exactly one way to compute it, or several parts combined.
 *
 * <p>A part that is computed says where it is printed; a combination may.
 *
 * @param name what it counts by, in a few words
 * @param when when it holds; always where absent
 * @param greatestOf the greatest of these
 * @param sumOf the sum of these
 * @param differenceOf the first of these less the others
 * @param byBedrooms by the number of bedrooms
 * @param byFloorAndBedrooms by floor area and number of bedrooms
 * @param byMainRooms by the number of main rooms: all but kitchen, wet rooms and halls
 * @param perPerson by person
 * @param perFloorArea by floor area
 * @param floorPolynomial by a polynomial of the floor area
 * @param perRoom summed over rooms of some kinds
 * @param airChange air changes of the whole home
 * @param leakageCredit what leaks are credited with
 * @param fixed the same for every home
 * @param factor what the result is multiplied by
 * @param source where it is printed
 * @param confidence how sure a remembered value is
 * @param note what the reader should know about it
 */
public record Term(
    @Key(about = "What it counts by, in a few words", example = "by number of bedrooms")
        Optional<String> name,
    @Key(about = "When it holds; always where absent", example = "one habitable room")
        Optional<Condition> when,
    @Key(about = "The greatest of these") List<Term> greatestOf,
    @Key(about = "The sum of these") List<Term> sumOf,
    @Key(about = "The first of these less the others") List<Term> differenceOf,
    @Key(about = "By the number of bedrooms") Optional<Rate.ByBedrooms> byBedrooms,
    @Key(about = "By floor area and number of bedrooms")
        Optional<Rate.ByFloorAndBedrooms> byFloorAndBedrooms,
    @Key(about = "By the number of main rooms: all but kitchen, wet rooms and halls")
        Optional<Rate.ByMainRooms> byMainRooms,
    @Key(about = "By person") Optional<Rate.PerPerson> perPerson,
    @Key(about = "By floor area") Optional<Rate.PerFloorArea> perFloorArea,
    @Key(about = "By a polynomial of the floor area")
        Optional<Rate.FloorPolynomial> floorPolynomial,
    @Key(about = "Summed over rooms of some kinds") Optional<Rate.PerRoom> perRoom,
    @Key(about = "Air changes of the whole home") Optional<Rate.AirChange> airChange,
    @Key(about = "What leaks are credited with") Optional<Rate.LeakageCredit> leakageCredit,
    @Key(about = "The same for every home") Optional<Rate.Fixed> fixed,
    @Key(about = "What the result is multiplied by", min = 0, example = "0.7")
        Optional<Double> factor,
    @Key(about = "Where it is printed") Optional<Citation> source,
    @Key(about = "How sure a remembered value is") Optional<Confidence> confidence,
    @Key(about = "What the reader should know about it") Optional<String> note) {
  /** Copies the lists; refuses a term with none or several ways, or without its source. */
  public Term {
    greatestOf = List.copyOf(greatestOf);
    sumOf = List.copyOf(sumOf);
    differenceOf = List.copyOf(differenceOf);
    long ways =
        Stream.of(greatestOf, sumOf, differenceOf).filter(terms -> !terms.isEmpty()).count()
            + Stream.of(
                    byBedrooms,
                    byFloorAndBedrooms,
                    byMainRooms,
                    perPerson,
                    perFloorArea,
                    floorPolynomial,
                    perRoom,
                    airChange,
                    leakageCredit,
                    fixed)
                .filter(Optional::isPresent)
                .count();
    if (ways != 1) {
      throw new IllegalArgumentException(
          "exactly one way to compute the term, such as per_floor_area, but there are " + ways);
    }
    if (when.filter(condition -> condition == Condition.NO_EXTERNAL_WALL).isPresent()) {
      throw new IllegalArgumentException("a condition on the home, not on a room");
    }
    if (differenceOf.size() == 1 || differenceOf.stream().anyMatch(t -> t.when().isPresent())) {
      throw new IllegalArgumentException(
          "in difference_of at least two terms, none of which has a when");
    }
    boolean combines = !greatestOf.isEmpty() || !sumOf.isEmpty() || !differenceOf.isEmpty();
    if (source.isEmpty() && !combines) {
      throw new IllegalArgumentException("a source: the document and clause that print the value");
    }
  }

  /** The one way in which it is computed. */
  public Rate rate() {
    if (!greatestOf.isEmpty()) {
      return new Rate.GreatestOf(greatestOf);
    }
    if (!sumOf.isEmpty()) {
      return new Rate.SumOf(sumOf);
    }
    return differenceOf.isEmpty() ? single() : new Rate.DifferenceOf(differenceOf);
  }

  private Rate single() {
    return Stream.<Optional<? extends Rate>>of(
            byBedrooms,
            byFloorAndBedrooms,
            byMainRooms,
            perPerson,
            perFloorArea,
            floorPolynomial,
            perRoom,
            airChange,
            leakageCredit,
            fixed)
        .<Rate>flatMap(Optional::stream)
        .findFirst()
        .orElseThrow();
  }

  /** The terms that it combines; none where it is computed by itself. */
  public List<Term> parts() {
    return Stream.of(greatestOf, sumOf, differenceOf).flatMap(List::stream).toList();
  }
}
