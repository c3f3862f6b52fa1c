package org.drysill.report.pdf.deflate;

import java.util.ArrayList;
import java.util.List;

/**
 * Where steps are best cut into blocks: small pieces are joined with their neighbours as long as
 * one set of codes for both takes fewer bits than one for each.
 */
final class Stretches {
  /** Steps of a piece: fewer would hardly pay for the codes at the head of a block. */
  private static final int PIECE = 500;

  private Stretches() {}

  /**
   * A stretch of the content.
   *
   * @param bytes how many bytes its steps tell
   * @param counts how often each symbol occurs
   * @param bits how many bits it takes as a block
   */
  record Stretch(int bytes, Counts counts, long bits) {
    static Stretch of(int bytes, Counts counts) {
      return new Stretch(bytes, counts, new Block(counts).bits());
    }

    Stretch with(Stretch next) {
      return of(bytes + next.bytes, counts.plus(next.counts));
    }
  }

  static List<Stretch> of(Steps steps) {
    List<Stretch> stretches = pieces(steps);
    List<Stretch> joined = new ArrayList<>();
    for (int i = 0; i + 1 < stretches.size(); i++) {
      joined.add(stretches.get(i).with(stretches.get(i + 1)));
    }
    while (!joined.isEmpty()) {
      int best = best(stretches, joined);
      if (gain(stretches, joined, best) <= 0) {
        break;
      }
      stretches.set(best, joined.remove(best));
      stretches.remove(best + 1);
      if (best > 0) {
        joined.set(best - 1, stretches.get(best - 1).with(stretches.get(best)));
      }
      if (best + 1 < stretches.size()) {
        joined.set(best, stretches.get(best).with(stretches.get(best + 1)));
      }
    }
    return stretches;
  }

  /** One at least: nothing is told by a block as well. */
  private static List<Stretch> pieces(Steps steps) {
    List<Stretch> pieces = new ArrayList<>();
    int from = 0;
    do {
      int to = Math.min(steps.size(), from + PIECE);
      int bytes = 0;
      for (int i = from; i < to; i++) {
        bytes += Steps.bytes(steps.get(i));
      }
      pieces.add(Stretch.of(bytes, steps.counts(from, to)));
      from = to;
    } while (from < steps.size());
    return pieces;
  }

  private static int best(List<Stretch> stretches, List<Stretch> joined) {
    int best = 0;
    for (int i = 1; i < joined.size(); i++) {
      if (gain(stretches, joined, i) > gain(stretches, joined, best)) {
        best = i;
      }
    }
    return best;
  }

  private static long gain(List<Stretch> stretches, List<Stretch> joined, int index) {
    return stretches.get(index).bits() + stretches.get(index + 1).bits() - joined.get(index).bits();
  }
}
