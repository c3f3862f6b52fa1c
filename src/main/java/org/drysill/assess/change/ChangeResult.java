package org.drysill.assess.change;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Finding;
import org.drysill.assess.change.air.AirChange;
import org.drysill.assess.change.air.OutdoorLikeness;
import org.drysill.assess.change.device.FanChange;
import org.drysill.assess.change.device.RecoveryChange;
import org.drysill.assess.change.place.ColdSpotChange;
import org.drysill.assess.change.place.MouldChange;
import org.drysill.assess.change.visit.SameHome;
import org.drysill.assess.change.visit.VerdictChange;
import org.drysill.survey.TimelineEvent;

/**
 * Two visits to the same home compared.
 *
 * @param before day of the earlier visit
 * @param after day of the later visit
 * @param sameHome whether both surveys are of one home
 * @param outdoor whether the weather of the two visits is alike enough to compare them
 * @param rooms rooms whose air was read or logged at both visits
 * @param home the mean of the heated rooms among them; empty where there is none
 * @param coldSpots cold spots and windows that were seen in both visits
 * @param mould area with mould over the places whose area is known at both visits
 * @param fans fans of either visit
 * @param recovery heat recovery units that were tested at both visits
 * @param verdicts comparisons with published figures that came out otherwise
 * @param between what was done in between, oldest first
 * @param notCompared what is in one visit only, in words
 * @param findings one for each claim that readers may want to make
 * @param assumptions what was taken for granted
 * @param caution what the comparison cannot show, and what would
 */
public record ChangeResult(
    LocalDate before,
    LocalDate after,
    SameHome sameHome,
    OutdoorLikeness outdoor,
    List<AirChange> rooms,
    Optional<AirChange> home,
    List<ColdSpotChange> coldSpots,
    Optional<MouldChange> mould,
    List<FanChange> fans,
    List<RecoveryChange> recovery,
    List<VerdictChange> verdicts,
    List<TimelineEvent> between,
    List<String> notCompared,
    List<Finding> findings,
    List<Assumption> assumptions,
    String caution) {
  /** Copies the lists. */
  public ChangeResult {
    rooms = List.copyOf(rooms);
    coldSpots = List.copyOf(coldSpots);
    fans = List.copyOf(fans);
    recovery = List.copyOf(recovery);
    verdicts = List.copyOf(verdicts);
    between = List.copyOf(between);
    notCompared = List.copyOf(notCompared);
    findings = List.copyOf(findings);
    assumptions = List.copyOf(assumptions);
  }
}
