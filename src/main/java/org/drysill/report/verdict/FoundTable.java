package org.drysill.report.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Note;
import org.drysill.report.subject.Desk;
import org.drysill.report.subject.Subject;
import org.drysill.report.table.FindingTable;
import org.drysill.report.words.Words;

/** The findings that the first page shows: the whole home, wet rooms, the worst of the others. */
public final class FoundTable {
  private static final int EXTRACT_ROWS = 3;
  private static final int NOTES = 4;

  private FoundTable() {}

  /** The findings of a first page. */
  public static List<Finding> rows(Subject subject) {
    List<Finding> rows = new ArrayList<>();
    rows.add(subject.ventilation().wholeHome());
    rows.addAll(worst(oneOfEachRoom(subject.ventilation().extract()), EXTRACT_ROWS));
    rows.addAll(worst(subject.ventilation().purge().stream().map(p -> p.finding()).toList(), 1));
    worstPlace(subject, SurfaceClass.OPAQUE).ifPresent(rows::add);
    worstPlace(subject, SurfaceClass.GLASS).ifPresent(rows::add);
    subject.elements().walls().stream()
        .map(w -> w.accumulation())
        .filter(f -> f.verdict() == Verdict.SHORT)
        .findFirst()
        .ifPresent(rows::add);
    subject.recovery().findings().stream().findFirst().ifPresent(rows::add);
    return rows;
  }

  private static Optional<Finding> worstPlace(Subject subject, SurfaceClass surface) {
    return subject.condensation().worstFirst().stream()
        .filter(p -> p.surface() == surface)
        .map(p -> p.requirement())
        .filter(f -> f.provided().isPresent())
        .min(Comparator.comparingInt(FoundTable::gravity));
  }

  /** The gravest of each room: a room may be held against more than one rate. */
  private static List<Finding> oneOfEachRoom(List<Finding> findings) {
    Map<Optional<String>, Finding> gravest = new LinkedHashMap<>();
    for (Finding finding : findings) {
      gravest.merge(finding.room(), finding, (a, b) -> gravity(b) < gravity(a) ? b : a);
    }
    return List.copyOf(gravest.values());
  }

  /** The gravest of like findings, in their own order. */
  private static List<Finding> worst(List<Finding> findings, int most) {
    List<Finding> gravest =
        findings.stream().sorted(Comparator.comparingInt(FoundTable::gravity)).limit(most).toList();
    return findings.stream().filter(gravest::contains).toList();
  }

  private static int gravity(Finding finding) {
    return switch (finding.verdict()) {
      case SHORT -> 0;
      case UNKNOWN -> 1;
      case MEETS -> 2;
    };
  }

  static Grid of(Desk desk) {
    List<Finding> rows = rows(desk.subject());
    List<Note> notes = new ArrayList<>();
    for (Finding row : rows) {
      Optional<Figure> figure =
          row.verdict() == Verdict.MEETS ? row.required() : row.provided().or(row::required);
      figure
          .filter(f -> notes.size() < NOTES && !told(notes, desk.index().mark(f)))
          .ifPresent(f -> notes.add(desk.note(f, Words.shortened(f.name(), 110))));
    }
    return FindingTable.of(desk, "", rows, notes);
  }

  private static boolean told(List<Note> notes, String working) {
    return notes.stream().anyMatch(n -> n.working().equals(working));
  }
}
