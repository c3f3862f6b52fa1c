package org.drysill.physics.tracer.fit;

/**
 * The straight line through ln(C − b) over time, each reading with the weight that its logarithm
 * deserves.
 */
final class LogLinear {
  private LogLinear() {}

  /** The rate [1/h], the fall of the line; weights w·(C − b)². */
  static double rate(double[] hours, double[] values, double[] weights, double level) {
    double sum = 0;
    double time = 0;
    double log = 0;
    for (int i = 0; i < hours.length; i++) {
      double w = weight(values[i], weights[i], level);
      sum += w;
      time += w * (hours[i] - hours[0]);
      log += w * Math.log(values[i] - level);
    }
    double meanTime = time / sum;
    double meanLog = log / sum;
    double both = 0;
    double square = 0;
    for (int i = 0; i < hours.length; i++) {
      double w = weight(values[i], weights[i], level);
      double t = hours[i] - hours[0] - meanTime;
      both += w * t * (Math.log(values[i] - level) - meanLog);
      square += w * t * t;
    }
    return -both / square;
  }

  private static double weight(double value, double weight, double level) {
    return weight * (value - level) * (value - level);
  }
}
