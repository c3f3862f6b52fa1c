package org.drysill.assess.change.place;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.physics.surface.Iso13788Surface;
import org.drysill.physics.surface.TemperatureFactor;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/**
 * A surface of one visit in air that is not that of the visit: φsi = (pe + Δp) / ps(Te + f (Ti −
 * Te)).
 *
 * @param air the air that both visits are brought to
 * @param factor temperature factor of the visit
 * @param excess vapour excess of the visit, at the outdoor temperature of {@code air} [Pa]
 */
record SurfaceState(CommonAir air, Figure factor, Range excess) {
  /**
   * Air outdoors and in the room.
   *
   * @param outdoor temperature [°C]
   * @param outdoorPa vapour pressure [Pa]
   * @param indoor temperature [°C]
   * @param source where the outdoor air comes from
   */
  record CommonAir(Figure outdoor, double outdoorPa, Figure indoor, Citation source) {}

  /** Relative humidity at the surface, as a ratio. */
  double humidity() {
    return humidity(factor.likely(), excess.likely());
  }

  /** The same with the factor moved [1]. */
  double humidityWith(double shift) {
    return humidity(factor.likely() + shift, excess.likely());
  }

  double factorError() {
    return half(factor.value());
  }

  /** What the error of the factor makes of the humidity, plus or minus. */
  double errorByFactor() {
    return (humidityWith(-factorError()) - humidityWith(factorError())) / 2;
  }

  /** What the error of the excess makes of the humidity, plus or minus. */
  double errorByExcess() {
    return (humidity(factor.likely(), excess.high()) - humidity(factor.likely(), excess.low())) / 2;
  }

  Figure figure(String id, String when) {
    return new Figure(
        id,
        "Humidity at the surface in the same air, " + when,
        Range.around(humidity(), Math.hypot(errorByFactor(), errorByExcess())),
        Unit.RELATIVE_HUMIDITY,
        factor.basis() == Basis.ASSUMED ? Basis.ASSUMED : Basis.CALCULATED,
        this::working);
  }

  private Working working() {
    return new Working(
        "φsi = (pe + Δp) / ps(Te + f (Ti − Te))",
        List.of(
            Input.of("f", factor),
            Input.of(
                "Δp",
                "vapour excess of that visit, at this outdoor temperature",
                excess,
                Unit.PASCAL,
                Basis.CALCULATED),
            Input.of("Te", air.outdoor()),
            Input.of(
                "pe",
                "vapour outdoors",
                Range.exactly(air.outdoorPa()),
                Unit.PASCAL,
                Basis.ASSUMED),
            Input.of("Ti", air.indoor())),
        List.of(
            air.source(),
            Citation.of("ISO 13788", "2012", "Annex E, saturation vapour pressure", How.MEMORY)),
        Optional.of("Bounds: errors of factor and excess as root of the sum of squares."));
  }

  private double humidity(double f, double pascal) {
    return Iso13788Surface.humidity(
        air.outdoorPa() + pascal,
        TemperatureFactor.surfaceCelsius(f, air.indoor().likely(), air.outdoor().likely()));
  }

  private static double half(Range range) {
    return (range.high() - range.low()) / 2;
  }
}
