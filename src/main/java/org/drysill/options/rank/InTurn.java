package org.drysill.options.rank;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The works where no package is ranked: the ranking in its order, without what an earlier measure
 * excludes and without what only does again what an earlier one has done already.
 */
public final class InTurn {
  private final List<Entry> kept = new ArrayList<>();
  private final Set<String> settled = new HashSet<>();
  private double wetMonths = Double.POSITIVE_INFINITY;

  private InTurn() {}

  /**
   * The works.
   *
   * @param ranked the measures, best first
   */
  public static List<Entry> of(List<Entry> ranked) {
    InTurn works = new InTurn();
    ranked.forEach(works::consider);
    return List.copyOf(works.kept);
  }

  private void consider(Entry entry) {
    if (kept.stream().noneMatch(entry::excludes) && goesFurther(entry)) {
      kept.add(entry);
      settled.addAll(entry.settles());
      wetMonths = Math.min(wetMonths, entry.wetGlassMonths());
    }
  }

  /**
   * Effects on what is likely lacking add up, those on glass that dries do not: once a measure has
   * ended its wet months, another that would end them alone has nothing left to end.
   */
  private boolean goesFurther(Entry entry) {
    return entry.progress().share() > 0
        || entry.wetGlassMonths() < wetMonths
        || !settled.containsAll(entry.settles());
  }
}
