package org.drysill.assess.elements;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** What the monthly method leaves out at a wall; printed beside its verdict. */
final class MethodLimits {
  private static final String LEFT_OUT =
      "Steady vapour and heat by month only: driving rain, water rising from the ground, room air"
          + " leaking through gaps, water stored in the materials or built in, and the sun are left"
          + " out.";
  private static final String CAPILLARY =
      "Solid masonry draws water along and stores it, which the method does not know: it is only a"
          + " screen here, and rain on the outside often matters more.";
  private static final String INTERNAL =
      "Masonry with insulation on its room side stays colder and dries less towards the room; before"
          + " such work, and where rain beats on the wall, have a specialist simulate heat and"
          + " moisture by the hour.";
  private static final String REFERRAL =
      "Where much hangs on the answer, have a specialist simulate heat and moisture by the hour.";

  private MethodLimits() {}

  static List<String> of(List<WallLayer> layers) {
    List<String> limits = new ArrayList<>(List.of(LEFT_OUT));
    boolean masonry = layers.stream().anyMatch(l -> l.kind() == LayerKind.MASONRY);
    if (masonry) {
      limits.add(CAPILLARY);
    }
    limits.add(insulatedInside(layers) ? INTERNAL : REFERRAL);
    return limits;
  }

  /** Insulation before the outermost masonry, and none beyond it. */
  private static boolean insulatedInside(List<WallLayer> layers) {
    int outer = last(layers, LayerKind.MASONRY);
    int insulation = last(layers, LayerKind.INSULATION);
    return insulation >= 0 && insulation < outer;
  }

  private static int last(List<WallLayer> layers, LayerKind kind) {
    return IntStream.range(0, layers.size())
        .filter(i -> layers.get(i).kind() == kind)
        .max()
        .orElse(-1);
  }
}
