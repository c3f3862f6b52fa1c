package org.drysill.reference.moisture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PerTest {
  @ParameterizedTest
  @EnumSource
  void what_is_counted_is_counted_by_the_week(Per per) {
    assertThat(per.counted()).endsWith(" a week");
  }

  @ParameterizedTest
  @CsvSource({
    "DAY, days a week",
    "PERSON_DAY, person-days a week",
    "LOAD, loads a week",
    "TIME, times a week",
    "HOUR, hours a week",
    "ITEM_DAY, item-days a week",
    "KILOWATT_HOUR, kWh a week"
  })
  void it_follows_a_number(Per per, String words) {
    assertThat(per.counted()).isEqualTo(words);
  }
}
