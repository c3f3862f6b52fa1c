package org.drysill.options.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.options.MeasureEffect;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Range;

/**
 * A candidate with its effect.
 *
 * @param candidate the measure and its places
 * @param effect its effect for the report
 * @param running the flow of its fan while it runs [m³/s] and its share of the day, where it has
 *     one
 * @param replaced the fans of today whose place it takes
 * @param water water less in the air [kg/s]
 * @param works whether an effect is shown here
 */
public record Studied(
    Candidate candidate,
    MeasureEffect effect,
    Optional<Running> running,
    List<FanFlow> replaced,
    Range water,
    boolean works) {
  /** Copies the list. */
  public Studied {
    replaced = List.copyOf(replaced);
  }

  /**
   * How a fan runs.
   *
   * @param flow while it runs [m³/s]
   * @param shareOfDay share of the day [1]
   */
  public record Running(Range flow, Range shareOfDay) {}

  /**
   * The same for a measure that takes the place of a fan that is mended first.
   *
   * @param repair the name of that repair
   */
  public Studied saying(String repair) {
    List<String> because = new ArrayList<>(candidate.because());
    because.add(
        "It takes the place of a fan that is mended first: plan both together (" + repair + ").");
    return new Studied(
        new Candidate(candidate.measure(), candidate.sites(), because, candidate.needs()),
        effect,
        running,
        replaced,
        water,
        works);
  }

  /** Air added over time, likely [m³/s]; 0 where none is. */
  public double addedAir() {
    return effect.addedAir().map(Figure::likely).orElse(0.0);
  }
}
