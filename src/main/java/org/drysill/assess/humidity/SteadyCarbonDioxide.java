package org.drysill.assess.humidity;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;

/** Fresh air by a steady concentration of the CO₂ that people breathe out: q = G / (C − Cb). */
public final class SteadyCarbonDioxide {
  private SteadyCarbonDioxide() {}

  /**
   * How the flow for each person came about.
   *
   * @param emission CO₂ that a person breathes out [m³/s]
   * @param excess CO₂ over outdoors
   * @param sources where the balance and the emission are printed
   * @param note how far the air was steady
   */
  public static Working working(
      Range emission, Figure excess, List<Citation> sources, String note) {
    return new Working(
        "q = G / (C − Cb)",
        List.of(
            Input.of(
                "G", "CO₂ that a person breathes out", emission, Unit.AIRFLOW, Basis.PUBLISHED),
            Input.of("C − Cb", excess)),
        sources,
        Optional.of(note));
  }
}
