package org.drysill.report.verdict;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Verdict;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.report.subject.Subject;
import org.drysill.report.words.Words;

/**
 * What a heading is made from.
 *
 * @param air the air of the whole home
 * @param shortRooms wet rooms whose extract is short
 * @param worst the opaque place at risk that is worst, in words such as {@code north-east corner of
 *     the kitchen}
 * @param spotsAtRisk how many opaque places are at risk
 * @param windowsWet how many windows get wet in cold nights
 * @param placesLooked how many places were looked at
 */
record State(
    Verdict air,
    List<String> shortRooms,
    Optional<String> worst,
    int spotsAtRisk,
    int windowsWet,
    int placesLooked) {
  private static final int NAME_LENGTH = 44;

  State {
    shortRooms = List.copyOf(shortRooms);
  }

  static State of(Subject subject) {
    List<ColdPlace> spots = atRisk(subject, SurfaceClass.OPAQUE);
    long windows =
        atRisk(subject, SurfaceClass.GLASS).stream().map(ColdPlace::item).distinct().count();
    return new State(
        subject.ventilation().wholeHome().verdict(),
        subject.ventilation().extract().stream()
            .filter(f -> f.verdict() == Verdict.SHORT)
            .flatMap(f -> f.room().stream())
            .distinct()
            .map(id -> subject.home().room(id).map(r -> r.name()).orElse(id))
            .map(Words::within)
            .toList(),
        spots.stream().findFirst().map(State::named),
        (int) spots.stream().map(ColdPlace::item).distinct().count(),
        (int) windows,
        subject.condensation().places().size());
  }

  /** Places at risk at the likely values, the worst first. */
  static List<ColdPlace> atRisk(Subject subject, SurfaceClass surface) {
    return subject.condensation().worstFirst().stream()
        .filter(p -> p.surface() == surface && p.months().gravest() != Risk.NONE)
        .toList();
  }

  /** A place with its room, where its name does not say the room already. */
  static String named(ColdPlace place) {
    String name = Words.within(Words.shortened(place.name(), NAME_LENGTH));
    String room = Words.within(Words.shortened(place.roomName(), NAME_LENGTH));
    return name.contains(room) ? name : name + " in the " + room;
  }
}
