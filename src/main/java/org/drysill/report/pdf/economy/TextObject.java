package org.drysill.report.pdf.economy;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Marked pieces of text that follow each other, set as one text object: the next place is told from
 * the last, which repeats from line to line, to a tenth of a point (35 µm).
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
  private final List<Piece> pieces = new ArrayList<>();
  private final Deque<String[]> saved = new ArrayDeque<>();
  private String font = "";
  private String colour = "";
  private long x;
  private long y;

  /**
   * A marked piece.
   *
   * @param mark how it is marked
   * @param lines what it sets and shows, with what was set before
   */
  record Piece(String mark, List<String> lines) {}

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
   * Takes a piece, to be written with those that follow.
   *
   * @param lines the lines of the page
   * @param at where it begins
   * @param length its number of lines
   * @param mark how it is marked
   */
  void piece(String[] lines, int at, int length, String mark) {
    List<String> within = new ArrayList<>();
    within.add(font);
    within.add(colour);
    for (int i = at + 1; i < at + length - 1; i++) {
      String line = lines[i];
      if (!line.equals(BEGIN) && !line.equals(END)) {
        within.add(line);
        remember(line);
      }
    }
    pieces.add(new Piece(mark, within));
  }

  /** Ends the object, where one is open: pieces of one element follow each other in its order. */
  void end() {
    if (pieces.isEmpty()) {
      return;
    }
    write(BEGIN);
    x = 0;
    y = 0;
    String last = "";
    for (Piece piece : joins.inOrder(pieces)) {
      if (!joins.join(last, piece.mark())) {
        if (!last.isEmpty()) {
          write(END_OF_MARKED);
        }
        write(piece.mark());
      }
      piece.lines().forEach(this::within);
      last = piece.mark();
    }
    write(END_OF_MARKED);
    write(END);
    pieces.clear();
  }

  private void within(String line) {
    if (isPlainMatrix(line)) {
      move(line.split(" ", -1));
    } else if (!line.isEmpty()) {
      write(line);
    }
  }

  private void move(String[] matrix) {
    long nextX = Hundredths.toTenths(matrix[4]);
    long nextY = Hundredths.toTenths(matrix[5]);
    write(Hundredths.text(nextX - x) + ' ' + Hundredths.text(nextY - y) + " Td");
    x = nextX;
    y = nextY;
  }

  /** Takes note of a line that sets font or colour, or that keeps or restores them. */
  void remember(String line) {
    if (line.equals("q")) {
      saved.push(new String[] {font, colour});
    } else if (line.equals("Q")) {
      String[] before = saved.isEmpty() ? new String[] {"", ""} : saved.pop();
      font = before[0];
      colour = before[1];
    } else if (line.endsWith(" Tf")) {
      font = line;
    } else if (line.endsWith(" rg") || line.endsWith(" g")) {
      colour = line;
    }
  }

  private void write(String line) {
    out.append(line).append('\n');
  }
}
