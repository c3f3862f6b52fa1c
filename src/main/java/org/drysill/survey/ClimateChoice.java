package org.drysill.survey;

import java.util.Optional;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Key;
import org.drysill.yaml.Shorthand;

/**
 * Where the outdoor climate comes from: exactly one of the three.
 *
 * @param location the id of a reference climate
 * @param file an hourly weather file in the EPW layout
 * @param monthly twelve monthly means of your own
 */
@Shorthand("location")
public record ClimateChoice(
    @Key(about = "The id of a reference climate", example = "uk-midlands", vocabulary = "climate")
        Optional<String> location,
    @Renamed(Renamed.As.FILE)
        @Key(
            about = "An hourly weather file in the EPW layout",
            example = "weather.epw",
            file = true)
        Optional<String> file,
    @Key(about = "Twelve monthly means of your own") Optional<MonthlyClimate> monthly) {}
