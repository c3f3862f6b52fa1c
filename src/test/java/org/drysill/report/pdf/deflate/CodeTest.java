package org.drysill.report.pdf.deflate;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CodeTest {
  /** Weights that double need a word longer by one for each; the two rarest have the same. */
  @Test
  void rarer_symbols_have_longer_words() {
    assertThat(Code.of(new int[] {1, 8, 0, 2, 4, 1}, 15).lengths())
        .containsExactly(4, 1, 0, 3, 2, 4);
  }

  /** The example of RFC 1951, 3.2.2, from memory: lengths 3 3 3 3 3 2 4 4 give words in order. */
  @Test
  void words_follow_from_lengths() {
    Code code = Code.of(new int[] {10, 10, 10, 10, 10, 20, 5, 5}, 15);
    assertThat(code.lengths()).containsExactly(3, 3, 3, 3, 3, 2, 4, 4);
    int[] expected = {0b010, 0b011, 0b100, 0b101, 0b110, 0b00, 0b1110, 0b1111};
    int[] words = code.words();
    for (int i = 0; i < expected.length; i++) {
      int first = Integer.reverse(words[i]) >>> (Integer.SIZE - code.length(i));
      assertThat(first).isEqualTo(expected[i]);
    }
  }

  /** Each weight the sum of the two before it makes the longest words that can be. */
  @Test
  void no_word_is_longer_than_it_may_be_and_none_begins_like_another() {
    int[] counts = new int[30];
    counts[0] = 1;
    counts[1] = 1;
    for (int i = 2; i < counts.length; i++) {
      counts[i] = counts[i - 1] + counts[i - 2];
    }
    assertThat(Code.of(counts, 29).length(0)).isEqualTo(29);
    for (int longest : new int[] {7, 15}) {
      double share = 0;
      for (int length : Code.of(counts, longest).lengths()) {
        assertThat(length).isBetween(1, longest);
        share += Math.pow(2, -length);
      }
      assertThat(share).isEqualTo(1);
    }
  }

  @Test
  void a_symbol_alone_has_a_word_of_one_bit() {
    assertThat(Code.of(new int[] {0, 7, 0}, 15).lengths()).containsExactly(0, 1, 0);
    assertThat(Code.of(new int[3], 15).lengths()).containsExactly(0, 0, 0);
  }
}
