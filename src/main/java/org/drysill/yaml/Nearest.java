package org.drysill.yaml;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds the word that was probably meant. */
public final class Nearest {
  private static final Pattern GAP = Pattern.compile("[\\s_\\-\\u2010-\\u2015]+");

  private Nearest() {}

  /**
   * The nearest candidate, by single-letter changes and swaps of neighbours; empty where none is
   * within a third of the word's length.
   */
  public static Optional<String> of(String word, Collection<String> candidates) {
    String folded = fold(word);
    int allowed = Math.max(1, Math.min(4, folded.length() / 3));
    if (folded.isEmpty() || folded.length() > 80) {
      return Optional.empty();
    }
    return candidates.stream()
        .filter(c -> distance(folded, fold(c)) <= allowed || extendsTo(folded, fold(c)))
        .min(
            Comparator.comparingInt((String c) -> distance(folded, fold(c)))
                .thenComparing(Comparator.naturalOrder()));
  }

  /** Two spellings of one word: case, hyphens, underscores and spaces aside. */
  static boolean same(String one, String other) {
    return fold(one).equals(fold(other));
  }

  static String fold(String word) {
    String lower = word.strip().toLowerCase(Locale.ROOT);
    return isPlain(lower) ? lower : GAP.matcher(lower).replaceAll(" ");
  }

  /** Most words are letters only, and need no search for gaps. */
  private static boolean isPlain(String word) {
    for (int i = 0; i < word.length(); i++) {
      if (word.charAt(i) < 'a' || word.charAt(i) > 'z') {
        return false;
      }
    }
    return true;
  }

  private static boolean extendsTo(String word, String candidate) {
    return word.length() >= 4 && (candidate.startsWith(word) || word.startsWith(candidate + " "));
  }

  /** Optimal string alignment distance. */
  static int distance(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(cost, a, b, i, j);
      }
    }
    return cost[a.length()][b.length()];
  }

  private static int cheapest(int[][] cost, String a, String b, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int best = Math.min(cost[i - 1][j - 1] + change, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
  }
}
