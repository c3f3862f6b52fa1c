package org.drysill.assess.recovery;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.recovery.Sleeve;
import org.drysill.physics.surface.Iso13788Surface;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.recovery.PipeMaterial;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.drysill.reference.recovery.SleevePipe;
import org.drysill.survey.Duct;
import org.drysill.survey.DuctMaterial;
import org.drysill.yaml.Quantity;

/** The metal pipe of a unit through the wall as a cold bridge; a bounded estimate. */
final class SleeveAssessment {
  private static final Citation ESTIMATE =
      new Citation(
          "Axial conduction along a thin pipe with films at both ends",
          Optional.empty(),
          Optional.of("an estimate; ISO 10211 has the full treatment"),
          How.DERIVED);

  /** Colder weather need not be named. */
  private static final double COLDEST = -40;

  private final RecoveryDefaults defaults;

  SleeveAssessment(RecoveryDefaults defaults) {
    this.defaults = defaults;
  }

  /** The bridge; empty where the pipe is not of metal or its size is not known. */
  Optional<SleeveBridge> of(String id, Duct duct) {
    boolean metal = duct.material().filter(SleeveAssessment::isMetal).isPresent();
    Optional<Double> diameter = positive(duct.diameter());
    Optional<Double> length = positive(duct.length());
    return metal && diameter.isPresent() && length.isPresent()
        ? Optional.of(bridge(id, diameter.get(), length.get()))
        : Optional.empty();
  }

  private static boolean isMetal(DuctMaterial material) {
    return switch (material) {
      case METAL_SLEEVE, GALVANISED_STEEL -> true;
      case SMOOTH_PLASTIC, FLEXIBLE_TAUT, FLEXIBLE_SLACK -> false;
    };
  }

  private static Optional<Double> positive(Optional<Quantity> size) {
    return size.map(Quantity::value).filter(v -> v > 0);
  }

  private SleeveBridge bridge(String id, double diameter, double length) {
    Pipe metal = new Pipe(defaults.sleeve(PipeMaterial.METAL), diameter, length);
    Pipe plastic = new Pipe(defaults.sleeve(PipeMaterial.PLASTIC), diameter, length);
    Figure conductance = conductance(id + ".sleeve", metal);
    Figure inner = inner(id + ".sleeve", "metal", metal, conductance, rimInWall());
    Figure other =
        inner(
            id + ".sleeve.plastic",
            "plastic",
            plastic,
            conductance(id + ".sleeve.plastic", plastic),
            Range.exactly(0));
    return new SleeveBridge(conductance, inner, other, words(conductance, inner, other));
  }

  private Range rimInWall() {
    return defaults.rimInWall().range();
  }

  private String words(Figure conductance, Figure inner, Figure other) {
    return "Metal carries about %s W/K through the wall along the sleeve; its rim on the room side has a temperature factor of about %s (%s to %s) by conduction, a plastic one %s. In air of %s °C and %s %% water forms on a metal rim %s, on a plastic one %s. An estimate."
        .formatted(
            Numbers.hundredth(conductance.likely()),
            Numbers.hundredth(inner.likely()),
            Numbers.hundredth(inner.value().low()),
            Numbers.hundredth(inner.value().high()),
            Numbers.hundredth(other.likely()),
            Math.round(defaults.rimAirTemperature().likely()),
            Math.round(100 * defaults.rimAirHumidity().likely()),
            onset(inner),
            onset(other));
  }

  /** The outdoor temperature at which water first forms on a rim, in words. */
  private String onset(Figure factor) {
    double celsius = defaults.rimAirTemperature().likely();
    double vapour = MoistAir.vapourPressurePa(celsius, defaults.rimAirHumidity().likely());
    OptionalDouble onset = Iso13788Surface.onsetOutdoorCelsius(vapour, 1, celsius, factor.likely());
    return onset.isPresent() && onset.getAsDouble() > COLDEST
        ? "below " + Math.round(onset.getAsDouble()) + " °C outdoors"
        : "in no weather";
  }

  /** A pipe of a diameter and length [m]. */
  private record Pipe(SleevePipe made, double diameter, double length) {
    Range conductance() {
      Range k = made.conductivity().range();
      Range t = made.thickness().range();
      return new Range(
          sleeve(k.low(), t.low()).axialConductance(),
          sleeve(k.likely(), t.likely()).axialConductance(),
          sleeve(k.high(), t.high()).axialConductance());
    }

    Sleeve sleeve(double conductivity, double thickness) {
      return new Sleeve(conductivity, diameter, thickness, length);
    }

    double lipArea(double lip) {
      return sleeve(made.conductivity().likely(), made.thickness().likely()).lipAreaM2(lip);
    }
  }

  private static Figure conductance(String id, Pipe pipe) {
    return new Figure(
        id + ".conductance",
        "heat along the sleeve",
        pipe.conductance(),
        Unit.WATT_PER_KELVIN,
        Basis.ASSUMED,
        () ->
            new Working(
                "K = λ · π · D · t / L",
                List.of(
                    Input.of(
                        "D",
                        "diameter",
                        Range.exactly(pipe.diameter()),
                        Unit.METRE,
                        Basis.MEASURED),
                    Input.of(
                        "L", "length", Range.exactly(pipe.length()), Unit.METRE, Basis.MEASURED)),
                List.of(
                    ESTIMATE,
                    pipe.made().conductivity().source(),
                    pipe.made().thickness().source()),
                Optional.empty()));
  }

  private Figure inner(String id, String material, Pipe pipe, Figure conductance, Range inWall) {
    double lip = pipe.lipArea(defaults.sleeveLip().likely());
    double inner = lip * defaults.innerFilm().likely();
    double outer = lip * defaults.outerFilm().likely();
    Range k = conductance.value();
    Range factor =
        new Range(
                Sleeve.innerEndFactor(k.high(), inner, outer),
                Sleeve.innerEndFactor(k.likely(), inner, outer),
                Sleeve.innerEndFactor(k.low(), inner, outer))
            .plus(inWall);
    return new Figure(
        id + ".inner_end",
        "temperature factor of the inner end of a " + material + " sleeve",
        factor,
        Unit.RATIO,
        Basis.ASSUMED,
        () ->
            new Working(
                "f = (1/K + 1/(he·Ae)) / (1/K + 1/(he·Ae) + 1/(hi·Ai)) + Δf",
                List.of(
                    Input.of("K", conductance),
                    Input.of(
                        "Δf", "rise by the wall around it", inWall, Unit.RATIO, Basis.CALCULATED)),
                List.of(
                    ESTIMATE,
                    defaults.rimInWall().source(),
                    defaults.sleeveLip().source(),
                    defaults.innerFilm().source(),
                    defaults.outerFilm().source()),
                Optional.of(
                    "Still air in the pipe: the cold air of a running unit"
                        + " cools the rim further.")));
  }
}
