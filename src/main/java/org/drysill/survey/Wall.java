package org.drysill.survey;

import java.util.List;
import java.util.Optional;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A built-up element, room side first.
 *
 * @param id short name
 * @param name name in the report
 * @param area area
 * @param layers its layers from the room to the outside
 */
public record Wall(
    @Renamed(Renamed.As.ID) @Key(about = "Short name", example = "kitchen-n-wall", id = true)
        String id,
    @Renamed(Renamed.As.NAME) @Key(about = "Name in the report", example = "North wall")
        Optional<String> name,
    @Key(
            about = "Area",
            dimension = Dimension.AREA,
            unit = "m2",
            min = 0,
            max = 2000,
            example = "6 m2")
        Optional<Quantity> area,
    @Key(about = "Its layers from the room to the outside", required = true) List<Layer> layers) {
  /** Copies the lists. */
  public Wall {
    layers = List.copyOf(layers);
  }
}
