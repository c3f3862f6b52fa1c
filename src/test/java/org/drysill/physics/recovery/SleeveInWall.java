package org.drysill.physics.recovery;

/**
 * A thin tube through a wall, its ends in the air of both sides, by finite volumes in cylindrical
 * coordinates: the full treatment that the estimate of {@link Sleeve} is held against.
 *
 * <p>Steady conduction in the tube along its axis and in the wall around it along and across; films
 * on both faces of the wall and on the outer face of both lips; no heat to the air within the tube;
 * the wall ends without heat flow where the tube is no longer felt.
 */
final class SleeveInWall {
  private static final int AXIAL = 60;
  private static final int RADIAL = 40;
  private static final int LIP = 6;
  private static final double REACH_M = 0.6;
  private static final double INNER_FILM = 7.7;
  private static final double OUTER_FILM = 25;
  private static final double RELAXATION = 1.85;
  private static final int SWEEPS = 20_000;

  private final double dx;
  private final double lipStep;
  private final double[] radius = new double[RADIAL + 1];
  private final double[] tube = new double[AXIAL + 2 * LIP];
  private final double[][] wall = new double[AXIAL][RADIAL];
  private final double tubeRadius;
  private final double tubeSection;
  private final double tubeConductivity;
  private final double wallConductivity;

  /** Solves for a room at 1 and an outside at 0, so that temperatures are factors. */
  SleeveInWall(
      double tubeConductivity,
      double diameter,
      double tubeWall,
      double length,
      double lip,
      double wallConductivity) {
    this.tubeRadius = diameter / 2;
    this.tubeSection = Math.PI * diameter * tubeWall;
    this.tubeConductivity = tubeConductivity;
    this.wallConductivity = wallConductivity;
    this.dx = length / AXIAL;
    this.lipStep = lip / LIP;
    for (int j = 0; j <= RADIAL; j++) {
      double share = (double) j / RADIAL;
      radius[j] = tubeRadius + REACH_M * share * share;
    }
    solve();
  }

  /** Mean temperature factor of the lip in the room. */
  double innerLip() {
    double sum = 0;
    for (int i = 0; i < LIP; i++) {
      sum += tube[AXIAL + LIP + i];
    }
    return sum / LIP;
  }

  /** Heat that the room gives to the lip and to the wall [W/K]. */
  double fromRoom() {
    double heat = 0;
    for (int i = 0; i < LIP; i++) {
      heat += INNER_FILM * lipArea() * (1 - tube[AXIAL + LIP + i]);
    }
    for (int j = 0; j < RADIAL; j++) {
      heat += toAir(INNER_FILM, j) * (1 - wall[AXIAL - 1][j]);
    }
    return heat;
  }

  /** Heat that the outside takes [W/K]; equals that from the room once it is solved. */
  double toOutside() {
    double heat = 0;
    for (int i = 0; i < LIP; i++) {
      heat += OUTER_FILM * lipArea() * tube[i];
    }
    for (int j = 0; j < RADIAL; j++) {
      heat += toAir(OUTER_FILM, j) * wall[0][j];
    }
    return heat;
  }

  private double lipArea() {
    return 2 * Math.PI * tubeRadius * lipStep;
  }

  private double ring(int j) {
    return Math.PI * (radius[j + 1] * radius[j + 1] - radius[j] * radius[j]);
  }

  private double toAir(double film, int j) {
    return ring(j) / (1 / film + dx / 2 / wallConductivity);
  }

  /** Between the middles of two rings, across the cylinder that parts them [W/K]. */
  private double across(int inner) {
    double a = (radius[inner] + radius[inner + 1]) / 2;
    double b = (radius[inner + 1] + radius[inner + 2]) / 2;
    return wallConductivity * 2 * Math.PI * dx / Math.log(b / a);
  }

  private double tubeToWall() {
    double middle = (radius[0] + radius[1]) / 2;
    return wallConductivity * 2 * Math.PI * dx / Math.log(middle / radius[0]);
  }

  private void solve() {
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      double change = 0;
      for (int i = 0; i < tube.length; i++) {
        double now = tubeNode(i);
        change = Math.max(change, Math.abs(now - tube[i]));
        tube[i] += RELAXATION * (now - tube[i]);
      }
      for (int i = 0; i < AXIAL; i++) {
        for (int j = 0; j < RADIAL; j++) {
          double now = wallNode(i, j);
          change = Math.max(change, Math.abs(now - wall[i][j]));
          wall[i][j] += RELAXATION * (now - wall[i][j]);
        }
      }
      if (change < 1e-12) {
        return;
      }
    }
    throw new AssertionError("not solved");
  }

  private double step(int i) {
    return i < LIP || i >= LIP + AXIAL ? lipStep : dx;
  }

  private double along(int from) {
    return tubeConductivity * tubeSection / ((step(from) + step(from + 1)) / 2);
  }

  private double tubeNode(int i) {
    double weights = 0;
    double sum = 0;
    if (i > 0) {
      weights += along(i - 1);
      sum += along(i - 1) * tube[i - 1];
    }
    if (i < tube.length - 1) {
      weights += along(i);
      sum += along(i) * tube[i + 1];
    }
    if (i < LIP) {
      weights += OUTER_FILM * lipArea();
    } else if (i >= LIP + AXIAL) {
      weights += INNER_FILM * lipArea();
      sum += INNER_FILM * lipArea();
    } else {
      weights += tubeToWall();
      sum += tubeToWall() * wall[i - LIP][0];
    }
    return sum / weights;
  }

  private double wallNode(int i, int j) {
    double axial = wallConductivity * ring(j) / dx;
    double weights = 0;
    double sum = 0;
    if (i > 0) {
      weights += axial;
      sum += axial * wall[i - 1][j];
    } else {
      weights += toAir(OUTER_FILM, j);
    }
    if (i < AXIAL - 1) {
      weights += axial;
      sum += axial * wall[i + 1][j];
    } else {
      weights += toAir(INNER_FILM, j);
      sum += toAir(INNER_FILM, j);
    }
    if (j > 0) {
      weights += across(j - 1);
      sum += across(j - 1) * wall[i][j - 1];
    } else {
      weights += tubeToWall();
      sum += tubeToWall() * tube[i + LIP];
    }
    if (j < RADIAL - 1) {
      weights += across(j);
      sum += across(j) * wall[i][j + 1];
    }
    return sum / weights;
  }
}
