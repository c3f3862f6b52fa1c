package org.drysill.assess.change.device;

import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.change.shown.Judgement;
import org.drysill.survey.FanKind;

/**
 * How a fan changed: the flow that was measured at it, else declared.
 *
 * @param id its id
 * @param room id of its room
 * @param name its name in sentences
 * @param kindBefore what it was; empty where it was not there
 * @param kindAfter what it is; empty where it is gone
 * @param flowBefore measured, else declared flow [m³/s]; empty where it was absent or not told
 * @param flowAfter the same at the later visit [m³/s]
 * @param change after less before [m³/s]; empty where it was not measured at both visits
 * @param judgement whether {@code change} is shown
 * @param said in words, such as that it is new
 */
public record FanChange(
    String id,
    String room,
    String name,
    Optional<FanKind> kindBefore,
    Optional<FanKind> kindAfter,
    Optional<Figure> flowBefore,
    Optional<Figure> flowAfter,
    Optional<Figure> change,
    Judgement judgement,
    String said) {}
