package org.drysill.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.report.language.Phrases;
import org.drysill.report.subject.Subject;
import org.drysill.survey.ColdSpotKind;
import org.drysill.survey.FanKind;
import org.drysill.survey.MouldSeen;
import org.drysill.survey.Room;
import org.drysill.survey.RunMode;
import org.drysill.survey.YesNo;

/** What the people of a home can do from today on, where the survey shows a use for it. */
final class Habits {
  private final Subject subject;
  private final Phrases phrases;

  Habits(Subject subject, Phrases phrases) {
    this.subject = subject;
    this.phrases = phrases;
  }

  List<String> said() {
    List<String> said = new ArrayList<>();
    add(said, "habit.wipe", wetGlass());
    add(said, "habit.furniture", anyRoom(Habits::hasFurnitureOnColdWall));
    add(said, "habit.drying", anyRoom(Habits::driesWashing));
    add(said, "habit.lids", anyRoom(Habits::cooksOpen));
    add(said, "habit.fans", anyRoom(Habits::hasFanByHand));
    add(said, "habit.vents", anyRoom(Habits::hasVents));
    add(said, "habit.mould", anyRoom(Habits::hasMould));
    return said;
  }

  private void add(List<String> said, String key, boolean useful) {
    if (useful) {
      said.add(phrases.say(key));
    }
  }

  private boolean wetGlass() {
    return subject.condensation().places().stream()
        .anyMatch(p -> p.surface() == SurfaceClass.GLASS && p.months().gravest() != Risk.NONE);
  }

  private boolean anyRoom(Predicate<Room> holds) {
    return subject.survey().rooms().stream().anyMatch(holds);
  }

  private static boolean hasFurnitureOnColdWall(Room room) {
    return room.coldSpots().stream().anyMatch(s -> s.kind() == ColdSpotKind.BEHIND_FURNITURE);
  }

  private static boolean driesWashing(Room room) {
    return room.moistureSources().stream().anyMatch(s -> s.kind().equals("clothes drying indoors"));
  }

  private static boolean cooksOpen(Room room) {
    return room.moistureSources().stream()
        .anyMatch(s -> s.lidsAndHood().filter(l -> l == YesNo.NO).isPresent());
  }

  private static boolean hasFanByHand(Room room) {
    return room.fans().stream()
        .anyMatch(
            f ->
                f.kind() == FanKind.INTERMITTENT_EXTRACT
                    && f.run().filter(r -> r != RunMode.MANUAL).isEmpty());
  }

  private static boolean hasVents(Room room) {
    return room.windows().stream()
        .anyMatch(w -> w.backgroundVentilator().filter(v -> v.value() > 0).isPresent());
  }

  private static boolean hasMould(Room room) {
    return room.coldSpots().stream()
        .anyMatch(s -> s.mouldSeen().filter(m -> m != MouldSeen.NONE).isPresent());
  }
}
