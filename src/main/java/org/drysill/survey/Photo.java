package org.drysill.survey;

import java.util.Optional;
import org.drysill.yaml.Key;
import org.drysill.yaml.Shorthand;

/**
 * A photograph.
 *
 * @param file its file: JPEG or PNG
 * @param caption what is to be seen, in one sentence
 */
@Shorthand("file")
public record Photo(
    @Key(about = "Its file: JPEG or PNG", example = "photos/corner.jpg", file = true) String file,
    @Key(about = "What is to be seen, in one sentence", example = "Mould above the skirting")
        Optional<String> caption) {}
