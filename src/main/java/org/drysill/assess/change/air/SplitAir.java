package org.drysill.assess.change.air;

import org.drysill.physics.air.Iso13788Vapour;

/**
 * What relative humidity indoors depends on.
 *
 * @param celsius air temperature indoors [°C]
 * @param humidity relative humidity indoors over water, as a ratio
 * @param outdoorPa vapour pressure outdoors [Pa]
 */
record SplitAir(double celsius, double humidity, double outdoorPa) {
  /** 1/ps(T) [1/Pa]. */
  double perPascal() {
    return 1 / Iso13788Vapour.saturationPressureOverWaterPa(celsius);
  }

  /** Vapour pressure indoors [Pa]. */
  double pressure() {
    return humidity / perPascal();
  }

  /**
   * What is there on top of outdoors: from what is released indoors, by the air that carries it off
   * [Pa].
   */
  double excess() {
    return pressure() - outdoorPa;
  }

  SplitAir warmerBy(double kelvin) {
    return new SplitAir(celsius + kelvin, humidity, outdoorPa);
  }

  SplitAir damperBy(double ratio) {
    return new SplitAir(celsius, humidity + ratio, outdoorPa);
  }

  SplitAir damperOutdoorsBy(double pascal) {
    return new SplitAir(celsius, humidity, outdoorPa + pascal);
  }
}
