package org.drysill.assess.change;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.change.air.AirChange;
import org.drysill.assess.change.air.AirChanges;
import org.drysill.assess.change.air.OutdoorLikeness;
import org.drysill.assess.change.device.Fans;
import org.drysill.assess.change.device.Recoveries;
import org.drysill.assess.change.place.ColdSpotChange;
import org.drysill.assess.change.place.ColdSpots;
import org.drysill.assess.change.place.Mould;
import org.drysill.assess.change.place.MouldChange;
import org.drysill.assess.change.visit.Between;
import org.drysill.assess.change.visit.SameHome;
import org.drysill.assess.change.visit.VerdictChange;
import org.drysill.assess.change.visit.VisitFacts;
import org.drysill.reference.readings.ReadingRules;

/** Compares two visits to the same home on equal terms. */
public final class ChangeAssessor {
  private ChangeAssessor() {}

  /**
   * Compares.
   *
   * @param before the earlier visit
   * @param after the later visit
   * @param rules when a change counts as shown
   */
  public static ChangeResult assess(VisitFacts before, VisitFacts after, ReadingRules rules) {
    SameHome sameHome = SameHome.of(before.home(), after.home());
    AirChanges airs = new AirChanges(before, after, rules);
    Optional<AirChange> home = airs.home();
    OutdoorLikeness outdoor = airs.outdoor();
    Mould mould = new Mould(before.home(), after.home(), rules.change());
    Optional<MouldChange> area = mould.all();
    List<ColdSpotChange> places =
        new ColdSpots(before, after, airs.rooms(), mould, rules.change()).all();
    ChangeFindings findings = new ChangeFindings(rules.change());
    return new ChangeResult(
        before.date(),
        after.date(),
        sameHome,
        outdoor,
        airs.rooms(),
        home,
        places,
        area,
        new Fans(rules.accuracy()).compare(before.home(), after.home()),
        Recoveries.compare(before.recovery(), after.recovery()),
        VerdictChange.of(before, after),
        Between.events(before, after),
        Stream.concat(airs.notCompared().stream(), sameHome.unmatched().stream()).toList(),
        List.of(
            findings.sameHome(sameHome),
            findings.likeness(outdoor),
            findings.excess(home),
            findings.mould(area),
            findings.lasting(home)),
        new ChangeAssumptions(rules.change()).of(before, places, area),
        ChangeFindings.caution(home));
  }
}
