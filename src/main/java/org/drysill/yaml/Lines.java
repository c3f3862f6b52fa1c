package org.drysill.yaml;

import java.util.Arrays;

/**
 * A text by its lines. A line ends at LF, CR LF or CR as in editors; columns count code points.
 *
 * @see Place
 */
final class Lines {
  private final String file;
  private final String text;
  private final int[] starts;
  private final int[] pointStarts;

  Lines(String file, String text) {
    this.file = file;
    this.text = text;
    int[] at = new int[16];
    int[] points = new int[16];
    int count = 1;
    int point = 0;
    for (int i = 0; i < text.length(); i++) {
      if (!Character.isLowSurrogate(text.charAt(i)) || i == 0) {
        point++;
      }
      if (endsLine(text, i)) {
        if (count == at.length) {
          at = Arrays.copyOf(at, 2 * count);
          points = Arrays.copyOf(points, 2 * count);
        }
        at[count] = i + 1;
        points[count] = point;
        count++;
      }
    }
    this.starts = Arrays.copyOf(at, count);
    this.pointStarts = Arrays.copyOf(points, count);
  }

  private static boolean endsLine(String text, int i) {
    char c = text.charAt(i);
    return c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'));
  }

  /** The place of a code point, counted from 0. */
  Place atPoint(int point) {
    int found = Arrays.binarySearch(pointStarts, point);
    int line = found >= 0 ? found : -found - 2;
    return new Place(file, line + 1, point - pointStarts[line] + 1);
  }

  /** The place of a char, counted from 0. */
  Place atChar(int index) {
    int found = Arrays.binarySearch(starts, index);
    int line = found >= 0 ? found : -found - 2;
    return new Place(file, line + 1, text.codePointCount(starts[line], index) + 1);
  }

  /** A line from 1, without its end; empty past the last one. */
  String line(int number) {
    if (number < 1 || number > starts.length) {
      return "";
    }
    int end = number < starts.length ? starts[number] : text.length();
    return text.substring(starts[number - 1], end).replaceAll("[\r\n]+$", "");
  }
}
