package org.drysill.options.packs;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.drysill.Drysill;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.options.OptionsBasis;
import org.drysill.options.StudiedEntries;
import org.drysill.options.draws.Draws;
import org.drysill.options.money.MoneyStudy;
import org.drysill.options.packs.hours.YearOutcome;
import org.junit.jupiter.api.Test;

/** Packages hour by hour in samples: the quick way against the plain one. */
class HourlySamplesTest {
  private static final OptionsBasis BASIS = OptionsFixtures.basis();
  private static final int SAMPLES = 6;

  private static PackageStudy study(Assessment assessment) {
    return new PackageStudy(
        assessment,
        BASIS,
        StudiedEntries.of(assessment, BASIS),
        new MoneyStudy(assessment, BASIS).airBill(),
        HomeZones.of(assessment).orElseThrow());
  }

  /** Every so many packages, that without measures among them. */
  private static List<PackValue> some(PackageStudy study, int most) {
    List<PackValue> all = new ArrayList<>();
    study.packages().each(all::add);
    List<PackValue> some = new ArrayList<>();
    for (int i = 0; i < most; i++) {
      some.add(all.get((int) ((long) i * all.size() / most)));
    }
    return some;
  }

  /** What was seen, so that a test on homes in which nothing happens is found out. */
  private static final class Seen {
    private int wet;
    private int dry;
    private int sound;
    private int atRisk;

    void take(YearOutcome outcome) {
      wet += outcome.wetMornings() > 0 ? 1 : 0;
      dry += outcome.wetMornings() == 0 ? 1 : 0;
      sound += outcome.sound() ? 1 : 0;
      atRisk += outcome.sound() ? 0 : 1;
    }
  }

  private static void same(String survey, int packages, Seen seen) {
    same(OptionsFixtures.assess(survey), packages, seen);
  }

  private static void same(Assessment assessment, int packages, Seen seen) {
    PackageStudy study = study(assessment);
    SampledPackages sampled = study.sampled(Draws.of(SAMPLES));
    HourlySamples quick = study.hours(sampled);
    PlainHours plain =
        new PlainHours(
            new HomeHours(assessment, BASIS, HomeZones.of(assessment).orElseThrow()),
            study.packages(),
            sampled,
            BASIS.tables().surfaces().mouldLimit().likely());
    List<PackValue> some = some(study, packages);
    quick.look(some);
    for (PackValue value : some) {
      HourlyPackage found = quick.of(value);
      for (int s = 0; s < SAMPLES; s++) {
        YearOutcome expected = plain.of(value, s);
        seen.take(expected);
        assertThat(new YearOutcome(found.mornings[s], found.sound[s]))
            .as("%s in sample %d", value.members(), s)
            .isEqualTo(expected);
      }
    }
  }

  @Test
  void finds_what_following_every_hour_of_every_place_finds() {
    Seen seen = new Seen();
    for (long seed = 0; seed < 6; seed++) {
      same(SmallHomes.of(seed), 8, seen);
    }
    assertThat(List.of(seen.wet, seen.dry, seen.sound, seen.atRisk)).allMatch(n -> n > 10);
  }

  @Test
  void the_same_in_the_examples() {
    for (String name : List.of("1930s-terrace", "top-floor-flat", "owners-bungalow")) {
      Seen seen = new Seen();
      same(
          Drysill.check(Path.of("example-surveys", name, "survey.yaml")).assessment().orElseThrow(),
          6,
          seen);
      assertThat(seen.wet).isGreaterThan(10);
    }
  }

  @Test
  void the_same_where_the_readings_do_not_tell_rooms_apart() {
    String unread =
        OptionsFixtures.text("small-flat").replaceAll("(?m)^ *(outdoor_)?readings: .*\\n", "");
    same(unread, 10, new Seen());
  }

  @Test
  void some_of_many_are_spread_evenly_from_end_to_end() {
    assertThat(PackageAnswer.evenly(List.of(1, 2, 3, 4, 5, 6, 7), 3)).containsExactly(1, 4, 7);
    assertThat(PackageAnswer.evenly(List.of(1, 2), 3)).containsExactly(1, 2);
  }
}
