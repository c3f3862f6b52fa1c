package org.drysill.report.pdf.economy;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Marked pieces of text that follow each other, set as one text object: the next place is told from
 * the last, which repeats from line to line, and a font only where it changes.
 */
final class TextObject {
  private static final String BEGIN = "BT";
  private static final String END = "ET";
  private static final String END_OF_MARKED = "EMC";
  private static final String PLAIN_MATRIX = "1 0 0 1 ";
  private static final String[] WITHIN_TEXT = {
    " Tj", " TJ", " Tf", " Tc", " Tw", " Tr", " rg", " RG", " g", " G", " w"
  };

  private final StringBuilder out;
  private final Joins joins;
  private final Deque<String> fonts = new ArrayDeque<>();
  private String font = "";
  private boolean open;
  private long x;
  private long y;

  /** What is marked by the piece that was written last, and where its end stands. */
  private String lastMark = "";

  private int lastEnd;

  TextObject(StringBuilder out, Joins joins) {
    this.out = out;
    this.joins = joins;
  }

  /**
   * The number of lines of a marked sequence that begins at a line and holds nothing but text that
   * stands upright; zero where it is none.
   */
  static int pieceLength(String[] lines, int at) {
    if (!lines[at].endsWith(" BDC")) {
      return 0;
    }
    boolean placed = false;
    for (int i = at + 1; i < lines.length; i++) {
      String line = lines[i];
      if (line.equals(END_OF_MARKED)) {
        return i + 1 - at;
      }
      if (line.equals(BEGIN)) {
        placed = false;
      } else if (isPlainMatrix(line)) {
        placed = true;
      } else if (line.endsWith(" Tj") ? !placed : !line.equals(END) && !isWithinText(line)) {
        return 0;
      }
    }
    return 0;
  }

  private static boolean isPlainMatrix(String line) {
    return line.startsWith(PLAIN_MATRIX) && line.endsWith(" Tm");
  }

  private static boolean isWithinText(String line) {
    for (String operator : WITHIN_TEXT) {
      if (line.endsWith(operator)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Writes a piece.
   *
   * @param lines the lines of the page
   * @param at where it begins
   * @param length its number of lines
   * @param mark how it is marked
   */
  void piece(String[] lines, int at, int length, String mark) {
    begin();
    if (joins.join(lastMark, mark)) {
      out.setLength(lastEnd);
    } else {
      write(mark);
    }
    for (int i = at + 1; i < at + length - 1; i++) {
      String line = lines[i];
      if (isPlainMatrix(line)) {
        move(line.split(" ", -1));
      } else if (line.endsWith(" Tf")) {
        set(line);
      } else if (!line.equals(BEGIN) && !line.equals(END)) {
        write(line);
      }
    }
    lastMark = mark;
    lastEnd = out.length();
    write(END_OF_MARKED);
  }

  private void begin() {
    if (!open) {
      write(BEGIN);
      open = true;
      x = 0;
      y = 0;
      lastMark = "";
    }
  }

  private void move(String[] matrix) {
    long nextX = Hundredths.of(matrix[4]);
    long nextY = Hundredths.of(matrix[5]);
    write(Hundredths.text(nextX - x) + ' ' + Hundredths.text(nextY - y) + " Td");
    x = nextX;
    y = nextY;
  }

  private void set(String line) {
    if (!line.equals(font)) {
      font = line;
      write(line);
    }
  }

  /** Ends the object, where one is open. */
  void end() {
    if (open) {
      write(END);
      open = false;
    }
  }

  /** Takes note of a line outside: a state that is restored brings its font back. */
  void remember(String line) {
    if (line.equals("q")) {
      fonts.push(font);
    } else if (line.equals("Q")) {
      font = fonts.isEmpty() ? "" : fonts.pop();
    } else if (line.endsWith(" Tf")) {
      font = line;
    }
  }

  private void write(String line) {
    out.append(line).append('\n');
  }
}
