package org.drysill.options.packs;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.drysill.assess.Assessment;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorClimate;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.model.ZonedHome;
import org.drysill.assess.surfaces.IndoorVapour;
import org.drysill.assess.surfaces.LimitsOfRooms;
import org.drysill.assess.surfaces.PlaceKind;
import org.drysill.assess.surfaces.RoomLimits.PlaceLimits;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.VapourOfRooms;
import org.drysill.assess.surfaces.months.Criterion;
import org.drysill.assess.surfaces.months.MonthAir;
import org.drysill.assess.surfaces.months.RiskMonths;
import org.drysill.options.OptionsBasis;
import org.drysill.options.effect.SurfacesTogether;
import org.drysill.options.money.AirBill;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.zones.Pane;
import org.drysill.physics.zones.SteadyZones;

/**
 * A package evaluated by itself: the home changed by its measures, the zones solved in each month
 * with their panes, every surface judged month by month. Nothing is shared between packages,
 * nothing is turned round.
 */
record OneByOne(
    Assessment assessment,
    OptionsBasis basis,
    HomeZones zones,
    AirBill price,
    LimitsOfRooms limits) {
  static OneByOne of(Assessment assessment, OptionsBasis basis, HomeZones zones, AirBill price) {
    return new OneByOne(
        assessment,
        basis,
        zones,
        price,
        new LimitsOfRooms(assessment.home(), assessment.vapour(), basis.tables()));
  }

  /** What comes of it: air lacking, months of mould, months of wet glass, yearly and first cost. */
  record Outcome(double lacks, int mould, int wet, double annual, double first) {}

  Outcome of(List<Member> members) {
    VapourChange change = new VapourChange(zones.size());
    Bill bill = Bill.NONE;
    double apart = 0;
    for (Member member : members) {
      change = change.and(member.change());
      bill = bill.and(member.bill());
      apart += member.addedAir();
    }
    List<Candidate> fabric =
        members.stream().filter(m -> !m.isOfTheAir()).map(Member::candidate).toList();
    Home home = new SurfacesTogether(assessment).with(fabric);
    double[][] today = excess(new VapourChange(zones.size()), assessment.home());
    double[][] then = excess(change, home);
    int mould = 0;
    int wet = 0;
    for (RoomFacts room : home.rooms()) {
      mould += months(room, today, then, SurfaceClass.OPAQUE);
      wet += months(room, today, then, SurfaceClass.GLASS);
    }
    AirSides sides = new AirSides(assessment, zones, members, price);
    long all = (1L << members.size()) - 1;
    double lacks = sides.of(all).lacks();
    double added = added(members);
    Bill whole =
        members.stream().filter(Member::isOfTheAir).count() > 1
            ? bill.warming(added - apart, price)
            : bill;
    return new Outcome(lacks, mould, wet, whole.annual(), whole.first());
  }

  /** By quadrature, written out. */
  private double added(List<Member> members) {
    var air = assessment.ventilation().provided();
    double in = air.supply().likely();
    double out = air.extract().likely();
    double leaks = air.infiltration().likely();
    double before = Math.min(in, out) + Math.hypot(in - out, leaks);
    for (Member member : members) {
      for (var fan : member.entry().costed().studied().replaced()) {
        in -= fan.supply().likely();
        out -= fan.extract().likely();
      }
    }
    for (Member member : members) {
      for (int i = 0; i < zones.size(); i++) {
        in += member.change().supply[i];
        out += member.change().extract[i];
        leaks += member.change().openings[i];
      }
    }
    return Math.min(in, out) + Math.hypot(in - out, leaks) - before;
  }

  private double[][] excess(VapourChange change, Home home) {
    ZonedHome zoned = zones.home();
    List<Pane> panes =
        zoned.panes().stream().map(p -> new Pane(p.zone(), p.transferM3S())).toList();
    double[] water = new double[zones.size()];
    for (int i = 0; i < water.length; i++) {
      water[i] = zoned.zones().get(i).waterKgS() * change.waterLeft[i];
    }
    var flows = new VapourModel(zoned, new double[12][panes.size()]).flows(change);
    double[] factors = new double[panes.size()];
    RoomFacts[] rooms = new RoomFacts[panes.size()];
    for (int p = 0; p < factors.length; p++) {
      ZonedHome.PaneOfWindow pane = zoned.panes().get(p);
      String id = zoned.zones().get(pane.zone()).room();
      rooms[p] = home.rooms().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
      factors[p] =
          limits.of(rooms[p]).places().stream()
              .filter(l -> l.kind() == PlaceKind.PANE_CENTRE && l.item().equals(pane.window()))
              .findFirst()
              .orElseThrow()
              .factor()
              .likely();
    }
    double[][] contents = new double[12][zones.size()];
    for (int m = 0; m < 12; m++) {
      OutdoorClimate.Month month = home.climate().months().get(m);
      double[] bears = new double[panes.size()];
      for (int p = 0; p < bears.length; p++) {
        RoomFacts room = rooms[p];
        double factor = factors[p];
        double surface =
            month.temperature() + factor * (room.setpoint().likely() - month.temperature());
        double over =
            Iso13788Vapour.saturationPressurePa(surface) - MonthAir.outdoorVapour(month).likely();
        bears[p] = MoistAir.vapourContentKgM3(zoned.celsius(), Math.max(0, over));
      }
      var vapour = new SteadyZones(flows, panes).at(water, 0, bears);
      for (int i = 0; i < water.length; i++) {
        contents[m][i] = vapour.content(i);
      }
    }
    return contents;
  }

  private int months(RoomFacts room, double[][] today, double[][] then, SurfaceClass surface) {
    var defaults = basis.tables().defaults();
    IndoorVapour vapour = new VapourOfRooms(assessment.vapour(), defaults).of(room);
    int zone = zones.zoneOf(room.id());
    boolean nights = surface == SurfaceClass.GLASS;
    Map<Double, Double> ratios = new TreeMap<>();
    List<OutdoorClimate.Month> months = assessment.home().climate().months();
    for (int m = 0; m < 12; m++) {
      double at = months.get(m).temperature() - (nights ? defaults.coldNightDrop().likely() : 0);
      ratios.put(at, then[m][zone] / today[m][zone]);
    }
    Criterion criterion =
        nights ? Criterion.glass(basis.tables()) : Criterion.opaque(basis.tables());
    Map<String, Integer> worst = new TreeMap<>();
    for (PlaceLimits place : limits.of(room).places()) {
      if (place.surface() == surface) {
        int at =
            RiskMonths.of(
                    Range.exactly(place.factor().likely()),
                    room.setpoint().likely(),
                    assessment.home().climate(),
                    t -> vapour.excessAt(t).times(ratios.get(t)),
                    criterion,
                    defaults)
                .likely();
        worst.merge(place.item(), at, Math::max);
      }
    }
    return worst.values().stream().mapToInt(i -> i).sum();
  }
}
