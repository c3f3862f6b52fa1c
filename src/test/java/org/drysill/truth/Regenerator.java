package org.drysill.truth;

/**
 * The store of an alternating unit: a row of nodes that the air passes, one way and then the other.
 * Nothing of it is taken from the program under test.
 *
 * <p>Air that passes a node comes out nearer to its temperature by 1 − exp(−NTU/nodes), and the
 * node gives or takes that heat.
 */
final class Regenerator {
  private static final int NODES = 24;

  private final double[] store = new double[NODES];
  private final double exchange;
  private final double airPerNode;

  /**
   * A store.
   *
   * @param ntu transfer units
   * @param storeSeconds heat capacity of the store by that of the air stream [s]
   * @param celsius its temperature at the start
   */
  Regenerator(double ntu, double storeSeconds, double celsius) {
    this.exchange = 1 - Math.exp(-ntu / NODES);
    this.airPerNode = NODES / storeSeconds;
    java.util.Arrays.fill(store, celsius);
  }

  /** Blows outdoor air into the room for a moment; the temperature at which it gets there. */
  double supply(double outdoor, double seconds) {
    double air = outdoor;
    for (int i = NODES - 1; i >= 0; i--) {
      air = pass(i, air, seconds);
    }
    return air;
  }

  /** Blows air of the room out for a moment; the temperature at which it gets out. */
  double extract(double indoor, double seconds) {
    double air = indoor;
    for (int i = 0; i < NODES; i++) {
      air = pass(i, air, seconds);
    }
    return air;
  }

  /** Temperature of the store at its face in the room. */
  double faceInRoom() {
    return store[0];
  }

  /** Temperature of the store at its face outdoors. */
  double faceOutdoors() {
    return store[NODES - 1];
  }

  private double pass(int node, double air, double seconds) {
    double change = exchange * (store[node] - air);
    store[node] -= change * airPerNode * seconds;
    return air + change;
  }
}
