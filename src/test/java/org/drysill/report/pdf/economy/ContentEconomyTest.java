package org.drysill.report.pdf.economy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Page contents as the PDF library writes them, and the shorter ones that show the same. */
class ContentEconomyTest {
  private final Joins joins = new Joins();

  private String rewritten(String... lines) {
    String content = String.join("\n", lines) + "\n";
    String shorter = new ContentEconomy("Foot"::equals, joins).rewritten(content);
    return new Terse(font -> Optional.empty()).rewritten(shorter);
  }

  private static String lines(String... lines) {
    return String.join("\n", lines) + "\n";
  }

  @Test
  void a_background_of_nothing_goes_and_neighbours_become_one() {
    assertThat(
            rewritten(
                "/Artifact /Prop1 BDC",
                "EMC",
                "/Artifact /Prop2 BDC",
                "0 0 1 RG",
                "1 2 m",
                "3 2 l",
                "S",
                "EMC",
                "/Artifact /Prop3 BDC",
                "EMC",
                "/Artifact /Prop4 BDC",
                "1 4 m",
                "3 4 l",
                "S",
                "EMC"))
        .isEqualTo(
            lines(
                "/Artifact BMC", "0 0 1 RG", "1 2 m", "3 2 l", "S", "1 4 m", "3 4 l", "S", "EMC"));
  }

  @Test
  void running_feet_keep_what_they_are() {
    assertThat(
            rewritten(
                "/Artifact /Foot BDC", "BT", "/F1 8 Tf", "1 0 0 1 10 20 Tm", "(a) Tj", "ET", "EMC"))
        .isEqualTo(
            lines(
                "BT",
                "/Artifact <</Type/Pagination>> BDC",
                "/F1 8 Tf",
                "10 20 Td",
                "(a) Tj",
                "EMC",
                "ET"));
  }

  @Test
  void a_border_that_is_told_twice_and_in_parts_is_one_rectangle() {
    String[] right = {"20 0 m", "10 0 l", "10 0.5 l", "20 0.5 l", "h", "f"};
    String[] left = {"0 0.5 m", "10 0.5 l", "10 0 l", "0 0 l", "h", "f"};
    assertThat(rewritten(concat(concat(right, left), concat(right, left))))
        .isEqualTo(lines("0 0 20 0.5 re", "f"));
  }

  @Test
  void rectangles_of_two_colours_and_slanted_paths_stay_apart() {
    assertThat(
            rewritten(
                "0 0 m",
                "1 0 l",
                "1 1 l",
                "0 1 l",
                "h",
                "f",
                "1 0 0 rg",
                "0 0 m",
                "1 0 l",
                "2 1 l",
                "0 1 l",
                "h",
                "f",
                "1 0 m",
                "2 0 l",
                "2 1 l",
                "1 1 l",
                "h",
                "f"))
        .isEqualTo(
            lines(
                "0 0 1 1 re",
                "f",
                "1 0 0 rg",
                "0 0 m",
                "1 0 l",
                "2 1 l",
                "0 1 l",
                "h",
                "f",
                "1 0 1 1 re",
                "f"));
  }

  @Test
  void a_line_too_thin_for_rounding_stays_as_it_is() {
    assertThat(rewritten("0 0 m", "9 0 l", "9 0.001 l", "0 0.001 l", "h", "f"))
        .isEqualTo(lines("0 0 m", "9 0 l", "9 .001 l", "0 .001 l", "h", "f"));
  }

  /** Four sides with slanted corners, each filled by itself. */
  @Test
  void a_frame_is_what_is_between_two_rectangles() {
    String[] frame = {
      "0 10 m", "10 10 l", "9 9 l", "1 9 l", "h", "f",
      "10 0 m", "0 0 l", "1 1 l", "9 1 l", "h", "f",
      "0 0 m", "0 10 l", "1 9 l", "1 1 l", "h", "f",
      "10 10 m", "10 0 l", "9 1 l", "9 9 l", "h", "f"
    };
    assertThat(rewritten(frame)).isEqualTo(lines("0 0 10 10 re", "1 1 8 8 re", "f*"));
    String[] three = java.util.Arrays.copyOf(frame, 18);
    assertThat(rewritten(three)).isEqualTo(lines(three));
    String[] twice = concat(three, java.util.Arrays.copyOf(frame, 6));
    assertThat(rewritten(twice)).isEqualTo(lines(twice));
  }

  /** What is painted in turns is marked once where the structure has it in one. */
  @Test
  void pieces_of_a_paragraph_come_in_its_order() {
    joins.follows(1, 3);
    joins.follows(3, 2);
    assertThat(rewritten(concat(concat(text(1), text(2)), concat(text(3), text(4)))))
        .isEqualTo(
            lines(
                "BT",
                "/P<</MCID 0>>BDC",
                "/F1 8 Tf",
                "1 1 Td",
                "(a) Tj",
                "0 0 Td",
                "(a) Tj",
                "0 0 Td",
                "(a) Tj",
                "EMC",
                "/P<</MCID 1>>BDC",
                "0 0 Td",
                "(a) Tj",
                "EMC",
                "ET"));
  }

  @Test
  void a_clip_is_a_rectangle_too() {
    assertThat(
            rewritten("q", "0 9 m", "9 9 l", "9 0 l", "0 0 l", "0 9 l", "h", "W", "n", "1 w", "Q"))
        .isEqualTo(lines("q", "0 0 9 9 re", "W", "n", "Q"));
  }

  @Test
  void lines_of_a_paragraph_are_told_from_each_other_and_marked_once() {
    joins.follows(4, 5);
    assertThat(
            rewritten(
                "/P <</MCID 4>> BDC",
                "BT",
                "/F1 8 Tf",
                "1 0 0 1 10.004 100.506 Tm",
                "(a) Tj",
                "ET",
                "EMC",
                "/Artifact /Prop1 BDC",
                "EMC",
                "/P <</MCID 5>> BDC",
                "1 0 0 rg",
                "BT",
                "/F1 8 Tf",
                "1 0 0 1 10.004 90 Tm",
                "(b) Tj",
                "ET",
                "EMC",
                "/P <</MCID 6>> BDC",
                "BT",
                "/F2 8 Tf",
                "1 0 0 1 10.004 79.49 Tm",
                "(c) Tj",
                "ET",
                "EMC"))
        .isEqualTo(
            lines(
                "BT",
                "/P<</MCID 0>>BDC",
                "/F1 8 Tf",
                "10 100.5 Td",
                "(a) Tj",
                "1 0 0 rg",
                "0 -10.5 Td",
                "(b) Tj",
                "EMC",
                "/P<</MCID 1>>BDC",
                "/F2 8 Tf",
                "0 -10.5 Td",
                "(c) Tj",
                "EMC",
                "ET"));
  }

  /** What follows on the page but not in the structure, and the other way round, stays apart. */
  @Test
  void nothing_is_joined_over_what_stands_between() {
    joins.follows(1, 2);
    String[] one = text(1);
    String[] two = text(2);
    String[] rule = {"0 0 m", "9 9 l", "S"};
    assertThat(rewritten(concat(concat(one, rule), two)))
        .isEqualTo(
            lines(
                "BT",
                "/P<</MCID 0>>BDC",
                "/F1 8 Tf",
                "1 1 Td",
                "(a) Tj",
                "EMC",
                "ET",
                "0 0 m",
                "9 9 l",
                "S",
                "BT",
                "/P<</MCID 1>>BDC",
                "1 1 Td",
                "(a) Tj",
                "EMC",
                "ET"));
  }

  @Test
  void a_restored_state_restores_the_font() {
    assertThat(
            rewritten(
                concat(
                    concat(text(1), new String[] {"q", "/F2 8 Tf", "Q", "q"}),
                    concat(text(2), new String[] {"Q"}))))
        .isEqualTo(
            lines(
                "BT",
                "/P<</MCID 0>>BDC",
                "/F1 8 Tf",
                "1 1 Td",
                "(a) Tj",
                "EMC",
                "ET",
                "q",
                "Q",
                "q",
                "BT",
                "/P<</MCID 1>>BDC",
                "1 1 Td",
                "(a) Tj",
                "EMC",
                "ET",
                "Q"));
  }

  @Test
  void turned_text_and_marked_charts_stay_as_they_are() {
    String[] turned = {
      "/P <</MCID 1>> BDC", "BT", "/F1 8 Tf", "0 1 -1 0 5 5 Tm", "(a) Tj", "ET", "EMC"
    };
    String[] chart = {"/Figure <</MCID 2>> BDC", "q", "/Form1 Do", "Q", "EMC"};
    assertThat(rewritten(concat(turned, chart)))
        .isEqualTo(
            lines(
                "/P<</MCID 0>>BDC",
                "BT",
                "0 1 -1 0 5 5 Tm",
                "/F1 8 Tf",
                "(a) Tj",
                "ET",
                "EMC",
                "/Figure<</MCID 1>>BDC",
                "q",
                "/Form1 Do",
                "Q",
                "EMC"));
  }

  @Test
  void a_content_that_is_cut_off_is_not_lost() {
    assertThat(rewritten("/P <</MCID 1>> BDC", "BT")).isEqualTo(lines("/P<</MCID 0>>BDC", "BT"));
    assertThat(rewritten("0 0 m", "1 0 l")).isEqualTo(lines("0 0 m", "1 0 l"));
    assertThat(rewritten("/Artifact /Prop1 BDC", "q")).isEqualTo(lines("/Artifact BMC", "q"));
  }

  @Test
  void numbers_bear_no_zeros_that_say_nothing() {
    assertThat(Hundredths.rounded("0")).isEqualTo("0");
    assertThat(Hundredths.rounded("-0.004")).isEqualTo("0");
    assertThat(Hundredths.rounded("-12.5")).isEqualTo("-12.5");
    assertThat(Hundredths.rounded("3.049")).isEqualTo("3.05");
    assertThat(Hundredths.rounded("10")).isEqualTo("10");
  }

  private static String[] text(int content) {
    return new String[] {
      "/P <</MCID " + content + ">> BDC", "BT", "/F1 8 Tf", "1 0 0 1 1 1 Tm", "(a) Tj", "ET", "EMC"
    };
  }

  private static String[] concat(String[] first, String[] second) {
    String[] both = java.util.Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, both, first.length, second.length);
    return both;
  }
}
