package org.drysill.report.household;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.drysill.Drysill;
import org.drysill.ReportWishes;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page of facts says what the survey has, and that it has not what it lacks. */
class HouseFactsTest {
  private static final String SURVEY =
      """
      drysill: 1
      visit: {date: 2026-02-08}
      dwelling: {floor_area: 40 m2, jurisdiction: england}
      prices: {date: 2026-01-01, heat: 0.07 /kWh}
      rooms:
        - id: living
          use: living
          windows:
            - {id: w1, u_value: 1.4 W/m2K}
            - {id: w2, width: 1200 mm, height: 1050 mm, glazing: single, frame: timber, background_ventilator: 4000 mm2}
          fans:
            - {id: f1, name: First, kind: continuous extract, filter: {kind: coarse, changed: 2025-10-05, every_months: 12}}
            - {id: f2, name: Second, kind: continuous extract, declared_flow: 9 l/s, filter: {changed: 2024-01-05, every_months: 12}}
            - {id: f3, name: Third, kind: continuous extract, measured_flow: 8 l/s, filter: {changed: 2025-06-01}}
            - {id: f4, name: Fourth, kind: continuous extract, filter: {kind: fine}}
            - {id: f5, name: Fifth, kind: continuous extract}
      """;

  @TempDir private static Path folder;
  private static String words;

  @BeforeAll
  static void write() throws IOException {
    Path file = Files.writeString(folder.resolve("survey.yaml"), SURVEY);
    String html =
        Drysill.report(file, ReportWishes.NONE.withEdition("record"), stage -> {})
            .report()
            .orElseThrow()
            .html();
    words = html.replaceAll("<[^>]*>", " ").replace("&#160;", " ").replaceAll("[\\s\\u00a0]+", " ");
  }

  @Test
  void filters_tell_their_next_change_as_far_as_it_is_known() {
    assertThat(words)
        .contains(
            "First, living continuous extract – coarse; next on 5 October 2026",
            "Second, living continuous extract 9 l/s declared due since 5 January 2025",
            "Third, living continuous extract 8 l/s measured changed on 1 June 2025",
            "Fourth, living continuous extract – fine; last change not stated",
            "Fifth, living continuous extract – not stated");
  }

  @Test
  void windows_tell_what_is_known_of_them() {
    assertThat(words)
        .contains(
            "Living, window – 1.40 W/(m²·K) – not stated",
            "Living, window 1200 mm × 1050 mm single timber 4,000 mm²");
  }

  @Test
  void what_was_assumed_is_marked() {
    assertThat(words)
        .contains("Not stated, efficiency", "(assumed)", ", of 1 January 2026")
        .doesNotContain("What burns", "Since the last visit");
  }
}
