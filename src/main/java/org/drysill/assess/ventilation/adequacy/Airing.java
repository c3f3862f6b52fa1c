package org.drysill.assess.ventilation.adequacy;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.airing.WindowFlow;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.rules.PurgeRule;

/** The flow to be expected through open windows at the wind and warmth that a rule reckons with. */
final class Airing {
  private static final Citation FORMULA =
      Citation.of("EN 16798-7", "2017", "airing, openings on one side", How.MEMORY);

  private Airing() {}

  /** For information; empty where the rule prints no wind or the openings are not known. */
  static Optional<Figure> through(RoomFacts room, List<AiringOpening> openings, PurgeRule rule) {
    boolean known = !openings.isEmpty() && openings.stream().allMatch(AiringOpening::known);
    return rule.windSpeed()
        .filter(wind -> known)
        .flatMap(
            wind ->
                rule.temperatureDifference()
                    .map(dt -> through(room, openings, rule, wind.value(), dt.value())));
  }

  private static Figure through(
      RoomFacts room, List<AiringOpening> openings, PurgeRule rule, double wind, double dt) {
    double flow =
        openings.stream()
            .flatMap(o -> o.window().opening().stream())
            .mapToDouble(o -> WindowFlow.en16798M3S(o, dt, wind))
            .sum();
    return Asked.computed(
        "room." + room.id() + ".purge.airing",
        "air through the open windows of the " + room.name(),
        Range.exactly(flow),
        Unit.AIRFLOW,
        "q = Σ Ck × A / 2 × √max(0.001 u²; 0.0035 h ΔT)",
        List.of(
            Input.of("u", "wind in m/s", Range.exactly(wind), Unit.RATIO, Basis.PUBLISHED),
            Input.of(
                "ΔT", "temperature difference", Range.exactly(dt), Unit.KELVIN, Basis.PUBLISHED)),
        List.of(FORMULA, rule.source()));
  }
}
