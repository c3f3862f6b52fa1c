package org.drysill.reference.model;

import java.util.List;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * What part of the water of people goes into rooms of some uses.
 *
 * @param rooms the uses, in the words of the survey
 * @param share the part, shared among these rooms by their volume
 */
public record PeopleShare(
    @Key(about = "Uses of rooms", example = "bedroom") List<String> rooms,
    @Key(about = "The part", dimension = Dimension.PERCENT, unit = "%", min = 0, max = 100)
        Quantity share) {
  /** Copies the list. */
  public PeopleShare {
    rooms = List.copyOf(rooms);
  }
}
