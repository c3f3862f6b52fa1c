package org.drysill.physics.zones;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * In which order zones are eliminated from balances whose matrices are mostly 0, and what of the
 * matrices is or becomes something on the way.
 *
 * <p>Zones with the fewest ways go first, as those around a hall before the hall. Without loops of
 * doors nothing becomes something, and there are as many links as doors.
 */
final class Elimination {
  private final int[] order;
  private final int[] place;
  private final int[][] after;
  private final int[] first;

  /**
   * For balances of the same zones.
   *
   * @param flows of each balance
   */
  Elimination(List<ZoneFlows> flows) {
    int n = flows.get(0).zones();
    order = new int[n];
    place = new int[n];
    after = new int[n][];
    first = new int[n + 1];
    eliminate(neighbours(flows, n));
    for (int k = 0; k < n; k++) {
      first[k + 1] = first[k] + after[k].length;
    }
  }

  /** Number of zones. */
  int zones() {
    return order.length;
  }

  /** The zone that is eliminated at a place. */
  int zone(int at) {
    return order[at];
  }

  /** The place at which a zone is eliminated. */
  int place(int zone) {
    return place[zone];
  }

  /** The later places that one is joined to when it is eliminated, ascending. */
  int[] after(int at) {
    return after[at];
  }

  /** Number of pairs of places that are joined. */
  int links() {
    return first[zones()];
  }

  /** The number of the link between a place and that which stands at an index after it. */
  int link(int at, int index) {
    return first[at] + index;
  }

  /** The number of the link between two places, which are joined. */
  int between(int at, int later) {
    return first[at] + Arrays.binarySearch(after[at], later);
  }

  private static BitSet[] neighbours(List<ZoneFlows> flows, int n) {
    BitSet[] neighbours = new BitSet[n];
    for (int i = 0; i < n; i++) {
      neighbours[i] = new BitSet(n);
      for (int j = 0; j < n; j++) {
        int one = i;
        int other = j;
        neighbours[i].set(
            j, flows.stream().anyMatch(f -> f.between(one, other) + f.between(other, one) > 0));
      }
    }
    return neighbours;
  }

  /** Each time the zone that is joined to the fewest; those that it joined are joined then. */
  private void eliminate(BitSet[] neighbours) {
    int n = zones();
    BitSet left = new BitSet(n);
    left.set(0, n);
    BitSet[] then = new BitSet[n];
    for (int k = 0; k < n; k++) {
      int zone = left.nextSetBit(0);
      for (int z = zone; z >= 0; z = left.nextSetBit(z + 1)) {
        zone = neighbours[z].cardinality() < neighbours[zone].cardinality() ? z : zone;
      }
      order[k] = zone;
      place[zone] = k;
      left.clear(zone);
      then[k] = neighbours[zone];
      for (int z = then[k].nextSetBit(0); z >= 0; z = then[k].nextSetBit(z + 1)) {
        neighbours[z].or(then[k]);
        neighbours[z].clear(z);
        neighbours[z].clear(zone);
      }
    }
    for (int k = 0; k < n; k++) {
      after[k] = then[k].stream().map(z -> place[z]).sorted().toArray();
    }
  }
}
