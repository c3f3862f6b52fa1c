package org.drysill.assess.surfaces.factor;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.readings.WeightedMean;
import org.drysill.physics.Range;

/**
 * Several readings of one place as one factor, {@link WeightedMean}. Of several points that were
 * read on a place the coldest counts.
 *
 * @param factor the combined factor
 * @param weak true where every reading behind it is weak
 * @param point the point that was the coldest
 * @param used the readings behind it
 */
record CombinedReadings(
    Range factor, boolean weak, Optional<String> point, List<ReadingFactor> used) {
  CombinedReadings {
    used = List.copyOf(used);
  }

  /** The coldest point of all usable readings; empty where none is usable. */
  static Optional<CombinedReadings> coldest(List<ReadingFactor> readings) {
    Map<Optional<String>, List<ReadingFactor>> points = new LinkedHashMap<>();
    for (ReadingFactor reading : readings) {
      if (reading.factor().isPresent()) {
        points.merge(reading.point(), List.of(reading), CombinedReadings::joined);
      }
    }
    return points.entrySet().stream()
        .map(e -> of(e.getKey(), e.getValue()))
        .min(Comparator.comparingDouble(c -> c.factor().likely()));
  }

  private static CombinedReadings of(Optional<String> point, List<ReadingFactor> used) {
    Range mean = WeightedMean.of(used.stream().map(r -> r.factor().orElseThrow()).toList());
    Range factor = new Range(Math.max(0, mean.low()), mean.likely(), Math.min(1, mean.high()));
    boolean weak = used.stream().allMatch(r -> r.quality() == ReadingQuality.WEAK);
    return new CombinedReadings(factor, weak, point, used);
  }

  private static List<ReadingFactor> joined(List<ReadingFactor> a, List<ReadingFactor> b) {
    return Stream.concat(a.stream(), b.stream()).toList();
  }
}
