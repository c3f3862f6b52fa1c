package org.drysill.reference.rules;

import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * An extract rate of a kind of wet room.
 *
 * @param room the kind of room
 * @param mode how the extract runs
 * @param terminal where the air is taken, where that matters
 * @param when when it holds; always where absent
 * @param rate the rate
 * @param airChange air changes of the room instead
 * @param openingsInstead yes where windows that open wide will do instead
 * @param source where it is printed
 * @param confidence how sure a remembered value is
 * @param note what the reader should know about it
 */
public record ExtractRate(
    @Key(about = "The kind of room", example = "kitchen") RoomGroup room,
    @Key(about = "How the extract runs", example = "intermittent") ExtractMode mode,
    @Key(about = "Where the air is taken, where that matters", example = "hood")
        Optional<Terminal> terminal,
    @Key(about = "When it holds; always where absent", example = "no external wall")
        Optional<Condition> when,
    @Key(
            about = "The rate",
            dimension = Dimension.AIRFLOW,
            unit = "l/s",
            min = 0,
            example = "15 l/s")
        Optional<Quantity> rate,
    @Key(
            about = "Air changes of the room instead",
            dimension = Dimension.AIR_CHANGE,
            unit = "/h",
            min = 0,
            example = "4 /h")
        Optional<Quantity> airChange,
    @Key(about = "Yes where windows that open wide will do instead", example = "no")
        Optional<Boolean> openingsInstead,
    @Key(about = "Where it is printed") Citation source,
    @Key(about = "How sure a remembered value is") Optional<Confidence> confidence,
    @Key(about = "What the reader should know about it") Optional<String> note) {
  /** Refuses a row with no rate or with two, and a condition that is not one of a room. */
  public ExtractRate {
    if (rate.isPresent() == airChange.isPresent()) {
      throw new IllegalArgumentException("either rate or air_change");
    }
    if (when.filter(condition -> condition != Condition.NO_EXTERNAL_WALL).isPresent()) {
      throw new IllegalArgumentException("no other condition of extract than no external wall");
    }
  }
}
