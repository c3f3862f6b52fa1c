package org.drysill.reference.model;

import java.util.List;
import org.drysill.reference.Citation;
import org.drysill.reference.DataFiles;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * What is believed of a home's air and water before its readings are put together.
 *
 * @param door air both ways through a door
 * @param openWay the same through stairs and passages
 * @param moment standard deviation of what all rooms have in common at the moment of a reading, as
 *     share of the vapour excess
 * @param momentOfRoom the same of each room by itself
 * @param roomPart standard deviation of the logarithm of a room's part in the water of the home
 * @param glassShare glass by the area of a window's opening
 * @param limitOfMiss beyond so many standard deviations a reading is not explained
 * @param together correlation beyond which water and air were read as one
 * @param people where people give off water
 * @param peopleSource where that comes from
 * @param sources where sources that no room lists belong
 * @param sourcesSource where that comes from
 */
public record ModelDefaults(
    @Key(about = "Air both ways through a door") Exchange door,
    @Key(about = "Air both ways through stairs and passages") Exchange openWay,
    @Key(about = "Deviation of a moment that all rooms have in common, share of the excess")
        Sourced moment,
    @Key(about = "Deviation of a moment of each room by itself, share of the excess")
        Sourced momentOfRoom,
    @Key(about = "Deviation of the logarithm of a room's part in the water") Sourced roomPart,
    @Key(about = "Glass by the area of a window's opening") Sourced glassShare,
    @Key(about = "Standard deviations beyond which a reading is not explained") Sourced limitOfMiss,
    @Key(about = "Correlation beyond which water and air were read as one") Sourced together,
    @Key(about = "Where people give off water", required = true) List<PeopleShare> people,
    @Key(about = "Where that comes from") Citation peopleSource,
    @Key(about = "Where sources that no room lists belong", required = true)
        List<SourcePlace> sources,
    @Key(about = "Where that comes from") Citation sourcesSource) {
  /** Copies the lists. */
  public ModelDefaults {
    people = List.copyOf(people);
    sources = List.copyOf(sources);
  }

  /** Reads the bundled values. */
  public static ModelDefaults bundled() {
    return DataFiles.read("defaults/model.yaml", ModelDefaults.class);
  }
}
