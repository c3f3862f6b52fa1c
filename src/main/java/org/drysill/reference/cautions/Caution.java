package org.drysill.reference.cautions;

import org.drysill.reference.Citation;
import org.drysill.yaml.Key;

/**
 * A hazard, what to do about it and whom to ask.
 *
 * @param id short name that measures refer to
 * @param order the lower the graver; the open flue comes first
 * @param trigger the facts that call for it
 * @param hazard the hazard in a few words, printed bold
 * @param text what can happen and how to avoid it
 * @param ask what to ask, and of whom
 * @param source where it comes from
 */
public record Caution(
    @Key(about = "Short name that measures refer to", example = "open-flue", id = true) String id,
    @Key(about = "The lower the graver", min = 1, max = 999, example = "10") int order,
    @Key(about = "The facts that call for it", example = "open flue with extract") Trigger trigger,
    @Key(about = "The hazard in a few words", example = "Fumes can be drawn into the room.")
        String hazard,
    @Key(about = "What can happen and how to avoid it") String text,
    @Key(about = "What to ask, and of whom") String ask,
    @Key(about = "Where it comes from") Citation source) {}
