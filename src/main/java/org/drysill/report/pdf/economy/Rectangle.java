package org.drysill.report.pdf.economy;

import java.util.Optional;

/**
 * An upright rectangle in hundredths of a point.
 *
 * @param left its left edge
 * @param bottom its lower edge
 * @param right its right edge
 * @param top its upper edge
 */
record Rectangle(long left, long bottom, long right, long top) {
  /** The rectangle of a path of four corners; empty where it is none, or too thin to be rounded. */
  static Optional<Rectangle> of(String[] lines, int at) {
    if (at + 3 >= lines.length || !lines[at].endsWith(" m")) {
      return Optional.empty();
    }
    String[][] corners = new String[4][];
    for (int i = 0; i < 4; i++) {
      corners[i] = lines[at + i].split(" ", -1);
      boolean isCorner = corners[i].length == 3 && corners[i][2].equals(i == 0 ? "m" : "l");
      if (!isCorner) {
        return Optional.empty();
      }
    }
    return turns(corners, 0) || turns(corners, 1)
        ? between(corners[0], corners[2])
        : Optional.empty();
  }

  /** Whether the first side keeps one coordinate, the second the other, and so on. */
  private static boolean turns(String[][] corners, int first) {
    for (int i = 0; i < 4; i++) {
      int kept = (first + i) % 2;
      if (!corners[i][kept].equals(corners[(i + 1) % 4][kept])) {
        return false;
      }
    }
    return true;
  }

  private static Optional<Rectangle> between(String[] one, String[] other) {
    long x1 = Hundredths.of(one[0]);
    long y1 = Hundredths.of(one[1]);
    long x2 = Hundredths.of(other[0]);
    long y2 = Hundredths.of(other[1]);
    return x1 == x2 || y1 == y2
        ? Optional.empty()
        : Optional.of(
            new Rectangle(Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2)));
  }

  /** Both as one, where they are of the same height and touch. */
  Optional<Rectangle> joined(Rectangle other) {
    boolean inOneRow = bottom == other.bottom && top == other.top;
    return inOneRow && left <= other.right && other.left <= right
        ? Optional.of(
            new Rectangle(Math.min(left, other.left), bottom, Math.max(right, other.right), top))
        : Optional.empty();
  }

  boolean hasCorner(long[] at) {
    return (at[0] == left || at[0] == right) && (at[1] == bottom || at[1] == top);
  }

  long area() {
    return (right - left) * (top - bottom);
  }

  /** The operator that adds it to a path. */
  String words() {
    return Hundredths.text(left)
        + ' '
        + Hundredths.text(bottom)
        + ' '
        + Hundredths.text(right - left)
        + ' '
        + Hundredths.text(top - bottom)
        + " re";
  }
}
