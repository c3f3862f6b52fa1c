package org.drysill.options.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.options.Benefits;
import org.drysill.options.RankedMeasure;
import org.drysill.options.site.Candidate;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.MeasureCatalogue;

/** Makes the records of the report from ranked entries. */
public record RankedMeasures(
    Assessment assessment, MeasureCatalogue catalogue, Ranking ranking, Purse purse) {

  /** Ranks from 1 in the order given, for what the money at hand reaches. */
  public List<RankedMeasure> within(List<Entry> ordered) {
    List<RankedMeasure> ranked = new ArrayList<>();
    Optional<Entry> above = Optional.empty();
    for (Entry entry : ordered) {
      ranked.add(of(ranked.size() + 1, entry, reasons().of(entry, above)));
      above = Optional.of(entry);
    }
    return ranked;
  }

  /** The same for what is dearer. */
  public List<RankedMeasure> beyond(List<Entry> ordered) {
    List<RankedMeasure> ranked = new ArrayList<>();
    for (Entry entry : ordered) {
      ranked.add(of(ranked.size() + 1, entry, reasons().beyond(entry)));
    }
    return ranked;
  }

  private Reasons reasons() {
    return new Reasons(assessment, ranking, purse);
  }

  private RankedMeasure of(int rank, Entry entry, List<String> reasons) {
    Candidate candidate = entry.costed().studied().candidate();
    Measure measure = candidate.measure();
    return new RankedMeasure(
        rank,
        candidate.id(),
        measure.id(),
        candidate.title(),
        candidate.scope(),
        measure.changes(),
        String.join(" ", candidate.because()),
        entry.admissible(),
        entry.costed().studied().effect(),
        entry.costed().money(),
        new Benefits(
            measure.benefits().comfort(), measure.benefits().health(), measure.benefits().fabric()),
        entry.cautions().stream().map(c -> c.id()).toList(),
        candidate.first(),
        measure.exclusions().stream()
            .map(catalogue::measure)
            .flatMap(Optional::stream)
            .map(Measure::title)
            .toList(),
        reasons);
  }
}
