package org.drysill.options.site;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.RoomFacts;
import org.drysill.options.Scope;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.Prerequisite;

/**
 * A measure and the places at which all its conditions hold.
 *
 * @param measure the measure
 * @param sites the places; several where it is one job at all of them
 * @param because why it is considered, in sentences
 * @param needs those of its prerequisites that are not met here
 */
public record Candidate(
    Measure measure, List<Site> sites, List<String> because, List<Prerequisite> needs) {
  /** Copies the lists. */
  public Candidate {
    needs = List.copyOf(needs);
    sites = List.copyOf(sites);
    because = List.copyOf(because);
  }

  /** Stable id. */
  public String id() {
    return sites.size() == 1 ? measure.id() + "." + sites.get(0).id() : measure.id();
  }

  /** What must be so before it: what is not met here, and what only someone on site can tell. */
  public List<String> first() {
    return measure.prerequisites().stream()
        .filter(p -> p.isForTheSite() || needs.contains(p))
        .map(Prerequisite::says)
        .toList();
  }

  /** The rooms, each once. */
  public List<RoomFacts> rooms() {
    return sites.stream().flatMap(s -> s.room().stream()).distinct().toList();
  }

  /** The room of a measure in one room. */
  public Optional<RoomFacts> room() {
    return rooms().size() == 1 ? Optional.of(rooms().get(0)) : Optional.empty();
  }

  /** The places by the survey's ids. */
  public Scope scope() {
    return new Scope(
        rooms().stream().map(RoomFacts::id).toList(),
        sites.stream().flatMap(s -> s.window().stream()).map(w -> w.id()).toList(),
        sites.stream().flatMap(s -> s.spot().stream()).map(c -> c.id()).toList(),
        sites.stream().flatMap(s -> s.fan().stream()).map(f -> f.id()).toList());
  }

  /** The title with its place, such as {@code Continuous extract fan, bathroom}. */
  public String title() {
    if (sites.size() > 1) {
      return measure.title() + ", " + sites.size() + " places";
    }
    return measure.title() + room().map(r -> ", " + r.name()).orElse("");
  }
}
