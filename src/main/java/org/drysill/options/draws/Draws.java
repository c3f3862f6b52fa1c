package org.drysill.options.draws;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntFunction;
import org.drysill.physics.samples.NormalQuantile;
import org.drysill.physics.samples.ScrambledHalton;

/**
 * Normal deviates for whatever is not known, one row for each name. The same name has the same
 * deviates for every package; each new name takes the next coordinate of the sequence, so names
 * must be asked for in a fixed order.
 */
public final class Draws {
  /** Any number would do; a fixed one gives the same survey the same report. */
  private static final ScrambledHalton SEQUENCE = new ScrambledHalton(1788);

  private final int samples;
  private final IntFunction<double[]> rows;
  private final Map<String, double[]> known = new LinkedHashMap<>();

  /**
   * Draws.
   *
   * @param samples how many samples
   * @param rows deviates of the first name, the second and so on, one for each sample
   */
  public Draws(int samples, IntFunction<double[]> rows) {
    this.samples = samples;
    this.rows = rows;
  }

  /** So many samples that fill what is possible evenly. */
  public static Draws of(int samples) {
    return new Draws(
        samples,
        row -> Arrays.stream(SEQUENCE.coordinates(row, samples)).map(NormalQuantile::of).toArray());
  }

  /** How many samples. */
  public int samples() {
    return samples;
  }

  /** The deviates of a name, one for each sample. */
  public double[] of(String name) {
    return known.computeIfAbsent(name, n -> rows.apply(known.size())).clone();
  }
}
