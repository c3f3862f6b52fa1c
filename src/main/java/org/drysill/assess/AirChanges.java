package org.drysill.assess;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Airflow;

/** Tells flows as air changes of a volume, {@code n = q / V}. */
public final class AirChanges {
  private AirChanges() {}

  /**
   * A flow as air changes [1/h], on the basis of the flow.
   *
   * @param id id of the new figure
   * @param name what it is
   * @param flow q [m³/s]
   * @param volume V [m³]; its likely value counts
   */
  public static Figure of(String id, String name, Figure flow, Figure volume) {
    double perHour = Airflow.m3PerSecond(1).airChangePerHour(volume.likely());
    return new Figure(
        id,
        name,
        flow.value().times(perHour),
        Unit.AIR_CHANGE,
        flow.basis(),
        () ->
            new Working(
                "n = q / V",
                List.of(Input.of("q", flow), Input.of("V", volume)),
                List.of(),
                Optional.empty()));
  }
}
