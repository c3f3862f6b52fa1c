package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.reference.Citation;
import org.drysill.report.block.Entries;
import org.drysill.report.block.Entry;
import org.drysill.report.block.Section;

/** The documents behind these pages; their titles and clauses stand as they are published. */
final class SourceList implements BriefChapter {
  @Override
  public Optional<Section> write(BriefDesk desk) {
    Map<String, List<Citation>> documents = new TreeMap<>();
    for (Citation citation : all(desk)) {
      documents.computeIfAbsent(Cited.title(citation), t -> new ArrayList<>()).add(citation);
    }
    List<Entry> entries =
        documents.entrySet().stream()
            .map(
                e ->
                    new Entry(
                        e.getKey(),
                        e.getValue().stream()
                            .flatMap(c -> c.clause().stream())
                            .distinct()
                            .sorted()
                            .collect(Collectors.joining("; ")),
                        e.getValue().stream()
                            .map(Citation::how)
                            .distinct()
                            .sorted()
                            .map(h -> desk.terms().word("how", h))
                            .collect(Collectors.joining(", "))))
            .toList();
    return Optional.of(
        new Section(
                "sources",
                desk.say("sources.heading"),
                desk.say("sources.running"),
                false,
                List.of(new Entries("", entries, desk.say("sources.foot"))))
            .compactly());
  }

  /** Of the workings that are shown, what is asked, and what was taken for granted. */
  private static List<Citation> all(BriefDesk desk) {
    List<Citation> all = new ArrayList<>();
    for (Figure figure : desk.desk().index().shown()) {
      all.addAll(figure.working().sources());
    }
    for (Finding finding : desk.subject().ventilation().findings()) {
      all.addAll(finding.sources());
    }
    desk.desk().found().assumptions().stream().map(Assumption::source).forEach(all::add);
    return all.stream().distinct().filter(Cited::isPublished).toList();
  }
}
