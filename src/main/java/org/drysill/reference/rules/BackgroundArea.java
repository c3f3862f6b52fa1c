package org.drysill.reference.rules;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * The equivalent area of background ventilators that each room of some kinds should have.
 *
 * @param rooms the kinds of room
 * @param when when it holds; always where absent
 * @param area equivalent area of each room
 * @param source where it is printed
 * @param alsoPrinted other figures that the same document prints for the same thing
 * @param confidence how sure a remembered value is
 * @param note what the reader should know about it
 */
public record BackgroundArea(
    @Key(about = "The kinds of room", required = true) List<RoomGroup> rooms,
    @Key(about = "When it holds; always where absent", example = "multi storey")
        Optional<Condition> when,
    @Key(
            about = "Equivalent area of each room",
            dimension = Dimension.AREA,
            unit = "mm2",
            min = 0,
            example = "8000 mm2")
        Quantity area,
    @Key(about = "Where it is printed") Citation source,
    @Key(about = "Other figures that the same document prints for the same thing")
        List<AlsoPrinted> alsoPrinted,
    @Key(about = "How sure a remembered value is") Optional<Confidence> confidence,
    @Key(about = "What the reader should know about it") Optional<String> note) {
  /** Copies the lists; refuses a condition that is one of a room. */
  public BackgroundArea {
    if (when.filter(condition -> condition == Condition.NO_EXTERNAL_WALL).isPresent()) {
      throw new IllegalArgumentException("a condition on the home, not on a room");
    }
    rooms = List.copyOf(rooms);
    alsoPrinted = List.copyOf(alsoPrinted);
  }

  /**
   * Another figure of the same document.
   *
   * @param area equivalent area of each room
   * @param source where it is printed
   */
  public record AlsoPrinted(
      @Key(
              about = "Equivalent area of each room",
              dimension = Dimension.AREA,
              unit = "mm2",
              min = 0,
              example = "5000 mm2")
          Quantity area,
      @Key(about = "Where it is printed") Citation source) {}
}
