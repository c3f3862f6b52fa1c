package org.drysill.reference.rules;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * The area of an opening as a share of the floor of its room.
 *
 * @param opens the kinds of opening
 * @param from smallest opening angle, inclusive
 * @param below opening angle from which the next row holds
 * @param share area as a share of the floor; absent where such openings do not count
 * @param source where it is printed
 * @param confidence how sure a remembered value is
 */
public record PurgeShare(
    @Key(about = "The kinds of opening", required = true) List<OpeningClass> opens,
    @Key(
            about = "Smallest opening angle, inclusive",
            dimension = Dimension.ANGLE,
            unit = "deg",
            min = 0,
            max = 180,
            example = "15 deg")
        Optional<Quantity> from,
    @Key(
            about = "Opening angle from which the next row holds",
            dimension = Dimension.ANGLE,
            unit = "deg",
            min = 0,
            max = 180,
            example = "30 deg")
        Optional<Quantity> below,
    @Key(
            about = "Area as a share of the floor; absent where such openings do not count",
            dimension = Dimension.PERCENT,
            unit = "%",
            min = 0,
            max = 100,
            example = "10 %")
        Optional<Quantity> share,
    @Key(about = "Where it is printed") Citation source,
    @Key(about = "How sure a remembered value is") Optional<Confidence> confidence) {
  /** Copies the list. */
  public PurgeShare {
    opens = List.copyOf(opens);
  }

  /** True for openings of a kind that open to an angle [°]. */
  public boolean holdsFor(OpeningClass opening, double degrees) {
    return opens.contains(opening)
        && from.map(f -> degrees >= f.value()).orElse(true)
        && below.map(b -> degrees < b.value()).orElse(true);
  }
}
