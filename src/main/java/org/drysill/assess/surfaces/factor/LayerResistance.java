package org.drysill.assess.surfaces.factor;

import java.util.Optional;
import org.drysill.physics.Range;
import org.drysill.physics.surface.Iso6946;
import org.drysill.reference.materials.Material;
import org.drysill.reference.materials.MaterialCatalogue;
import org.drysill.survey.Layer;
import org.drysill.yaml.Quantity;

/** Thermal resistance of a layer as the survey gives it, with the bounds of what it rests on. */
public final class LayerResistance {
  private LayerResistance() {}

  /**
   * Resistance of a layer [m²·K/W]: R = d/λ, that of the table for air gaps, 0 for membranes; empty
   * where the material is not known, or has a conductivity and no thickness.
   */
  public static Optional<Range> of(Layer layer, MaterialCatalogue materials) {
    Optional<Material> material = materials.find(layer.material());
    Optional<Range> conductivity = conductivity(layer, material);
    return conductivity.isPresent()
        ? layer.thickness().map(d -> byConductivity(d, conductivity.get()))
        : material.map(m -> m.resistance().map(r -> r.range()).orElse(Range.exactly(0)));
  }

  /** Thermal conductivity of a layer [W/(m·K)]: its own, else that of the table, if any. */
  public static Optional<Range> conductivity(Layer layer, Optional<Material> material) {
    return layer
        .conductivity()
        .map(Quantity::range)
        .or(() -> material.flatMap(Material::conductivity).map(c -> c.range()));
  }

  private static Range byConductivity(Quantity thickness, Range conductivity) {
    return new Range(
        Iso6946.layerResistance(thickness.low(), conductivity.high()),
        Iso6946.layerResistance(thickness.value(), conductivity.likely()),
        Iso6946.layerResistance(thickness.high(), conductivity.low()));
  }
}
