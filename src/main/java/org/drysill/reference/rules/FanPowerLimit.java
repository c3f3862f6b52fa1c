package org.drysill.reference.rules;

import java.util.Optional;
import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * A limit of specific fan power.
 *
 * @param fans the fans that it holds for
 * @param power most power for that flow
 * @param flow the flow that the power is printed for
 * @param source where it is printed
 * @param confidence how sure a remembered value is
 */
public record FanPowerLimit(
    @Key(about = "The fans that it holds for", example = "continuous extract") FanClass fans,
    @Key(
            about = "Most power for that flow",
            dimension = Dimension.POWER,
            unit = "W",
            min = 0,
            example = "0.5 W")
        Quantity power,
    @Key(
            about = "The flow that the power is printed for",
            dimension = Dimension.AIRFLOW,
            unit = "l/s",
            min = 0.01,
            example = "1 l/s")
        Quantity flow,
    @Key(about = "Where it is printed") Citation source,
    @Key(about = "How sure a remembered value is") Optional<Confidence> confidence) {
  /** The limit [W/(m³/s)]. */
  public double wattPerM3S() {
    return power.value() / flow.value();
  }
}
