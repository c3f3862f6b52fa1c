package org.drysill.assess.change;

import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * How a fan changed: the flow that was measured at it, else declared.
 *
 * @param id its id
 * @param room id of its room
 * @param name its name in sentences
 * @param flowBefore measured, else declared flow [m³/s]; empty where it was absent or not told
 * @param flowAfter the same at the later visit [m³/s]
 * @param said in words, such as that it is new
 */
public record FanChange(
    String id,
    String room,
    String name,
    Optional<Figure> flowBefore,
    Optional<Figure> flowAfter,
    String said) {}
