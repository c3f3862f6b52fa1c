package org.drysill.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.drysill.Drysill;
import org.junit.jupiter.api.Test;

/** The same survey gives the same bytes, wherever and whenever, beside others or alone. */
class ReportRepeatsTest {
  private static final Path SURVEY = Path.of("example-surveys", "owners-bungalow", "survey.yaml");

  private static Report report() {
    return Drysill.report(SURVEY).report().orElseThrow();
  }

  private static void assertSame(Report again, Report first) {
    assertThat(again.pdf()).isEqualTo(first.pdf());
    assertThat(again.json()).isEqualTo(first.json());
    assertThat(again.html()).isEqualTo(first.html());
  }

  @Test
  void two_at_once_are_the_same_as_one_alone() throws Exception {
    Report alone = report();
    ExecutorService two = Executors.newFixedThreadPool(2);
    try {
      List<Future<Report>> both =
          two.invokeAll(List.of(ReportRepeatsTest::report, ReportRepeatsTest::report));
      assertSame(both.get(0).get(), alone);
      assertSame(both.get(1).get(), alone);
    } finally {
      two.shutdown();
    }
  }

  @Test
  void neither_the_language_of_the_machine_nor_its_clock_changes_a_byte() {
    Report here = report();
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      for (String other : new String[] {"tr-TR Asia/Tokyo", "de-DE America/St_Johns"}) {
        Locale.setDefault(Locale.forLanguageTag(other.split(" ", -1)[0]));
        TimeZone.setDefault(TimeZone.getTimeZone(other.split(" ", -1)[1]));
        assertSame(report(), here);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }
}
