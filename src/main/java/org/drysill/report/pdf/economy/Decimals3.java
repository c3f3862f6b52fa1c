package org.drysill.report.pdf.economy;

/** Numbers of a line to three places, which tell all of the 256 steps of a colour apart. */
final class Decimals3 {
  private static final int THOUSAND = 1000;

  private Decimals3() {}

  /** A line of numbers and an operator. */
  static String shortened(String line) {
    StringBuilder shorter = new StringBuilder();
    String[] words = line.split(" ", -1);
    for (int i = 0; i < words.length - 1; i++) {
      shorter.append(number(words[i])).append(' ');
    }
    return shorter.append(words[words.length - 1]).toString();
  }

  private static String number(String word) {
    long thousandths = Math.round(Double.parseDouble(word) * THOUSAND);
    if (thousandths % THOUSAND == 0) {
      return Long.toString(thousandths / THOUSAND);
    }
    String digits = Long.toString(THOUSAND + Math.abs(thousandths) % THOUSAND).substring(1);
    long whole = Math.abs(thousandths) / THOUSAND;
    return (thousandths < 0 ? "-" : "")
        + (whole == 0 ? "" : Long.toString(whole))
        + '.'
        + digits.replaceFirst("0+$", "");
  }
}
