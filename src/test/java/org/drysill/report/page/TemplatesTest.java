package org.drysill.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.Locale;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.drysill.report.pdf.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;

class TemplatesTest {
  @ParameterizedTest
  @ValueSource(strings = {"new", "api", "class", "bean", "climb", "file"})
  void a_template_reaches_nothing_but_its_model(String probe) {
    Map<String, Object> model =
        Map.of("probe", probe, "thing", new java.util.concurrent.atomic.AtomicInteger(1));
    assertThatThrownBy(() -> new Templates().render("probes.ftlh", model))
        .isInstanceOf(IllegalStateException.class);
  }

  @Test
  void an_object_of_a_class_of_its_own_is_refused() {
    Map<String, Object> model = Map.of("probe", "none", "thing", new Object());
    assertThatThrownBy(() -> new Templates().render("probes.ftlh", model))
        .isInstanceOf(IllegalStateException.class);
  }

  @Test
  void the_page_is_well_formed_whatever_the_words() throws Exception {
    String page = Sample.page();
    assertThat(
            DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(page)))
                .getDocumentElement()
                .getTagName())
        .isEqualTo("html");
    assertThat(page).contains("&lt;script&gt;").doesNotContain("<script");
  }

  @Test
  void numbers_do_not_follow_the_default_locale() {
    Locale before = Locale.getDefault();
    String page = Sample.page();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertThat(Sample.page()).isEqualTo(page);
    } finally {
      Locale.setDefault(before);
    }
  }
}
