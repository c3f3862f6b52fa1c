package org.drysill.options.packs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.year.GlassYear;
import org.drysill.assess.surfaces.year.RoomYear;
import org.drysill.assess.surfaces.year.WallYear;
import org.drysill.options.OptionsBasis;
import org.drysill.options.StudiedEntries;
import org.drysill.options.money.MoneyStudy;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.physics.zones.Pane;
import org.drysill.physics.zones.ZoneFlows;
import org.drysill.physics.zones.ZoneSteps;
import org.junit.jupiter.api.Test;

/** Packages hour by hour. */
class PackageHoursTest {
  private static final OptionsBasis BASIS = OptionsFixtures.basis();
  private static final String FLAT = OptionsFixtures.text("small-flat");

  private static PackageStudy study(Assessment assessment) {
    return new PackageStudy(
        assessment,
        BASIS,
        StudiedEntries.of(assessment, BASIS),
        new MoneyStudy(assessment, BASIS).airBill(),
        HomeZones.of(assessment).orElseThrow());
  }

  private static int mornings(ColdPlace place) {
    return place.year() instanceof GlassYear year ? (int) year.wetMornings().likely() : 0;
  }

  private static double mould(ColdPlace place) {
    return place.year() instanceof WallYear year ? year.mould().likely() : 0;
  }

  @Test
  void today_is_what_the_chapter_on_cold_surfaces_has() {
    String unread = FLAT.replaceAll("(?m)^ *(outdoor_)?readings: .*\\n", "");
    for (String text : List.of(FLAT, unread, SmallHomes.of(3), SmallHomes.of(5))) {
      Assessment assessment = OptionsFixtures.assess(text);
      List<ColdPlace> places = assessment.condensation().places();
      RoomYear today = study(assessment).hours().of(new Bits(0, 0));
      assertThat(today.wetMornings())
          .isEqualTo(places.stream().mapToInt(PackageHoursTest::mornings).max().orElse(0));
      assertThat(today.mould())
          .isCloseTo(
              places.stream().mapToDouble(PackageHoursTest::mould).max().orElse(0), within(1e-9));
    }
  }

  @Test
  void the_best_package_leaves_less_of_everything() {
    Assessment assessment = OptionsFixtures.assess(SmallHomes.of(3));
    PackageStudy study = study(assessment);
    PackageHours hours = study.hours();
    RoomYear today = hours.of(new Bits(0, 0));
    RoomYear then =
        hours.of(new Best(study.packages(), study.order()).of(v -> true).orElseThrow().members());
    assertThat(then.wetMornings()).isLessThanOrEqualTo(today.wetMornings());
    assertThat(then.wetHours()).isLessThanOrEqualTo(today.wetHours());
    assertThat(then.mould()).isLessThanOrEqualTo(today.mould());
    assertThat(then.humidHours()).isLessThan(today.humidHours());
  }

  /** What is given off leaves with the air, settles on panes or is stored. */
  @Test
  void water_is_conserved_with_the_measures_of_a_package() {
    Assessment assessment = OptionsFixtures.assess(FLAT);
    PackageStudy study = study(assessment);
    HomeZones zones = HomeZones.of(assessment).orElseThrow();
    int n = zones.size();
    List<Pane> panes =
        zones.home().panes().stream().map(p -> new Pane(p.zone(), p.transferM3S())).toList();
    VapourModel model = new VapourModel(zones.home(), study.packages().glass(new Bits(0, 0)));
    study
        .packages()
        .each(
            v -> {
              VapourChange change = study.packages().change(v.members());
              ZoneFlows flows = model.flows(change);
              double[] stores = new double[n];
              Arrays.fill(stores, 300);
              ZoneSteps steps = new ZoneSteps(List.of(flows), stores, panes, 3600);
              double[] water = model.given(change);
              double[] bears = new double[panes.size()];
              double given = 0;
              double gone = 0;
              for (int h = 0; h < 48; h++) {
                Arrays.fill(bears, 0.002 + 0.001 * (h % 24) / 24);
                steps.step(0, water, 0, bears);
                for (int i = 0; i < n; i++) {
                  given += 3600 * water[i];
                  gone += 3600 * flows.out(i) * steps.content(i);
                }
                for (int p = 0; p < panes.size(); p++) {
                  gone += 3600 * steps.settling(p);
                }
              }
              double stored = 0;
              for (int i = 0; i < n; i++) {
                stored += 300 * steps.content(i);
              }
              assertThat(gone + stored).isCloseTo(given, within(1e-9 * given));
            });
  }
}
