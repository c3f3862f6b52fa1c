package org.drysill.reference.rules;

import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * The way of air from room to room while doors are shut.
 *
 * @param freeArea free area at each internal door
 * @param undercutFloorFitted gap under a door of usual width above the finished floor
 * @param undercutNoFloor gap under a door of usual width above the bare floor
 * @param doorWidth the usual width that the gap is printed for
 * @param source where it is printed
 * @param confidence how sure a remembered value is
 * @param note what the reader should know about it
 */
public record TransferRule(
    @Key(
            about = "Free area at each internal door",
            dimension = Dimension.AREA,
            unit = "mm2",
            min = 0,
            example = "7600 mm2")
        Quantity freeArea,
    @Key(
            about = "Gap under a door of usual width above the finished floor",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            example = "10 mm")
        Optional<Quantity> undercutFloorFitted,
    @Key(
            about = "Gap under a door of usual width above the bare floor",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            example = "20 mm")
        Optional<Quantity> undercutNoFloor,
    @Key(
            about = "The usual width that the gap is printed for",
            dimension = Dimension.LENGTH,
            unit = "mm",
            min = 0,
            example = "760 mm")
        Optional<Quantity> doorWidth,
    @Key(about = "Where it is printed") Citation source,
    @Key(about = "How sure a remembered value is") Optional<Confidence> confidence,
    @Key(about = "What the reader should know about it") Optional<String> note) {}
