package org.drysill.report.pdf.deflate;

/**
 * The alphabets of deflated data (RFC 1951, 3.2.5): 256 bytes, the end of a block and 29 classes of
 * lengths share one, 30 classes of distances are the other. A class is told by its symbol, what is
 * within it by extra bits.
 */
final class Symbols {
  static final int END_OF_BLOCK = 256;
  static final int LITERALS_AND_LENGTHS = 286;
  static final int DISTANCES = 30;
  static final int SHORTEST_MATCH = 3;
  static final int LONGEST_MATCH = 258;

  /** A distance takes 15 bits less one. */
  static final int WINDOW = 1 << 15;

  private static final int FIRST_LENGTH = 257;
  private static final int LENGTH_CLASSES = 29;

  /** Distances up to this have a class each in a table, further ones one for each 128. */
  private static final int NEAR = 256;

  private static final int FAR_SHIFT = 7;
  private static final int[] LENGTH_BASE = new int[LENGTH_CLASSES];
  private static final int[] DISTANCE_BASE = new int[DISTANCES];
  private static final short[] LENGTH_SYMBOL = new short[LONGEST_MATCH + 1];
  private static final byte[] NEAR_SYMBOL = new byte[NEAR + 1];
  private static final byte[] FAR_SYMBOL = new byte[WINDOW >> FAR_SHIFT];

  static {
    int length = SHORTEST_MATCH;
    for (int i = 0; i < LENGTH_CLASSES; i++) {
      // The longest length has a class of its own, though the one before could tell it.
      LENGTH_BASE[i] = i == LENGTH_CLASSES - 1 ? LONGEST_MATCH : length;
      for (int within = 0; within < 1 << lengthExtra(i) && length <= LONGEST_MATCH; within++) {
        LENGTH_SYMBOL[length++] = (short) (FIRST_LENGTH + i);
      }
    }
    LENGTH_SYMBOL[LONGEST_MATCH] = (short) (FIRST_LENGTH + LENGTH_CLASSES - 1);
    int distance = 1;
    for (int i = 0; i < DISTANCES; i++) {
      DISTANCE_BASE[i] = distance;
      for (int within = 0; within < 1 << distanceExtra(i); within++, distance++) {
        if (distance <= NEAR) {
          NEAR_SYMBOL[distance] = (byte) i;
        } else {
          FAR_SYMBOL[(distance - 1) >> FAR_SHIFT] = (byte) i;
        }
      }
    }
  }

  private Symbols() {}

  static int ofLength(int length) {
    return LENGTH_SYMBOL[length];
  }

  static int ofDistance(int distance) {
    return distance <= NEAR ? NEAR_SYMBOL[distance] : FAR_SYMBOL[(distance - 1) >> FAR_SHIFT];
  }

  /** How many bits tell the length within its class. */
  static int extraOfLengthSymbol(int symbol) {
    return lengthExtra(symbol - FIRST_LENGTH);
  }

  private static int lengthExtra(int index) {
    return index < 8 || index == LENGTH_CLASSES - 1 ? 0 : index / 4 - 1;
  }

  /** How many bits tell the distance within its class. */
  static int distanceExtra(int symbol) {
    return symbol < 4 ? 0 : symbol / 2 - 1;
  }

  /** Which length of its class. */
  static int withinLength(int length) {
    return length - LENGTH_BASE[ofLength(length) - FIRST_LENGTH];
  }

  /** Which distance of its class. */
  static int withinDistance(int distance) {
    return distance - DISTANCE_BASE[ofDistance(distance)];
  }
}
