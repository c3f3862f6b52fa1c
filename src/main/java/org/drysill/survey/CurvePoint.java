package org.drysill.survey;

import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * One point of the curve that the maker of a fan declares.
 *
 * @param flow the flow that it moves
 * @param pressure the pressure difference against which it moves it
 */
public record CurvePoint(
    @Key(
            about = "The flow that it moves",
            dimension = Dimension.AIRFLOW,
            unit = "l/s",
            min = 0,
            max = 2000,
            high = 300,
            example = "15 l/s")
        Quantity flow,
    @Key(
            about = "The pressure difference against which it moves it",
            dimension = Dimension.PRESSURE,
            unit = "Pa",
            min = 0,
            max = 5000,
            high = 600,
            example = "25 Pa")
        Quantity pressure) {}
