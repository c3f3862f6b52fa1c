package org.drysill.report.pdf.deflate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class DeflationProperties {
  @Property(tries = 300)
  void bytes_come_back_as_they_were(@ForAll byte[] content) {
    assertThat(Inflated.of(Deflation.of(content))).isEqualTo(content);
  }

  /**
   * Content that repeats itself from anywhere before, with something new between. Repeated pieces
   * are not as long as those within which little is looked for.
   */
  @Property(tries = 60)
  void what_repeats_itself_comes_back_and_takes_no_more_than_usual(
      @ForAll long seed, @ForAll @IntRange(min = 2, max = 256) int letters) {
    byte[] content = repeating(new Random(seed), letters);
    byte[] deflated = Deflation.of(content);
    assertThat(Inflated.of(deflated)).isEqualTo(content);
    assertThat(deflated.length).isLessThanOrEqualTo(Inflated.usualLength(content) + 8);
    assertThat(Deflation.of(content)).isEqualTo(deflated);
  }

  private static byte[] repeating(Random chance, int letters) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int wanted = 10_000 + chance.nextInt(60_000);
    while (out.size() < wanted) {
      int length = 1 + chance.nextInt(1 << (1 + chance.nextInt(6)));
      if (out.size() > 10 && chance.nextInt(3) > 0) {
        byte[] before = out.toByteArray();
        int from = chance.nextInt(before.length);
        out.write(before, from, Math.min(length, before.length - from));
      } else {
        for (int i = 0; i < Math.min(length, 20); i++) {
          out.write(chance.nextInt(letters));
        }
      }
    }
    return out.toByteArray();
  }
}
