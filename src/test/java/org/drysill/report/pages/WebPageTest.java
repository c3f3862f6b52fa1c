package org.drysill.report.pages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import org.drysill.Reports;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The report as a web page, looked at in a browser: widths, dark screens, paper, the network. */
class WebPageTest {
  /** Text with too little contrast to the nearest ground below it, and the contrast. */
  private static final String FAINT =
      """
      (() => {
        const light = c => { const s = c / 255; return s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4); };
        const parts = c => c.match(/[\\d.]+/g).map(Number);
        const lum = c => { const p = parts(c); return 0.2126 * light(p[0]) + 0.7152 * light(p[1]) + 0.0722 * light(p[2]); };
        const ground = e => { for (; e; e = e.parentElement) { const b = getComputedStyle(e).backgroundColor;
          if (parts(b).length < 4 || parts(b)[3] > 0) return b; } return 'rgb(255, 255, 255)'; };
        const found = new Set();
        const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
        while (walk.nextNode()) {
          const e = walk.currentNode.parentElement;
          if (!walk.currentNode.textContent.trim() || !e.getClientRects().length || e.tagName === 'STYLE') continue;
          const style = getComputedStyle(e);
          const text = e.namespaceURI.endsWith('svg') ? style.fill : style.color;
          const a = lum(text), b = lum(ground(e));
          const c = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
          if (c < 4.5) found.add(c.toFixed(1) + ' ' + e.tagName + '.' + e.className + ': ' + walk.currentNode.textContent.slice(0, 30));
        }
        return [...found].slice(0, 20);
      })()""";

  /** Elements that reach over the right edge, those within a box that scrolls apart. */
  private static final String WIDE =
      """
      (() => [...document.querySelectorAll('body *')]
        .filter(e => !e.closest('.scroll, .figure, .skip') && e.getBoundingClientRect().right > innerWidth + 1)
        .map(e => e.tagName + '.' + e.className + ' ' + e.textContent.slice(0, 30)).slice(0, 10))()""";

  @TempDir private static Path folder;
  private static Browser browser;
  private static Path page;

  @BeforeAll
  static void open() throws IOException, InterruptedException {
    if (Browser.installed().isEmpty()) {
      String lack = "no chromium in /usr/bin: the web page is not looked at";
      assertThat(System.getenv(Browser.REQUIRED)).as(lack).isNull();
      abort(lack);
    }
    page = folder.resolve("report.html");
    Files.writeString(page, Reports.example("1930s-terrace").html(), StandardCharsets.UTF_8);
    browser =
        new Browser(Browser.installed().get(), Files.createDirectory(folder.resolve("profile")));
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {360, 800, 1400})
  void nothing_scrolls_sideways_but_tables_and_charts_in_their_own_boxes(int width)
      throws InterruptedException {
    browser.show(page, width, "light");
    assertThat(browser.value("innerWidth")).isEqualTo(width);
    assertThat((List<?>) browser.value(WIDE)).isEmpty();
    assertThat((int) browser.value("document.documentElement.scrollWidth"))
        .isLessThanOrEqualTo(width);
  }

  @ParameterizedTest
  @CsvSource({"light, 0.8, 1", "dark, 0, 0.05"})
  void text_of_pages_and_charts_stands_out(String scheme, double least, double most)
      throws InterruptedException {
    browser.show(page, 1400, scheme);
    String ground = (String) browser.value("getComputedStyle(document.body).backgroundColor");
    String[] channels = ground.replaceAll("[^\\d,]", "").split(",", -1);
    double bright = Integer.parseInt(channels[1]) / 255.0;
    assertThat(bright * bright).isBetween(least, most);
    assertThat((List<?>) browser.value(FAINT)).isEmpty();
  }

  @Test
  void notes_stand_under_their_block_on_narrow_screens_and_beside_it_on_wide_ones()
      throws InterruptedException {
    String place =
        """
        (() => { const b = [...document.querySelectorAll('.block')].find(x => x.querySelector(':scope > p'));
          const s = b.querySelector('.side').getBoundingClientRect(), p = b.querySelector(':scope > p').getBoundingClientRect();
          return s.top >= p.bottom - 1 ? 'under' : s.left >= p.right - 1 ? 'beside' : 'over'; })()""";
    browser.show(page, 360, "light");
    assertThat(browser.value(place)).isEqualTo("under");
    browser.show(page, 1400, "light");
    assertThat(browser.value(place)).isEqualTo("beside");
  }

  @Test
  void who_reads_by_keyboard_or_by_ear_finds_the_way() throws InterruptedException {
    browser.show(page, 800, "light");
    for (String role : List.of("main", "navigation", "banner")) {
      assertThat(browser.value("document.querySelectorAll('[role=" + role + "]').length"))
          .as(role)
          .isEqualTo(1);
    }
    assertThat(browser.value("document.documentElement.lang")).isEqualTo("en");
    assertThat(browser.value("document.querySelectorAll('h1').length")).isEqualTo(1);
    assertThat(
            browser.value(
                "[...document.querySelectorAll('svg')].every(s => s.getAttribute('aria-label'))"))
        .isEqualTo(true);
    assertThat(
            browser.value(
                "[...document.querySelectorAll('a[href]')].every(a =>"
                    + " document.getElementById(a.getAttribute('href').slice(1)))"))
        .isEqualTo(true);
    assertThat((int) browser.value("document.querySelectorAll('.contents-list a').length"))
        .isGreaterThan(10);
  }

  @Test
  void printed_from_the_browser_nothing_is_cut() throws InterruptedException {
    browser.show(page, 1400, "dark");
    String data =
        (String)
            browser
                .ask("Page.printToPDF", "{\"preferCSSPageSize\":true,\"printBackground\":true}")
                .get("data");
    PrintedReport printed = PrintedReport.of(Base64.getDecoder().decode(data));
    assertThat(printed.sheets()).hasSizeGreaterThan(20);
    assertThat(printed.sheets()).flatExtracting(ProofReader::outside).isEmpty();
  }

  @Test
  void nothing_is_fetched_and_nothing_goes_wrong() throws InterruptedException {
    browser.show(page, 800, "light");
    assertThat(browser.requests()).allMatch(r -> r.equals(page.toUri().toString()));
    assertThat(browser.complaints()).isEmpty();
  }
}
