package org.drysill.options.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.RoomFacts;
import org.drysill.options.NotHere;
import org.drysill.options.OptionsBasis;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.MeasurePlace;
import org.drysill.reference.measures.Prerequisite;
import org.drysill.survey.OptionWishes;
import org.drysill.survey.RoomUse;

/** Finds the places of a home at which each measure could be applied. */
public final class Placings {
  private final Assessment assessment;
  private final Conditions conditions;

  /** For an assessment and what is published. */
  public Placings(Assessment assessment, OptionsBasis basis) {
    this.assessment = assessment;
    this.conditions = new Conditions(assessment, basis);
  }

  /** Where a measure could go, or why nowhere. */
  public Placing of(Measure measure) {
    if (excluded(measure)) {
      return refused(measure, NotHere.Kind.EXCLUDED, "the survey asks to leave it out");
    }
    List<Site> fitting = new ArrayList<>();
    List<String> reasons = new ArrayList<>();
    String refusal = "the survey has no place of this kind";
    for (Site site : sites(measure)) {
      Optional<Held> failing =
          measure.when().stream()
              .map(c -> conditions.of(c, measure, site))
              .filter(h -> !h.holds())
              .findFirst();
      if (failing.isPresent()) {
        refusal = failing.get().because();
      } else {
        fitting.add(site);
        reasons.add(because(measure, site));
      }
    }
    return fitting.isEmpty()
        ? refused(measure, NotHere.Kind.DOES_NOT_APPLY, refusal)
        : new Placing(measure, grouped(measure, fitting, reasons), Optional.empty());
  }

  private boolean excluded(Measure measure) {
    return assessment
        .home()
        .survey()
        .options()
        .map(OptionWishes::exclude)
        .orElse(List.of())
        .contains(measure.name());
  }

  private static Placing refused(Measure measure, NotHere.Kind kind, String because) {
    return new Placing(
        measure, List.of(), Optional.of(new NotHere(measure.id(), measure.title(), kind, because)));
  }

  private String because(Measure measure, Site site) {
    return String.join(
        " ", measure.when().stream().map(c -> conditions.of(c, measure, site).because()).toList());
  }

  private Candidate candidate(Measure measure, List<Site> sites, List<String> because) {
    return new Candidate(measure, sites, because, needs(measure, sites));
  }

  /**
   * Prerequisites that are not met at one of the places; for the whole home, in one of its rooms.
   */
  private List<Prerequisite> needs(Measure measure, List<Site> sites) {
    List<Site> places =
        measure.place() == MeasurePlace.HOME
            ? assessment.home().rooms().stream().map(Site::of).toList()
            : sites;
    return measure.prerequisites().stream()
        .filter(p -> !p.isForTheSite())
        .filter(
            p ->
                places.stream()
                    .anyMatch(
                        s -> p.when().stream().allMatch(c -> conditions.of(c, measure, s).holds())))
        .toList();
  }

  private List<Candidate> grouped(Measure measure, List<Site> sites, List<String> reasons) {
    return switch (measure.place()) {
      case HOME, WINDOW, COLD_SPOT, HABITABLE_ROOM, ROOM ->
          List.of(candidate(measure, sites, reasons.stream().distinct().toList()));
      case WET_ROOM, KITCHEN, FAN -> {
        List<Candidate> each = new ArrayList<>();
        for (int i = 0; i < sites.size(); i++) {
          each.add(candidate(measure, List.of(sites.get(i)), List.of(reasons.get(i))));
        }
        yield each;
      }
    };
  }

  private List<Site> sites(Measure measure) {
    Stream<RoomFacts> rooms = assessment.home().rooms().stream();
    return switch (measure.place()) {
      case HOME -> List.of(Site.home());
      case WET_ROOM -> rooms.filter(RoomFacts::wet).map(Site::of).toList();
      case KITCHEN -> rooms.filter(Placings::kitchen).map(Site::of).toList();
      case HABITABLE_ROOM -> rooms.filter(RoomFacts::habitable).map(Site::of).toList();
      case ROOM -> rooms.map(Site::of).toList();
      case WINDOW ->
          rooms.flatMap(r -> r.room().windows().stream().map(w -> Site.of(r, w))).toList();
      case COLD_SPOT ->
          rooms
              .flatMap(
                  r ->
                      r.room().coldSpots().stream()
                          .filter(s -> fits(measure, s.kind().word()))
                          .map(s -> Site.of(r, s)))
              .toList();
      case FAN ->
          rooms
              .flatMap(
                  r ->
                      r.room().fans().stream()
                          .filter(f -> fits(measure, f.kind().word()))
                          .map(f -> Site.of(r, f)))
              .toList();
    };
  }

  private static boolean kitchen(RoomFacts room) {
    return room.room().use() == RoomUse.KITCHEN || room.room().use() == RoomUse.KITCHEN_DINING;
  }

  private static boolean fits(Measure measure, String kind) {
    return measure.kinds().isEmpty() || measure.kinds().contains(kind);
  }
}
