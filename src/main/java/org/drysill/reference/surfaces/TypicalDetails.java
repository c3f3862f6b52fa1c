package org.drysill.reference.surfaces;

import java.util.List;
import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Key;

/**
 * Temperature factors to take where nothing was read.
 *
 * @param source what stands behind them
 * @param details by kind and age
 */
public record TypicalDetails(
    @Key(about = "What stands behind them") Citation source,
    @Key(about = "By kind and age") List<TypicalDetail> details) {
  /** Copies the list. */
  public TypicalDetails {
    details = List.copyOf(details);
  }

  /** Reads the bundled table. */
  public static TypicalDetails bundled() {
    return DataFiles.read("surfaces/typical-details.yaml", TypicalDetails.class);
  }

  /**
   * The factor of a kind of detail.
   *
   * @param kind the word for the kind
   * @param year the year of construction; where it is not known the range spans all ages
   * @throws IllegalArgumentException for a kind that the table lacks
   */
  public Range factor(String kind, Optional<Integer> year) {
    return details.stream()
        .filter(d -> d.kind().equals(kind))
        .filter(d -> year.isEmpty() || d.covers(year.get()))
        .map(d -> d.factor().range())
        .reduce(TypicalDetails::spanning)
        .orElseThrow(() -> new IllegalArgumentException("no typical detail: " + kind));
  }

  private static Range spanning(Range a, Range b) {
    return new Range(
        Math.min(a.low(), b.low()),
        (Math.min(a.low(), b.low()) + Math.max(a.high(), b.high())) / 2,
        Math.max(a.high(), b.high()));
  }
}
