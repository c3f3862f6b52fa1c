package org.drysill.report.pdf.economy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A path of a chart with places to a tenth of a point, which is less than a dot of a printer:
 * upright rectangles as such, no corner twice, no side that closing draws anyway.
 */
final class ChartPath {
  private static final String CLOSE = "h";
  private static final int RECTANGLE = 5;

  private final List<String> words = new ArrayList<>();

  /** The corners of the part that is being drawn, in hundredths, the first of which begins it. */
  private final List<long[]> corners = new ArrayList<>();

  /** True where a curve is in the part, so that its corners are no longer all of it. */
  private boolean isCurved;

  private ChartPath() {}

  /** The operators of a path, each on a line with its end. */
  static String words(List<String> path, Place place) {
    if (!place.isNone()) {
      throw new ChartEconomy.Unknown("a path that is moved");
    }
    ChartPath shorter = new ChartPath();
    path.forEach(shorter::take);
    shorter.end();
    return String.join("\n", shorter.words) + "\n";
  }

  private void take(String line) {
    String[] operands = line.split(" ", -1);
    switch (operands[operands.length - 1]) {
      case "m" -> {
        end();
        corners.add(places(operands));
      }
      case "l" -> corner(places(operands));
      case "c" -> curve(places(operands));
      case CLOSE -> close();
      default -> throw new ChartEconomy.Unknown(line);
    }
  }

  private void corner(long[] at) {
    if (!Arrays.equals(at, corners.get(corners.size() - 1))) {
      corners.add(at);
    }
  }

  private void curve(long[] points) {
    drawCorners();
    words.add(numbers(points) + "c");
    corners.add(Arrays.copyOfRange(points, points.length - 2, points.length));
    isCurved = true;
  }

  private void close() {
    int last = corners.size() - 1;
    boolean isBack = !isCurved && last > 0 && Arrays.equals(corners.get(last), corners.get(0));
    if (isBack && corners.size() == RECTANGLE && isUpright()) {
      words.add(rectangle(corners.get(0), corners.get(2)).words());
    } else {
      if (isBack) {
        corners.remove(last);
      }
      drawCorners();
      words.add(CLOSE);
    }
    forget();
  }

  /** Ends a part that is not closed; a line that became a dot stays a dot. */
  private void end() {
    if (!isCurved && corners.size() == 1) {
      corners.add(corners.get(0));
    }
    drawCorners();
    forget();
  }

  private void forget() {
    corners.clear();
    isCurved = false;
  }

  private void drawCorners() {
    for (int i = isCurved ? 1 : 0; i < corners.size(); i++) {
      words.add(numbers(corners.get(i)) + (i == 0 ? "m" : "l"));
    }
    corners.clear();
  }

  private boolean isUpright() {
    return turns(0) || turns(1);
  }

  private boolean turns(int first) {
    for (int i = 0; i < RECTANGLE - 1; i++) {
      int kept = (first + i) % 2;
      if (corners.get(i)[kept] != corners.get(i + 1)[kept]) {
        return false;
      }
    }
    return true;
  }

  private static Rectangle rectangle(long[] one, long[] other) {
    return new Rectangle(
        Math.min(one[0], other[0]),
        Math.min(one[1], other[1]),
        Math.max(one[0], other[0]),
        Math.max(one[1], other[1]));
  }

  private static String numbers(long[] hundredths) {
    StringBuilder numbers = new StringBuilder();
    for (long number : hundredths) {
      numbers.append(Hundredths.text(number)).append(' ');
    }
    return numbers.toString();
  }

  private static long[] places(String[] operands) {
    long[] places = new long[operands.length - 1];
    for (int i = 0; i < places.length; i++) {
      places[i] = Hundredths.toTenths(operands[i]);
    }
    return places;
  }
}
