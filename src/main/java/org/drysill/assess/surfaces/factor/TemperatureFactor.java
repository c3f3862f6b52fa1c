package org.drysill.assess.surfaces.factor;

import java.util.List;
import org.drysill.assess.Figure;

/**
 * The temperature factor of a place: (surface - outdoor) / (indoor - outdoor). 1 is as warm as the
 * room, 0 as cold as outdoors.
 *
 * @param figure the factor with its bounds
 * @param source where it comes from
 * @param weak true where it should not be leaned on: weak readings or a table of typical details
 * @param why the reason in a plain sentence
 * @param readings what each surface reading gave, refused ones too
 */
public record TemperatureFactor(
    Figure figure, FactorSource source, boolean weak, String why, List<ReadingFactor> readings) {
  /** Copies the list. */
  public TemperatureFactor {
    readings = List.copyOf(readings);
  }
}
