package org.drysill.options.packs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.options.OptionsBasis;
import org.drysill.options.StudiedEntries;
import org.drysill.options.money.AirBill;
import org.drysill.options.money.MoneyStudy;
import org.drysill.options.rank.Entry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;

/** The engine against packages evaluated one by one, in a hundred small homes. */
@TestInstance(Lifecycle.PER_CLASS)
class OneByOneTest {
  private static final OptionsBasis BASIS = OptionsFixtures.basis();
  private static final int HOMES = 100;

  /** So many measures of each home are combined, so that one by one stays quick. */
  private static final int MEASURES = 6;

  /** A home, and what each of its packages is by itself, evaluated once for all tests. */
  private record Case(
      PackageStudy study, OneByOne oneByOne, Map<PackValue.Bits, OneByOne.Outcome> found) {
    OneByOne.Outcome byItself(PackValue value) {
      return found.computeIfAbsent(
          value.members(), members -> oneByOne.of(study.candidates().in(value)));
    }
  }

  private final Map<Long, Case> homes = new HashMap<>();

  private Case at(long seed) {
    return homes.computeIfAbsent(seed, OneByOneTest::made);
  }

  private static Case made(long seed) {
    Assessment assessment = OptionsFixtures.assess(SmallHomes.of(seed));
    List<Entry> entries = StudiedEntries.of(assessment, BASIS);
    // Every second or third of the ranking, so that air, water and fabric all come in.
    int each = Math.max(1, entries.size() / MEASURES);
    List<Entry> some = new ArrayList<>();
    for (int i = 0; i < entries.size() && some.size() < MEASURES; i += each) {
      some.add(entries.get(i));
    }
    AirBill price = new MoneyStudy(assessment, BASIS).airBill();
    HomeZones zones = HomeZones.of(assessment).orElseThrow();
    return new Case(
        new PackageStudy(assessment, BASIS, some, price, zones),
        OneByOne.of(assessment, BASIS, zones, price),
        new HashMap<>());
  }

  @Test
  void the_best_package_is_the_one_that_is_found_one_by_one() {
    int same = 0;
    AtomicInteger evaluated = new AtomicInteger();
    List<String> losses = new ArrayList<>();
    for (long seed = 0; seed < HOMES; seed++) {
      Case one = at(seed);
      PackOrder order = one.study().order();
      List<PackValue> naive = new ArrayList<>();
      one.study()
          .packages()
          .each(
              v -> {
                OneByOne.Outcome found = one.byItself(v);
                evaluated.incrementAndGet();
                naive.add(
                    new PackValue(
                        v.members(),
                        v.size(),
                        v.safe(),
                        v.stopGap(),
                        found.lacks(),
                        found.mould(),
                        found.wet(),
                        v.airReserve(),
                        v.reserve(),
                        new Bill(found.first(), found.annual(), 0, 0, 0, 0)));
              });
      PackValue engine = new Best(one.study().packages(), order).of(v -> true).orElseThrow();
      PackValue brute = naive.stream().min(order.comparator()).orElseThrow();
      if (engine.members().equals(brute.members())) {
        same++;
      } else {
        losses.add("home %d: %s instead of %s".formatted(seed, engine, brute));
      }
    }
    losses.forEach(System.out::println);
    assertThat(evaluated.get()).isGreaterThan(10 * HOMES);
    assertThat(same).as(String.join("\n", losses)).isGreaterThanOrEqualTo(HOMES * 95 / 100);
  }

  @Test
  void every_package_has_the_figures_that_it_has_by_itself() {
    for (long seed = 0; seed < 10; seed++) {
      Case one = at(seed);
      one.study()
          .packages()
          .each(
              v -> {
                OneByOne.Outcome found = one.byItself(v);
                assertThat(v.mould()).isEqualTo(found.mould());
                assertThat(v.wet()).isEqualTo(found.wet());
                assertThat(v.lacks()).isCloseTo(found.lacks(), within(1e-12));
                assertThat(v.bill().annual()).isCloseTo(found.annual(), within(1e-6));
                assertThat(v.bill().first()).isEqualTo(found.first(), within(1e-9));
              });
    }
  }

  @Test
  void every_measure_of_the_best_package_is_worth_its_place() {
    for (long seed = 0; seed < 30; seed++) {
      Case one = at(seed);
      PackOrder order = one.study().order();
      PackValue best = new Best(one.study().packages(), order).of(v -> true).orElseThrow();
      one.study()
          .packages()
          .each(
              v -> {
                if (best.members().isMoreThan(v.members())) {
                  assertThat(order.comparator().compare(best, v)).isNegative();
                  assertThat(
                          order.steps(best) > order.steps(v)
                              || best.bill().annual() < v.bill().annual()
                              || best.wet() < v.wet())
                      .isTrue();
                }
              });
    }
  }

  @Test
  void today_has_the_months_that_the_chapter_on_surfaces_has() {
    for (long seed = 0; seed < 20; seed++) {
      Case one = at(seed);
      PackValue today = one.study().packages().of(new PackValue.Bits(0, 0));
      int months =
          one.oneByOne().assessment().condensation().places().stream()
              .filter(p -> p.surface() == SurfaceClass.OPAQUE)
              .collect(
                  Collectors.groupingBy(
                      p -> p.item(),
                      Collectors.mapping(
                          p -> p.months().monthsAtRisk().size(),
                          Collectors.maxBy(Integer::compare))))
              .values()
              .stream()
              .mapToInt(m -> m.orElseThrow())
              .sum();
      assertThat(today.mould()).isEqualTo(months);
    }
  }

  @Test
  void the_number_of_threads_changes_nothing() throws Exception {
    String text = OptionsFixtures.text("small-flat");
    String one = new ForkJoinPool(1).submit(() -> dump(text)).get();
    String four = new ForkJoinPool(4).submit(() -> dump(text)).get();
    assertThat(four).isEqualTo(one).isEqualTo(dump(text));
  }

  private static String dump(String text) {
    Assessment assessment = OptionsFixtures.assess(text);
    PackageStudy study =
        new PackageStudy(
            assessment,
            BASIS,
            StudiedEntries.of(assessment, BASIS),
            new MoneyStudy(assessment, BASIS).airBill(),
            HomeZones.of(assessment).orElseThrow());
    StringBuilder all = new StringBuilder();
    study.packages().each(v -> all.append(v).append('\n'));
    return all.toString();
  }
}
