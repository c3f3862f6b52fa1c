package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.drysill.options.packs.PackValue.Bits;

/**
 * Which packages are looked at in many samples: some dozen that may turn out best. They are the
 * best at the likely values, and the front of cost, air and what walls bear: so that surer ones are
 * among them, of those that lack least the cheapest with so much air and vapour in reserve.
 *
 * @param pick picks from all packages
 * @param most how many of the best are taken
 */
record Finalists(Best pick, int most) {
  /** Outdoor air by what is asked [1]: just enough, and up to half as much again. */
  private static final double[] AIR = {0, 1, 1.1, 1.25, 1.5};

  /** The multiple of the vapour that walls and corners bear [1]: just enough is 1. */
  private static final double[] VAPOUR = {
    0, 0.5, 0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.3, 1.4, 1.6, 1.8, 2.2
  };

  /** Those of the packages that fit, each once, in a fixed order. */
  List<PackValue> of(Predicate<PackValue> fits) {
    List<PackValue> best = pick.several(fits, most);
    boolean safe = best.stream().anyMatch(PackValue::safe);
    boolean lasting = best.stream().anyMatch(v -> !v.stopGap());
    Reserves reserves =
        new Reserves(fits.and(v -> (v.safe() || !safe) && (!v.stopGap() || !lasting)));
    pick.packages().each(reserves::take);
    Set<Bits> seen = new LinkedHashSet<>();
    List<PackValue> all = new ArrayList<>();
    for (List<PackValue> some : List.of(best, reserves.cheapest())) {
      for (PackValue value : some) {
        if (seen.add(value.members())) {
          all.add(value);
        }
      }
    }
    return all;
  }

  /** The cheapest of each reserve among those that lack least. */
  private final class Reserves {
    private final Predicate<PackValue> fits;
    private final Comparator<PackValue> by =
        Comparator.comparingDouble((PackValue v) -> v.bill().annual())
            .thenComparing(pick.order().comparator());
    private PackValue[][] cheapest = new PackValue[AIR.length][VAPOUR.length];
    private double least = Double.POSITIVE_INFINITY;

    Reserves(Predicate<PackValue> fits) {
      this.fits = fits;
    }

    void take(PackValue value) {
      if (value.lacks() > least + PackOrder.NO_AIR || !fits.test(value)) {
        return;
      }
      if (value.lacks() < least - PackOrder.NO_AIR) {
        least = value.lacks();
        cheapest = new PackValue[AIR.length][VAPOUR.length];
      }
      int a = level(AIR, value.airReserve());
      int r = level(VAPOUR, value.reserve());
      cheapest[a][r] = cheaper(cheapest[a][r], value);
    }

    List<PackValue> cheapest() {
      List<PackValue> all = new ArrayList<>();
      // A package with more in reserve has also less.
      for (int a = AIR.length - 1; a >= 0; a--) {
        for (int r = VAPOUR.length - 1; r >= 0; r--) {
          PackValue above = a + 1 < AIR.length ? cheapest[a + 1][r] : null;
          PackValue beside = r + 1 < VAPOUR.length ? cheapest[a][r + 1] : null;
          cheapest[a][r] = cheaper(cheaper(cheapest[a][r], above), beside);
          if (cheapest[a][r] != null) {
            all.add(cheapest[a][r]);
          }
        }
      }
      return all;
    }

    private PackValue cheaper(PackValue one, PackValue other) {
      if (one == null || other == null) {
        return one == null ? other : one;
      }
      return by.compare(other, one) < 0 ? other : one;
    }
  }

  private static int level(double[] levels, double value) {
    int level = 0;
    while (level + 1 < levels.length && value >= levels[level + 1]) {
      level++;
    }
    return level;
  }
}
