package org.drysill.report.pdf.economy;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Charts as the drawing library writes them, and the shorter contents that show the same. */
class ChartEconomyTest {
  private static final String BLUE = "/DeviceRGB CS\n0 0 1 SC\n/DeviceRGB cs\n0 0 1 sc\n";
  private static final String LINE = "0 J\n0 j\n10 M\n0.5 w\n";
  private static final String SET = "0 0 1 RG\n0.5 w\n0 J\n0 j\n10 M\n[] 0 d\n";

  private static String line(String path) {
    return "q\n" + BLUE + LINE + path + "S\nQ\n";
  }

  @Test
  void lines_of_one_kind_are_drawn_at_once() {
    assertThat(
            ChartEconomy.rewritten(
                line("11.8398 28 m\n579.8398 28 l\n")
                    + line("11.8398 65.25 m\n579.8398 65.25 l\n")))
        .isEqualTo(SET + "11.8 28 m\n579.8 28 l\n11.8 65.3 m\n579.8 65.3 l\nS\n");
  }

  @Test
  void an_area_with_its_outline_is_one_path_and_a_rectangle_one_operator() {
    String box = "1 9 m\n5 9 l\n5 2 l\n1 2 l\n1 9 l\nh\n";
    assertThat(ChartEconomy.rewritten("q\n" + BLUE + box + "f\nQ\n" + line(box)))
        .isEqualTo("0 0 1 rg\n" + SET + "1 2 4 7 re\nB\n");
  }

  @Test
  void text_is_set_where_its_matrices_put_it() {
    String text =
        "q\nq\n1 0 0 -1 %s cm\n" + BLUE + "BT\n1 0 0 -1 0 0 Tm\n/F1 8 Tf\n(a) Tj\nET\nQ\nQ\n";
    assertThat(ChartEconomy.rewritten(text.formatted("10 20") + text.formatted("12.5 8")))
        .isEqualTo("BT\n0 0 1 rg\n/F1 8 Tf\n10 20 Td\n(a) Tj\n2.5 -12 Td\n(a) Tj\nET\n");
  }

  @Test
  void a_clip_holds_until_it_is_lifted_and_no_longer() {
    String inside = "0 0 m\n9 9 l\nS\n";
    assertThat(
            ChartEconomy.rewritten(
                BLUE + "q\n0 0 m\n4 0 l\n4 4 l\n0 4 l\n0 0 l\nh\nW\nn\n" + inside + "Q\n" + inside))
        .isEqualTo(
            "q\n0 0 4 4 re\nW n\n0 0 1 RG\n1 w\n0 J\n0 j\n10 M\n[] 0 d\n"
                + inside
                + "Q\n0 0 1 RG\n1 w\n0 J\n0 j\n10 M\n[] 0 d\n"
                + inside);
  }

  @Test
  void curves_open_lines_and_dots_keep_their_points() {
    assertThat(ChartEconomy.rewritten("0 0 m\n1 1 2 2 3 0 c\n4 0 l\n4 0 l\nh\nf\n"))
        .isEqualTo("0 0 0 rg\n0 0 m\n1 1 2 2 3 0 c\n4 0 l\nh\nf\n");
    assertThat(ChartEconomy.rewritten("5 5 m\n5.01 5 l\nS\n")).endsWith("5 5 m\n5 5 l\nS\n");
    assertThat(ChartEconomy.rewritten("0 0 m\n4 1 l\n2 3 l\n0 0 l\nh\nf\n"))
        .isEqualTo("0 0 0 rg\n0 0 m\n4 1 l\n2 3 l\nh\nf\n");
  }

  @Test
  void what_is_not_known_stays_as_it_is() {
    for (String content :
        new String[] {
          "/gs0 gs\n0 0 m\n9 9 l\nS\n",
          "/DeviceGray cs\n",
          "q\n2 0 0 2 0 0 cm\n0 0 m\n9 9 l\nS\nQ\n",
          "BT\n0 1 -1 0 5 5 Tm\n/F1 8 Tf\n(a) Tj\nET\n",
          "n\n",
          "Q\n",
          "0 0 m\n1 1 3 0 v\nS\n"
        }) {
      assertThat(ChartEconomy.rewritten(content)).isEqualTo(content);
    }
  }
}
