package org.drysill.survey;

import java.util.List;
import java.util.Optional;
import org.drysill.survey.share.LeftOut;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A window or glazed door.
 *
 * @param id short name
 * @param name name in the report
 * @param orientation where it looks
 * @param width width of the structural opening
 * @param height height of the structural opening
 * @param glazing an entry of the glazing table
 * @param uValue thermal transmittance of the pane, instead of a glazing
 * @param frame frame material
 * @param backgroundVentilator equivalent area of the background ventilator; 0 for none
 * @param opening the part that opens
 * @param readings temperatures of its room side
 * @param condensationSeen how often water is seen on it
 * @param photos photographs
 */
public record Window(
    @Renamed(Renamed.As.ID) @Key(about = "Short name", example = "kitchen-n", id = true) String id,
    @Renamed(Renamed.As.NAME) @Key(about = "Name in the report", example = "North window")
        Optional<String> name,
    @Key(about = "Where it looks", example = "N") Optional<Orientation> orientation,
    @Key(
            about = "Width of the structural opening",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            max = 20000,
            low = 200,
            high = 6000,
            example = "1200 mm")
        Optional<Quantity> width,
    @Key(
            about = "Height of the structural opening",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            max = 20000,
            low = 200,
            high = 4000,
            example = "1050 mm")
        Optional<Quantity> height,
    @Key(about = "An entry of the glazing table", example = "single", vocabulary = "glazing")
        Optional<String> glazing,
    @Key(
            about = "Thermal transmittance of the pane, instead of a glazing",
            dimension = Dimension.U_VALUE,
            unit = "W/(m2.K)",
            min = 0.1,
            max = 10,
            low = 0.3,
            high = 6.5,
            example = "2.8 W/m2K")
        Optional<Quantity> uValue,
    @Key(about = "Frame material", example = "timber") Optional<Frame> frame,
    @Key(
            about = "Equivalent area of the background ventilator; 0 for none",
            dimension = Dimension.AREA,
            unit = "mm2",
            min = 0,
            max = 200000,
            high = 20000,
            example = "2500 mm2")
        Optional<Quantity> backgroundVentilator,
    @Key(about = "The part that opens") Optional<Opening> opening,
    @Key(about = "Temperatures of its room side") List<SurfaceReading> readings,
    @Key(about = "How often water is seen on it", example = "daily")
        Optional<CondensationSeen> condensationSeen,
    @LeftOut @Key(about = "Photographs", example = "photos/window.jpg") List<Photo> photos) {
  /** Copies the lists. */
  public Window {
    readings = List.copyOf(readings);
    photos = List.copyOf(photos);
  }
}
