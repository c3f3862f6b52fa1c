package org.drysill.truth;

/**
 * The balance of a made-up room, minute by minute: CO₂ that nothing stores, and vapour that fabric
 * takes up and gives back at a finite rate.
 *
 * <pre>
 * dC/dt = n·(Ce − C) + G/V
 * dv/dt = n·(ve − v) − k·(v − w) + G/V,   (M − 1)·dw/dt = k·(v − w)
 * </pre>
 */
final class RoomAir {
  final RoomLife life;
  final double[] ppm;
  final double[] gM3;

  RoomAir(RoomTruth truth, int days) {
    life = new RoomLife(truth, days);
    ppm = new double[life.minutes];
    gM3 = new double[life.minutes];
    double c = life.outdoorPpm[0] + 400;
    double v = life.outdoorGM3[0] + 2;
    double w = v;
    double k = truth.uptakePerHour();
    double step = 1.0 / 60;
    for (int i = 0; i < life.minutes; i++) {
      double n = life.airChangePerHour[i];
      double emission = life.persons[i] * truth.personM3S() * 3600e6 / truth.volumeM3();
      c += step * (n * (life.outdoorPpm[i] - c) + emission);
      double taken = k * (v - w);
      v += step * (n * (life.outdoorGM3[i] - v) - taken + life.vapourGH[i] / truth.volumeM3());
      w += step * taken / (truth.capacitance() - 1);
      ppm[i] = c;
      gM3[i] = v;
    }
  }
}
