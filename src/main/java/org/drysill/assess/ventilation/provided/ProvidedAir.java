package org.drysill.assess.ventilation.provided;

import java.util.List;
import org.drysill.assess.Figure;

/**
 * The outdoor air that the home gets, averaged over the cold season.
 *
 * @param wholeHome all of it [m³/s]; {@code ventilation.whole_home.provided}
 * @param supply brought in by fans, time-averaged [m³/s]
 * @param extract taken out by fans, time-averaged [m³/s]
 * @param infiltration through leaks while no unbalanced fan runs [m³/s]
 * @param airChange all of it as air changes [1/h]
 * @param fans each fan of the survey, those that count nothing too
 * @param balance the likely flows in and out of the home
 */
public record ProvidedAir(
    Figure wholeHome,
    Figure supply,
    Figure extract,
    Figure infiltration,
    Figure airChange,
    List<FanFlow> fans,
    AirBalance balance) {
  /** Copies the list. */
  public ProvidedAir {
    fans = List.copyOf(fans);
  }
}
