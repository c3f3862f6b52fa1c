package org.drysill.options;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Verdict;

/**
 * What a measure does; a figure is empty where the measure does not touch it or where it cannot be
 * told, and then a note says which.
 *
 * @param addedAir outdoor air added to the home, averaged over time [m³/s]; negative where less
 * @param runningFlow flow while the new fan runs [m³/s]
 * @param moisture water kept out of or taken out of the air [kg/s]
 * @param excessChange change of the indoor vapour excess as ratio; -0.2 is a fifth less
 * @param excessAfter vapour excess afterwards [kg/m³]
 * @param lacksToday outdoor air that the home lacks today [m³/s], where something is asked
 * @param lacksAfter the same with the measure [m³/s]
 * @param wholeHome whole-home air afterwards against what is asked
 * @param extract extract of the rooms concerned afterwards against what is asked
 * @param settles the ids of today's findings on extract, ventilators and doors that fall short and
 *     would no longer
 * @param surfaces cold places and windows before and afterwards
 * @param enoughAir whether the home then has the air that is asked
 * @param opaqueSafe whether walls, corners and reveals are then without mould risk
 * @param wetGlassMonths months in a year with condensation, summed over the windows
 * @param notes limits and what cannot be told, in sentences
 */
public record MeasureEffect(
    Optional<Figure> addedAir,
    Optional<Figure> runningFlow,
    Optional<Figure> moisture,
    Optional<Figure> excessChange,
    Optional<Figure> excessAfter,
    Optional<Figure> lacksToday,
    Optional<Figure> lacksAfter,
    Optional<Finding> wholeHome,
    List<Finding> extract,
    List<String> settles,
    List<SurfaceChange> surfaces,
    Verdict enoughAir,
    Verdict opaqueSafe,
    Optional<Figure> wetGlassMonths,
    List<String> notes) {
  /** Copies the lists. */
  public MeasureEffect {
    extract = List.copyOf(extract);
    settles = List.copyOf(settles);
    surfaces = List.copyOf(surfaces);
    notes = List.copyOf(notes);
  }
}
