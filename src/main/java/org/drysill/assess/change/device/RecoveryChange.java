package org.drysill.assess.change.device;

import org.drysill.assess.Figure;
import org.drysill.assess.change.shown.Judgement;

/**
 * How the heat recovery of a unit changed, measured against measured.
 *
 * @param id id of the unit in both surveys
 * @param room id of its room
 * @param name its name in sentences
 * @param before temperature ratio on the supply side, as a ratio
 * @param after the same at the later visit
 * @param change after less before, in percentage points, as a ratio
 * @param judgement whether {@code change} is shown
 */
public record RecoveryChange(
    String id,
    String room,
    String name,
    Figure before,
    Figure after,
    Figure change,
    Judgement judgement) {}
