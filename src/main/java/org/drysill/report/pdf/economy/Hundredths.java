package org.drysill.report.pdf.economy;

/** Numbers to two places, counted in hundredths so that sums and differences stay exact. */
final class Hundredths {
  private Hundredths() {}

  static long of(String number) {
    return Math.round(Double.parseDouble(number) * 100);
  }

  /** To one place, counted in hundredths all the same. */
  static long toTenths(String number) {
    return Math.round(Double.parseDouble(number) * 10) * 10;
  }

  static String rounded(String number) {
    return text(of(number));
  }

  /** Without zeros that say nothing. */
  static String text(long hundredths) {
    StringBuilder text = new StringBuilder(hundredths < 0 ? "-" : "");
    long size = Math.abs(hundredths);
    text.append(size / 100);
    long rest = size % 100;
    if (rest > 0) {
      text.append('.').append(rest / 10);
      if (rest % 10 > 0) {
        text.append(rest % 10);
      }
    }
    return text.toString();
  }
}
