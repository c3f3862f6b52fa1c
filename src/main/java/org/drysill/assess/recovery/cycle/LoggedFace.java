package org.drysill.assess.recovery.cycle;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.physics.recovery.cycle.FaceLog;
import org.drysill.survey.log.CycleSamples;
import org.drysill.survey.log.LogQuantity;

/** Makes the log of one face of a unit of the columns of a file. */
final class LoggedFace {
  private final CycleSamples samples;
  private final double[] indoor;
  private final double[] outdoor;

  /**
   * Of a file.
   *
   * @param indoor room air, one value for each reading [°C]
   * @param outdoor outdoor air, one value for each reading [°C]
   */
  LoggedFace(CycleSamples samples, double[] indoor, double[] outdoor) {
    this.samples = samples;
    this.indoor = indoor;
    this.outdoor = outdoor;
  }

  /** A column in which what is missing is taken from its neighbours; empty where it has nothing. */
  static Optional<double[]> filled(CycleSamples samples, LogQuantity quantity) {
    return samples
        .column(quantity)
        .filter(column -> Arrays.stream(column).anyMatch(v -> !Double.isNaN(v)))
        .map(LoggedFace::filled);
  }

  private static double[] filled(double[] column) {
    double[] filled = column.clone();
    for (int i = 1; i < filled.length; i++) {
      filled[i] = Double.isNaN(filled[i]) ? filled[i - 1] : filled[i];
    }
    for (int i = filled.length - 2; i >= 0; i--) {
      filled[i] = Double.isNaN(filled[i]) ? filled[i + 1] : filled[i];
    }
    return filled;
  }

  /** The face in the room, which every log of cycles has. */
  FaceLog inRoom() {
    return of(LogQuantity.SUPPLY_TEMPERATURE, indoor, outdoor).orElseThrow();
  }

  /** The face outdoors; empty where it was not logged. */
  Optional<FaceLog> outdoors() {
    return of(LogQuantity.EXHAUST_TEMPERATURE, outdoor, indoor);
  }

  private Optional<FaceLog> of(LogQuantity quantity, double[] near, double[] far) {
    return samples.column(quantity).map(face -> of(face, near, far));
  }

  private FaceLog of(double[] face, double[] near, double[] far) {
    double[] air = filled(samples, LogQuantity.FLOW).orElseGet(() -> ones(face.length));
    int[] present = IntStream.range(0, face.length).filter(i -> !Double.isNaN(face[i])).toArray();
    return FaceLog.of(
        picked(samples.seconds(), present),
        picked(face, present),
        picked(near, present),
        picked(far, present),
        picked(air, present));
  }

  private static double[] ones(int length) {
    double[] ones = new double[length];
    Arrays.fill(ones, 1);
    return ones;
  }

  private static double[] picked(double[] values, int[] present) {
    return Arrays.stream(present).mapToDouble(i -> values[i]).toArray();
  }
}
