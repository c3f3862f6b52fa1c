package org.drysill.assess.surfaces.factor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.physics.surface.Iso6946;
import org.drysill.physics.surface.TemperatureFactor;
import org.drysill.reference.materials.MaterialCatalogue;
import org.drysill.survey.Layer;

/** Temperature factors of plane elements, by U-value or by layers, with the bounds of both. */
final class PlaneFactor {
  private PlaneFactor() {}

  /**
   * From a U-value, f = 1 - Rsi / (1/U - Rsi,U + Rsi). No U-value counts above that of the two
   * films alone.
   *
   * @param u thermal transmittance [W/(m²·K)]
   * @param filmWithinU room-side film within it [m²·K/W]
   * @param film room-side film of the place [m²·K/W]
   * @param outside outer film [m²·K/W]
   */
  static Range ofU(Range u, double filmWithinU, Range film, double outside) {
    double highest = 1 / (filmWithinU + outside);
    return new Range(
        ofU(Math.min(highest, u.high()), filmWithinU, film.high()),
        ofU(Math.min(highest, u.likely()), filmWithinU, film.likely()),
        ofU(Math.min(highest, u.low()), filmWithinU, film.low()));
  }

  private static double ofU(double u, double filmWithinU, double film) {
    return TemperatureFactor.fromUValue(u, filmWithinU, film);
  }

  /**
   * From the resistance of the layers, f = 1 - Rsi / (Rsi + R + Rse).
   *
   * @param resistance of all layers together [m²·K/W]
   * @param film room-side film of the place [m²·K/W]
   * @param outside outer film [m²·K/W]
   */
  static Range ofLayers(Range resistance, Range film, double outside) {
    return new Range(
        ofLayers(resistance.low(), film.high(), outside),
        ofLayers(resistance.likely(), film.likely(), outside),
        ofLayers(resistance.high(), film.low(), outside));
  }

  private static double ofLayers(double resistance, double film, double outside) {
    double u = Iso6946.uValue(film, List.of(resistance), outside);
    return TemperatureFactor.fromUValue(u, film);
  }

  /** Resistance of layers [m²·K/W]; empty without layers, or where one is of no known material. */
  static Optional<Range> resistance(List<Layer> layers, MaterialCatalogue materials) {
    List<Range> known = new ArrayList<>();
    for (Layer layer : layers) {
      LayerResistance.of(layer, materials).ifPresent(known::add);
    }
    return known.size() == layers.size() ? known.stream().reduce(Range::plus) : Optional.empty();
  }
}
