package org.drysill.assess.ventilation.adequacy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.reference.rules.FanClass;
import org.drysill.reference.rules.FanPowerLimit;
import org.drysill.reference.rules.RuleSet;
import org.drysill.survey.FanKind;

/** Specific fan power of each fan against the published limit. */
public final class FanPowerFindings {
  private static final double M3_PER_LITRE = 1e-3;

  private FanPowerFindings() {}

  /** One for each fan that moves air by electricity. */
  public static List<Finding> of(RuleSet rules, ProvidedAir air) {
    return air.fans().stream()
        .flatMap(fan -> classOf(fan.fan().kind()).map(kind -> of(rules, fan, kind)).stream())
        .toList();
  }

  /** Alternating units have no limit of their own; they are held against that of balanced ones. */
  private static Optional<FanClass> classOf(FanKind kind) {
    return switch (kind) {
      case INTERMITTENT_EXTRACT, EXTRACT_HOOD -> Optional.of(FanClass.INTERMITTENT_EXTRACT);
      case CONTINUOUS_EXTRACT -> Optional.of(FanClass.CONTINUOUS_EXTRACT);
      case POSITIVE_INPUT -> Optional.of(FanClass.CONTINUOUS_SUPPLY);
      case ALTERNATING_HEAT_RECOVERY, SIMULTANEOUS_HEAT_RECOVERY, BALANCED_HEAT_RECOVERY ->
          Optional.of(FanClass.BALANCED);
      case RECIRCULATING_HOOD, PASSIVE_STACK, FITTED_BUT_NOT_WORKING -> Optional.empty();
    };
  }

  private static Finding of(RuleSet rules, FanFlow fan, FanClass kind) {
    Optional<FanPowerLimit> limit =
        rules.fanPower().stream().filter(row -> row.fans() == kind).findFirst();
    Optional<Figure> power = fan.specificFanPower();
    Verdict verdict =
        power
            .filter(p -> fan.stated())
            .flatMap(p -> limit.map(row -> compare(p, row)))
            .orElse(Verdict.UNKNOWN);
    String id = "fan." + fan.fan().id() + ".power";
    return new Finding(
        id,
        Asked.capital(fan.name()) + ": fan power",
        Optional.of(fan.room()),
        verdict,
        Direction.AT_MOST,
        power,
        limit.map(
            row ->
                Asked.printed(
                    id + ".limit",
                    "most specific fan power",
                    row.wattPerM3S(),
                    Unit.SPECIFIC_FAN_POWER,
                    row.source())),
        because(rules, fan, power, limit),
        limit.filter(row -> verdict == Verdict.UNKNOWN).map(row -> settle(fan, power, row)),
        limit.map(row -> List.of(row.source())).orElse(List.of()));
  }

  private static String because(
      RuleSet rules, FanFlow fan, Optional<Figure> power, Optional<FanPowerLimit> limit) {
    if (limit.isEmpty()) {
      return rules.named() + ": no limit of fan power is known for such a fan; not assessed.";
    }
    String most = "at most " + number(limit.get().wattPerM3S(), RoundingMode.FLOOR) + " W/(l/s).";
    String own =
        fan.fan().kind() == FanKind.ALTERNATING_HEAT_RECOVERY
            ? " That is the limit of balanced systems; alternating units have none of their own."
            : "";
    return power
            .map(p -> number(p.value().high(), RoundingMode.CEILING) + " W/(l/s) as fitted, ")
            .orElse("Its power or flow is not known; ")
        + most
        + own;
  }

  private static String number(double wattPerM3S, RoundingMode mode) {
    double crumb = mode == RoundingMode.FLOOR ? 1e-9 : -1e-9;
    return BigDecimal.valueOf(wattPerM3S * M3_PER_LITRE + crumb).setScale(2, mode).toPlainString();
  }

  private static Verdict compare(Figure power, FanPowerLimit row) {
    return Asked.sure(Verdict.atMost(power.value(), row.wattPerM3S()), row.confidence());
  }

  private static String settle(FanFlow fan, Optional<Figure> power, FanPowerLimit row) {
    if (Asked.doubtful(row.confidence())) {
      return Asked.lookUp(row.source());
    }
    return power.isPresent()
        ? "Measure the flow at " + fan.name() + " with a flow hood while it runs."
        : "Read the power of " + fan.name() + " with a plug-in meter or from its plate.";
  }
}
