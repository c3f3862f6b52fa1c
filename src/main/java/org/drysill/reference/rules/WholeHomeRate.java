package org.drysill.reference.rules;

import java.util.Optional;
import org.drysill.yaml.Key;

/**
 * A rate of outdoor air for a whole home, or one variant of it such as a category.
 *
 * @param id short name of the variant; absent where there is one only
 * @param name its name in the report
 * @param purpose what the figure is meant for, in one sentence
 * @param counts which air is held against it
 * @param rate how it is computed
 * @param note what the reader should know about it
 */
public record WholeHomeRate(
    @Key(
            about = "Short name of the variant; absent where there is one only",
            example = "category-1")
        Optional<String> id,
    @Key(about = "Its name in the report", example = "Category I") Optional<String> name,
    @Key(about = "What the figure is meant for, in one sentence") String purpose,
    @Key(about = "Which air is held against it", example = "all outdoor air") Counts counts,
    @Key(about = "How it is computed") Term rate,
    @Key(about = "What the reader should know about it") Optional<String> note) {}
