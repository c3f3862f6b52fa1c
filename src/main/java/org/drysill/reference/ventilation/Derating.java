package org.drysill.reference.ventilation;

import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * What is left of a declared flow once a fan is fitted.
 *
 * @param run how far it blows
 * @param factor share of the declared flow that is left
 * @param source where it comes from
 * @param note what the reader should know about it
 */
public record Derating(
    @Key(about = "How far it blows", example = "through wall") DuctRun run,
    @Key(about = "Share of the declared flow that is left", min = 0, max = 1, example = "0.6..1.0")
        Quantity factor,
    @Key(about = "Where it comes from") Citation source,
    @Key(about = "What the reader should know about it") Optional<String> note) {}
