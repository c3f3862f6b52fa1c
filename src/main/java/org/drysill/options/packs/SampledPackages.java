package org.drysill.options.packs;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.options.OptionsBasis;
import org.drysill.options.draws.Doubt;
import org.drysill.options.draws.Draws;
import org.drysill.options.money.MoneyStudy;
import org.drysill.options.packs.PackValue.Bits;
import org.drysill.options.packs.SampledMeasure.Gone;
import org.drysill.physics.flow.CombinedFlow;

/**
 * Packages in some hundred samples of all that is not known. Every package sees the same samples;
 * samples are worked on by several threads and nothing is added up across them, so that the result
 * does not depend on how many threads there are.
 */
final class SampledPackages {
  /** No wall is asked to bear more than this multiple of the vapour. */
  private static final double AMPLE = 10;

  private final Packages packages;
  private final Candidates candidates;
  private final ProvidedAir provided;
  private final Optional<Double> asked;
  private final WetRooms wetRooms;
  private final int zones;
  private final SampledAir air;
  private final SampledSurfaces surfaces;
  private final SampledMeasures measures;
  private final List<VapourModel> models;
  private final double[] today;
  private final int samples;
  private final Map<Bits, SampledPackage> known = new HashMap<>();

  SampledPackages(
      Assessment assessment,
      OptionsBasis basis,
      HomeZones zones,
      Packages packages,
      Candidates candidates,
      VapourChanges changes,
      Draws draws) {
    this.samples = draws.samples();
    this.packages = packages;
    this.candidates = candidates;
    this.zones = zones.size();
    this.provided = assessment.ventilation().provided();
    this.asked = assessment.ventilation().wholeHome().required().map(Figure::likely);
    this.wetRooms = WetRooms.of(assessment);
    this.air = new SampledAir(assessment, draws);
    this.surfaces =
        new SampledSurfaces(assessment, zones, basis.tables().defaults(), draws, air.states());
    this.measures =
        new SampledMeasures(assessment, new MoneyStudy(assessment, basis), changes, draws);
    // Each measure takes its deviates now, in a fixed order, whichever packages are looked at.
    candidates.each().forEach(measures::of);
    double[][] glass = packages.glass(new Bits(0, 0));
    this.models =
        IntStream.range(0, samples)
            .parallel()
            .mapToObj(s -> new VapourModel(air.zones(s), glass))
            .toList();
    this.today =
        IntStream.range(0, samples)
            .mapToDouble(s -> outdoorAir(List.of(), new VapourChange(zones.size()), s))
            .toArray();
  }

  /** How many samples. */
  int samples() {
    return samples;
  }

  /** How many packages were looked at so far. */
  int count() {
    return known.size();
  }

  /** What is not known, in a fixed order. */
  List<Doubt> doubts() {
    return Stream.of(air.doubts(), surfaces.doubts(), measures.doubts())
        .flatMap(List::stream)
        .toList();
  }

  /** A package in all samples. */
  SampledPackage of(PackValue value) {
    return known.computeIfAbsent(value.members(), bits -> sampled(value));
  }

  /** The measures of a package in all samples. */
  List<SampledMeasure> measures(PackValue value) {
    return candidates.in(value).stream().map(measures::of).toList();
  }

  /** The vapour of the home in a sample. */
  VapourModel model(int sample) {
    return models.get(sample);
  }

  /** What rooms hold and what their surfaces bear. */
  SampledSurfaces surfaces() {
    return surfaces;
  }

  private SampledPackage sampled(PackValue value) {
    List<SampledMeasure> members = measures(value);
    List<RoomState> rooms = packages.rooms(value.members());
    List<SampledLimits> limits = rooms.stream().map(surfaces::limits).toList();
    double[][] glass = packages.glass(value.members());
    SampledPackage result = new SampledPackage(samples);
    IntStream.range(0, samples)
        .parallel()
        .forEach(
            s -> {
              VapourChange change = change(members, s);
              flows(result, members, change, s);
              judge(result, rooms, limits, models.get(s).ratios(change, glass), s);
            });
    return result;
  }

  /** What measures do to air and water in a sample. */
  VapourChange change(List<SampledMeasure> members, int s) {
    VapourChange all = new VapourChange(zones);
    for (SampledMeasure one : members) {
      all.bring(one.member.change(), one.flow[s], one.water[s]);
      for (Gone gone : one.gone) {
        all.lose(gone.change(), air.fan(gone.fan(), s));
      }
    }
    return all;
  }

  /** Air and money. */
  private void flows(
      SampledPackage result, List<SampledMeasure> members, VapourChange change, int s) {
    double with = outdoorAir(members, change, s);
    double annual = (with - today[s]) * measures.air(s);
    for (SampledMeasure member : members) {
      annual += member.annual[s];
    }
    double lacksExtract =
        wetRooms.lack(
            members.stream().map(m -> m.member).toList(),
            (member, range) -> measures.of(member).of(range, s));
    result.air[s] = with;
    result.annual[s] = annual;
    result.lacks[s] = asked.map(a -> Math.max(0, a - with)).orElse(0.0) + lacksExtract;
  }

  /** By the flows of the chapter on ventilation, each by what it is more in the sample. */
  private double outdoorAir(List<SampledMeasure> members, VapourChange change, int s) {
    double in = provided.supply().likely();
    double out = provided.extract().likely();
    for (FanFlow fan : provided.fans()) {
      in += fan.supply().likely() * (air.fan(fan, s) - 1);
      out += fan.extract().likely() * (air.fan(fan, s) - 1);
    }
    for (SampledMeasure member : members) {
      for (Gone gone : member.gone) {
        in -= gone.fan().supply().likely() * air.fan(gone.fan(), s);
        out -= gone.fan().extract().likely() * air.fan(gone.fan(), s);
      }
    }
    in = Math.max(0, in);
    out = Math.max(0, out);
    double openings = provided.infiltration().likely() * air.leaks(s);
    for (int i = 0; i < zones; i++) {
      in += change.supply[i];
      out += change.extract[i];
      openings += change.openings[i];
    }
    return CombinedFlow.totalM3S(in, out, openings);
  }

  private void judge(
      SampledPackage result,
      List<RoomState> rooms,
      List<SampledLimits> limits,
      double[][] ratios,
      int s) {
    double walls = AMPLE;
    double panes = AMPLE;
    for (int r = 0; r < rooms.size(); r++) {
      double level = surfaces.level(rooms.get(r))[s];
      for (int m = 0; m < ratios.length; m++) {
        double multiple = level * ratios[m][rooms.get(r).zone()];
        walls = Math.min(walls, RoomState.reserve(limits.get(r).mould[s][m], multiple));
        panes = Math.min(panes, RoomState.reserve(limits.get(r).wet[s][m], multiple));
      }
    }
    result.walls[s] = walls;
    result.panes[s] = panes;
  }
}
