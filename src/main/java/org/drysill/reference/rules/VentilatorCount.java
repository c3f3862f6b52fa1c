package org.drysill.reference.rules;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Key;

/**
 * The least number of background ventilators in some rooms of a home together.
 *
 * @param rooms the kinds of room whose ventilators count
 * @param oneBedroom least number in a home with up to one bedroom
 * @param moreBedrooms least number in a home with more bedrooms
 * @param bedroomsPlus least number beyond the number of bedrooms
 * @param source where it is printed
 * @param confidence how sure a remembered value is
 */
public record VentilatorCount(
    @Key(about = "The kinds of room whose ventilators count", required = true)
        List<RoomGroup> rooms,
    @Key(about = "Least number in a home with up to one bedroom", min = 0, example = "4")
        Optional<Integer> oneBedroom,
    @Key(about = "Least number in a home with more bedrooms", min = 0, example = "5")
        Optional<Integer> moreBedrooms,
    @Key(about = "Least number beyond the number of bedrooms", min = 0, example = "2")
        Optional<Integer> bedroomsPlus,
    @Key(about = "Where it is printed") Citation source,
    @Key(about = "How sure a remembered value is") Optional<Confidence> confidence) {
  /** Copies the list; refuses a count that is given in no way or in both. */
  public VentilatorCount {
    rooms = List.copyOf(rooms);
    boolean fixed = oneBedroom.isPresent() && moreBedrooms.isPresent();
    if (fixed == bedroomsPlus.isPresent()) {
      throw new IllegalArgumentException("either one_bedroom with more_bedrooms, or bedrooms_plus");
    }
  }

  /** The least number for a home with a number of bedrooms. */
  public int of(int bedrooms) {
    return bedroomsPlus
        .map(more -> bedrooms + more)
        .orElseGet(() -> (bedrooms > 1 ? moreBedrooms : oneBedroom).orElseThrow());
  }
}
