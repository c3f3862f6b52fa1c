package org.drysill.report.view;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.report.block.ChartBlock;
import org.drysill.report.block.Section;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.household.Household;
import org.drysill.report.subject.Desk;
import org.drysill.report.subject.Subject;
import org.drysill.report.verdict.VerdictPage;
import org.drysill.report.words.Words;

/**
 * A report in finished words and numbers, ready for the templates.
 *
 * @param edition survey, record or remediation
 * @param paper {@code A4} or {@code letter}
 * @param address how the home is called
 * @param visit the visit in one line
 * @param preparedFor for whom; may be empty
 * @param author who took the readings; may be empty
 * @param verdict the first page
 * @param sections what follows, in order
 * @param charts the charts by id
 */
public record ReportView(
    String edition,
    String paper,
    String address,
    String visit,
    String preparedFor,
    String author,
    Section verdict,
    List<Section> sections,
    Map<String, ChartSpec> charts) {
  private static final int HEAD_LENGTH = 70;

  /** Copies the collections. */
  public ReportView {
    sections = List.copyOf(sections);
    charts = Collections.unmodifiableMap(new LinkedHashMap<>(charts));
  }

  /** The title of the document. */
  public String title() {
    return address + ": " + verdict.heading();
  }

  /** Words to find it by. */
  public List<String> keywords() {
    return List.of("ventilation", "condensation", "mould", "survey");
  }

  /** The view of a report. */
  public static ReportView of(Subject subject) {
    Desk desk = Desk.of(subject);
    // Order matters: the numbers of the workings follow the order in which they are spoken of.
    Section verdict = desk.printed().led(VerdictPage.of(desk));
    List<Section> sections = new ArrayList<>();
    boolean behind = false;
    for (Chapter chapter : Plan.of(subject.edition())) {
      Optional<Section> section = chapter.write(desk).map(desk.printed()::led);
      (behind ? section.map(Section::compactly) : section).ifPresent(sections::add);
      behind |= chapter == Household.BEHIND;
    }
    var visit = subject.survey().visit();
    return new ReportView(
        subject.edition().word(),
        subject.ventilation().rules().paper().word(),
        Words.shortened(subject.address(), HEAD_LENGTH),
        visit.reference().map(r -> "Visit " + Words.shortened(r, 40) + " · ").orElse("Visit of ")
            + Words.date(visit.date())
            + (subject.file().shared() ? " · copy to share" : ""),
        visit.preparedFor().orElse(""),
        visit.surveyor().map(s -> s.name()).orElse(""),
        verdict,
        sections,
        charts(sections));
  }

  private static Map<String, ChartSpec> charts(List<Section> sections) {
    Map<String, ChartSpec> charts = new LinkedHashMap<>();
    sections.stream()
        .flatMap(s -> s.blocks().stream())
        .filter(ChartBlock.class::isInstance)
        .map(ChartBlock.class::cast)
        .forEach(c -> charts.put(c.id(), c.spec()));
    return charts;
  }
}
