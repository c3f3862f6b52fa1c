package org.drysill.options.packs;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.MoneyFacts;
import org.drysill.options.CostParts;
import org.drysill.physics.energy.PresentValue;

/** The parts of the global cost of packages, as EN 15459-1 sums it. */
record PackCost(MoneyFacts money) {

  /** The parts; empty where the price of a measure is not known. */
  Optional<CostParts> of(PackValue value, List<Member> members) {
    if (members.stream().anyMatch(m -> m.entry().costed().parts().isEmpty())) {
      return Optional.empty();
    }
    CostParts apart =
        members.stream()
            .map(m -> m.entry().costed().parts().orElseThrow())
            .reduce(CostParts.NONE, CostParts::and);
    double annual = members.stream().mapToDouble(m -> m.entry().annualCost()).sum();
    // Flows of several fans add up to less than their sum; the difference is a matter of heat.
    return Optional.of(apart.withMoreHeat((value.bill().annual() - annual) * worth()));
  }

  /** What one unit of money a year is worth today over the horizon. */
  private double worth() {
    return PresentValue.annuityPresentValueFactor(
        money.discountRate().likely(), money.horizon().likely());
  }
}
