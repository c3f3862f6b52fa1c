package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.drysill.assess.Unit;
import org.drysill.options.PackageSpread;
import org.drysill.options.Sureness;
import org.drysill.options.Sureness.Result;
import org.drysill.options.Sureness.ResultKind;
import org.drysill.options.draws.Doubt;
import org.drysill.physics.samples.FirstOrder;
import org.drysill.physics.samples.Quantiles;

/**
 * How sure packages are, and what makes them unsure.
 *
 * @param sampled the packages in many samples
 * @param hourly the packages hour by hour
 * @param best the best packages, best first
 * @param asked outdoor air that is asked [m³/s]
 */
record Spreads(
    SampledPackages sampled, HourlyLook hourly, List<PackValue> best, Optional<Double> asked) {
  Spreads {
    best = List.copyOf(best);
  }

  /** How sure a package is. */
  PackageSpread of(PackValue value) {
    SampledPackage one = sampled.of(value);
    return new PackageSpread(
        one.enough(),
        one.chance(one::hasAir),
        one.chance(one::isSound),
        one.chance(one::isDry),
        one.chance(s -> winner(s).filter(w -> w.members().equals(value.members())).isPresent()),
        Quantiles.nineInTen(one.annual),
        hourly.of(value));
  }

  /** The cheapest with enough air and sound walls in a sample; empty where none has both. */
  private Optional<PackValue> winner(int sample) {
    return best.stream()
        .filter(v -> sampled.of(v).isEnough(sample))
        .min(Comparator.comparingDouble(v -> sampled.of(v).annual[sample]));
  }

  /** What makes the ranking unsure; empty where no package is any good. */
  Optional<Sureness> sureness(int packages) {
    return best.stream().findFirst().map(first -> sureness(sampled.of(first), packages));
  }

  private Sureness sureness(SampledPackage first, int packages) {
    List<Watched> watched = watched(first);
    List<Sureness.Input> inputs = new ArrayList<>();
    for (Doubt doubt : sampled.doubts()) {
      double[] values = doubt.values().stream().mapToDouble(v -> v).toArray();
      inputs.add(doubt.with(watched.stream().map(w -> w.share(values)).toList()));
    }
    inputs.sort(Comparator.comparingDouble(Sureness.Input::greatest).reversed());
    return new Sureness(
        sampled.samples(), packages, watched.stream().map(Watched::result).toList(), inputs);
  }

  private List<Watched> watched(SampledPackage first) {
    List<Watched> watched = new ArrayList<>();
    watched.add(
        new Watched(ResultKind.AIR, "outdoor air of the home", Unit.AIRFLOW, first.air, asked));
    watched.add(
        new Watched(
            ResultKind.RESERVE,
            "by how much moister the air may be before a wall or corner is at risk of mould",
            Unit.RATIO,
            first.walls,
            Optional.of(1.0)));
    watched.add(
        new Watched(
            ResultKind.COST,
            "yearly cost over the horizon",
            Unit.MONEY_PER_YEAR,
            first.annual,
            Optional.empty()));
    if (best.size() > 1) {
      double[] second = sampled.of(best.get(1)).annual;
      watched.add(
          new Watched(
              ResultKind.LEAD,
              "yearly cost of the second package less that of the best",
              Unit.MONEY_PER_YEAR,
              IntStream.range(0, second.length)
                  .mapToDouble(s -> second[s] - first.annual[s])
                  .toArray(),
              Optional.of(0.0)));
    }
    return watched;
  }

  /** A result and its value in each sample. */
  private record Watched(Result result, Supplier<double[]> values) {
    Watched(ResultKind kind, String name, Unit unit, double[] values, Optional<Double> target) {
      this(new Result(kind, name, unit, Quantiles.nineInTen(values), target), () -> values);
    }

    Sureness.Share share(double[] input) {
      FirstOrder found = FirstOrder.of(input, values.get());
      return new Sureness.Share(
          result.kind(), found.share(), found.error(), found.low(), found.high());
    }
  }
}
