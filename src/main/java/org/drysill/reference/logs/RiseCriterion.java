package org.drysill.reference.logs;

import org.drysill.physics.Range;
import org.drysill.physics.tracer.event.EventKind;
import org.drysill.physics.tracer.event.RiseShape;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * The shape of a rise of vapour.
 *
 * @param leastRise least rise [kg/m³]
 * @param hoursToPeak time from start to peak, from its low to its high end [h]
 */
public record RiseCriterion(
    @Key(about = "Least rise, kg/m3") Sourced leastRise,
    @Key(about = "Time from start to peak, h") Sourced hoursToPeak) {
  RiseShape shape(EventKind kind) {
    Range hours = hoursToPeak.range();
    return new RiseShape(kind, leastRise.likely(), hours.low(), hours.high());
  }
}
