package org.drysill.physics.recovery.cycle;

import org.drysill.physics.Bounds;

/**
 * Temperatures at one face of an alternating unit over time. In one half of the cycle the air that
 * comes in at this face passes the thermometer, at the temperature of the space before it; in the
 * other half, the one that is judged, the air that the store has changed.
 *
 * <p>At the face in the room the judged half is supply: {@code near} is the room, {@code far} is
 * outdoors. At the face outdoors it is extract: near is outdoors, far the room.
 */
public final class FaceLog {
  private final double[] seconds;
  private final double[] face;
  private final double[] near;
  private final double[] far;
  private final double[] air;

  private FaceLog(double[] seconds, double[] face, double[] near, double[] far, double[] air) {
    this.seconds = seconds;
    this.face = face;
    this.near = near;
    this.far = far;
    this.air = air;
  }

  /**
   * A log.
   *
   * @param seconds times [s], each after the one before
   * @param face temperature of the air at the face [°C]
   * @param near temperature of the air before this face [°C]
   * @param far temperature of the air before the other face [°C]
   * @param air flow either way, its sign aside, in any unit; all 1 where nobody read it
   * @throws IllegalArgumentException where lengths differ, times do not rise or a value is missing
   */
  public static FaceLog of(
      double[] seconds, double[] face, double[] near, double[] far, double[] air) {
    for (double[] column : new double[][] {face, near, far, air}) {
      if (column.length != seconds.length) {
        throw new IllegalArgumentException(
            "expected " + seconds.length + " values but was " + column.length);
      }
    }
    for (int i = 0; i < seconds.length; i++) {
      Bounds.finite("time [s]", seconds[i]);
      Bounds.finite("temperature at the face [°C]", face[i]);
      Bounds.finite("temperature before the face [°C]", near[i]);
      Bounds.finite("temperature before the other face [°C]", far[i]);
      Bounds.finite("flow", air[i]);
      if (i > 0) {
        Bounds.above("time after the one before [s]", seconds[i] - seconds[i - 1], 0);
      }
    }
    return new FaceLog(seconds.clone(), face.clone(), near.clone(), far.clone(), sizes(air));
  }

  private static double[] sizes(double[] air) {
    double[] sizes = air.clone();
    for (int i = 0; i < sizes.length; i++) {
      sizes[i] = Math.abs(sizes[i]);
    }
    return sizes;
  }

  int size() {
    return seconds.length;
  }

  double seconds(int i) {
    return seconds[i];
  }

  double face(int i) {
    return face[i];
  }

  double near(int i) {
    return near[i];
  }

  double far(int i) {
    return far[i];
  }

  double air(int i) {
    return air[i];
  }

  /** All temperatures at the face [°C], not to be changed. */
  double[] faces() {
    return face;
  }

  /** The median time from one reading to the next [s]; 0 for fewer than two. */
  double medianStepS() {
    double[] steps = new double[Math.max(0, seconds.length - 1)];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = seconds[i + 1] - seconds[i];
    }
    return steps.length == 0 ? 0 : Medians.of(steps);
  }
}
