package org.drysill.assess.elements;

import java.util.ArrayList;
import java.util.List;
import org.drysill.physics.layers.Slice;

/**
 * Where the planes of an element lie: the standard splits thick layers, so that the same place has
 * another number in another case.
 */
final class Places {
  private final List<Integer> layer = new ArrayList<>();
  private final List<Double> share = new ArrayList<>();

  private Places() {}

  /** The places of all planes of layers, both surfaces included. */
  static Places of(List<Slice> slices) {
    Places places = new Places();
    for (int i = 0; i < slices.size(); i++) {
      int parts = slices.get(i).parts();
      for (int part = 0; part < parts; part++) {
        places.add(i, part / (double) parts);
      }
    }
    places.add(slices.size(), 0);
    return places;
  }

  private void add(int within, double at) {
    layer.add(within);
    share.add(at);
  }

  /** The layer that a plane lies in or begins; the number of layers for the outer surface. */
  int layer(int plane) {
    return layer.get(plane);
  }

  /** The share of that layer's thickness before the plane; 0 where the layer begins. */
  double share(int plane) {
    return share.get(plane);
  }

  /** The same number for the same place in any case: even where two layers meet, odd within one. */
  int key(int plane) {
    return 2 * layer(plane) + (share(plane) > 0 ? 1 : 0);
  }

  /** A place in words. */
  static String words(int key, List<WallLayer> layers) {
    int at = key / 2;
    return key % 2 == 1
        ? "within the " + layers.get(at).name()
        : "between the " + layers.get(at - 1).name() + " and the " + layers.get(at).name();
  }
}
