package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.drysill.OptionsFixtures;
import org.drysill.assess.Assessment;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorHours;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.model.ZonedHome;
import org.drysill.assess.surfaces.IndoorVapour;
import org.drysill.assess.surfaces.LimitsOfRooms;
import org.drysill.assess.surfaces.PlaceKind;
import org.drysill.assess.surfaces.RoomLimits.PlaceLimits;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.VapourOfRooms;
import org.drysill.options.OptionsBasis;
import org.drysill.options.StudiedEntries;
import org.drysill.options.effect.SurfacesTogether;
import org.drysill.options.money.MoneyStudy;
import org.drysill.options.rank.Entry;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.surface.HourlyAir;
import org.drysill.physics.weather.HourlyYear;
import org.drysill.physics.zones.Pane;
import org.drysill.physics.zones.ZoneSteps;

/**
 * All packages of a home evaluated hour by hour, each by itself: the zones stepped through the year
 * with their panes, every surface followed through its hours, a month at risk where the mean of its
 * hours is. Nothing is shared with the engine but what a measure does and costs.
 */
public final class HourByHour {
  private static final OptionsBasis BASIS = OptionsFixtures.basis();
  private static final int MEASURES = 5;

  private final Assessment assessment;
  private final PackageStudy study;
  private final HomeZones zones;
  private final LimitsOfRooms limits;
  private final OutdoorHours hours;
  private final double[] slowCelsius;
  private final double[] slowPa;
  private final double[][] today;

  /** What the two find in a home. */
  public record Compared(int packages, boolean same, String loss) {}

  private HourByHour(long seed) {
    this.assessment = OptionsFixtures.assess(SmallHomes.of(seed));
    List<Entry> entries = StudiedEntries.of(assessment, BASIS);
    int each = Math.max(1, entries.size() / MEASURES);
    List<Entry> some = new ArrayList<>();
    for (int i = 0; i < entries.size() && some.size() < MEASURES; i += each) {
      some.add(entries.get(i));
    }
    this.zones = HomeZones.of(assessment).orElseThrow();
    this.study =
        new PackageStudy(
            assessment, BASIS, some, new MoneyStudy(assessment, BASIS).airBill(), zones);
    this.limits = new LimitsOfRooms(assessment.home(), assessment.vapour(), BASIS.tables());
    this.hours = OutdoorHours.of(assessment.home().climate(), BASIS.tables().hours().weather());
    int memory = (int) Math.round(BASIS.tables().hours().memory().likely());
    this.slowCelsius = HourlyAir.runningMean(each(hours.year()::celsius), memory);
    this.slowPa = HourlyAir.runningMean(each(hours.year()::vapourPa), memory);
    this.today = excess(new VapourChange(zones.size()), assessment.home());
  }

  /** The best package of the engine, by month, beside that found hour by hour. */
  public static Compared home(long seed) {
    HourByHour naive = new HourByHour(seed);
    List<PackValue> found = new ArrayList<>();
    naive.study.packages().each(v -> found.add(naive.evaluate(v)));
    PackOrder order = new PackOrder(found.get(0).lacks(), found.get(0).mould(), 0.1);
    PackValue brute = found.stream().min(order.comparator()).orElseThrow();
    PackValue engine =
        new Best(naive.study.packages(), naive.study.order()).of(v -> true).orElseThrow();
    PackValue judged =
        found.stream().filter(v -> v.members().equals(engine.members())).findFirst().orElseThrow();
    boolean same = judged.equals(brute);
    return new Compared(
        found.size(),
        same,
        String.format(
            Locale.ROOT,
            "home %d: %d months of mould left instead of %d, %.0f a year instead of %.0f",
            seed,
            judged.mould(),
            brute.mould(),
            judged.bill().annual(),
            brute.bill().annual()));
  }

  private interface Hourly {
    double at(int hour);
  }

  private static double[] each(Hourly of) {
    double[] values = new double[HourlyYear.HOURS];
    Arrays.setAll(values, of::at);
    return values;
  }

  private PackValue evaluate(PackValue value) {
    List<Member> members = study.candidates().in(value);
    VapourChange change = new VapourChange(zones.size());
    for (Member member : members) {
      change = change.and(member.change());
    }
    Home home =
        new SurfacesTogether(assessment)
            .with(members.stream().filter(m -> !m.isOfTheAir()).map(Member::candidate).toList());
    double[][] then = excess(change, home);
    int mould = 0;
    int wet = 0;
    for (RoomFacts room : home.rooms()) {
      mould += months(room, then, SurfaceClass.OPAQUE);
      wet += months(room, then, SurfaceClass.GLASS);
    }
    return new PackValue(
        value.members(),
        value.size(),
        value.safe(),
        value.stopGap(),
        value.lacks(),
        mould,
        wet,
        value.airReserve(),
        value.reserve(),
        value.bill());
  }

  /** Vapour over that outdoors in each zone by hour, with the last month of the year before. */
  private double[][] excess(VapourChange change, Home home) {
    ZonedHome zoned = zones.home();
    List<Pane> panes =
        zoned.panes().stream().map(p -> new Pane(p.zone(), p.transferM3S())).toList();
    double[] water = new double[zones.size()];
    double[] stores = new double[zones.size()];
    for (int i = 0; i < water.length; i++) {
      water[i] = zoned.zones().get(i).waterKgS() * change.waterLeft[i];
      stores[i] = BASIS.defaults().store().likely() * zones.rooms().get(i).volume().likely();
    }
    ZoneSteps steps =
        new ZoneSteps(
            List.of(new VapourModel(zoned, new double[12][panes.size()]).flows(change)),
            stores,
            panes,
            3600);
    double[] factors = new double[panes.size()];
    double[] setpoints = new double[panes.size()];
    for (int p = 0; p < factors.length; p++) {
      ZonedHome.PaneOfWindow pane = zoned.panes().get(p);
      String id = zoned.zones().get(pane.zone()).room();
      RoomFacts room =
          home.rooms().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
      setpoints[p] = room.setpoint().likely();
      factors[p] =
          limits.of(room).places().stream()
              .filter(l -> l.kind() == PlaceKind.PANE_CENTRE && l.item().equals(pane.window()))
              .findFirst()
              .orElseThrow()
              .factor()
              .likely();
    }
    double perPascal = MoistAir.vapourContentKgM3(zoned.celsius(), 1);
    double[] bears = new double[panes.size()];
    double[][] contents = new double[zones.size()][HourlyYear.HOURS];
    for (int h = -30 * 24; h < HourlyYear.HOURS; h++) {
      int hour = Math.floorMod(h, HourlyYear.HOURS);
      for (int p = 0; p < bears.length; p++) {
        double surface = surface(factors[p], setpoints[p], hour, hours.year().celsius(hour));
        bears[p] =
            perPascal * Math.max(0, Iso13788Vapour.saturationPressurePa(surface) - slowPa[hour]);
      }
      steps.step(0, water, 0, bears);
      for (int i = 0; i < contents.length; i++) {
        contents[i][hour] = steps.content(i);
      }
    }
    return contents;
  }

  private double surface(double factor, double setpoint, int hour, double outdoors) {
    return outdoors + factor * (indoor(setpoint, hour) - outdoors);
  }

  private double indoor(double setpoint, int hour) {
    return Math.max(
        setpoint, slowCelsius[hour] + BASIS.tables().defaults().freeRunningRise().likely());
  }

  /** Walls by the mean of each month's hours, panes by whether an hour of the month is wet. */
  private int months(RoomFacts room, double[][] then, SurfaceClass surface) {
    IndoorVapour vapour =
        new VapourOfRooms(assessment.vapour(), BASIS.tables().defaults()).of(room);
    int zone = zones.zoneOf(room.id());
    double setpoint = room.setpoint().likely();
    boolean glass = surface == SurfaceClass.GLASS;
    double limit = BASIS.tables().surfaces().mouldLimit().likely();
    Map<String, Integer> worst = new TreeMap<>();
    for (PlaceLimits place : limits.of(room).places()) {
      if (place.surface() == surface) {
        double factor = place.factor().likely();
        double[] pa = new double[12];
        double[] celsius = new double[12];
        boolean[] wet = new boolean[12];
        for (int h = 0; h < HourlyYear.HOURS; h++) {
          int m = HourlyYear.month(h);
          double most = Iso13788Vapour.saturationPressurePa(indoor(setpoint, h));
          double excess = vapour.excessAt(slowCelsius[h]).likely() * then[zone][h] / today[zone][h];
          double now = Math.min(most, slowPa[h] + excess);
          double at =
              surface(factor, setpoint, h, glass ? hours.year().celsius(h) : slowCelsius[h]);
          int count = HourlyYear.firstHour(m + 1) - HourlyYear.firstHour(m);
          pa[m] += now / count;
          celsius[m] += at / count;
          wet[m] |= now >= Iso13788Vapour.saturationPressurePa(at);
        }
        int months = 0;
        for (int m = 0; m < 12; m++) {
          boolean damp = pa[m] >= limit * Iso13788Vapour.saturationPressurePa(celsius[m]);
          months += (glass ? wet[m] : damp) ? 1 : 0;
        }
        worst.merge(place.item(), months, Math::max);
      }
    }
    return worst.values().stream().mapToInt(i -> i).sum();
  }
}
