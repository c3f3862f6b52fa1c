package org.drysill.reference.logs;

import java.util.List;
import org.drysill.physics.tracer.event.AiringShape;
import org.drysill.physics.tracer.event.EventKind;
import org.drysill.physics.tracer.event.EventRules;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * What counts as an event of vapour, and what its shape is called.
 *
 * @param turn least turn, in standard deviations of a reading [1]
 * @param longestGap longest gap between readings [h]
 * @param recoveredShare share of a rise that may be left when it is over [1]
 * @param steeper pace of a rise over that of the slow one before it, from which it stands alone [1]
 * @param shower strong rise within minutes
 * @param cooking rise within an hour or so
 * @param drying rise over many hours
 * @param airing fall of vapour and temperature
 */
public record EventCriteria(
    @Key(about = "Least turn, in standard deviations of a reading") Sourced turn,
    @Key(about = "Longest gap between readings, h") Sourced longestGap,
    @Key(about = "Share of a rise that may be left when it is over") Sourced recoveredShare,
    @Key(about = "Pace of a rise over that of the slow one before it, from which it stands alone")
        Sourced steeper,
    @Key(about = "A strong rise within minutes") RiseCriterion shower,
    @Key(about = "A rise within an hour or so") RiseCriterion cooking,
    @Key(about = "A rise over many hours") RiseCriterion drying,
    @Key(about = "A fast fall of vapour and temperature") AiringCriterion airing) {
  /** The same for the physics; vapour in kg/m³. */
  public EventRules rules() {
    return new EventRules(
        turn.likely(),
        longestGap.likely(),
        recoveredShare.likely(),
        steeper.likely(),
        List.of(
            shower.shape(EventKind.SHOWER),
            cooking.shape(EventKind.COOKING),
            drying.shape(EventKind.DRYING_OR_SLEEP)),
        new AiringShape(
            airing.leastFall().likely(),
            airing.leastKelvin().likely(),
            airing.withinHours().likely()));
  }
}
