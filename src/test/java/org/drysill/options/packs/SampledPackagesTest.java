package org.drysill.options.packs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import java.util.concurrent.ForkJoinPool;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.options.OptionsBasis;
import org.drysill.options.PackageSpread;
import org.drysill.options.PackagesResult;
import org.drysill.options.StudiedEntries;
import org.drysill.options.Sureness;
import org.drysill.options.Sureness.InputKind;
import org.drysill.options.Sureness.ResultKind;
import org.drysill.options.draws.Draws;
import org.drysill.options.money.MoneyStudy;
import org.drysill.options.packs.PackValue.Bits;
import org.junit.jupiter.api.Test;

/** Packages in samples of what is not known. */
class SampledPackagesTest {
  private static final OptionsBasis BASIS = OptionsFixtures.basis();
  private static final String FLAT = OptionsFixtures.text("small-flat");

  private static PackageStudy study(String text) {
    Assessment assessment = OptionsFixtures.assess(text);
    return new PackageStudy(
        assessment,
        BASIS,
        StudiedEntries.of(assessment, BASIS),
        new MoneyStudy(assessment, BASIS).airBill(),
        HomeZones.of(assessment).orElseThrow());
  }

  private static Draws likely() {
    return new Draws(1, row -> new double[1]);
  }

  private static void theLikelySampleIsTheLikelyValue(String text) {
    PackageStudy study = study(text);
    SampledPackages sampled = study.sampled(likely());
    study
        .packages()
        .each(
            v -> {
              SampledPackage one = sampled.of(v);
              assertThat(one.annual[0]).isCloseTo(v.bill().annual(), within(1e-6));
              assertThat(one.lacks[0]).isCloseTo(v.lacks(), within(1e-12));
              assertThat(one.isSound(0)).isEqualTo(v.mould() == 0);
              assertThat(one.walls[0]).isCloseTo(Math.min(10, v.reserve()), within(1e-5));
              assertThat(one.panes[0] > 1).isEqualTo(v.wet() == 0);
            });
  }

  @Test
  void with_all_at_its_likely_value_a_package_is_what_it_likely_is() {
    theLikelySampleIsTheLikelyValue(SmallHomes.of(3));
    theLikelySampleIsTheLikelyValue(SmallHomes.of(8));
  }

  @Test
  void the_same_where_the_readings_do_not_tell_rooms_apart() {
    String unread = FLAT.replaceAll("(?m)^ *(outdoor_)?readings: .*\\n", "");
    assertThat(OptionsFixtures.assess(unread).model().zones()).isEmpty();
    theLikelySampleIsTheLikelyValue(unread);
  }

  @Test
  void what_moves_the_result_is_told_with_what_it_rests_on() {
    Sureness sure = OptionsFixtures.study(FLAT).packages().orElseThrow().sureness().orElseThrow();
    assertThat(sure.samples()).isEqualTo(200);
    assertThat(sure.results())
        .extracting(Sureness.Result::kind)
        .containsExactly(ResultKind.values());
    for (Sureness.Input input : sure.inputs()) {
      assertThat(input.shares()).hasSameSizeAs(sure.results());
      assertThat(input.restsOn()).isNotBlank();
      assertThat(input.shares()).allMatch(s -> s.share() >= 0 && s.share() <= 1 && s.error() < 0.1);
    }
    assertThat(sure.inputs()).extracting(Sureness.Input::id).doesNotHaveDuplicates();
    Sureness.Input leaks = input(sure, InputKind.LEAKS);
    Sureness.Share onAir = leaks.share(ResultKind.AIR).orElseThrow();
    assertThat(onAir.share()).isGreaterThan(0.2);
    assertThat(onAir.high()).isGreaterThan(onAir.low());
    Sureness.Share onCost = input(sure, InputKind.PRICE).share(ResultKind.COST).orElseThrow();
    assertThat(onCost.high()).isGreaterThan(onCost.low());
  }

  private static Sureness.Input input(Sureness sure, InputKind kind) {
    return sure.inputs().stream().filter(i -> i.kind() == kind).findFirst().orElseThrow();
  }

  @Test
  void chances_hang_together() {
    PackagesResult result = OptionsFixtures.study(FLAT).packages().orElseThrow();
    double first = 0;
    for (var one : result.best()) {
      PackageSpread spread = one.spread();
      assertThat(spread.enough().share())
          .isLessThanOrEqualTo(Math.min(spread.air().share(), spread.walls().share()));
      assertThat(spread.dryGlass().share()).isLessThanOrEqualTo(spread.enough().share());
      assertThat(spread.first().share()).isLessThanOrEqualTo(spread.enough().share());
      assertThat(spread.hourly().enough().share())
          .isLessThanOrEqualTo(Math.min(spread.air().share(), spread.hourly().walls().share()));
      assertThat(spread.hourly().wetMornings().likely()).isEqualTo(one.year().wetMornings());
      assertThat(spread.annualCost().low()).isLessThanOrEqualTo(one.annualCost().likely());
      assertThat(spread.annualCost().high()).isGreaterThanOrEqualTo(one.annualCost().likely());
      first += spread.first().share();
    }
    assertThat(first).isLessThanOrEqualTo(1 + 1e-9);
  }

  /** More for the money never hurts, and what is dearer in every sample never ranks better. */
  @Test
  void a_dearer_measure_never_raises_a_package_with_it() {
    String dearer = FLAT + "options: {prices: {continuous extract fan: 4000}}\n";
    List<String> cheap = best(FLAT);
    List<String> dear = best(dearer);
    assertThat(cheap).anyMatch(t -> t.contains("Continuous extract"));
    assertThat(dear.stream().filter(t -> t.contains("Continuous extract")).count())
        .isLessThanOrEqualTo(cheap.stream().filter(t -> t.contains("Continuous extract")).count());
  }

  private static List<String> best(String text) {
    List<String> titles = new ArrayList<>();
    OptionsFixtures.study(text)
        .packages()
        .orElseThrow()
        .best()
        .forEach(p -> titles.add(String.join("; ", p.titles())));
    return titles;
  }

  @Test
  void neither_threads_nor_place_change_the_last_digit() throws Exception {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    String one = new ForkJoinPool(1).submit(SampledPackagesTest::told).get();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
      assertThat(new ForkJoinPool(2).submit(SampledPackagesTest::told).get()).isEqualTo(one);
      assertThat(new ForkJoinPool(4).submit(SampledPackagesTest::told).get()).isEqualTo(one);
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  private static String told() {
    PackagesResult result = OptionsFixtures.studyAfresh(FLAT).packages().orElseThrow();
    StringBuilder told = new StringBuilder();
    result.best().forEach(p -> told.append(p.titles()).append(p.spread()).append(p.reasons()));
    return told.append(result.sureness())
        .append(result.front())
        .append(result.budgets())
        .toString();
  }

  @Test
  void draws_of_a_name_are_the_same_whenever_asked() {
    Draws draws = Draws.of(50);
    double[] one = draws.of("one");
    assertThat(draws.of("two")).isNotEqualTo(one);
    assertThat(draws.of("one")).isEqualTo(one);
  }

  @Test
  void nothing_at_all_is_a_package_too() {
    PackageStudy study = study(FLAT);
    SampledPackages sampled = study.sampled(Draws.of(40));
    SampledPackage today = sampled.of(study.packages().of(new Bits(0, 0)));
    assertThat(today.annual).containsOnly(0);
    assertThat(today.enough().share()).isZero();
    assertThat(new Spreads(sampled, study.hourly(sampled), List.of(), Optional.empty()).sureness(1))
        .isEmpty();
  }
}
