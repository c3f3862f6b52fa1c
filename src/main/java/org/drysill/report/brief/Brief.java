package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drysill.report.block.ChartBlock;
import org.drysill.report.block.Section;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.language.Language;
import org.drysill.report.subject.Subject;
import org.drysill.report.words.Words;

/** Writes the short report. */
public final class Brief {
  private static final int HEAD_LENGTH = 70;

  /**
   * Chapters in their order; workings come after all that is marked, and fill columns to the end.
   */
  private static final List<BriefChapter> CHAPTERS =
      List.of(
          new HomeFacts(),
          new RoomTable(),
          new AirSection(),
          new ColdSection(),
          new RecoverySection(),
          new MoistureSection(),
          new PackageSection(),
          new WorksSection(),
          new NextSection(),
          new AssumedSection(),
          new SourceList(),
          new RecordSection(),
          new WorkingList());

  private Brief() {}

  /** The short report of a home. */
  public static BriefView of(Subject subject, Language language) {
    BriefDesk desk = BriefDesk.of(subject, language);
    Section first = FirstPage.of(desk);
    List<Section> sections = new ArrayList<>();
    for (BriefChapter chapter : CHAPTERS) {
      chapter.write(desk).ifPresent(sections::add);
    }
    String address =
        subject
            .survey()
            .dwelling()
            .address()
            .map(a -> Words.shortened(a, HEAD_LENGTH))
            .orElseGet(() -> desk.say("home"));
    String day = desk.phrases().date(subject.survey().visit().date());
    return new BriefView(
        desk.phrases().language().tag(),
        subject.ventilation().rules().paper().word(),
        address,
        desk.say(subject.file().shared() ? "visit.shared" : "visit", day),
        subject.survey().visit().surveyor().map(s -> s.name()).orElse(""),
        List.of(desk.say("keywords").split(", ")),
        first,
        sections,
        charts(first, sections),
        desk.terms().wanting(),
        said(desk));
  }

  private static Map<String, ChartSpec> charts(Section first, List<Section> sections) {
    Map<String, ChartSpec> charts = new LinkedHashMap<>();
    List<Section> all = new ArrayList<>(List.of(first));
    all.addAll(sections);
    all.stream()
        .flatMap(s -> s.blocks().stream())
        .filter(ChartBlock.class::isInstance)
        .map(ChartBlock.class::cast)
        .forEach(c -> charts.put(c.id(), c.spec()));
    return charts;
  }

  /** The words of the templates themselves. */
  private static Map<String, String> said(BriefDesk desk) {
    Map<String, String> said = new LinkedHashMap<>();
    List.of(
            "meets",
            "short",
            "unknown",
            "working",
            "contents",
            "page_of",
            "page",
            "skip",
            "foot",
            "missing",
            "wanting")
        .forEach(key -> said.put(key, desk.say("said." + key)));
    return said;
  }
}
