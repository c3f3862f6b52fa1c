package org.drysill.reference.moisture;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Key;

/**
 * The moisture table.
 *
 * @param people what people give off
 * @param sources everything else, in the order in which help shows it
 * @param dailyTotals published totals of a household
 */
public record MoistureSources(
    @Key(about = "What people give off") PeopleRates people,
    @Key(about = "Everything else", required = true) List<SourceKind> sources,
    @Key(about = "Published totals of a household", required = true)
        List<DailyTotals> dailyTotals) {
  /** Copies the lists. */
  public MoistureSources {
    sources = List.copyOf(sources);
    dailyTotals = List.copyOf(dailyTotals);
  }

  /** Reads the bundled table. */
  public static MoistureSources bundled() {
    return DataFiles.read("moisture/sources.yaml", MoistureSources.class);
  }

  /** The words of the vocabulary {@code moisture source}. */
  public List<String> kinds() {
    return sources.stream().map(SourceKind::kind).toList();
  }

  /** The kind of a word. */
  public Optional<SourceKind> find(String kind) {
    return sources.stream().filter(s -> s.kind().equals(kind)).findFirst();
  }
}
