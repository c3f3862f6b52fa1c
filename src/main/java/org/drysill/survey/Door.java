package org.drysill.survey;

import java.util.Optional;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A door between rooms.
 *
 * @param to the id of the other room
 * @param undercut gap under the door
 * @param width width of the door leaf
 */
public record Door(
    @Renamed(Renamed.As.ID) @Key(about = "The id of the other room", example = "hall") String to,
    @Key(
            about = "Gap under the door",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            max = 300,
            high = 60,
            example = "4 mm")
        Optional<Quantity> undercut,
    @Key(
            about = "Width of the door leaf",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 100,
            max = 5000,
            low = 400,
            high = 2000,
            example = "760 mm")
        Optional<Quantity> width) {}
