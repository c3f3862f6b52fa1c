package org.drysill.survey;

import java.util.Optional;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Key;

/**
 * Something that burns fuel.
 *
 * @param kind what it is
 * @param fuel what it burns
 * @param room the id of the room that it stands in
 */
public record CombustionAppliance(
    @Key(about = "What it is", example = "open-flued fire") ApplianceKind kind,
    @Key(about = "What it burns", example = "mains gas") Optional<Fuel> fuel,
    @Renamed(Renamed.As.ID) @Key(about = "The id of the room that it stands in", example = "living")
        Optional<String> room) {}
