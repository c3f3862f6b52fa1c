package org.drysill.options;

import java.util.List;
import org.drysill.assess.Figure;

/**
 * What the stated money buys, taken in the order of the ranking.
 *
 * @param money the stated money [currency]
 * @param bought the ids of the ranked measures that it buys, in order
 * @param spent the likely sum of their first costs [currency]
 * @param words how it was spent and what was left out, in sentences
 */
public record Budget(Figure money, List<String> bought, Figure spent, List<String> words) {
  /** Copies the lists. */
  public Budget {
    bought = List.copyOf(bought);
    words = List.copyOf(words);
  }
}
