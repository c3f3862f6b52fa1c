package org.drysill.assess.cautions;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.reference.cautions.CautionFacts;
import org.drysill.survey.ColdSpot;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;
import org.drysill.survey.MoistureSource;
import org.drysill.survey.MouldSeen;

/** What notes and cold spots say about mould, water from elsewhere and fans out of use. */
final class Signs {
  private Signs() {}

  static boolean mouldy(ColdSpot spot) {
    return spot.mouldSeen().map(m -> m != MouldSeen.NONE).orElse(false)
        || spot.mouldArea().map(a -> a.value() > 0).orElse(false);
  }

  static List<String> mouldyRooms(Home home) {
    return home.rooms().stream()
        .filter(r -> r.room().coldSpots().stream().anyMatch(Signs::mouldy))
        .map(RoomFacts::id)
        .toList();
  }

  /** Mould on so much area, or called extensive, that a contractor should clean it. */
  static boolean extensive(RoomFacts room, CautionFacts facts) {
    List<ColdSpot> spots = room.room().coldSpots();
    double area =
        spots.stream().flatMap(s -> s.mouldArea().stream()).mapToDouble(q -> q.high()).sum();
    return area > facts.mouldContractorArea().value()
        || spots.stream().anyMatch(s -> s.mouldSeen().equals(Optional.of(MouldSeen.EXTENSIVE)));
  }

  /** The word of a room's notes, or of a source listed in it, that points to such water. */
  static Optional<String> ingress(RoomFacts room, CautionFacts facts) {
    return Stream.concat(
            Stream.concat(
                room.room().notes().stream(),
                room.room().moistureSources().stream().map(MoistureSource::kind)),
            room.room().coldSpots().stream().flatMap(s -> s.notes().stream()))
        .flatMap(t -> NoteWords.find(t, facts.ingressWords(), facts.denials()).stream())
        .findFirst();
  }

  static boolean off(Fan fan, CautionFacts facts) {
    return fan.kind() == FanKind.FITTED_BUT_NOT_WORKING
        || fan.notes()
            .flatMap(n -> NoteWords.find(n, facts.offWords(), facts.denials()))
            .isPresent();
  }

  static List<String> roomsWithFansOff(Home home, CautionFacts facts) {
    return home.rooms().stream()
        .filter(r -> r.room().fans().stream().anyMatch(f -> off(f, facts)))
        .map(RoomFacts::id)
        .toList();
  }

  static boolean takesAirOut(FanKind kind) {
    return switch (kind) {
      case INTERMITTENT_EXTRACT, CONTINUOUS_EXTRACT, EXTRACT_HOOD, PASSIVE_STACK -> true;
      case RECIRCULATING_HOOD,
          POSITIVE_INPUT,
          ALTERNATING_HEAT_RECOVERY,
          SIMULTANEOUS_HEAT_RECOVERY,
          BALANCED_HEAT_RECOVERY,
          FITTED_BUT_NOT_WORKING ->
          false;
    };
  }

  static boolean has(Home home, FanKind kind) {
    return home.rooms().stream()
        .anyMatch(r -> r.room().fans().stream().anyMatch(f -> f.kind() == kind));
  }

  static boolean takesAirOut(Home home) {
    return home.rooms().stream()
        .anyMatch(r -> r.room().fans().stream().anyMatch(f -> takesAirOut(f.kind())));
  }
}
