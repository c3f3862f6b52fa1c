package org.drysill.survey;

import java.util.List;
import java.util.Optional;
import org.drysill.survey.share.LeftOut;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A room and what is in it.
 *
 * @param id short name that the rest of the file refers to
 * @param name name in the report, where the id would not do
 * @param use what it is used for
 * @param floorArea floor area
 * @param height height from floor to ceiling
 * @param storey on which storey, 0 at the entrance
 * @param setpoint usual temperature in the heating season
 * @param externalWall whether a wall of it looks outside
 * @param added whether it was added to the home by building work
 * @param readings air of the room at a moment
 * @param logger a log of the air of the room
 * @param doors doors to other rooms
 * @param windows windows and glazed doors
 * @param coldSpots corners, reveals, lintels, sleeves, behind furniture, a whole wall
 * @param walls built-up elements, room side first
 * @param moistureSources what puts water into the air, people aside
 * @param fans fans, hoods, stacks
 * @param photos photographs of the room
 * @param notes what else was seen
 */
public record Room(
    @Renamed(Renamed.As.ID)
        @Key(
            about = "Short name that the rest of the file refers to",
            example = "kitchen",
            id = true)
        String id,
    @Renamed(Renamed.As.NAME)
        @Key(about = "Name in the report, where the id would not do", example = "Back bedroom")
        Optional<String> name,
    @Key(about = "What it is used for", example = "kitchen") RoomUse use,
    @Key(
            about = "Floor area",
            dimension = Dimension.AREA,
            unit = "m2",
            min = 0.3,
            max = 1000,
            low = 0.8,
            high = 100,
            example = "11.5 m2")
        Optional<Quantity> floorArea,
    @Key(
            about = "Height from floor to ceiling",
            dimension = Dimension.LENGTH,
            unit = "m",
            min = 1,
            max = 15,
            low = 1.9,
            high = 5,
            example = "2.4 m")
        Optional<Quantity> height,
    @Key(about = "On which storey, 0 at the entrance", min = -3, max = 60, example = "0")
        Optional<Integer> storey,
    @Key(
            about = "Usual temperature in the heating season",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = 0,
            max = 35,
            low = 10,
            high = 26,
            example = "19 C")
        Optional<Quantity> setpoint,
    @Key(about = "Whether a wall of it looks outside", example = "yes")
        Optional<YesNo> externalWall,
    @Key(about = "Whether it was added to the home by building work", example = "no")
        Optional<YesNo> added,
    @Key(about = "Air of the room at a moment") List<RoomReading> readings,
    @Key(about = "A log of the air of the room") Optional<Logger> logger,
    @Key(about = "Doors to other rooms") List<Door> doors,
    @Key(about = "Windows and glazed doors") List<Window> windows,
    @Key(about = "Corners, reveals, lintels, sleeves, behind furniture, a whole wall")
        List<ColdSpot> coldSpots,
    @Key(about = "Built-up elements, room side first") List<Wall> walls,
    @Key(about = "What puts water into the air, people aside") List<MoistureSource> moistureSources,
    @Key(about = "Fans, hoods, stacks") List<Fan> fans,
    @LeftOut @Key(about = "Photographs of the room", example = "photos/kitchen.jpg")
        List<Photo> photos,
    @LeftOut @Key(about = "What else was seen", example = "Hood recirculates")
        Optional<String> notes) {
  /** Copies the lists. */
  public Room {
    readings = List.copyOf(readings);
    doors = List.copyOf(doors);
    windows = List.copyOf(windows);
    coldSpots = List.copyOf(coldSpots);
    walls = List.copyOf(walls);
    moistureSources = List.copyOf(moistureSources);
    fans = List.copyOf(fans);
    photos = List.copyOf(photos);
  }

  /** The same room with other fans. */
  public Room with(List<Fan> fans) {
    return with(windows, coldSpots, walls, fans);
  }

  /** The same room with other windows, cold spots and walls. */
  public Room with(List<Window> windows, List<ColdSpot> coldSpots, List<Wall> walls) {
    return with(windows, coldSpots, walls, fans);
  }

  private Room with(
      List<Window> windows, List<ColdSpot> coldSpots, List<Wall> walls, List<Fan> fans) {
    return new Room(
        id,
        name,
        use,
        floorArea,
        height,
        storey,
        setpoint,
        externalWall,
        added,
        readings,
        logger,
        doors,
        windows,
        coldSpots,
        walls,
        moistureSources,
        fans,
        photos,
        notes);
  }
}
