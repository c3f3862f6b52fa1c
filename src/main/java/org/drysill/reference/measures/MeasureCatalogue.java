package org.drysill.reference.measures;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.reference.DataFiles;
import org.drysill.yaml.Key;

/**
 * The published measures.
 *
 * @param measures the measures
 */
public record MeasureCatalogue(@Key(about = "The measures") List<Measure> measures) {
  /** Copies the list. */
  public MeasureCatalogue {
    measures = List.copyOf(measures);
  }

  /** All of them, by name. */
  public static MeasureCatalogue read() {
    return new MeasureCatalogue(
        DataFiles.readAll("measures", MeasureCatalogue.class).stream()
            .flatMap(f -> f.measures().stream())
            .sorted(Comparator.comparing(Measure::name))
            .toList());
  }

  /** The same with own measures; one with the id of another takes its place. */
  public MeasureCatalogue with(MeasureCatalogue own) {
    return new MeasureCatalogue(
        Stream.concat(
                measures.stream().filter(m -> own.measure(m.id()).isEmpty()),
                own.measures().stream())
            .sorted(Comparator.comparing(Measure::name))
            .toList());
  }

  /** The names by which surveys leave measures out or price them: vocabulary {@code measure}. */
  public List<String> names() {
    return measures.stream().map(Measure::name).toList();
  }

  /** The measure with a name. */
  public Optional<Measure> named(String name) {
    return measures.stream().filter(m -> m.name().equals(name)).findFirst();
  }

  /** The measure with an id. */
  public Optional<Measure> measure(String id) {
    return measures.stream().filter(m -> m.id().equals(id)).findFirst();
  }
}
