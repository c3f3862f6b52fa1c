package org.drysill.reference.model;

import java.util.List;
import org.drysill.yaml.Key;

/**
 * Where a source that no room lists belongs.
 *
 * @param kind an entry of the moisture table
 * @param rooms uses of rooms in the words of the survey; the first that the home has counts
 */
public record SourcePlace(
    @Key(about = "An entry of the moisture table", example = "cooking") String kind,
    @Key(about = "Uses of rooms, the first choice first", example = "kitchen") List<String> rooms) {
  /** Copies the list. */
  public SourcePlace {
    rooms = List.copyOf(rooms);
  }
}
