package org.drysill.reference.ventilation;

import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * The flow of a fan of which the survey says no flow.
 *
 * @param fan the sort of fan
 * @param flow the flow
 * @param source where it comes from
 */
public record UnstatedFlow(
    @Key(about = "The sort of fan", example = "intermittent extract") FanSort fan,
    @Key(
            about = "The flow",
            dimension = Dimension.AIRFLOW,
            unit = "l/s",
            min = 0,
            example = "3..25 l/s")
        Quantity flow,
    @Key(about = "Where it comes from") Citation source) {}
