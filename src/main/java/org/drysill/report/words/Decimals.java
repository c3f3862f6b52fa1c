package org.drysill.report.words;

/** How many decimals a number is printed with. */
enum Decimals {
  /** None. */
  WHOLE,
  /** One. */
  ONE,
  /** Two. */
  TWO,
  /** Three. */
  THREE,
  /** As many as the number has, three at most. */
  AS_NEEDED,
  /** None from 10 on, else one. */
  BY_SIZE,
  /** None from 100 on, one from 1 on, else two. */
  FINE,
  /** None from 10 on, one from 1 on, else two. */
  AIR_CHANGE;

  private static final int MOST = 6;

  /** The number of decimals for numbers of the size of {@code value}. */
  int of(double value) {
    double size = Math.abs(value);
    return switch (this) {
      case WHOLE -> 0;
      case ONE -> 1;
      case TWO -> 2;
      case THREE -> 3;
      case AS_NEEDED -> asNeeded(size);
      case BY_SIZE -> size >= 10 ? 0 : 1;
      case FINE -> size >= 100 ? 0 : size >= 1 ? 1 : 2;
      case AIR_CHANGE -> size >= 10 ? 0 : size >= 1 ? 1 : 2;
    };
  }

  /** Decimals that give three digits that count, and no fewer than the usual ones. */
  static int worked(double value, int usual) {
    double size = Math.abs(value);
    if (size == 0 || !Double.isFinite(size)) {
      return usual;
    }
    int leading = (int) Math.floor(Math.log10(size));
    return Math.max(usual, Math.min(MOST, 2 - leading));
  }

  private static int asNeeded(double size) {
    double scaled = size;
    for (int decimals = 0; decimals < 3; decimals++) {
      if (Math.abs(scaled - Math.rint(scaled)) < 1e-6) {
        return decimals;
      }
      scaled *= 10;
    }
    return 3;
  }
}
