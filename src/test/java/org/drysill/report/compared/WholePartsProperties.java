package org.drysill.report.compared;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class WholePartsProperties {
  @Property
  void whole_parts_add_up_and_none_is_off_by_one(
      @ForAll @Size(3) List<@DoubleRange(min = -60, max = 60) Double> parts) {
    List<Long> whole = WholeParts.of(parts);
    long sum = Math.round(parts.stream().mapToDouble(Double::doubleValue).sum());
    assertThat(whole.stream().mapToLong(Long::longValue).sum()).isEqualTo(sum);
    for (int i = 0; i < parts.size(); i++) {
      assertThat(Math.abs(whole.get(i) - parts.get(i))).isLessThanOrEqualTo(1.0);
    }
  }

  @Example
  void the_part_that_loses_most_is_raised() {
    assertThat(WholeParts.of(List.of(-3.4, 0.8, -13.4))).containsExactly(-3L, 1L, -14L);
    assertThat(WholeParts.of(List.of(0.0, 0.0, -14.0))).containsExactly(0L, 0L, -14L);
  }
}
