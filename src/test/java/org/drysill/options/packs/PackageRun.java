package org.drysill.options.packs;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.options.OptionsBasis;
import org.drysill.options.StudiedEntries;
import org.drysill.options.draws.Draws;
import org.drysill.options.money.MoneyStudy;
import org.drysill.options.rank.Entry;

/** Times the evaluation of packages for {@code org.drysill.benchmark.Packages}. */
public final class PackageRun {
  private static final int ROUNDS = 7;
  private static final int SAMPLES = 200;
  private static final OperatingSystemMXBean SYSTEM =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
  private static double sink;

  private PackageRun() {}

  /** Prints one row: packages, milliseconds, those of the bare loop. */
  public static void print(int airMembers) {
    Assessment assessment = OptionsFixtures.assess(SmallHomes.of(3));
    OptionsBasis basis = OptionsFixtures.basis();
    List<Entry> ranked = StudiedEntries.of(assessment, basis);
    HomeZones zones = HomeZones.of(assessment).orElseThrow();
    VapourChanges changes = new VapourChanges(zones, assessment.moisture().items(), 1e-4);
    List<Member> members =
        ranked.stream().map(e -> new Member(e, changes.of(e.costed().studied()))).toList();
    List<Member> air = free(members.stream().filter(Member::isOfTheAir).toList(), airMembers);
    List<Member> fabric = free(members.stream().filter(m -> !m.isOfTheAir()).toList(), 9);
    FabricStates states = new FabricStates(assessment, zones, fabric, basis.tables());
    List<FabricSide> sides = new ArrayList<>();
    for (long s : Subsets.of(new long[fabric.size()], Integer.MAX_VALUE)) {
      sides.add(states.side(s));
    }
    AirSides of = new AirSides(assessment, zones, air, new MoneyStudy(assessment, basis).airBill());
    List<AirSide> airs = new ArrayList<>();
    for (long s : Subsets.of(new long[air.size()], Integer.MAX_VALUE)) {
      airs.add(of.of(s));
    }
    VapourModel model = new VapourModel(zones.home(), states.glass().get(0));
    long[] barred = new long[airs.size()];
    double engine = 1e9;
    double bare = 1e9;
    for (int round = 0; round < ROUNDS; round++) {
      long start = System.nanoTime();
      Packages packages = new Packages(model, airs, sides, states, barred, Needs.NONE);
      packages.each(v -> sink += v.mould());
      engine = Math.min(engine, (System.nanoTime() - start) / 1e6);
      start = System.nanoTime();
      bare(airs.size() * sides.size(), zones.size());
      bare = Math.min(bare, (System.nanoTime() - start) / 1e6);
    }
    System.out.println(
        String.format(
            Locale.ROOT,
            "%,9d packages of %d rooms: %8.1f ms, bare loop %8.1f ms, ratio %.2f %s",
            airs.size() * sides.size(),
            zones.size(),
            engine,
            bare,
            engine / bare,
            sink > 0 ? "" : "."));
  }

  /**
   * Prints what the study of a home spends on the packages that may turn out best: samples by month
   * and years by hour, each beside a bare loop over the same recurrence.
   *
   * @param name of the home
   * @param assessment the home
   * @param basis what is published
   */
  public static void print(String name, Assessment assessment, OptionsBasis basis) {
    HomeZones zones = HomeZones.of(assessment).orElseThrow();
    PackageStudy study =
        new PackageStudy(
            assessment,
            basis,
            StudiedEntries.of(assessment, basis),
            new MoneyStudy(assessment, basis).airBill(),
            zones);
    PackOrder order = study.order();
    List<PackValue> finalists =
        new Finalists(new Best(study.packages(), order), 10).of(v -> order.progress(v) > 0);
    double drawn = 1e9;
    double sampled = 1e9;
    double hourly = 1e9;
    double bareSampled = 1e9;
    double bareHourly = 1e9;
    for (int round = 0; round < ROUNDS; round++) {
      long start = System.nanoTime();
      SampledPackages samples = study.sampled(Draws.of(SAMPLES));
      drawn = Math.min(drawn, (System.nanoTime() - start) / 1e6);
      start = System.nanoTime();
      finalists.forEach(v -> sink += samples.of(v).annual[0]);
      sampled = Math.min(sampled, (System.nanoTime() - start) / 1e6);
      start = System.nanoTime();
      bare(SAMPLES * finalists.size(), zones.size());
      bareSampled = Math.min(bareSampled, (System.nanoTime() - start) / 1e6);
      PackageHours hours = study.hours();
      start = System.nanoTime();
      sink += hours.of(finalists.get(0).members()).mould();
      hourly = Math.min(hourly, (System.nanoTime() - start) / 1e6);
      start = System.nanoTime();
      bareHours(zones.size());
      bareHourly = Math.min(bareHourly, (System.nanoTime() - start) / 1e6);
    }
    System.out.println(
        String.format(
            Locale.ROOT,
            "%s, %d rooms, %d finalists: %d samples drawn in %.1f ms; all finalists in all samples"
                + " %.1f ms, bare loop %.1f ms; one package by hour with its surfaces %.1f ms, bare"
                + " loop of the zones %.1f ms",
            name,
            zones.size(),
            finalists.size(),
            SAMPLES,
            drawn,
            sampled,
            bareSampled,
            hourly,
            bareHourly));
  }

  /**
   * Prints what it takes to follow the front and the finalists of a home hour by hour through all
   * samples, beside a bare loop over the same hours of the same zones on as many threads.
   */
  public static void printHours(String name, Assessment assessment, OptionsBasis basis) {
    HomeZones zones = HomeZones.of(assessment).orElseThrow();
    PackageStudy study =
        new PackageStudy(
            assessment,
            basis,
            StudiedEntries.of(assessment, basis),
            new MoneyStudy(assessment, basis).airBill(),
            zones);
    PackOrder order = study.order();
    Best pick = new Best(study.packages(), order);
    List<PackValue> front = pick.front(v -> v.safe() && !v.stopGap());
    List<PackValue> finalists = new Finalists(pick, 10).of(v -> order.progress(v) > 0);
    SampledPackages sampled = study.sampled(Draws.of(SAMPLES));
    printHours(name + ", front", study, sampled, front, zones.size());
    printHours(name + ", finalists", study, sampled, finalists, zones.size());
  }

  private static void printHours(
      String name, PackageStudy study, SampledPackages sampled, List<PackValue> some, int zones) {
    double[] quick = {1e9, 1e9};
    double[] bare = {1e9, 1e9};
    for (int round = 0; round < 3; round++) {
      HourlySamples hours = study.hours(sampled);
      least(quick, () -> hours.look(some));
      least(bare, () -> bareHours(some.size(), zones));
    }
    System.out.println(
        String.format(
            Locale.ROOT,
            "%s: %d packages hour by hour in %d samples: %.0f ms (processors %.0f ms), bare loop"
                + " of the zones %.0f ms (%.0f ms)",
            name,
            some.size(),
            SAMPLES,
            quick[0],
            quick[1],
            bare[0],
            bare[1]));
  }

  /** Keeps the least wall and processor time [ms]. */
  private static void least(double[] best, Runnable work) {
    long wall = System.nanoTime();
    long processor = SYSTEM.getProcessCpuTime();
    work.run();
    best[0] = Math.min(best[0], (System.nanoTime() - wall) / 1e6);
    best[1] = Math.min(best[1], (SYSTEM.getProcessCpuTime() - processor) / 1e6);
  }

  private static void bareHours(int packages, int zones) {
    IntStream.range(0, SAMPLES)
        .parallel()
        .forEach(
            s -> {
              for (int p = 0; p < packages; p++) {
                bareHours(zones);
              }
            });
  }

  /** One factorisation, then a solution for each hour, on plain arrays. */
  private static void bareHours(int n) {
    double[] lu = factors(n, 1);
    double[] v = new double[n];
    for (int h = 0; h < 9480; h++) {
      for (int i = 0; i < n; i++) {
        v[i] = 0.01 * v[i] + 1e-5;
      }
      solve(lu, v);
    }
    sink += v[0];
  }

  /** As many as there are, repeated where there are too few: what they exclude is left aside. */
  private static List<Member> free(List<Member> members, int count) {
    List<Member> free = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      free.add(members.get(i % members.size()));
    }
    return free;
  }

  /** One factorisation and twelve solutions for each package, on plain arrays, one thread. */
  private static void bare(int packages, int n) {
    double[] v = new double[n];
    for (int p = 0; p < packages; p++) {
      double[] lu = factors(n, p);
      for (int m = 0; m < VapourModel.MONTHS; m++) {
        Arrays.fill(v, 1e-5);
        solve(lu, v);
        sink += v[m % n];
      }
    }
  }

  private static double[] factors(int n, int p) {
    double[] lu = new double[n * n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        lu[i * n + j] = i == j ? 0.03 + 1e-9 * p : -0.005 / n;
      }
    }
    for (int k = 0; k < n; k++) {
      for (int i = k + 1; i < n; i++) {
        double factor = lu[i * n + k] / lu[k * n + k];
        lu[i * n + k] = factor;
        for (int j = k + 1; j < n; j++) {
          lu[i * n + j] -= factor * lu[k * n + j];
        }
      }
    }
    return lu;
  }

  private static void solve(double[] lu, double[] v) {
    int n = v.length;
    for (int i = 1; i < n; i++) {
      for (int j = 0; j < i; j++) {
        v[i] -= lu[i * n + j] * v[j];
      }
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int j = i + 1; j < n; j++) {
        v[i] -= lu[i * n + j] * v[j];
      }
      v[i] /= lu[i * n + i];
    }
  }
}
