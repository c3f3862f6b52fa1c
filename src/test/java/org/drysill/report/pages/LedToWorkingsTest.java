package org.drysill.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.drysill.Drysill;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Tables of figures lead to workings, in their cells or beside them. Those that do not are
 * summaries of figures that stand elsewhere, printed rates, and sums of packages of measures.
 */
class LedToWorkingsTest {
  private static final Pattern FIGURES = Pattern.compile("<td class=\"n\">\\s*[^<]*\\d");
  private static final int MOST_WITHOUT = 3;

  @ParameterizedTest
  @ValueSource(strings = {"1930s-terrace", "owners-bungalow", "top-floor-flat"})
  void nearly_every_table_of_figures_leads_to_workings(String example) {
    String html =
        Drysill.report(Path.of("example-surveys", example, "survey.yaml"))
            .report()
            .orElseThrow()
            .html();
    List<String> without = new ArrayList<>();
    int tables = 0;
    // What stands between the end of one table and of the next: its title, its notes, its cells.
    for (String part : html.substring(0, html.indexOf("id=\"method\"")).split("</table>", -1)) {
      int start = part.lastIndexOf("<table class=\"fixed");
      if (start >= 0 && FIGURES.matcher(part.substring(start)).find()) {
        tables++;
        if (!part.contains("href=\"#w")) {
          without.add(part.substring(start).replaceAll("<[^>]+>|\\s+", " ").strip());
        }
      }
    }
    assertThat(tables).isGreaterThan(15);
    assertThat(without).hasSizeLessThanOrEqualTo(MOST_WITHOUT);
  }
}
