package org.drysill.assess.surfaces;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.drysill.assess.Assumption;
import org.drysill.assess.Finding;

/**
 * Condensation and mould risk of all places.
 *
 * @param places in the order of the survey: rooms, in each its cold spots, windows, walls
 * @param neverDry sentences on panes that cannot stay dry at a humidity that people live in
 * @param glazing what other glazing would do for the windows that get wet
 * @param vapour what the indoor vapour of each room rests on, one sentence each
 * @param assumptions what was taken for granted
 */
public record CondensationResult(
    List<ColdPlace> places,
    List<String> neverDry,
    List<OtherGlazing> glazing,
    List<String> vapour,
    List<Assumption> assumptions) {
  /** Copies the lists. */
  public CondensationResult {
    places = List.copyOf(places);
    neverDry = List.copyOf(neverDry);
    glazing = List.copyOf(glazing);
    vapour = List.copyOf(vapour);
    assumptions = List.copyOf(assumptions);
  }

  /** The places, the one with the lowest temperature factor first. */
  public List<ColdPlace> coldestFirst() {
    return places.stream()
        .sorted(Comparator.comparingDouble(p -> p.factor().figure().likely()))
        .toList();
  }

  /**
   * The places, the worst first: where mould was seen, then the highest mould index or the most wet
   * mornings of the year, then the lowest temperature factor. Walls and glass count apart.
   */
  public List<ColdPlace> worstFirst() {
    return coldestFirst().stream()
        .sorted(
            Comparator.comparing((ColdPlace p) -> !p.seen().mouldy())
                .thenComparing(Comparator.comparingDouble(CondensationResult::harm).reversed()))
        .toList();
  }

  private static double harm(ColdPlace place) {
    return place.year().either(w -> w.mould().likely(), g -> g.wetMornings().likely());
  }

  /** All findings, place by place. */
  public List<Finding> findings() {
    return places.stream()
        .flatMap(
            p ->
                Stream.of(
                        Stream.of(p.requirement()),
                        p.published().stream(),
                        p.behindFurniture().stream())
                    .flatMap(s -> s))
        .toList();
  }
}
