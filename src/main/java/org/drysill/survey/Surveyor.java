package org.drysill.survey;

import java.util.Optional;
import org.drysill.yaml.Key;

/**
 * Who took the readings.
 *
 * @param name name
 * @param organisation organisation
 * @param qualification qualification
 */
public record Surveyor(
    @Key(about = "Name", example = "R. Example") String name,
    @Key(about = "Organisation", example = "Example Surveys") Optional<String> organisation,
    @Key(about = "Qualification", example = "retrofit assessor") Optional<String> qualification) {}
