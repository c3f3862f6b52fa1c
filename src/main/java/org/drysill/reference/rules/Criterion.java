package org.drysill.reference.rules;

import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * What the air should be like in the end; a moving average that must stay below a limit.
 *
 * @param quantity what it speaks of
 * @param over over what time it is averaged
 * @param below the limit; a value equal to it fails
 * @param holdsFor the homes and seasons that it is printed for
 * @param source where it is printed
 * @param confidence how sure a remembered value is
 */
public record Criterion(
    @Key(about = "What it speaks of", example = "indoor humidity") CriterionQuantity quantity,
    @Key(about = "Over what time it is averaged", example = "month") AveragingTime over,
    @Key(
            about = "The limit; a value equal to it fails",
            dimension = Dimension.RELATIVE_HUMIDITY,
            unit = "%",
            min = 0,
            max = 100,
            example = "65 %")
        Quantity below,
    @Key(about = "The homes and seasons that it is printed for") String holdsFor,
    @Key(about = "Where it is printed") Citation source,
    @Key(about = "How sure a remembered value is") Optional<Confidence> confidence) {}
