package org.drysill.report.pdf.economy;

/** Numbers of a line to three places, which tell all of the 256 steps of a colour apart. */
final class Decimals3 {
  private static final int THOUSAND = 1000;

  private Decimals3() {}

  /** A line of numbers and an operator. */
  static String shortened(String line) {
    StringBuilder shorter = new StringBuilder(line.length());
    int at = 0;
    for (int end = line.indexOf(' '); end >= 0; end = line.indexOf(' ', at)) {
      append(Math.round(Double.parseDouble(line.substring(at, end)) * THOUSAND), shorter);
      shorter.append(' ');
      at = end + 1;
    }
    return shorter.append(line, at, line.length()).toString();
  }

  /** Without zeros that say nothing. */
  private static void append(long thousandths, StringBuilder out) {
    long size = Math.abs(thousandths);
    if (thousandths < 0) {
      out.append('-');
    }
    if (size >= THOUSAND || size == 0) {
      out.append(size / THOUSAND);
    }
    long rest = size % THOUSAND;
    if (rest > 0) {
      out.append('.');
    }
    for (int place = THOUSAND / 10; rest > 0; place /= 10) {
      out.append(rest / place);
      rest %= place;
    }
  }
}
