package org.drysill.assess.change.air;

import org.drysill.assess.Figure;
import org.drysill.assess.change.shown.Shown;

/**
 * How the air of a room, or of the home, changed.
 *
 * @param id id of the room, or {@code home}
 * @param name its name in sentences
 * @param from over what the means are taken, in words
 * @param logged true where logs of both visits are compared, false for readings
 * @param temperatureBefore temperature of the air then [°C]
 * @param temperatureAfter temperature of the air now [°C]
 * @param humidity how relative humidity changed
 * @param excess how the vapour on top of outdoors changed
 * @param said all of it in words
 */
public record AirChange(
    String id,
    String name,
    String from,
    boolean logged,
    Figure temperatureBefore,
    Figure temperatureAfter,
    HumidityChange humidity,
    ExcessChange excess,
    String said) {
  /** What the excess shows. */
  public Shown shown() {
    return excess.judgement().shown();
  }
}
