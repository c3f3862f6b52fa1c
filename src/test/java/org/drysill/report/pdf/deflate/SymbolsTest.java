package org.drysill.report.pdf.deflate;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of the two tables of RFC 1951, 3.2.5, from memory; each inflater holds the same. */
class SymbolsTest {
  @ParameterizedTest
  @CsvSource({
    "257, 0, 3, 3",
    "264, 0, 10, 10",
    "265, 1, 11, 12",
    "269, 2, 19, 22",
    "277, 4, 67, 82",
    "284, 5, 227, 257",
    "285, 0, 258, 258"
  })
  void lengths(int symbol, int extra, int first, int last) {
    for (int length = first; length <= last; length++) {
      assertThat(Symbols.ofLength(length)).isEqualTo(symbol);
      assertThat(Symbols.withinLength(length)).isEqualTo(length - first);
    }
    assertThat(Symbols.extraOfLengthSymbol(symbol)).isEqualTo(extra);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 1, 1",
    "3, 0, 4, 4",
    "4, 1, 5, 6",
    "15, 6, 193, 256",
    "16, 7, 257, 384",
    "17, 7, 385, 512",
    "29, 13, 24577, 32768"
  })
  void distances(int symbol, int extra, int first, int last) {
    for (int distance = first; distance <= last; distance++) {
      assertThat(Symbols.ofDistance(distance)).isEqualTo(symbol);
      assertThat(Symbols.withinDistance(distance)).isEqualTo(distance - first);
    }
    assertThat(Symbols.distanceExtra(symbol)).isEqualTo(extra);
  }
}
