package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.options.money.AirBill;
import org.drysill.physics.flow.CombinedFlow;

/**
 * The air sides of packages. What the home lacks and what its air costs goes by the flows of the
 * chapter on ventilation, as for single measures, so that a package of one has the same figures.
 *
 * <pre>annual = Σ annual(i) + (ΔQ − Σ ΔQ(i)) · price,  ΔQ = C(S', E', I') − C(S, E, I)</pre>
 */
final class AirSides {
  private final List<Member> members;
  private final HomeZones zones;
  private final AirBill price;
  private final double supply;
  private final double extract;
  private final double leaks;
  private final Optional<Double> asked;
  private final WetRooms wetRooms;

  AirSides(Assessment assessment, HomeZones zones, List<Member> members, AirBill price) {
    this.members = List.copyOf(members);
    this.zones = zones;
    this.price = price;
    ProvidedAir air = assessment.ventilation().provided();
    this.supply = air.supply().likely();
    this.extract = air.extract().likely();
    this.leaks = air.infiltration().likely();
    this.asked = assessment.ventilation().wholeHome().required().map(Figure::likely);
    this.wetRooms = WetRooms.of(assessment);
  }

  /** The side of these members. */
  AirSide of(long chosen) {
    VapourChange change = new VapourChange(zones.size());
    Bill bill = Bill.NONE;
    boolean safe = true;
    boolean stopGap = false;
    double apart = 0;
    for (Member member : in(chosen)) {
      change = change.and(member.change());
      bill = bill.and(member.bill());
      apart += member.addedAir();
      safe &= member.entry().admissible();
      stopGap |= member.entry().isStopGap();
    }
    double air = outdoorAir(in(chosen));
    double added = air - outdoorAir(List.of());
    return new AirSide(
        chosen,
        change,
        // By itself each was charged for its own air; quadrature brings less than the sum.
        Long.bitCount(chosen) > 1 ? bill.warming(added - apart, price) : bill,
        asked.map(a -> Math.max(0, a - air)).orElse(0.0) + wetRooms.lack(in(chosen)),
        asked.filter(a -> a > 0).map(a -> air / a).orElse(Double.POSITIVE_INFINITY),
        safe,
        Long.bitCount(chosen),
        stopGap);
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

  private double outdoorAir(List<Member> with) {
    double in = supply;
    double out = extract;
    double openings = leaks;
    double blown = 0;
    double drawn = 0;
    for (Member member : with) {
      for (int i = 0; i < zones.size(); i++) {
        blown += member.change().supply[i];
        drawn += member.change().extract[i];
        openings += member.change().openings[i];
      }
      for (FanFlow fan : member.entry().costed().studied().replaced()) {
        in -= fan.supply().likely();
        out -= fan.extract().likely();
      }
    }
    return CombinedFlow.totalM3S(Math.max(0, in) + blown, Math.max(0, out) + drawn, openings);
  }
}
