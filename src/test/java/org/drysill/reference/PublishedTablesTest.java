package org.drysill.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.drysill.physics.CheckRow;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the data files print against the rows of the reference table that are tables themselves. */
class PublishedTablesTest {
  private static final Map<String, ToDoubleFunction<CheckRow>> CHECKED = TableQuantities.all();

  static List<CheckRow> rows() {
    return CheckRow.all().stream()
        .filter(r -> CHECKED.containsKey(r.quantity()) && !TableQuantities.isNotOurs(r))
        .toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void the_data_files_hold_what_the_table_says(CheckRow row) {
    assertThat(CHECKED.get(row.quantity()).applyAsDouble(row))
        .isCloseTo(row.expected(), within(row.allowance(row.tolerance())));
  }
}
