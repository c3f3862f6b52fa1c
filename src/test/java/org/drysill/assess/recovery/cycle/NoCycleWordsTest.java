package org.drysill.assess.recovery.cycle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.drysill.physics.recovery.cycle.CycleOutcome;
import org.drysill.physics.recovery.cycle.NoCycle;
import org.drysill.reference.recovery.CycleCriteria;
import org.drysill.reference.recovery.RecoveryDefaults;
import org.junit.jupiter.api.Test;

class NoCycleWordsTest {
  private static final CycleCriteria RULES = RecoveryDefaults.bundled().cycles();

  private static String words(NoCycle why) {
    return NoCycleWords.of(new CycleOutcome.None(why, 5, 600, 2), RULES);
  }

  @Test
  void every_reason_is_a_sentence_of_its_own() {
    List<String> all = Arrays.stream(NoCycle.values()).map(NoCycleWordsTest::words).toList();
    assertThat(all)
        .doesNotHaveDuplicates()
        .allSatisfy(
            s -> assertThat(s).startsWith("Refused: ").endsWith(".").doesNotContain("%", "null"));
  }

  @Test
  void the_reason_says_what_was_seen() {
    assertThat(words(NoCycle.TOO_SLOW)).contains("turns every 10 min");
    assertThat(words(NoCycle.TOO_FAST)).contains("turns every 600 s");
    assertThat(words(NoCycle.TOO_FEW)).contains("only 2 whole cycles");
  }
}
