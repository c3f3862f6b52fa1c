package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Working;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.block.WorkingEntry;
import org.drysill.report.block.WorkingFamily;
import org.drysill.report.block.Workings;

/**
 * How each figure of these pages came about: its formula, what was put in, its sources. What those
 * inputs rest on in their turn stands in the results inside the file.
 */
final class WorkingList implements BriefChapter {
  private static final int SOURCES = 3;

  @Override
  public Optional<Section> write(BriefDesk desk) {
    Formulas formulas = new Formulas(desk.phrases(), desk.terms());
    Map<String, Map<String, Figure>> families = new LinkedHashMap<>();
    for (Figure figure : desk.desk().index().shown()) {
      String mark = desk.mark(figure);
      families
          .computeIfAbsent(mark.split("\\.", 2)[0], family -> new LinkedHashMap<>())
          .putIfAbsent(mark, figure);
    }
    List<WorkingFamily> all = new ArrayList<>();
    families.forEach((number, figures) -> all.add(family(desk, formulas, number, figures)));
    return Optional.of(
        new Section(
                "workings",
                desk.say("workings.heading"),
                desk.say("workings.running"),
                false,
                List.of(
                    new Prose(List.of(), "", "", desk.say("workings.lead")),
                    new Workings(List.of(), all)))
            .compactly());
  }

  private static WorkingFamily family(
      BriefDesk desk, Formulas formulas, String number, Map<String, Figure> figures) {
    Working first = figures.values().iterator().next().working();
    List<String> names = figures.values().stream().map(desk.terms()::figure).toList();
    String kind = kind(names.get(0));
    boolean shared = names.size() > 1 && names.stream().allMatch(n -> kind(n).equals(kind));
    SharedInputs inputs = SharedInputs.of(desk, formulas, figures.values());
    List<WorkingEntry> entries = new ArrayList<>();
    figures.forEach(
        (mark, figure) -> {
          String name = names.get(entries.size());
          entries.add(
              new WorkingEntry(
                  mark,
                  shared ? name.substring(kind.length()) : name,
                  desk.numbers().worked(figure.value(), figure.unit()),
                  inputs.basis(figure),
                  inputs.of(figure),
                  ""));
        });
    return new WorkingFamily(
        number,
        (shared ? kind : "") + desk.numbers().marked(formulas.of(first.formula())),
        Cited.together(desk, first.sources().stream().limit(SOURCES).toList()),
        inputs.note(),
        entries);
  }

  /** What stands before the place in a name, said once for a family. */
  private static String kind(String name) {
    int colon = name.indexOf(": ");
    return colon < 0 ? "" : name.substring(0, colon + 2);
  }
}
