package org.drysill.physics.recovery.cycle;

/**
 * What a log says between two moments.
 *
 * @param air flow times time [flow · s]
 * @param face mean temperature at the face weighted by air, the lag of the thermometer taken out
 *     [°C]
 * @param uncorrected the same as the thermometer showed it [°C]
 * @param near mean temperature before the face [°C]
 * @param far mean temperature before the other face [°C]
 */
record Window(double air, double face, double uncorrected, double near, double far) {
  double ratio() {
    return (face - far) / (near - far);
  }

  double uncorrectedRatio() {
    return (uncorrected - far) / (near - far);
  }
}
