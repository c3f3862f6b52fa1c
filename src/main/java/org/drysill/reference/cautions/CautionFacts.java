package org.drysill.reference.cautions;

import java.util.List;
import org.drysill.reference.Citation;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * From which facts cautions are shown.
 *
 * @param asbestosBefore buildings from before this year may hold asbestos
 * @param protectedBefore buildings from before this year may be protected where nobody has looked
 * @param mouldContractorArea mould area [m²] from which a contractor should clean
 * @param ingressWords words of notes that point to water from outside, the ground or a pipe
 * @param unfluedWords words of moisture sources that point to a heater without a flue
 * @param offWords words of a fan's notes that say that it is out of use
 * @param denials words before such a word that turn it round
 * @param sources where these come from
 */
public record CautionFacts(
    @Key(about = "May hold asbestos if built before", example = "2000") int asbestosBefore,
    @Key(about = "May be protected if built before", example = "1919") int protectedBefore,
    @Key(
            about = "Mould area for a contractor",
            dimension = Dimension.AREA,
            unit = "m2",
            example = "1 m2")
        Quantity mouldContractorArea,
    @Key(about = "Words that point to water from elsewhere") List<String> ingressWords,
    @Key(about = "Words that point to a heater without a flue") List<String> unfluedWords,
    @Key(about = "Words that say that a fan is out of use") List<String> offWords,
    @Key(about = "Words before them that turn them round") List<String> denials,
    @Key(about = "Where these come from") List<Citation> sources) {
  /** Copies the lists. */
  public CautionFacts {
    ingressWords = List.copyOf(ingressWords);
    unfluedWords = List.copyOf(unfluedWords);
    offWords = List.copyOf(offWords);
    denials = List.copyOf(denials);
    sources = List.copyOf(sources);
  }

  /** The published facts. */
  public static CautionFacts read() {
    return DataFiles.read("defaults/cautions.yaml", CautionFacts.class);
  }
}
