package org.drysill.reference.climate;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.DataFiles;

/** The bundled climates, in the order of their ids. */
public final class ClimateCatalogue {
  private final List<ReferenceClimate> climates;

  private final ClimateDefaults defaults;

  private ClimateCatalogue(List<ReferenceClimate> climates, ClimateDefaults defaults) {
    this.climates = List.copyOf(climates);
    this.defaults = defaults;
  }

  /** Reads the bundled climates. */
  public static ClimateCatalogue bundled() {
    return new ClimateCatalogue(
        DataFiles.readAll("climate", ReferenceClimate.class),
        DataFiles.read("defaults/climate.yaml", ClimateDefaults.class));
  }

  /** A catalogue of given climates. */
  public static ClimateCatalogue of(List<ReferenceClimate> climates, ClimateDefaults defaults) {
    return new ClimateCatalogue(climates, defaults);
  }

  /** The climate where nothing is known. */
  public ClimateDefaults defaults() {
    return defaults;
  }

  /** All climates. */
  public List<ReferenceClimate> all() {
    return climates;
  }

  /** The words of the vocabulary {@code climate}. */
  public List<String> ids() {
    return climates.stream().map(ReferenceClimate::id).toList();
  }

  /** The climate of an id. */
  public Optional<ReferenceClimate> find(String id) {
    return climates.stream().filter(c -> c.id().equals(id)).findFirst();
  }
}
