package org.drysill.physics.layers;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.drysill.physics.Bounds;

/**
 * Water that settles and dries within a built-up element over a year; ISO 13788:2012, clause 6
 * (memory).
 *
 * <p>The year begins with a month in which water settles in the dry element and none did the month
 * before; where every month does so, with the first given. Where a plane dries within a month the
 * rest of that month is reckoned without it, so that water is conserved; the standard sets the
 * month's rest to nothing.
 */
public final class Iso13788Element {
  private static final int MONTHS = 12;

  private Iso13788Element() {}

  /** What a year does to an element. */
  public enum Verdict {
    /** No water settles in any month. */
    NONE,
    /** Water settles and has dried before the next winter. */
    DRIES,
    /** Water is left after twelve months. */
    ACCUMULATES
  }

  /**
   * A year of an element.
   *
   * @param first the month that the reckoning begins with, 0 for the first given
   * @param months twelve months from there on
   * @param verdict what becomes of the water
   */
  public record Year(int first, List<MonthWater> months, Verdict verdict) {
    /** Copies the list. */
    public Year {
      months = List.copyOf(months);
    }

    /** The most water that the element holds at the end of a month [kg/m²]. */
    public double highestKgM2() {
      return months.stream().mapToDouble(MonthWater::storedKgM2).max().orElse(0);
    }

    /** Water left at the end of the year [kg/m²]. */
    public double leftKgM2() {
      return months.get(months.size() - 1).storedKgM2();
    }
  }

  /**
   * Reckons a year.
   *
   * @param climate twelve months, beginning with January
   */
  public static Year year(Element element, List<MonthClimate> climate) {
    Bounds.inside("number of months", climate.size(), MONTHS, MONTHS);
    OptionalInt wettens = firstMonth(element, climate);
    int first = wettens.orElse(0);
    double[] stored = new double[element.planes()];
    List<MonthWater> months = new ArrayList<>();
    for (int i = 0; i < MONTHS; i++) {
      MonthWater month = month(element, climate.get((first + i) % MONTHS), stored);
      months.add(month);
      stored = month.storedByPlane();
    }
    return new Year(first, months, verdict(wettens, months));
  }

  private static Verdict verdict(OptionalInt wettens, List<MonthWater> months) {
    if (wettens.isEmpty()) {
      return Verdict.NONE;
    }
    return months.get(MONTHS - 1).storedKgM2() > 0 ? Verdict.ACCUMULATES : Verdict.DRIES;
  }

  private static OptionalInt firstMonth(Element element, List<MonthClimate> climate) {
    boolean[] settles = new boolean[MONTHS];
    for (int m = 0; m < MONTHS; m++) {
      double[] dry = new double[element.planes()];
      settles[m] = month(element, climate.get(m), dry).condensedKgM2() > 0;
    }
    OptionalInt begins =
        IntStream.range(0, MONTHS)
            .filter(m -> settles[m] && !settles[(m + MONTHS - 1) % MONTHS])
            .findFirst();
    return begins.isPresent() || !settles[0] ? begins : OptionalInt.of(0);
  }

  /**
   * Reckons one month.
   *
   * @param storedBefore water at each plane at its beginning [kg/m²]
   */
  public static MonthWater month(Element element, MonthClimate climate, double[] storedBefore) {
    int planes = element.planes();
    double[] airLayer = IntStream.range(0, planes).mapToDouble(element::airLayerM).toArray();
    double[] saturation = element.saturationPa(climate.indoorCelsius(), climate.outdoorCelsius());
    double[] stored = storedBefore.clone();
    VapourLine first = line(airLayer, saturation, climate, stored);
    VapourLine line = first;
    double left = climate.seconds();
    while (left > 0) {
      double step = Math.min(left, untilOneDries(line, stored));
      for (int k = 0; k < planes; k++) {
        stored[k] = after(stored[k], line.rateKgM2S(k), step);
      }
      left -= step;
      line = left > 0 ? line(airLayer, saturation, climate, stored) : line;
    }
    double[] gained = new double[planes];
    for (int k = 0; k < planes; k++) {
      gained[k] = stored[k] - storedBefore[k];
    }
    return new MonthWater(climate, first, saturation, gained, stored);
  }

  private static VapourLine line(
      double[] airLayer, double[] saturation, MonthClimate climate, double[] stored) {
    boolean[] wet = new boolean[stored.length];
    for (int k = 0; k < wet.length; k++) {
      wet[k] = stored[k] > 0;
    }
    return VapourLine.drawn(airLayer, saturation, climate.indoorPa(), climate.outdoorPa(), wet);
  }

  private static double untilOneDries(VapourLine line, double[] stored) {
    return IntStream.range(0, stored.length)
        .filter(k -> line.rateKgM2S(k) < 0)
        .mapToDouble(k -> stored[k] / -line.rateKgM2S(k))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** The water after a time; exactly none where the time is what it takes to dry. */
  private static double after(double stored, double rate, double seconds) {
    return rate < 0 && seconds >= stored / -rate ? 0 : stored + rate * seconds;
  }
}
