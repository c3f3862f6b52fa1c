package org.drysill.options.packs;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.drysill.options.MonthsAtRisk;
import org.drysill.options.packs.FabricStates.PaneState;
import org.drysill.options.packs.PackValue.Bits;

/**
 * Every admissible package of a home, evaluated by month.
 *
 * <p>Rows are air sides, columns fabric sides. A row is the work of one thread and nothing is added
 * up across rows, so that the result does not depend on how many threads there are.
 */
final class Packages {
  private final VapourModel model;
  private final List<AirSide> air;
  private final List<FabricSide> fabric;
  private final List<List<RoomState>> states;
  private final List<double[][]> glass;
  private final List<List<PaneState>> panes;
  private final long[] barred;
  private final Needs needs;
  private final short[][] mould;
  private final short[][] wet;
  private final float[][] reserve;

  /**
   * Evaluates.
   *
   * @param model the vapour of the home
   * @param air all air sides, that without members first
   * @param fabric all fabric sides, likewise
   * @param states the states of rooms and panes that the fabric sides speak of
   * @param barred of each air side the members of fabric sides that it excludes, as bits
   * @param needs what members must have with them
   */
  Packages(
      VapourModel model,
      List<AirSide> air,
      List<FabricSide> fabric,
      FabricStates states,
      long[] barred,
      Needs needs) {
    this.model = model;
    this.air = List.copyOf(air);
    this.fabric = List.copyOf(fabric);
    this.states = states.states();
    this.glass = states.glass();
    this.panes = states.panes();
    this.barred = barred.clone();
    this.needs = needs;
    this.mould = new short[air.size()][fabric.size()];
    this.wet = new short[air.size()][fabric.size()];
    this.reserve = new float[air.size()][fabric.size()];
    IntStream.range(0, air.size()).parallel().forEach(this::row);
  }

  /** How many are admissible. */
  long count() {
    long count = 0;
    for (int a = 0; a < air.size(); a++) {
      for (FabricSide side : fabric) {
        count += isAdmissible(a, side) ? 1 : 0;
      }
    }
    return count;
  }

  /** Gives each admissible package in a fixed order, that without members first. */
  void each(Consumer<PackValue> taker) {
    for (int a = 0; a < air.size(); a++) {
      for (int f = 0; f < fabric.size(); f++) {
        if (isAdmissible(a, fabric.get(f))) {
          taker.accept(value(a, f));
        }
      }
    }
  }

  /** The package of these members; every part of an admissible package is one. */
  PackValue of(Bits members) {
    return value(rowOf(members), columnOf(members));
  }

  /**
   * Mean relative humidity of the rooms with cold places, by volume, in the coldest month [1]; not
   * a number where there are none.
   */
  double winterHumidity(Bits members, int coldest) {
    FabricSide side = fabric.get(columnOf(members));
    double[][] ratios = model.ratios(air.get(rowOf(members)).change(), glass.get(side.glass()));
    double sum = 0;
    double volume = 0;
    for (int r = 0; r < states.size(); r++) {
      RoomState state = states.get(r).get(side.rooms().get(r));
      sum += state.volume() * state.winterHumidity(ratios, coldest);
      volume += state.volume();
    }
    return sum / volume;
  }

  /** How many places a package leaves at risk in each month. */
  MonthsAtRisk atRisk(Bits members) {
    FabricSide side = fabric.get(columnOf(members));
    double[][] ratios = model.ratios(air.get(rowOf(members)).change(), glass.get(side.glass()));
    int[] opaque = new int[VapourModel.MONTHS];
    int[] panes = new int[VapourModel.MONTHS];
    for (int r = 0; r < states.size(); r++) {
      RoomState state = states.get(r).get(side.rooms().get(r));
      state.addMould(opaque, ratios);
      state.addWet(panes, ratios);
    }
    return new MonthsAtRisk(
        IntStream.of(opaque).boxed().toList(), IntStream.of(panes).boxed().toList());
  }

  /** The state of the panes of a package, by month what each bears [kg/m³]. */
  double[][] glass(Bits members) {
    return glass.get(fabric.get(columnOf(members)).glass());
  }

  /** The same panes as they are by hour. */
  List<PaneState> panes(Bits members) {
    return panes.get(fabric.get(columnOf(members)).glass());
  }

  /** What a package does to air and water. */
  VapourChange change(Bits members) {
    return air.get(rowOf(members)).change();
  }

  /** The rooms with cold places in the states of a package. */
  List<RoomState> rooms(Bits members) {
    FabricSide side = fabric.get(columnOf(members));
    return IntStream.range(0, states.size())
        .mapToObj(r -> states.get(r).get(side.rooms().get(r)))
        .toList();
  }

  private void row(int a) {
    double[][][] ratios = new double[glass.size()][][];
    Judged[][][] known = new Judged[glass.size()][][];
    for (int f = 0; f < fabric.size(); f++) {
      FabricSide side = fabric.get(f);
      int g = side.glass();
      if (ratios[g] == null) {
        ratios[g] = model.ratios(air.get(a).change(), glass.get(g));
        known[g] = new Judged[states.size()][];
      }
      float least = Float.POSITIVE_INFINITY;
      for (int r = 0; r < states.size(); r++) {
        int state = side.rooms().get(r);
        Judged found = judged(known[g], ratios[g], r, state);
        mould[a][f] += found.mould();
        wet[a][f] += found.wet();
        least = Math.min(least, found.reserve());
      }
      reserve[a][f] = least;
    }
  }

  /** A room in a state at the vapour of an air side. */
  private record Judged(short mould, short wet, float reserve) {}

  /** Each room in each of its states is judged once. */
  private Judged judged(Judged[][] known, double[][] ratios, int room, int state) {
    if (known[room] == null) {
      known[room] = new Judged[states.get(room).size()];
    }
    if (known[room][state] == null) {
      RoomState at = states.get(room).get(state);
      known[room][state] =
          new Judged((short) at.mould(ratios), (short) at.wet(ratios), (float) at.reserve(ratios));
    }
    return known[room][state];
  }

  private boolean isAdmissible(int a, FabricSide side) {
    return (barred[a] & side.members()) == 0
        && isWhole(new Bits(air.get(a).members(), side.members()));
  }

  /** True where all that its members need first is in the package. */
  boolean isWhole(Bits members) {
    return needs.areMet(members);
  }

  private int rowOf(Bits members) {
    return IntStream.range(0, air.size())
        .filter(a -> air.get(a).members() == members.air())
        .findFirst()
        .orElseThrow();
  }

  private int columnOf(Bits members) {
    return IntStream.range(0, fabric.size())
        .filter(f -> fabric.get(f).members() == members.fabric())
        .findFirst()
        .orElseThrow();
  }

  private PackValue value(int a, int f) {
    AirSide one = air.get(a);
    FabricSide other = fabric.get(f);
    return new PackValue(
        new Bits(one.members(), other.members()),
        one.size() + other.size(),
        one.safe() && other.safe(),
        one.stopGap() || other.stopGap(),
        one.lacks(),
        mould[a][f],
        wet[a][f],
        one.reserve(),
        reserve[a][f],
        one.bill().and(other.bill()));
  }
}
