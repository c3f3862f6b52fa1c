package org.drysill.reference.elements;

import java.util.List;
import org.drysill.reference.Citation;
import org.drysill.reference.DataFiles;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * What the assessment of water within built-up elements takes.
 *
 * @param insulationConductivity conductivity up to which a layer counts as insulation [W/(m·K)]
 * @param openMembrane sd up to which a membrane counts as open to vapour [m]
 * @param tightLayer sd of what lets no vapour through [m]
 * @param controlLayer sd of a vapour control layer as built [m]
 * @param highestWater water within an element that a national document allows [kg/m²]
 * @param highestWaterAtFilm the same where a layer that takes up none adjoins [kg/m²]
 * @param raisedVapour by how much the indoor air may be moister than read [Pa], at 0 °C outdoors
 * @param leakingAir room air that leaks through an element [m³/(h·m²)]
 * @param masonry materials of solid masonry, by their names in the materials table
 * @param absorbing materials that take up water, likewise
 * @param absorbingSource where that list comes from
 */
public record ElementDefaults(
    @Key(about = "Conductivity up to which a layer counts as insulation, W/(m·K)")
        Sourced insulationConductivity,
    @Key(about = "sd up to which a membrane counts as open, m") Sourced openMembrane,
    @Key(about = "sd of what lets no vapour through, m") Sourced tightLayer,
    @Key(about = "sd of a vapour control layer as built, m") Sourced controlLayer,
    @Key(about = "Water within an element that is allowed, kg/m²") Sourced highestWater,
    @Key(about = "The same beside a layer that takes up none, kg/m²") Sourced highestWaterAtFilm,
    @Key(about = "By how much the indoor air may be moister than read, Pa") Sourced raisedVapour,
    @Key(about = "Room air that leaks through an element, m³/(h·m²)") Sourced leakingAir,
    @Key(about = "Materials of solid masonry") List<String> masonry,
    @Key(about = "Materials that take up water") List<String> absorbing,
    @Key(about = "Where that list comes from") Citation absorbingSource) {
  /** Copies the lists. */
  public ElementDefaults {
    masonry = List.copyOf(masonry);
    absorbing = List.copyOf(absorbing);
  }

  /** Reads the bundled values. */
  public static ElementDefaults bundled() {
    return DataFiles.read("defaults/elements.yaml", ElementDefaults.class);
  }
}
