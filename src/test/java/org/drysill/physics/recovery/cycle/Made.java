package org.drysill.physics.recovery.cycle;

import java.util.Arrays;

/**
 * A log of plain shapes whose mean is known by arithmetic: air of the room at 20 °C while it takes
 * out; in supply, with 0 °C outdoors, a straight fall from 18 to 10 °C, so that η = 0.70.
 */
final class Made {
  static final CycleRules RULES = new CycleRules(15, 400, 0.5, 4, 4, 3, 0.15, 0.3);
  static final double ROOM = 20;

  double supplyS = 70;
  double otherS = 70;
  double pauseS;
  double lagS = 0.01;
  double stepS = 1;
  double lengthS = 4200;
  double start = 18;
  double end = 10;
  double noiseK;
  double outdoor;

  /** The log of the face in the room. */
  FaceLog log() {
    return FaceLog.of(seconds(), face(), filled(ROOM), filled(outdoor), filled(1));
  }

  /** The same with the flow, which stands still in the pauses. */
  FaceLog withFlow() {
    double[] seconds = seconds();
    double[] air = Arrays.stream(seconds).map(t -> isStill(t) ? 0 : -11).toArray();
    return FaceLog.of(seconds, face(), filled(ROOM), filled(outdoor), air);
  }

  double[] seconds() {
    double[] seconds = new double[(int) (lengthS / stepS)];
    for (int i = 0; i < seconds.length; i++) {
      seconds[i] = i * stepS;
    }
    return seconds;
  }

  double[] filled(double value) {
    double[] filled = new double[(int) (lengthS / stepS)];
    Arrays.fill(filled, value);
    return filled;
  }

  /** As a thermometer of first order shows it, in steps of 10 ms. */
  double[] face() {
    double[] face = new double[(int) (lengthS / stepS)];
    double dt = Math.min(0.01, lagS);
    double shown = ROOM;
    long per = Math.round(stepS / dt);
    java.util.Random dice = new java.util.Random(7);
    for (int i = 0; i < face.length; i++) {
      face[i] = shown + noiseK * dice.nextGaussian();
      for (long k = 0; k < per; k++) {
        shown += (air(i * stepS + k * dt) - shown) * Math.min(1, dt / lagS);
      }
    }
    return face;
  }

  /** It begins in the middle of taking out; a pause stands at the end of each half. */
  private double air(double second) {
    double phase = phase(second);
    if (phase >= supplyS) {
      return ROOM;
    }
    double blowing = supplyS - pauseS;
    return phase < blowing ? start + (end - start) * phase / blowing : end + phase - blowing;
  }

  private boolean isStill(double second) {
    double phase = phase(second);
    return phase < supplyS ? phase >= supplyS - pauseS : phase >= supplyS + otherS - pauseS;
  }

  private double phase(double second) {
    return (second + supplyS + otherS / 2) % (supplyS + otherS);
  }
}
