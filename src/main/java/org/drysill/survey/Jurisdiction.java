package org.drysill.survey;

import java.util.Optional;
import org.drysill.survey.share.Renamed;
import org.drysill.yaml.Key;
import org.drysill.yaml.Shorthand;

/**
 * Which ventilation rules apply.
 *
 * @param rules the id of a rule set
 * @param file a rule-set file of your own
 */
@Shorthand("rules")
public record Jurisdiction(
    @Key(about = "The id of a rule set", example = "england", vocabulary = "rule set")
        Optional<String> rules,
    @Renamed(Renamed.As.FILE)
        @Key(about = "A rule-set file of your own", example = "my-rules.yaml", file = true)
        Optional<String> file) {}
