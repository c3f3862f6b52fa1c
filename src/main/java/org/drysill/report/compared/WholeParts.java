package org.drysill.report.compared;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Parts rounded to whole numbers that add up to their rounded sum: each is rounded down, and those
 * that lose most are raised by one until the sum is reached.
 */
final class WholeParts {
  private WholeParts() {}

  static List<Long> of(List<Double> parts) {
    long sum = Math.round(parts.stream().mapToDouble(Double::doubleValue).sum());
    List<Long> whole = new ArrayList<>(parts.stream().map(p -> (long) Math.floor(p)).toList());
    long missing = sum - whole.stream().mapToLong(Long::longValue).sum();
    IntStream.range(0, parts.size())
        .boxed()
        .sorted(Comparator.comparingDouble(i -> Math.floor(parts.get(i)) - parts.get(i)))
        .limit(missing)
        .forEach(i -> whole.set(i, whole.get(i) + 1));
    return whole;
  }
}
