package org.drysill.assess.ventilation.required;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.physics.Airflow;
import org.drysill.physics.Range;
import org.drysill.reference.rules.Condition;
import org.drysill.reference.rules.RoomGroup;
import org.drysill.survey.Airtightness;
import org.drysill.survey.DwellingType;
import org.drysill.survey.RoomUse;
import org.drysill.yaml.Quantity;

/**
 * The facts of a home that rule sets count by.
 *
 * @param floorAreaM2 internal floor area [m²]
 * @param volumeM3 internal volume [m³]
 * @param storeys number of storeys
 * @param bedrooms number of bedrooms
 * @param occupants number of people who live there
 * @param leakageAt50PaM3S flow through leaks at 50 Pa [m³/s]
 * @param weatherFactor weather and shielding factor of the place, where the survey gives it
 * @param oneHabitableRoom true where the home is known to have a single habitable room
 * @param mainRooms number of main rooms; empty where the survey does not list every room
 * @param rooms every room, where the survey lists every room
 */
public record RuleFacts(
    Range floorAreaM2,
    Range volumeM3,
    int storeys,
    int bedrooms,
    Range occupants,
    Range leakageAt50PaM3S,
    Optional<Range> weatherFactor,
    boolean oneHabitableRoom,
    Optional<Integer> mainRooms,
    Optional<List<Room>> rooms) {
  /** The rooms of a survey must cover this much of the home to count as all of them [1]. */
  private static final double MOST_OF_THE_HOME = 0.75;

  /**
   * A room as rule sets see it.
   *
   * @param group its kind
   * @param floorAreaM2 floor area [m²]
   */
  public record Room(RoomGroup group, Range floorAreaM2) {
    /** True where the room is of a kind or of one that contains it. */
    public boolean isOf(RoomGroup kind) {
      boolean staysIn = group == RoomGroup.BEDROOM || group == RoomGroup.LIVING;
      return kind == group || (kind == RoomGroup.HABITABLE && staysIn);
    }
  }

  /** The facts of a surveyed home. */
  public static RuleFacts of(Home home) {
    boolean all = listsEveryRoom(home);
    int habitable = (int) home.rooms().stream().filter(RoomFacts::habitable).count();
    List<Room> rooms =
        home.rooms().stream()
            .flatMap(r -> group(r.room().use()).map(g -> room(g, r)).stream())
            .toList();
    return new RuleFacts(
        home.floorArea().value(),
        home.volume().value(),
        home.storeys(),
        home.bedrooms(),
        home.occupants().value(),
        home.n50()
            .value()
            .times(home.volume().value())
            .times(Airflow.ofAirChange(1, 1).m3PerSecond()),
        home.survey()
            .dwelling()
            .airtightness()
            .flatMap(Airtightness::weatherFactor)
            .map(Quantity::range),
        isStudio(home) || (all && habitable == 1),
        all ? Optional.of(habitable) : Optional.empty(),
        all ? Optional.of(rooms) : Optional.empty());
  }

  /** True where a condition on the home as a whole holds; one on a room never does. */
  public boolean holds(Condition condition) {
    return switch (condition) {
      case ONE_HABITABLE_ROOM -> oneHabitableRoom;
      case SEVERAL_HABITABLE_ROOMS -> !oneHabitableRoom;
      case SINGLE_STOREY -> storeys == 1;
      case MULTI_STOREY -> storeys > 1;
      case NO_EXTERNAL_WALL -> false;
    };
  }

  private static Room room(RoomGroup group, RoomFacts room) {
    return new Room(group, room.floorArea().value());
  }

  private static boolean isStudio(Home home) {
    boolean named =
        home.survey().dwelling().type().filter(t -> t == DwellingType.STUDIO).isPresent();
    return home.bedrooms() <= 1 && (named || home.bedrooms() == 0);
  }

  /**
   * True where rooms whose floor area the survey states cover most of the floor, and every bedroom
   * is among the rooms. An area that was assumed tells nothing of rooms that are not listed.
   */
  private static boolean listsEveryRoom(Home home) {
    double listed =
        home.rooms().stream()
            .filter(RoomFacts::heated)
            .flatMap(r -> r.room().floorArea().stream())
            .mapToDouble(Quantity::value)
            .sum();
    long bedrooms = home.rooms().stream().filter(r -> r.room().use() == RoomUse.BEDROOM).count();
    return listed >= MOST_OF_THE_HOME * home.floorArea().likely() && bedrooms >= home.bedrooms();
  }

  /** The kind of a room as rule sets group them; empty for halls, stores, lofts and cellars. */
  public static Optional<RoomGroup> group(RoomUse use) {
    return switch (use) {
      case BEDROOM -> Optional.of(RoomGroup.BEDROOM);
      case LIVING, DINING, STUDY -> Optional.of(RoomGroup.LIVING);
      case KITCHEN, KITCHEN_DINING -> Optional.of(RoomGroup.KITCHEN);
      case BATHROOM, SHOWER_ROOM -> Optional.of(RoomGroup.BATHROOM);
      case WC -> Optional.of(RoomGroup.SANITARY);
      case UTILITY -> Optional.of(RoomGroup.UTILITY);
      case HALL, STORE, LOFT, CELLAR -> Optional.empty();
    };
  }
}
