package org.drysill.assess.change;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.survey.TimelineEvent;

/**
 * Two visits to the same home compared.
 *
 * @param before day of the earlier visit
 * @param after day of the later visit
 * @param outdoor whether the weather of the two visits is alike enough to compare them
 * @param rooms rooms that have a humidity reading in both visits
 * @param home the mean of the heated rooms; empty where one visit has no reading
 * @param coldSpots cold spots and windows that were seen in both visits
 * @param fans fans of either visit
 * @param mouldBefore area with mould, sum over the cold spots that give one [m²]
 * @param mouldAfter the same at the later visit
 * @param between what was done in between, oldest first
 * @param notCompared what is in one visit only, in words
 * @param findings one for each claim that readers may want to make
 * @param assumptions what was taken for granted
 * @param caution that readings of two moments cannot prove a lasting change, and what would
 */
public record ChangeResult(
    LocalDate before,
    LocalDate after,
    OutdoorLikeness outdoor,
    List<AirChange> rooms,
    Optional<AirChange> home,
    List<ColdSpotChange> coldSpots,
    List<FanChange> fans,
    Optional<Figure> mouldBefore,
    Optional<Figure> mouldAfter,
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
    between = List.copyOf(between);
    notCompared = List.copyOf(notCompared);
    findings = List.copyOf(findings);
    assumptions = List.copyOf(assumptions);
  }
}
