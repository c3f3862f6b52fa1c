package org.drysill.physics.layers;

import java.util.List;
import java.util.stream.Stream;
import org.drysill.physics.Bounds;
import org.drysill.physics.air.Iso13788Vapour;

/**
 * A built-up element between room and outside, room side first; ISO 13788:2012, clause 6 (memory).
 *
 * <pre>
 * T(k) = Ti − (Ti − Te)·(Rsi + Σ R to k) / (Rsi + Σ R + Rse)          ps(k) by ISO 13788 Annex E
 * </pre>
 *
 * <p>Planes are numbered from the inner surface, 0, to the outer one. Steady state by month; no
 * capillary flow, no stored moisture, no air through the element, no rain, no sun.
 */
public final class Element {
  private final double[] resistanceTo;
  private final double[] airLayerTo;
  private final double innerFilm;
  private final double outerFilm;

  private Element(double[] resistanceTo, double[] airLayerTo, double innerFilm, double outerFilm) {
    this.resistanceTo = resistanceTo;
    this.airLayerTo = airLayerTo;
    this.innerFilm = innerFilm;
    this.outerFilm = outerFilm;
  }

  /**
   * An element of layers; thick ones are split as the standard asks.
   *
   * @param layers at least one, room side first
   * @param innerFilm Rsi [m²·K/W]
   * @param outerFilm Rse [m²·K/W]
   */
  public static Element of(List<Slice> layers, double innerFilm, double outerFilm) {
    Bounds.atLeast("number of layers", layers.size(), 1);
    Bounds.above("Rsi [m²·K/W]", innerFilm, 0);
    Bounds.above("Rse [m²·K/W]", outerFilm, 0);
    List<Slice> slices = layers.stream().flatMap(layer -> layer.split().stream()).toList();
    return new Element(
        sums(slices.stream().map(Slice::resistance)),
        sums(slices.stream().map(Slice::airLayerM)),
        innerFilm,
        outerFilm);
  }

  private static double[] sums(Stream<Double> parts) {
    double[] values = parts.mapToDouble(Double::doubleValue).toArray();
    double[] sums = new double[values.length + 1];
    for (int i = 0; i < values.length; i++) {
      sums[i + 1] = sums[i] + values[i];
    }
    return sums;
  }

  /** Number of planes, both surfaces included. */
  public int planes() {
    return airLayerTo.length;
  }

  /** sd from the inner surface to a plane [m]. */
  public double airLayerM(int plane) {
    return airLayerTo[plane];
  }

  /** Thermal resistance from the inner surface to a plane [m²·K/W], films left out. */
  public double resistanceTo(int plane) {
    return resistanceTo[plane];
  }

  /** RT, thermal resistance from air to air [m²·K/W]. */
  public double totalResistance() {
    return innerFilm + resistanceTo[planes() - 1] + outerFilm;
  }

  /** Temperature of a plane [°C]. */
  public double celsius(int plane, double indoorCelsius, double outdoorCelsius) {
    double share = (innerFilm + resistanceTo[plane]) / totalResistance();
    return indoorCelsius - (indoorCelsius - outdoorCelsius) * share;
  }

  /** Saturation vapour pressure at every plane [Pa]. */
  double[] saturationPa(double indoorCelsius, double outdoorCelsius) {
    double[] saturation = new double[planes()];
    for (int k = 0; k < saturation.length; k++) {
      saturation[k] =
          Iso13788Vapour.saturationPressurePa(celsius(k, indoorCelsius, outdoorCelsius));
    }
    return saturation;
  }
}
