package org.drysill.survey;

import java.time.LocalDate;
import java.util.Optional;
import org.drysill.survey.share.LeftOut;
import org.drysill.yaml.Key;

/**
 * One day in the story of a remediation.
 *
 * @param date the day
 * @param event what happened
 * @param by who did it, by role rather than by name
 * @param note in one sentence
 */
public record TimelineEvent(
    @Key(about = "The day", example = "2025-02-03") LocalDate date,
    @Key(about = "What happened", example = "reported") TimelineEventKind event,
    @LeftOut @Key(about = "Who did it, by role rather than by name", example = "tenant")
        Optional<String> by,
    @LeftOut @Key(about = "In one sentence", example = "Mould behind wardrobe")
        Optional<String> note) {}
