package org.drysill.reference.rules;

import java.util.List;
import java.util.Optional;
import org.drysill.yaml.Key;

/**
 * A published rule set for the ventilation of homes: one file, no code.
 *
 * @param id short name that surveys refer to
 * @param title the document's own name
 * @param edition edition or year
 * @param place where it applies
 * @param standing how much it binds
 * @param meantFor what it is meant for, in one sentence
 * @param existingHomes its view of homes that stand already, in one sentence
 * @param paper the paper that reports of this place are printed on
 * @param units the units that readers of this place are used to
 * @param wholeHome rates for the whole home; the first governs
 * @param extract extract rates by room
 * @param singleRoomHeatRecovery extract by a heat-recovery unit in the wet room
 * @param background areas of background ventilators
 * @param purge quick airing of a room
 * @param transfer the way of air from room to room
 * @param fanPower limits of specific fan power
 * @param criteria what the air should be like in the end
 * @param notes what the reader should know about the document
 */
public record RuleSet(
    @Key(about = "Short name that surveys refer to", example = "england", id = true) String id,
    @Key(about = "The document's own name", example = "Approved Document F, Volume 1: Dwellings")
        String title,
    @Key(about = "Edition or year", example = "2021") String edition,
    @Key(about = "Where it applies", example = "England") String place,
    @Key(about = "How much it binds", example = "statutory guidance") Standing standing,
    @Key(about = "What it is meant for, in one sentence") String meantFor,
    @Key(about = "Its view of homes that stand already, in one sentence")
        Optional<String> existingHomes,
    @Key(about = "The paper that reports of this place are printed on", example = "A4") Paper paper,
    @Key(about = "The units that readers of this place are used to", example = "metric")
        ReportUnits units,
    @Key(about = "Rates for the whole home; the first governs", required = true)
        List<WholeHomeRate> wholeHome,
    @Key(about = "Extract rates by room") List<ExtractRate> extract,
    @Key(about = "Extract by a heat-recovery unit in the wet room")
        Optional<SingleRoomRule> singleRoomHeatRecovery,
    @Key(about = "Areas of background ventilators") List<BackgroundRule> background,
    @Key(about = "Quick airing of a room") Optional<PurgeRule> purge,
    @Key(about = "The way of air from room to room") Optional<TransferRule> transfer,
    @Key(about = "Limits of specific fan power") List<FanPowerLimit> fanPower,
    @Key(about = "What the air should be like in the end") List<Criterion> criteria,
    @Key(about = "What the reader should know about the document") List<String> notes) {
  /** Copies the lists. */
  public RuleSet {
    wholeHome = List.copyOf(wholeHome);
    extract = List.copyOf(extract);
    background = List.copyOf(background);
    fanPower = List.copyOf(fanPower);
    criteria = List.copyOf(criteria);
    notes = List.copyOf(notes);
  }

  /** The whole-home rate that governs where this rule set does. */
  public WholeHomeRate governing() {
    return wholeHome.get(0);
  }

  /** Title and edition in one line. */
  public String named() {
    return title + ", " + edition;
  }
}
