package org.drysill.assess.ventilation;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Assumption;
import org.drysill.assess.Finding;
import org.drysill.assess.ventilation.adequacy.PurgeOpening;
import org.drysill.assess.ventilation.airing.RoomAiring;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.assess.ventilation.rooms.RoomAirResult;
import org.drysill.reference.rules.RuleSet;

/**
 * What was found about the ventilation of a home.
 *
 * @param rules the rule set that governs here
 * @param required what it asks of the whole home
 * @param comparisons what every rule set asks of this home, the governing one first
 * @param roomRules what every rule set asks of single rooms, the governing one first
 * @param quoted air-change figures that people are told, and what each means in this home
 * @param provided what the home gets
 * @param rooms how the air moves from room to room
 * @param wholeHome provided against required
 * @param extract each wet room's extract against its published rate
 * @param supply supply to each added room with a heat-recovery unit of its own
 * @param background background ventilators by room, by number and in total
 * @param purge opening windows of each habitable room
 * @param airing how fast open windows change the air of each room
 * @param transfer the gap under each internal door
 * @param doorPressure pressure across closed doors of rooms with extract
 * @param fanPower specific fan power of each fan against the published limit
 * @param assumptions what was taken for granted here, beyond what the home already lists
 */
public record VentilationResult(
    RuleSet rules,
    RequiredAir required,
    List<RuleComparison> comparisons,
    List<RoomRule> roomRules,
    List<QuotedAirChange> quoted,
    ProvidedAir provided,
    RoomAirResult rooms,
    Finding wholeHome,
    List<Finding> extract,
    List<Finding> supply,
    List<Finding> background,
    List<PurgeOpening> purge,
    List<RoomAiring> airing,
    List<Finding> transfer,
    List<Finding> doorPressure,
    List<Finding> fanPower,
    List<Assumption> assumptions) {
  /** Copies the lists. */
  public VentilationResult {
    comparisons = List.copyOf(comparisons);
    roomRules = List.copyOf(roomRules);
    quoted = List.copyOf(quoted);
    extract = List.copyOf(extract);
    supply = List.copyOf(supply);
    background = List.copyOf(background);
    purge = List.copyOf(purge);
    airing = List.copyOf(airing);
    doorPressure = List.copyOf(doorPressure);
    transfer = List.copyOf(transfer);
    fanPower = List.copyOf(fanPower);
    assumptions = List.copyOf(assumptions);
  }

  /** Every finding, the whole home first. */
  public List<Finding> findings() {
    return Stream.of(
            List.of(wholeHome),
            extract,
            supply,
            background,
            purge.stream().map(PurgeOpening::finding).toList(),
            transfer,
            doorPressure,
            fanPower)
        .flatMap(List::stream)
        .toList();
  }

  /** What a fan of the survey does, by its id. */
  public Optional<FanFlow> fan(String id) {
    return provided.fans().stream().filter(f -> f.fan().id().equals(id)).findFirst();
  }
}
