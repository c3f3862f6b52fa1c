package org.drysill.reference.moisture;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * A kind of moisture source.
 *
 * @param kind the word in a survey
 * @param about what it is
 * @param rates how much it gives off, the preferred one first; empty where the survey must say
 * @param usual how often, where the survey lists it without a number
 * @param unlisted how often, where the survey does not list it: it happens in every home
 * @param coveredBy other kinds whose listing stands for this one too
 * @param lidsAndHood what lids on pans and a hood in use leave of it, as a ratio
 * @param conflict where published values disagree, and what was made of it
 */
public record SourceKind(
    @Key(about = "The word in a survey", example = "cooking", id = true) String kind,
    @Key(about = "What it is") String about,
    @Key(about = "How much it gives off, the preferred one first") List<SourceRate> rates,
    @Key(about = "How often, where the survey lists it without a number")
        Optional<UsualCount> usual,
    @Key(about = "How often, where the survey does not list it") Optional<UsualCount> unlisted,
    @Key(about = "Kinds whose listing stands for this one too") List<String> coveredBy,
    @Key(about = "What lids on pans and a hood in use leave of it") Optional<Sourced> lidsAndHood,
    @Key(about = "Where published values disagree") Optional<String> conflict) {
  /** Copies the lists. */
  public SourceKind {
    rates = List.copyOf(rates);
    coveredBy = List.copyOf(coveredBy);
  }
}
