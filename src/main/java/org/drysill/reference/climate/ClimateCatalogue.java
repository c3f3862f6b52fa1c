package org.drysill.reference.climate;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.drysill.reference.DataFiles;

/** Climates in the order of their ids. A bundled one is read when it is first asked for. */
public final class ClimateCatalogue {
  private static final String FOLDER = "climate";
  private static final String ENDING = ".yaml";

  private final List<String> ids;
  private final Function<String, ReferenceClimate> byId;
  private final ClimateDefaults defaults;

  private ClimateCatalogue(
      List<String> ids, Function<String, ReferenceClimate> byId, ClimateDefaults defaults) {
    this.ids = ids.stream().sorted().toList();
    this.byId = byId;
    this.defaults = defaults;
  }

  /** The bundled climates: a file has the name of its climate's id. */
  public static ClimateCatalogue bundled() {
    List<String> ids =
        DataFiles.paths(FOLDER).stream()
            .map(path -> path.substring(FOLDER.length() + 1, path.length() - ENDING.length()))
            .toList();
    return new ClimateCatalogue(
        ids,
        id -> DataFiles.read(FOLDER + "/" + id + ENDING, ReferenceClimate.class),
        DataFiles.read("defaults/climate.yaml", ClimateDefaults.class));
  }

  /** A catalogue of given climates, each with an id of its own. */
  public static ClimateCatalogue of(List<ReferenceClimate> climates, ClimateDefaults defaults) {
    return new ClimateCatalogue(
        climates.stream().map(ReferenceClimate::id).toList(),
        id -> climates.stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow(),
        defaults);
  }

  /** The climate where nothing is known. */
  public ClimateDefaults defaults() {
    return defaults;
  }

  /** All climates; to be asked for by who needs every one of them. */
  public List<ReferenceClimate> all() {
    return ids.stream().map(byId).toList();
  }

  /**
   * The climates whose position is known, the nearest first.
   *
   * @param latitude of the place, north positive [°]
   * @param longitude of the place, east positive [°]
   */
  public List<NearClimate> near(double latitude, double longitude) {
    return all().stream()
        .filter(c -> c.latitude().isPresent() && c.longitude().isPresent())
        .map(c -> NearClimate.from(latitude, longitude, c))
        .sorted(Comparator.comparingDouble(NearClimate::kilometres))
        .toList();
  }

  /** The words of the vocabulary {@code climate}. */
  public List<String> ids() {
    return ids;
  }

  /** The climate of an id. */
  public Optional<ReferenceClimate> find(String id) {
    return Optional.of(id).filter(ids::contains).map(byId);
  }
}
