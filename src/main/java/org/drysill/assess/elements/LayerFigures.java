package org.drysill.assess.elements;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.surfaces.factor.LayerResistance;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.Spread;
import org.drysill.reference.elements.ElementDefaults;
import org.drysill.reference.materials.Material;
import org.drysill.survey.Layer;
import org.drysill.yaml.Quantity;

/**
 * Resistance and vapour-equivalent thickness of a layer with their workings.
 *
 * @param id of the layer
 */
record LayerFigures(String id, Layer layer, Material material, ElementDefaults defaults) {
  /** sd [m]: stated, else μ · d, else that of the table, else that of what is tight. */
  Optional<Range> airLayer() {
    if (layer.sd().isPresent()) {
      return layer.sd().map(Quantity::range);
    }
    Optional<Range> factor = factor();
    if (factor.isPresent()) {
      return layer.thickness().map(d -> d.range().times(factor.get())).filter(sd -> sd.low() > 0);
    }
    return Optional.of(material.sd().map(Spread::range).orElse(defaults.tightLayer().range()));
  }

  private Optional<Range> factor() {
    return layer
        .vapourFactor()
        .map(Quantity::range)
        .or(() -> material.vapourFactor().map(Spread::range));
  }

  Figure resistance(Range resistance) {
    Optional<Range> conductivity = LayerResistance.conductivity(layer, Optional.of(material));
    List<Input> inputs = new ArrayList<>();
    conductivity.ifPresent(
        c -> {
          inputs.add(thickness());
          inputs.add(
              Input.of("λ", "conductivity", c, Unit.CONDUCTIVITY, basis(layer.conductivity())));
        });
    String formula = conductivity.isPresent() ? "R = d / λ" : "R as printed; 0 for a membrane";
    boolean own = layer.conductivity().isPresent();
    return new Figure(
        id + ".resistance",
        "thermal resistance of the " + material.name(),
        resistance,
        Unit.RESISTANCE,
        basis(layer.conductivity()),
        () -> new Working(formula, inputs, sources(own), Optional.empty()));
  }

  Figure airLayer(Range airLayer) {
    List<Input> inputs = new ArrayList<>();
    Optional<Range> factor = layer.sd().isPresent() ? Optional.empty() : factor();
    factor.ifPresent(
        f -> {
          inputs.add(
              Input.of(
                  "μ", "vapour resistance factor", f, Unit.RATIO, basis(layer.vapourFactor())));
          inputs.add(thickness());
        });
    Optional<Quantity> stated = layer.sd().or(layer::vapourFactor);
    String printed = stated.isPresent() ? "sd as stated" : "sd as printed";
    return new Figure(
        id + ".air_layer",
        "still air that lets as little vapour through as the " + material.name(),
        airLayer,
        Unit.METRE,
        basis(stated),
        () ->
            new Working(
                factor.isPresent() ? "sd = μ · d" : printed,
                inputs,
                sources(stated.isPresent()),
                Optional.empty()));
  }

  private Input thickness() {
    Range d = layer.thickness().map(Quantity::range).orElseThrow();
    return Input.of("d", "thickness", d, Unit.METRE, Basis.DECLARED);
  }

  private static Basis basis(Optional<Quantity> own) {
    return own.isPresent() ? Basis.DECLARED : Basis.PUBLISHED;
  }

  private List<Citation> sources(boolean own) {
    if (own) {
      return List.of();
    }
    boolean tight = material.vapourFactor().isEmpty() && material.sd().isEmpty();
    return tight
        ? List.of(material.source(), defaults.tightLayer().source())
        : List.of(material.source());
  }
}
