package org.drysill.survey;

import java.util.Optional;
import org.drysill.survey.share.LeftOut;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Moment;
import org.drysill.yaml.Quantity;

/**
 * Temperature of a surface at a moment.
 *
 * @param at when
 * @param surface temperature of the surface on the room side
 * @param air air temperature of the room at that moment; the nearest room reading otherwise
 * @param outdoor outdoor temperature at that moment; the nearest outdoor reading otherwise
 * @param atPoint where on it
 * @param instrument the id of the instrument
 */
public record SurfaceReading(
    @Key(about = "When", example = "2026-01-22T10:10") Optional<Moment> at,
    @Key(
            about = "Temperature of the surface on the room side",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = -40,
            max = 60,
            low = -10,
            high = 30,
            example = "8.9 C")
        Quantity surface,
    @Key(
            about =
                "Air temperature of the room at that moment; the nearest room reading otherwise",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = -30,
            max = 60,
            low = 5,
            high = 35,
            example = "19.8 C")
        Optional<Quantity> air,
    @Key(
            about = "Outdoor temperature at that moment; the nearest outdoor reading otherwise",
            dimension = Dimension.TEMPERATURE,
            unit = "C",
            min = -60,
            max = 55,
            low = -35,
            high = 45,
            example = "3.2 C")
        Optional<Quantity> outdoor,
    @LeftOut @Key(about = "Where on it", example = "lower edge") Optional<String> atPoint,
    @Renamed(Renamed.As.INSTRUMENT) @Key(about = "The id of the instrument", example = "ir1")
        Optional<String> instrument) {}
