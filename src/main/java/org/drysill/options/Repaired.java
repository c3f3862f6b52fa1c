package org.drysill.options;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;

/**
 * What comes before every measure, as it was reckoned: measures and packages are studied on the
 * home as it is once what can be reckoned of it is done.
 *
 * @param asIf as what the home is reckoned, in words that can follow "as if", one for each thing
 * @param rows what doing them changes; none where nothing of it can be reckoned
 * @param staying what cannot be taken out of the model and is reckoned as if it stayed, in
 *     sentences
 * @param unexplained water that the readings imply and no listed source gives [kg/s]; empty where
 *     nothing stays or the readings cannot tell
 */
public record Repaired(
    List<String> asIf, List<Row> rows, List<String> staying, Optional<Figure> unexplained) {
  /** Copies the lists. */
  public Repaired {
    asIf = List.copyOf(asIf);
    rows = List.copyOf(rows);
    staying = List.copyOf(staying);
  }

  /**
   * Before and after.
   *
   * @param today as it is
   * @param then once it is done
   */
  public record Row(Figure today, Figure then) {}
}
