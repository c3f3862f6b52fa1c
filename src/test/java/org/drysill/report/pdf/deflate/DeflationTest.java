package org.drysill.report.pdf.deflate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DeflationTest {
  private static final Path EXAMPLES = Path.of("example-surveys", "1930s-terrace");

  private static byte[] deflatedAndBack(byte[] content) {
    byte[] deflated = Deflation.of(content);
    assertThat(Inflated.of(deflated)).isEqualTo(content);
    return deflated;
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "a", "ab", "aa", "aaa", "aaaa", "abcabcabcabc", "\u0000\u0000\u0000"})
  void little_is_told_too(String content) {
    byte[] bytes = content.getBytes(StandardCharsets.ISO_8859_1);
    assertThat(deflatedAndBack(bytes).length).isLessThan(40);
  }

  /** A match ends after 258 bytes at the most, and content goes on from stretch to stretch. */
  @ParameterizedTest
  @ValueSource(ints = {257, 258, 259, 516, 1 << 18, (1 << 18) + 1, 600_000})
  void one_byte_again_and_again_takes_next_to_nothing(int times) {
    assertThat(deflatedAndBack(new byte[times]).length).isLessThan(40 + times / 500);
  }

  /** What cannot be told by anything takes hardly more than it is. */
  @Test
  void chance_takes_its_own_length() {
    byte[] content = new byte[300_000];
    new Random(1951).nextBytes(content);
    assertThat(deflatedAndBack(content).length).isBetween(content.length, content.length + 3000);
  }

  /** What lies further back than 32 kilobytes cannot be pointed to. */
  @Test
  void a_beginning_told_again_too_far_away_is_told_in_full() {
    byte[] chance = new byte[40_000];
    new Random(1950).nextBytes(chance);
    byte[] near = new byte[chance.length];
    System.arraycopy(chance, 0, near, 0, chance.length);
    System.arraycopy(chance, chance.length - 10_000, near, chance.length - 5000, 5000);
    byte[] far = new byte[chance.length];
    System.arraycopy(chance, 0, far, 0, chance.length);
    System.arraycopy(chance, 0, far, chance.length - 5000, 5000);
    assertThat(deflatedAndBack(near).length).isLessThan(36_000);
    assertThat(deflatedAndBack(far).length).isGreaterThan(chance.length);
  }

  /** Logs are what it is for: digits that often repeat three or four of a line before. */
  @ParameterizedTest
  @ValueSource(strings = {"logs/bathroom.csv", "survey.yaml"})
  void files_of_an_example_take_less_than_usual(String name) throws IOException {
    byte[] content = Files.readAllBytes(EXAMPLES.resolve(name));
    int usual = Inflated.usualLength(content);
    double share = name.endsWith(".csv") ? 0.88 : 0.985;
    assertThat(deflatedAndBack(content).length).isLessThan((int) (share * usual));
  }
}
