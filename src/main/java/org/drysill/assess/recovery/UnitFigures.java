package org.drysill.assess.recovery;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.readings.WeightedMean;
import org.drysill.physics.Range;
import org.drysill.physics.recovery.RecoveryRatio;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.yaml.Quantity;

/** The figures of a unit, from its tests and flows. */
final class UnitFigures {
  private static final Citation COMBINATION =
      Citation.of("JCGM 100 (GUM)", "2008", "5.1.2, propagation of uncertainty", How.MEMORY);
  private static final Citation UNBALANCE =
      new Citation("Balance of the air of a home", Optional.empty(), Optional.empty(), How.DERIVED);

  /** A half-cycle without any air recovers nothing. */
  private static final double FAINTEST = 1e-6;

  private UnitFigures() {}

  /** The ratio that the maker declares. */
  static Figure declared(String id, Quantity declared) {
    return new Figure(
        id + ".declared",
        "declared heat recovery",
        declared.range(),
        Unit.PERCENT,
        Basis.DECLARED,
        () ->
            new Working(
                "η as declared",
                List.of(Input.of("η", "declared", declared.range(), Unit.PERCENT, Basis.DECLARED)),
                List.of(),
                Optional.of("Laboratory figures hold without any wind.")));
  }

  /**
   * The tests whose supply ratio counts: single readings of an alternating unit only where no whole
   * cycles were taken, for they tell the moment more than the unit.
   */
  static List<RecoveryTest> counted(List<RecoveryTest> tests) {
    List<RecoveryTest> usable = tests.stream().filter(t -> t.supplyRatio().isPresent()).toList();
    List<RecoveryTest> whole =
        usable.stream().filter(t -> t.form() != TestForm.SINGLE_READING).toList();
    return whole.isEmpty() ? usable : whole;
  }

  /** The ratio on the supply side from all tests that count; empty without one. */
  static Optional<Figure> measured(String id, List<RecoveryTest> tests) {
    List<Figure> ratios = counted(tests).stream().flatMap(t -> t.supplyRatio().stream()).toList();
    if (ratios.isEmpty()) {
      return Optional.empty();
    }
    Range mean = combined(ratios);
    List<Input> inputs =
        IntStream.range(0, ratios.size())
            .mapToObj(i -> Input.of("η_" + (i + 1), ratios.get(i)))
            .toList();
    return Optional.of(
        new Figure(
            id + ".measured",
            "measured heat recovery on the supply side",
            mean,
            Unit.PERCENT,
            Basis.MEASURED,
            () ->
                new Working(
                    "η = Σ η_j/u_j² / Σ 1/u_j²", inputs, List.of(COMBINATION), Optional.empty())));
  }

  private static Range combined(List<Figure> ratios) {
    if (ratios.size() == 1) {
      return ratios.get(0).value();
    }
    Range mean = WeightedMean.of(ratios.stream().map(Figure::value).toList());
    return new Range(Math.max(0, mean.low()), mean.likely(), Math.min(1, mean.high()));
  }

  /** The share of all outdoor air that two units of a pair with unequal flows recover. */
  static Figure effective(String id, Figure ratio, Figure own, Figure other) {
    Range share = balance(own.value(), other.value());
    return new Figure(
        id + ".effective",
        "share recovered of all outdoor air of the pair",
        ratio.value().times(share),
        Unit.PERCENT,
        Basis.CALCULATED,
        () ->
            new Working(
                "η_eff = η · min(q1, q2) / max(q1, q2)",
                List.of(Input.of("η", ratio), Input.of("q1", own), Input.of("q2", other)),
                List.of(UNBALANCE),
                Optional.of("What one unit blows in too little comes in through gaps, cold.")));
  }

  /** The same of a unit whose log tells the air of both halves of its cycle apart. */
  static Optional<Figure> effective(String id, Figure ratio, List<RecoveryTest> tests) {
    return counted(tests).stream()
        .flatMap(t -> t.cycles().stream())
        .flatMap(c -> c.balance().stream())
        .findFirst()
        .map(b -> effective(id, ratio, b));
  }

  private static Figure effective(String id, Figure ratio, Figure balance) {
    double share =
        RecoveryRatio.effectiveUnderUnbalance(1, Math.max(FAINTEST, balance.likely()), 1);
    return new Figure(
        id + ".effective",
        "share recovered of all air that it moves",
        ratio.value().times(share),
        Unit.PERCENT,
        Basis.CALCULATED,
        () ->
            new Working(
                "η_eff = η · min(b, 1/b)",
                List.of(Input.of("η", ratio), Input.of("b", balance)),
                List.of(UNBALANCE),
                Optional.of("What it blows in too little comes in through gaps, cold.")));
  }

  private static Range balance(Range a, Range b) {
    Range smaller = a.likely() <= b.likely() ? a : b;
    Range larger = a.likely() <= b.likely() ? b : a;
    Range share = smaller.dividedBy(larger);
    return new Range(share.low(), share.likely(), Math.min(1, share.high()));
  }
}
