package org.drysill.reference.surfaces;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.DataFiles;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * What is published about room-side surfaces.
 *
 * @param resistances film resistances by use
 * @param mouldLimit monthly mean relative humidity at opaque surfaces from which mould can grow [1]
 * @param condensationLimit relative humidity at glass from which it is wet [1]
 * @param livableHumidity relative humidity that a heated, lived-in home seldom stays below [1]
 * @param criticalFactors critical temperature factors of national documents
 */
public record SurfaceCatalogue(
    @Key(about = "Film resistances by use") List<SurfaceResistance> resistances,
    @Key(about = "Humidity at opaque surfaces from which mould can grow, ratio") Sourced mouldLimit,
    @Key(about = "Humidity at glass from which it is wet, ratio") Sourced condensationLimit,
    @Key(about = "Humidity that a lived-in home seldom stays below, ratio") Sourced livableHumidity,
    @Key(about = "Critical temperature factors of national documents")
        List<CriticalFactor> criticalFactors) {
  /** Copies the lists. */
  public SurfaceCatalogue {
    resistances = List.copyOf(resistances);
    criticalFactors = List.copyOf(criticalFactors);
  }

  /** Reads the bundled table. */
  public static SurfaceCatalogue bundled() {
    return DataFiles.read("surfaces/surfaces.yaml", SurfaceCatalogue.class);
  }

  /** The film resistance of a use. */
  public SurfaceResistance resistance(FilmUse use) {
    return resistances.stream().filter(r -> r.use() == use).findFirst().orElseThrow();
  }

  /** The critical temperature factor that belongs to a rule set's country. */
  public Optional<CriticalFactor> criticalFactor(String jurisdiction) {
    return criticalFactors.stream()
        .filter(c -> c.jurisdictions().contains(jurisdiction))
        .findFirst();
  }
}
