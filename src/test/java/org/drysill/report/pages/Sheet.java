package org.drysill.report.pages;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A page with all that stands on it. Lengths in points from the top left.
 *
 * @param number its number, from 1
 * @param width its width
 * @param height its height
 * @param glyphs its letters in the order in which they are painted
 * @param drawn the bounds of its lines, areas and pictures
 */
record Sheet(int number, double width, double height, List<Glyph> glyphs, List<Rectangle2D> drawn) {
  private static final double MM = 72 / 25.4;
  private static final double TOP = 24 * MM;
  private static final double FOOT = 20 * MM;
  private static final double READING_COLUMN_END = (22 + 121) * MM;

  /** The letters between the running head and the foot. */
  List<Glyph> body() {
    return glyphs.stream()
        .filter(g -> g.baseline() > TOP - 1 && g.baseline() < height - FOOT + 1)
        .toList();
  }

  /**
   * The lowest line of the reading column, from left to right; empty where nothing stands there.
   */
  List<Glyph> lastLine() {
    List<Glyph> column = body().stream().filter(g -> g.box().getX() < READING_COLUMN_END).toList();
    double lowest = column.stream().mapToDouble(Glyph::baseline).max().orElse(0);
    return column.stream()
        .filter(g -> g.baseline() > lowest - 2)
        .sorted(Comparator.comparingDouble(g -> g.box().getX()))
        .toList();
  }

  /** True where the page begins with a chapter of these running words. */
  boolean beginsWith(String running) {
    double highest = body().stream().mapToDouble(Glyph::baseline).min().orElse(0);
    String line =
        body().stream()
            .filter(g -> g.baseline() < highest + 2)
            .sorted(Comparator.comparingDouble(g -> g.box().getX()))
            .map(Glyph::text)
            .collect(Collectors.joining());
    return line.replace(" ", "").startsWith(running.replace(" ", ""));
  }

  /** How much of the height for text is used, 0 to 1: down to the lowest letter or picture. */
  double share() {
    double letters = body().stream().mapToDouble(Glyph::baseline).max().orElse(TOP);
    double lines =
        drawn.stream()
            .mapToDouble(Rectangle2D::getMaxY)
            .filter(y -> y < height - FOOT + 1)
            .max()
            .orElse(TOP);
    return (Math.max(letters, lines) - TOP) / (height - FOOT - TOP);
  }

  /** The text within a box, in the order in which it is painted, without spaces. */
  String text(Rectangle2D area) {
    return glyphs.stream()
        .filter(g -> area.contains(g.box().getCenterX(), g.box().getCenterY()))
        .map(Glyph::text)
        .collect(Collectors.joining());
  }

  /** The text of the page in the order in which it is painted, without spaces. */
  String text() {
    return glyphs.stream().map(Glyph::text).collect(Collectors.joining());
  }

  /** The letters that stand on others. */
  List<String> overlaps() {
    List<Glyph> sorted = new ArrayList<>(glyphs);
    sorted.sort(Comparator.comparingDouble(g -> g.box().getX()));
    List<String> found = new ArrayList<>();
    for (int i = 0; i < sorted.size(); i++) {
      Rectangle2D one = sorted.get(i).box();
      for (int j = i + 1; j < sorted.size(); j++) {
        Rectangle2D other = sorted.get(j).box();
        if (other.getX() >= one.getMaxX()) {
          break;
        }
        if (touch(one, other)) {
          found.add(place(sorted.get(i)) + " on " + place(sorted.get(j)));
        }
      }
    }
    return found;
  }

  /** Kerning lets neighbours touch; one on the other takes more than a fifth of both ways. */
  private static boolean touch(Rectangle2D one, Rectangle2D other) {
    Rectangle2D both = one.createIntersection(other);
    double least = Math.min(one.getWidth(), other.getWidth());
    double low = Math.min(one.getHeight(), other.getHeight());
    return both.getWidth() > 0.25 * least && both.getHeight() > 0.2 * low;
  }

  String place(Glyph glyph) {
    return String.format(
        "page %d: %s at %.0f, %.0f mm (%s)",
        number, glyph.text(), glyph.box().getX() / MM, glyph.baseline() / MM, around(glyph));
  }

  private String around(Glyph glyph) {
    return glyphs.stream()
        .filter(g -> Math.abs(g.baseline() - glyph.baseline()) < 1)
        .filter(g -> Math.abs(g.box().getX() - glyph.box().getX()) < 40)
        .map(Glyph::text)
        .collect(Collectors.joining());
  }
}
