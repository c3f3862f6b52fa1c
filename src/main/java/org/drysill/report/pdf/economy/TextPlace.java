package org.drysill.report.pdf.economy;

import java.util.Optional;

/** Where text is to stand, and where it stands if nothing is said. Lengths in hundredths. */
final class TextPlace {
  /** What nobody sees: 35 µm. */
  private static final double UNSEEN = 10;

  private long x;
  private long y;

  /** Where the line begins that was told last. */
  private long toldX;

  private long toldY;

  /** True where text is to stand elsewhere than where the last text ended. */
  private boolean isMoved;

  /** Where the text ends that was shown last; not a number where that is not known. */
  private double end;

  /** A new text object, or a new matrix. */
  void begin() {
    x = 0;
    y = 0;
    toldX = 0;
    toldY = 0;
    isMoved = false;
    end = 0;
  }

  /** Takes a move from the beginning of one line to that of the next. */
  void move(String line) {
    String[] words = line.split(" ", -1);
    x += Hundredths.of(words[0]);
    y += Hundredths.of(words[1]);
    isMoved = true;
  }

  /** The operator that moves to where text is to stand; empty where it is already. */
  Optional<String> next() {
    boolean goesOn = y == toldY && Math.abs(end - x) <= UNSEEN;
    if (!isMoved || goesOn) {
      isMoved = false;
      return Optional.empty();
    }
    isMoved = false;
    String move = Hundredths.text(x - toldX) + ' ' + Hundredths.text(y - toldY) + " Td";
    toldX = x;
    toldY = y;
    end = x;
    return Optional.of(move);
  }

  /** Text was shown. */
  void shown(double points) {
    end += points * 100;
  }
}
