package org.drysill.options.money;

import java.util.List;
import java.util.stream.Collectors;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;

/**
 * One part of the energy that a measure takes or saves, with the working that gives it.
 *
 * @param kwh in a year [kWh/a], at least 0 save where fans go that took more
 * @param formula how it was reckoned
 * @param inputs what goes into the formula
 */
record EnergyPart(Range kwh, String formula, List<Input> inputs) {
  EnergyPart {
    inputs = List.copyOf(inputs);
  }

  static Range sum(List<EnergyPart> parts) {
    return parts.stream().map(EnergyPart::kwh).reduce(Range.exactly(0), Range::plus);
  }

  /** The formulas of all, added up. */
  static String formula(List<EnergyPart> parts) {
    return parts.isEmpty()
        ? "none"
        : parts.stream().map(EnergyPart::formula).collect(Collectors.joining(" + "));
  }

  /** The inputs of all, each once. */
  static List<Input> inputs(List<EnergyPart> parts) {
    return parts.stream().flatMap(p -> p.inputs().stream()).distinct().toList();
  }
}
