package org.drysill.assess.elements;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.surfaces.factor.LayerResistance;
import org.drysill.physics.Range;
import org.drysill.reference.elements.ElementDefaults;
import org.drysill.reference.materials.Material;
import org.drysill.reference.materials.MaterialCatalogue;
import org.drysill.survey.Layer;
import org.drysill.survey.Wall;
import org.drysill.yaml.Quantity;

/** The layers of walls with the survey's own figures, else those of the table. */
final class WallLayers {
  private final MaterialCatalogue materials;
  private final ElementDefaults defaults;

  WallLayers(MaterialCatalogue materials, ElementDefaults defaults) {
    this.materials = materials;
    this.defaults = defaults;
  }

  /** The layers, room side first; empty where one of them is not known. */
  Optional<List<WallLayer>> of(Wall wall) {
    List<WallLayer> known = new ArrayList<>();
    for (Layer layer : wall.layers()) {
      String id = "element." + wall.id() + ".layer_" + (known.size() + 1);
      materials.find(layer.material()).flatMap(m -> layer(id, layer, m)).ifPresent(known::add);
    }
    return known.isEmpty() || known.size() < wall.layers().size()
        ? Optional.empty()
        : Optional.of(told(known));
  }

  /** Names that tell layers of one material apart. */
  private static List<WallLayer> told(List<WallLayer> layers) {
    List<String> names = layers.stream().map(WallLayer::name).toList();
    List<WallLayer> told = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      String name = names.get(i);
      boolean single = Collections.frequency(names, name) == 1;
      String place =
          names.indexOf(name) == i ? "inner" : names.lastIndexOf(name) == i ? "outer" : "middle";
      told.add(single ? layers.get(i) : layers.get(i).named(place + " " + name));
    }
    return told;
  }

  private Optional<WallLayer> layer(String id, Layer layer, Material material) {
    LayerFigures figures = new LayerFigures(id, layer, material, defaults);
    return LayerResistance.of(layer, materials)
        .flatMap(r -> figures.airLayer().map(sd -> layer(figures, layer, material, r, sd)));
  }

  private WallLayer layer(
      LayerFigures figures, Layer layer, Material material, Range resistance, Range airLayer) {
    boolean ownVapour = layer.sd().isPresent() || layer.vapourFactor().isPresent();
    boolean ownHeat = layer.conductivity().isPresent() || material.anyThickness();
    return new WallLayer(
        material.name(),
        kind(layer, material),
        layer.thickness().map(Quantity::range),
        figures.resistance(resistance),
        figures.airLayer(airLayer),
        defaults.absorbing().contains(material.name()),
        ownVapour && ownHeat ? Optional.empty() : Optional.of(material.source()));
  }

  private LayerKind kind(Layer layer, Material material) {
    if (material.resistance().isPresent()) {
      return LayerKind.CAVITY;
    }
    Optional<Range> conductivity = LayerResistance.conductivity(layer, Optional.of(material));
    if (conductivity.isEmpty()) {
      return LayerKind.MEMBRANE;
    }
    if (conductivity.get().likely() <= defaults.insulationConductivity().likely()) {
      return LayerKind.INSULATION;
    }
    return defaults.masonry().contains(material.name()) ? LayerKind.MASONRY : LayerKind.OTHER;
  }
}
