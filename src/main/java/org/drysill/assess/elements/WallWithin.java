package org.drysill.assess.elements;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;

/**
 * A built-up wall and the water within it.
 *
 * @param id of the survey
 * @param name name in sentences
 * @param room the id of its room
 * @param roomName the room's name in sentences
 * @param layers room side first
 * @param uValue thermal transmittance
 * @param year what a year does to it as it stands
 * @param dryBelow moisture of the indoor air up to which nothing settles, where any matters
 * @param leakingAir water that leaking room air could leave, an upper bound
 * @param variants what changes would do
 * @param accumulation whether water is left from year to year
 * @param content its highest water content against a published limit, where any settles
 * @param limits what the method leaves out at this wall, in sentences
 */
public record WallWithin(
    String id,
    String name,
    String room,
    String roomName,
    List<WallLayer> layers,
    Figure uValue,
    WallYear year,
    Optional<Figure> dryBelow,
    Optional<Figure> leakingAir,
    List<WallVariant> variants,
    Finding accumulation,
    Optional<Finding> content,
    List<String> limits) {
  /** Copies the lists. */
  public WallWithin {
    layers = List.copyOf(layers);
    variants = List.copyOf(variants);
    limits = List.copyOf(limits);
  }

  /** All its findings. */
  public List<Finding> findings() {
    return Stream.concat(Stream.of(accumulation), content.stream()).toList();
  }
}
