package org.drysill.survey;

import java.util.Optional;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Moment;
import org.drysill.yaml.Quantity;
import org.drysill.yaml.Shorthand;

/**
 * A measured flow.
 *
 * @param value the flow
 * @param at when
 * @param instrument the id of the instrument
 */
@Shorthand("value")
public record MeasuredFlow(
    @Key(
            about = "The flow",
            dimension = Dimension.AIRFLOW,
            unit = "l/s",
            min = 0,
            max = 2000,
            high = 300,
            example = "11 l/s")
        Quantity value,
    @Key(about = "When", example = "2026-01-22T10:40") Optional<Moment> at,
    @Renamed(Renamed.As.INSTRUMENT) @Key(about = "The id of the instrument", example = "hood")
        Optional<String> instrument) {}
