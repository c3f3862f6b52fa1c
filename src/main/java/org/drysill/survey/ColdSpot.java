package org.drysill.survey;

import java.util.List;
import java.util.Optional;
import org.drysill.survey.share.LeftOut;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A place that is colder than its surroundings.
 *
 * @param id short name
 * @param name name in the report
 * @param kind what it is
 * @param material what its room side is
 * @param readings temperatures of it
 * @param temperatureFactor temperature factor, instead of readings
 * @param uValue thermal transmittance of the plane element, instead of readings
 * @param mouldSeen how much mould
 * @param mouldArea area with mould
 * @param photos photographs
 * @param notes what else was seen
 */
public record ColdSpot(
    @Renamed(Renamed.As.ID) @Key(about = "Short name", example = "kitchen-ne-corner", id = true)
        String id,
    @Renamed(Renamed.As.NAME) @Key(about = "Name in the report", example = "North-east corner")
        Optional<String> name,
    @Key(about = "What it is", example = "external corner") ColdSpotKind kind,
    @Key(about = "What its room side is", example = "painted plaster")
        Optional<SurfaceMaterial> material,
    @Key(about = "Temperatures of it") List<SurfaceReading> readings,
    @Key(
            about = "Temperature factor, instead of readings",
            dimension = Dimension.RATIO,
            unit = "1",
            min = 0,
            max = 1,
            low = 0.2,
            high = 0.99,
            example = "0.62")
        Optional<Quantity> temperatureFactor,
    @Key(
            about = "Thermal transmittance of the plane element, instead of readings",
            dimension = Dimension.U_VALUE,
            unit = "W/(m2.K)",
            min = 0.05,
            max = 10,
            low = 0.1,
            high = 6,
            example = "2.1 W/m2K")
        Optional<Quantity> uValue,
    @Key(about = "How much mould", example = "patches") Optional<MouldSeen> mouldSeen,
    @Key(
            about = "Area with mould",
            dimension = Dimension.AREA,
            unit = "m2",
            min = 0,
            max = 500,
            high = 30,
            example = "0.15 m2")
        Optional<Quantity> mouldArea,
    @LeftOut @Key(about = "Photographs", example = "photos/corner.jpg") List<Photo> photos,
    @LeftOut @Key(about = "What else was seen", example = "Damp to the touch")
        Optional<String> notes) {
  /** Copies the lists. */
  public ColdSpot {
    readings = List.copyOf(readings);
    photos = List.copyOf(photos);
  }
}
