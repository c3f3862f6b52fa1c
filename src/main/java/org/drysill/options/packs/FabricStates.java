package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drysill.assess.Assessment;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorClimate;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.model.ZonedHome.PaneOfWindow;
import org.drysill.assess.surfaces.LimitsOfRooms;
import org.drysill.assess.surfaces.PlaceKind;
import org.drysill.assess.surfaces.RoomLimits;
import org.drysill.assess.surfaces.months.MonthAir;
import org.drysill.options.effect.SurfacesTogether;
import org.drysill.options.site.Candidate;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.surface.TemperatureFactor;
import org.drysill.reference.surfaces.SurfaceTables;

/**
 * The states that measures can put rooms and panes into, each assessed once however many packages
 * have it.
 */
final class FabricStates {
  private final Assessment assessment;
  private final HomeZones zones;
  private final List<Member> members;
  private final LimitsOfRooms limits;
  private final SurfacesTogether surfaces;
  private final List<RoomFacts> rooms;
  private final List<Map<Long, Integer>> known = new ArrayList<>();
  private final List<List<RoomState>> states = new ArrayList<>();
  private final Map<Long, Integer> knownGlass = new LinkedHashMap<>();
  private final List<double[][]> glass = new ArrayList<>();
  private final List<List<PaneState>> panes = new ArrayList<>();

  /**
   * A pane that takes water.
   *
   * @param factor its temperature factor [1]
   * @param setpoint indoor temperature before it while it is heated [°C]
   */
  record PaneState(double factor, double setpoint) {}

  /**
   * For a home.
   *
   * @param members those of the fabric side, in the order of their bits
   */
  FabricStates(Assessment assessment, HomeZones zones, List<Member> members, SurfaceTables tables) {
    this.assessment = assessment;
    this.zones = zones;
    this.members = List.copyOf(members);
    this.limits = new LimitsOfRooms(assessment.home(), assessment.vapour(), tables);
    this.surfaces = new SurfacesTogether(assessment);
    this.rooms =
        assessment.home().rooms().stream().filter(r -> !limits.of(r).places().isEmpty()).toList();
    rooms.forEach(
        r -> {
          known.add(new LinkedHashMap<>());
          states.add(new ArrayList<>());
        });
  }

  /** A side of these members; bits as in the list. */
  FabricSide side(long chosen) {
    List<Integer> each = new ArrayList<>();
    for (int r = 0; r < rooms.size(); r++) {
      each.add(state(r, chosen & touching(r)));
    }
    Bill bill = Bill.NONE;
    boolean safe = true;
    boolean stopGap = false;
    for (Member member : in(chosen)) {
      bill = bill.and(member.bill());
      safe &= member.entry().admissible();
      stopGap |= member.entry().isStopGap();
    }
    return new FabricSide(chosen, bill, panes(chosen), each, safe, Long.bitCount(chosen), stopGap);
  }

  /** The states of each room with cold places. */
  List<List<RoomState>> states() {
    return states;
  }

  /** What each pane bears over the air outdoors, by month [kg/m³], in each state of the panes. */
  List<double[][]> glass() {
    return glass;
  }

  /** The panes in each of their states. */
  List<List<PaneState>> panes() {
    return panes;
  }

  private List<Member> in(long chosen) {
    List<Member> in = new ArrayList<>();
    for (int i = 0; i < members.size(); i++) {
      if ((chosen & (1L << i)) != 0) {
        in.add(members.get(i));
      }
    }
    return in;
  }

  private long touching(int room) {
    long bits = 0;
    for (int i = 0; i < members.size(); i++) {
      if (members.get(i).candidate().rooms().contains(rooms.get(room))) {
        bits |= 1L << i;
      }
    }
    return bits;
  }

  private int state(int room, long chosen) {
    return known.get(room).computeIfAbsent(chosen, bits -> assess(room, bits));
  }

  private int assess(int room, long chosen) {
    RoomFacts facts = rooms.get(room);
    RoomFacts changed = changed(chosen, facts);
    states.get(room).add(RoomState.of(zones.zoneOf(facts.id()), changed, limits.of(changed)));
    return states.get(room).size() - 1;
  }

  private RoomFacts changed(long chosen, RoomFacts room) {
    return home(chosen).rooms().stream()
        .filter(r -> r.id().equals(room.id()))
        .findFirst()
        .orElseThrow();
  }

  private Home home(long chosen) {
    List<Candidate> candidates = in(chosen).stream().map(Member::candidate).toList();
    return surfaces.with(candidates);
  }

  private int panes(long chosen) {
    long bits = 0;
    for (int i = 0; i < members.size(); i++) {
      boolean touches =
          members.get(i).measure().warmth().isPresent()
              || !members.get(i).candidate().scope().windows().isEmpty();
      bits |= touches ? chosen & (1L << i) : 0;
    }
    return knownGlass.computeIfAbsent(bits, this::saturations);
  }

  private int saturations(long chosen) {
    double[][] found = new double[VapourModel.MONTHS][zones.home().panes().size()];
    List<PaneState> states = new ArrayList<>();
    Home home = zones.home().panes().isEmpty() ? assessment.home() : home(chosen);
    for (int p = 0; p < zones.home().panes().size(); p++) {
      PaneOfWindow pane = zones.home().panes().get(p);
      RoomFacts room = room(home, zones.home().zones().get(pane.zone()).room());
      double factor = factor(limits.of(room), pane.window());
      states.add(new PaneState(factor, room.setpoint().likely()));
      for (int m = 0; m < VapourModel.MONTHS; m++) {
        found[m][p] = overOutdoors(home.climate().months().get(m), room, factor);
      }
    }
    glass.add(found);
    panes.add(states);
    return glass.size() - 1;
  }

  private static RoomFacts room(Home home, String id) {
    return home.rooms().stream().filter(r -> r.id().equals(id)).findFirst().orElseThrow();
  }

  /** A pane whose factor is no longer known takes nothing. */
  private static double factor(RoomLimits limits, String window) {
    return limits.places().stream()
        .filter(p -> p.kind() == PlaceKind.PANE_CENTRE && p.item().equals(window))
        .mapToDouble(p -> p.factor().likely())
        .findFirst()
        .orElse(1);
  }

  private double overOutdoors(OutdoorClimate.Month month, RoomFacts room, double factor) {
    double surface =
        TemperatureFactor.surfaceCelsius(factor, room.setpoint().likely(), month.temperature());
    double over =
        Iso13788Vapour.saturationPressurePa(surface) - MonthAir.outdoorVapour(month).likely();
    return MoistAir.vapourContentKgM3(zones.home().celsius(), Math.max(0, over));
  }
}
