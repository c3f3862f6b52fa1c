package org.drysill.options.effect;

import java.util.List;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.options.site.Candidate;
import org.drysill.reference.measures.AirEffect;
import org.drysill.reference.measures.MeasurePlace;

/**
 * The fans of today whose place a measure takes: of the kinds that its data name, in its rooms, or
 * everywhere where it serves the whole home. What a mended fan was before counts as replaced too.
 */
record ReplacedFans(ProvidedAir air) {

  List<FanFlow> by(Candidate candidate) {
    List<String> kinds = candidate.measure().air().map(AirEffect::replaces).orElse(List.of());
    return air.fans().stream()
        .filter(f -> kinds.contains(f.fan().kind().word()))
        .filter(f -> candidate.measure().place() == MeasurePlace.HOME || here(candidate, f))
        .toList();
  }

  private static boolean here(Candidate candidate, FanFlow fan) {
    List<String> fans = candidate.scope().fans();
    return fans.isEmpty()
        ? candidate.rooms().stream().map(RoomFacts::id).anyMatch(fan.room()::equals)
        : fans.contains(fan.fan().id());
  }
}
