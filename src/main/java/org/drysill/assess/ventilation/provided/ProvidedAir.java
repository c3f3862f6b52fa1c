package org.drysill.assess.ventilation.provided;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;

/**
 * The outdoor air that the home gets, averaged over the cold season.
 *
 * @param wholeHome all of it [m³/s]; {@code ventilation.whole_home.provided}
 * @param byFans the part that fans move, the greater of supply and extract [m³/s]
 * @param supply brought in by fans, time-averaged [m³/s]
 * @param extract taken out by fans, time-averaged [m³/s]
 * @param leaks through leaks while no unbalanced fan runs [m³/s]
 * @param leaksByMonth leaks by warmth and wind of each month; empty where the climate has no wind
 * @param ventilators through open background ventilators while no unbalanced fan runs [m³/s]
 * @param infiltration leaks and ventilators together [m³/s]; {@code ventilation.infiltration}
 * @param ventilatorsAtTestPressure through all ventilators at the pressure of the definition of
 *     equivalent area [m³/s], for information
 * @param airChange all of it as air changes [1/h]
 * @param fans each fan of the survey, those that count nothing too
 * @param balance the likely flows in and out of the home
 * @param assumptions what was taken for granted about fans, leaks and ventilators
 */
public record ProvidedAir(
    Figure wholeHome,
    Figure byFans,
    Figure supply,
    Figure extract,
    Figure leaks,
    Optional<LeaksByMonth> leaksByMonth,
    Figure ventilators,
    Figure infiltration,
    Figure ventilatorsAtTestPressure,
    Figure airChange,
    List<FanFlow> fans,
    AirBalance balance,
    List<Assumption> assumptions) {
  /** Copies the lists. */
  public ProvidedAir {
    fans = List.copyOf(fans);
    assumptions = List.copyOf(assumptions);
  }

  /** The fans of a room of the survey. */
  public List<FanFlow> fansIn(String room) {
    return fans.stream().filter(f -> f.room().equals(room)).toList();
  }
}
