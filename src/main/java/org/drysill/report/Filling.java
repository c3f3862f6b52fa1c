package org.drysill.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.drysill.report.brief.BriefView;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.pdf.PdfMetadata;
import org.drysill.report.view.ReportView;

/**
 * A view with the template that it fills.
 *
 * @param template the name of the template
 * @param model what the template sees
 * @param charts the charts by id
 * @param title the title of the document
 * @param author who took the readings; may be empty
 * @param heading the finding in one line
 * @param keywords words to find it by
 * @param language BCP 47 tag of its language
 */
record Filling(
    String template,
    Map<String, Object> model,
    Map<String, ChartSpec> charts,
    String title,
    String author,
    String heading,
    List<String> keywords,
    String language) {

  /** The long report, in the order of its edition. */
  static Filling of(ReportView view) {
    return new Filling(
        "report.ftlh",
        Map.of("view", view, "charts", view.charts()),
        view.charts(),
        view.title(),
        view.author(),
        view.verdict().heading(),
        view.keywords(),
        "en");
  }

  /** The short report in its language. */
  static Filling of(BriefView view) {
    return new Filling(
        "brief.ftlh",
        Map.of("view", view, "charts", view.charts(), "said", view.said()),
        view.charts(),
        view.title(),
        view.author(),
        view.verdict().heading(),
        view.keywords(),
        view.language());
  }

  /** What the file says of itself. */
  PdfMetadata metadata(String producer, LocalDate day) {
    return new PdfMetadata(title, author, heading, keywords, language, producer, day);
  }
}
