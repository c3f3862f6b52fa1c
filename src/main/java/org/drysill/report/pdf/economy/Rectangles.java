package org.drysill.report.pdf.economy;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Filled rectangles of one colour that follow each other. Borders of cells come as one path each,
 * once for the cell above and once for the one below: neighbours become one, the same is told once.
 */
final class Rectangles {
  private static final int CORNERS = 4;

  private final List<Rectangle> waiting = new ArrayList<>();

  /** Takes the filled rectangle that begins at a line; gives its number of lines, or zero. */
  int filled(String[] lines, int at) {
    if (!isLine(lines, at + CORNERS, "h") || !isLine(lines, at + CORNERS + 1, "f")) {
      return 0;
    }
    Optional<Rectangle> rectangle = Rectangle.of(lines, at);
    rectangle.ifPresent(waiting::add);
    return rectangle.isPresent() ? CORNERS + 2 : 0;
  }

  /** The number of lines of a rectangle that begins there and is closed twice, for clipping. */
  static int clipped(String[] lines, int at) {
    boolean closed =
        isLine(lines, at + CORNERS + 1, "h")
            && lines[at].endsWith(" m")
            && lines[at + CORNERS].equals(lines[at].replace(" m", " l"));
    return closed && Rectangle.of(lines, at).isPresent() ? CORNERS + 2 : 0;
  }

  /** The rectangle of four corners that begin at a line; there is one. */
  static Rectangle of(String[] lines, int at) {
    return Rectangle.of(lines, at).orElseThrow();
  }

  /** The lines that fill what was taken since the last time. */
  String drained() {
    if (waiting.isEmpty()) {
      return "";
    }
    Set<Rectangle> joined = new LinkedHashSet<>();
    Rectangle last = waiting.get(0);
    for (Rectangle next : waiting.subList(1, waiting.size())) {
      Optional<Rectangle> both = last.joined(next);
      if (both.isEmpty()) {
        joined.add(last);
      }
      last = both.orElse(next);
    }
    joined.add(last);
    waiting.clear();
    StringBuilder out = new StringBuilder();
    joined.forEach(rectangle -> out.append(rectangle.words()).append('\n'));
    return out.append("f\n").toString();
  }

  private static boolean isLine(String[] lines, int at, String line) {
    return at < lines.length && lines[at].equals(line);
  }
}
