package org.drysill.report.pdf.economy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A frame around a box: what is between two rectangles. The layout library fills its four sides one
 * by one, with corners cut slantwise.
 */
final class Frame {
  /** The lines of a side: four corners, closed and filled. */
  private static final int SIDE = 6;

  private static final int SIDES = 4;

  /** The number of lines of a frame. */
  static final int LENGTH = SIDES * SIDE;

  private Frame() {}

  /** The lines that fill the frame that begins at a line; empty where none begins. */
  static Optional<String> at(String[] lines, int at) {
    if (at + LENGTH > lines.length) {
      return Optional.empty();
    }
    List<long[]> corners = new ArrayList<>();
    Set<Rectangle> around = new HashSet<>();
    long area = 0;
    for (int side = 0; side < SIDES; side++) {
      List<long[]> four = side(lines, at + side * SIDE);
      if (four.isEmpty()) {
        return Optional.empty();
      }
      corners.addAll(four);
      around.add(around(four));
      area += Math.abs(twiceTheArea(four));
    }
    return around.size() == SIDES ? frame(corners, area) : Optional.empty();
  }

  /** The corners of a side, in hundredths; none where the lines are anything else. */
  private static List<long[]> side(String[] lines, int at) {
    List<long[]> corners = new ArrayList<>();
    for (int i = 0; i < SIDES; i++) {
      String[] words = lines[at + i].split(" ", -1);
      if (words.length != 3 || !words[2].equals(i == 0 ? "m" : "l")) {
        return List.of();
      }
      corners.add(new long[] {Hundredths.of(words[0]), Hundredths.of(words[1])});
    }
    boolean isFilled = lines[at + SIDES].equals("h") && lines[at + SIDES + 1].equals("f");
    return isFilled ? corners : List.of();
  }

  private static Rectangle around(List<long[]> corners) {
    long[] from = corners.get(0).clone();
    long[] to = corners.get(0).clone();
    for (long[] corner : corners) {
      for (int i = 0; i < 2; i++) {
        from[i] = Math.min(from[i], corner[i]);
        to[i] = Math.max(to[i], corner[i]);
      }
    }
    return new Rectangle(from[0], from[1], to[0], to[1]);
  }

  private static long twiceTheArea(List<long[]> corners) {
    long twice = 0;
    for (int i = 0; i < corners.size(); i++) {
      long[] one = corners.get(i);
      long[] next = corners.get((i + 1) % corners.size());
      twice += one[0] * next[1] - next[0] * one[1];
    }
    return twice;
  }

  /** Two rectangles whose difference is as large as the sides together. */
  private static Optional<String> frame(List<long[]> corners, long twiceTheArea) {
    TreeSet<Long> across = new TreeSet<>();
    TreeSet<Long> up = new TreeSet<>();
    for (long[] corner : corners) {
      across.add(corner[0]);
      up.add(corner[1]);
    }
    if (across.size() != SIDES || up.size() != SIDES) {
      return Optional.empty();
    }
    Rectangle outer = new Rectangle(across.first(), up.first(), across.last(), up.last());
    Rectangle inner =
        new Rectangle(
            across.higher(across.first()),
            up.higher(up.first()),
            across.lower(across.last()),
            up.lower(up.last()));
    boolean isBetween =
        corners.stream().allMatch(corner -> outer.hasCorner(corner) || inner.hasCorner(corner))
            && twiceTheArea == 2 * (outer.area() - inner.area());
    return isBetween
        ? Optional.of(outer.words() + '\n' + inner.words() + "\nf*")
        : Optional.empty();
  }
}
