package org.drysill.report.pdf.deflate;

/** The way through a stretch of the content: bytes as they are, and matches. */
final class Steps {
  private final int[] steps;
  private final int size;

  private Steps(int[] steps, int size) {
    this.steps = steps;
    this.size = size;
  }

  /**
   * The cheapest way, from the end to the beginning: what a step costs and what follows it.
   *
   * @param content the content
   * @param matches what stood before, for all places of the stretch
   * @param from the first place
   * @param to the place after the last
   * @param prices what each step costs
   */
  static Steps cheapest(byte[] content, Matches matches, int from, int to, Prices prices) {
    int[] literal = prices.literal();
    int[] length = prices.length();
    int[] distance = prices.distance();
    int[] cost = new int[to - from + 1];
    int[] step = new int[to - from];
    int end = matches.first(to);
    for (int i = to - from - 1; i >= 0; i--) {
      int best = literal[content[from + i] & 0xff] + cost[i + 1];
      int bestStep = content[from + i] & 0xff;
      int start = matches.first(from + i);
      int shortest = Symbols.SHORTEST_MATCH;
      for (int m = start; m < end; m++) {
        int match = matches.get(m);
        int most = Math.min(Matches.length(match), to - from - i);
        int away = Matches.distance(match);
        int fixed = distance[Symbols.ofDistance(away)];
        if (most >= Matches.LONG_ENOUGH) {
          shortest = most;
        }
        for (; shortest <= most; shortest++) {
          int sum = fixed + length[shortest] + cost[i + shortest];
          if (sum < best) {
            best = sum;
            bestStep = Matches.of(shortest, away);
          }
        }
      }
      end = start;
      cost[i] = best;
      step[i] = bestStep;
    }
    return forwards(step);
  }

  /** The steps that are taken, of those that were best from each place. */
  private static Steps forwards(int[] step) {
    int size = 0;
    for (int at = 0; at < step.length; size++) {
      int taken = step[at];
      step[size] = taken;
      at += bytes(taken);
    }
    return new Steps(step, size);
  }

  /** How many bytes a step tells. */
  static int bytes(int step) {
    return Math.max(1, Matches.length(step));
  }

  int size() {
    return size;
  }

  int get(int index) {
    return steps[index];
  }

  /** How often each symbol occurs. */
  Counts counts(int from, int to) {
    Counts counts = new Counts();
    for (int i = from; i < to; i++) {
      counts.add(steps[i]);
    }
    return counts;
  }

  Counts counts() {
    return counts(0, size);
  }
}
