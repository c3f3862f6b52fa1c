package org.drysill.physics.samples;

import java.util.Random;
import org.drysill.physics.Bounds;

/**
 * A Halton sequence whose digits are permuted at random, of a fixed seed (Halton 1960; random digit
 * scrambling as in Owen 2017; memory).
 *
 * <pre>x(i, d) = Σ_k π(d, k)(digit k of i in base p(d)) · p(d)^−(k+1)</pre>
 *
 * <p>p(d) the d-th prime, π(d, k) a permutation of the digits for each dimension and place, leading
 * zeros too. Of every p(d)^m points in a row each interval of length p(d)^−m holds one; without
 * permutations high dimensions run in step. Low dimensions are filled most evenly: what matters
 * most should come first.
 *
 * @param seed the same seed, the same points
 */
public record ScrambledHalton(long seed) {
  /** Places that are finer than this do not show beside the first ones. */
  private static final double FINEST = 1e-13;

  /** Keeps the seeds of neighbouring dimensions apart (a prime). */
  private static final long APART = 1_000_003;

  /**
   * One coordinate of the first points, each above 0 and below 1.
   *
   * @param dimension which one, 0 for the first
   * @param points how many points
   */
  public double[] coordinates(int dimension, int points) {
    Bounds.inside("dimension", dimension, 0, 999);
    int base = prime(dimension);
    int[][] permutations = permutations(base, new Random(seed * APART + dimension));
    double[] coordinates = new double[points];
    for (int i = 0; i < points; i++) {
      coordinates[i] = radicalInverse(i, base, permutations);
    }
    return coordinates;
  }

  /** The digits of an index, permuted and mirrored at the point; in the middle of its interval. */
  static double radicalInverse(int index, int base, int[][] permutations) {
    double place = 1.0 / base;
    double value = 0;
    int left = index;
    for (int[] permutation : permutations) {
      value += permutation[left % base] * place;
      left /= base;
      place /= base;
    }
    return value + place * base / 2;
  }

  private static int[][] permutations(int base, Random random) {
    int[][] permutations = new int[(int) Math.ceil(Math.log(1 / FINEST) / Math.log(base))][];
    for (int k = 0; k < permutations.length; k++) {
      permutations[k] = shuffled(base, random);
    }
    return permutations;
  }

  private static int[] shuffled(int digits, Random random) {
    int[] shuffled = new int[digits];
    for (int i = 0; i < digits; i++) {
      int j = random.nextInt(i + 1);
      shuffled[i] = shuffled[j];
      shuffled[j] = i;
    }
    return shuffled;
  }

  /** The prime of a dimension: 2 for the first. */
  static int prime(int dimension) {
    int prime = 1;
    for (int found = 0; found <= dimension; found++) {
      do {
        prime++;
      } while (!isPrime(prime));
    }
    return prime;
  }

  private static boolean isPrime(int number) {
    for (int i = 2; i * i <= number; i++) {
      if (number % i == 0) {
        return false;
      }
    }
    return true;
  }
}
