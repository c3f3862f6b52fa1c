package org.drysill.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.drysill.report.pdf.Sample;
import org.junit.jupiter.api.Test;

class HtmlPageTest {
  private static final String PAGE =
      new HtmlPage().render(Sample.page(), Sample.charts(), new Templates().style("screen.css"));

  @Test
  void every_chart_is_drawn_and_its_words_are_text() {
    assertThat(PAGE).doesNotContain("<object");
    assertThat(Pattern.compile("<svg ").matcher(PAGE).results()).hasSize(Sample.charts().size());
    assertThat(PAGE).contains(">water on the pane</text>", ">Secondary glazing</text>");
  }

  @Test
  void nothing_is_fetched() {
    assertThat(PAGE).doesNotContainPattern("(src|href)=\"(?!#)|url\\((?!data:)|@import|<script");
  }

  @Test
  void the_outline_of_the_pdf_is_left_out() {
    assertThat(PAGE).doesNotContain("<bookmark");
  }

  @Test
  void the_same_page_gives_the_same_text() {
    assertThat(
            new HtmlPage()
                .render(Sample.page(), Sample.charts(), new Templates().style("screen.css")))
        .isEqualTo(PAGE);
  }
}
