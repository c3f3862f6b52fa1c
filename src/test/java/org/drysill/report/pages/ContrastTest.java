package org.drysill.report.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drysill.Reports;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text stands out from its ground by 4.5 to 1 or more, on paper, on screens, and on dark ones. */
class ContrastTest {
  private static final double LEAST = 4.5;
  private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)\\}");
  private static final Pattern COLOR = Pattern.compile("(?<![-\\w])color:\\s*(#[0-9a-f]{6})");
  private static final Pattern GROUND = Pattern.compile("background:\\s*(#[0-9a-f]{6})");
  private static final Pattern VARIABLE = Pattern.compile("(--[\\w-]+):\\s*(#[0-9a-f]{6})");
  private static final Pattern SVG_TEXT = Pattern.compile("<text [^>]*fill:var\\((--[\\w-]+),");

  @ParameterizedTest
  @ValueSource(strings = {"print.css", "chapters.css"})
  void on_paper(String sheet) throws IOException {
    String css = Files.readString(Path.of("templates", sheet));
    List<String> faint = new ArrayList<>();
    int colours = 0;
    for (Matcher rule = RULE.matcher(css); rule.find(); ) {
      Matcher color = COLOR.matcher(rule.group(2));
      Matcher ground = GROUND.matcher(rule.group(2));
      String on = ground.find() ? ground.group(1) : "#ffffff";
      if (color.find()) {
        colours++;
        if (contrast(color.group(1), on) < LEAST) {
          faint.add(rule.group());
        }
      }
    }
    assertThat(colours).isGreaterThan(2);
    assertThat(faint).isEmpty();
  }

  @Test
  void the_shades_of_tables_by_month_under_ink() throws IOException {
    String css = Files.readString(Path.of("templates", "chapters.css"));
    Matcher shade = Pattern.compile("td\\.s[012] \\{ background: (#[0-9a-f]{6})").matcher(css);
    assertThat(shade.results()).hasSize(3);
    shade.reset();
    while (shade.find()) {
      assertThat(contrast("#1b2126", shade.group(1))).isGreaterThanOrEqualTo(LEAST);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1})
  void on_screens_light_and_dark(int scheme) throws IOException {
    Map<String, String> variables = schemes().get(scheme);
    for (String text : List.of("--ink", "--text", "--quiet", "--strong")) {
      assertThat(contrast(variables.get(text), variables.get("--paper")))
          .as(text)
          .isGreaterThanOrEqualTo(LEAST);
    }
    for (String text : List.of("--ink", "--text", "--quiet")) {
      assertThat(contrast(variables.get(text), variables.get("--ground")))
          .as(text + " on the ground of a target")
          .isGreaterThanOrEqualTo(LEAST);
    }
    for (String shade : List.of("--shade0", "--shade1", "--shade2")) {
      assertThat(contrast(variables.get("--ink"), variables.get(shade)))
          .as(shade)
          .isGreaterThanOrEqualTo(LEAST);
    }
    assertThat(contrast(variables.get("--on-shade3"), variables.get("--shade3")))
        .isGreaterThanOrEqualTo(LEAST);
  }

  /** Charts set text in these colours alone, which the other tests hold against their ground. */
  @Test
  void text_of_charts() {
    String html = Reports.example("1930s-terrace").html();
    Set<String> used = new TreeSet<>();
    for (Matcher text = SVG_TEXT.matcher(html); text.find(); ) {
      used.add(text.group(1));
    }
    assertThat(used).isNotEmpty().isSubsetOf("--ink", "--text", "--quiet");
  }

  @Test
  void what_is_faint_is_found() {
    assertThat(contrast("#000000", "#ffffff")).isEqualTo(21);
    assertThat(contrast("#8fa3b3", "#ffffff")).isLessThan(LEAST);
  }

  /** The colours of light and of dark screens; the dark ones replace those of the same name. */
  private static List<Map<String, String>> schemes() throws IOException {
    String css = Files.readString(Path.of("templates", "screen.css"));
    int dark = css.indexOf("prefers-color-scheme: dark");
    Map<String, String> light = variables(css.substring(0, dark));
    Map<String, String> night = new HashMap<>(light);
    night.putAll(variables(css.substring(dark)));
    return List.of(light, night);
  }

  private static Map<String, String> variables(String css) {
    Map<String, String> found = new HashMap<>();
    for (Matcher m = VARIABLE.matcher(css); m.find(); ) {
      found.putIfAbsent(m.group(1), m.group(2));
    }
    return found;
  }

  /** The contrast of two colours, 1 to 21, by their relative luminance. */
  static double contrast(String one, String other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String hex) {
    int rgb = Integer.parseInt(hex.substring(1), 16);
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
  }

  private static double linear(int channel) {
    double share = (channel & 0xff) / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
