package org.drysill.options.repair;

import java.util.List;
import java.util.function.Predicate;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.options.effect.Studied;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;

/** The fans of a home once those that stood still run again. */
final class RepairedFans {
  private RepairedFans() {}

  /** The home; only fans that were out of use are others. */
  static Home of(Home home, List<Studied> repairs) {
    List<String> mended =
        repairs.stream().flatMap(r -> r.replaced().stream()).map(f -> f.fan().id()).toList();
    return home.withRooms(r -> of(r, f -> mended.contains(f.id())));
  }

  private static RoomFacts of(RoomFacts facts, Predicate<Fan> mended) {
    List<Fan> fans = facts.room().fans();
    return fans.stream().noneMatch(mended)
        ? facts
        : facts.with(
            facts.room().with(fans.stream().map(f -> mended.test(f) ? running(f) : f).toList()));
  }

  /** A fan that nobody knows the kind of is taken as one that runs with use. */
  static Fan running(Fan f) {
    return f.kind() == FanKind.FITTED_BUT_NOT_WORKING
        ? new Fan(
            f.id(),
            f.name(),
            FanKind.INTERMITTENT_EXTRACT,
            f.declaredFlow(),
            f.measuredFlow(),
            f.boostFlow(),
            f.fanCurve(),
            f.halfCycle(),
            f.switchingPause(),
            f.airSource(),
            f.power(),
            f.run(),
            f.hoursPerDay(),
            f.pairedWith(),
            f.declaredHeatRecovery(),
            f.duct(),
            f.heatRecoveryTests(),
            f.filter(),
            f.photos(),
            f.notes())
        : f;
  }
}
