package org.drysill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class StageTimesTest {
  @Test
  void every_stage_has_a_line_in_its_order() {
    StageTimes times = new StageTimes();
    times.accept("reading");
    times.accept("layout");
    List<String> lines = times.lines();
    assertThat(lines).hasSize(2);
    assertThat(lines.get(0)).matches(" *\\d+ ms {2}reading");
    assertThat(lines.get(1)).matches(" *\\d+ ms {2}layout");
  }

  @Test
  void no_stage_has_no_line() {
    assertThat(new StageTimes().lines()).isEmpty();
  }
}
