package org.drysill.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class ListsInSentencesTest {
  @Test
  void the_last_of_several_stands_after_an_and() {
    assertThat(Words.list(List.of())).isEmpty();
    assertThat(Words.list(List.of("a"))).isEqualTo("a");
    assertThat(Words.list(List.of("a", "b"))).isEqualTo("a and b");
    assertThat(Words.list(List.of("a", "b", "c"))).isEqualTo("a, b and c");
  }

  @Test
  void things_with_commas_stand_between_semicolons() {
    assertThat(Words.list(List.of("a, x", "b", "c, y"))).isEqualTo("a, x; b; and c, y");
    assertThat(Words.list(List.of("a, x", "b", "c"), 2, "other", "others"))
        .isEqualTo("a, x; b; and one other");
  }

  @Test
  void what_is_left_is_counted() {
    assertThat(Words.list(List.of("a", "b", "c", "d"), 2, "other", "others"))
        .isEqualTo("a, b and two others");
    assertThat(Words.list(List.of("a", "b"), 2, "other", "others")).isEqualTo("a and b");
  }
}
