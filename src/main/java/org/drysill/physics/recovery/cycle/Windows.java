package org.drysill.physics.recovery.cycle;

import java.util.Arrays;
import java.util.Optional;

/**
 * Integrates a log between two moments, straight from reading to reading.
 *
 * <pre>T = Tm + τ·dTm/dt          mean T = Σ q·(Tm·Δt + τ·ΔTm) / Σ q·Δt</pre>
 *
 * <p>Tm as the thermometer shows it [°C], τ its time constant [s], q flow, Δ from one reading to
 * the next. At the end of a window the last reading within holds, for beyond it the other air
 * begins.
 */
final class Windows {
  private static final int LEAST_READINGS = 2;

  private final FaceLog log;
  private final double[] seconds;

  Windows(FaceLog log) {
    this.log = log;
    this.seconds = new double[log.size()];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = log.seconds(i);
    }
  }

  /** The index of the first reading at or after a moment. */
  int first(double second) {
    int at = Arrays.binarySearch(seconds, second);
    return at >= 0 ? at : -at - 1;
  }

  /** Empty where fewer than two readings lie within, none before, or no air flows. */
  Optional<Window> between(double from, double to, double lagS) {
    int first = first(from);
    int end = first(to);
    if (end - first < LEAST_READINGS || first == 0) {
      return Optional.empty();
    }
    Sum sum = new Sum();
    double before = at(from, first);
    sum.add(seconds[first] - from, log.air(first), before, log.face(first));
    for (int i = first + 1; i < end; i++) {
      double air = (log.air(i - 1) + log.air(i)) / 2;
      sum.add(seconds[i] - seconds[i - 1], air, log.face(i - 1), log.face(i));
    }
    int last = end - 1;
    sum.add(to - seconds[last], log.air(last), log.face(last), log.face(last));
    return sum.air > 0 ? Optional.of(sum.window(lagS, first, end)) : Optional.empty();
  }

  private double at(double second, int next) {
    double share = (second - seconds[next - 1]) / (seconds[next] - seconds[next - 1]);
    return log.face(next - 1) + share * (log.face(next) - log.face(next - 1));
  }

  private final class Sum {
    private double air;
    private double airKelvin;
    private double airChange;

    void add(double dt, double flow, double before, double after) {
      air += flow * dt;
      airKelvin += flow * dt * (before + after) / 2;
      airChange += flow * (after - before);
    }

    Window window(double lagS, int first, int end) {
      double near = 0;
      double far = 0;
      for (int i = first; i < end; i++) {
        near += log.near(i);
        far += log.far(i);
      }
      int count = end - first;
      return new Window(
          air, (airKelvin + lagS * airChange) / air, airKelvin / air, near / count, far / count);
    }
  }
}
