package org.drysill.options.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.options.OptionsBasis;
import org.drysill.options.Repaired;
import org.drysill.options.effect.Figures;
import org.drysill.options.effect.Studied;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Range;

/**
 * What comes before every measure, sorted into what the model can take out and what it cannot.
 *
 * <p>A leak whose water is stated is taken out; rising damp, rain through a wall and a leak of
 * which nobody knows the size are not, for readings tell water and not whence it comes. They stay
 * in all that follows, so that no measure is credited with what a repair may do.
 *
 * @param today what the survey means
 * @param basis what is published
 */
public record Repairs(Assessment today, OptionsBasis basis) {

  /**
   * What is told of them; empty where nothing comes before the measures but safety.
   *
   * @param home the home with what can be reckoned done, where anything can
   * @param repairs what is done in it
   * @param causes what stays in the model
   */
  public Optional<Repaired> told(
      Optional<RepairedHome> home, List<Studied> repairs, List<Candidate> causes) {
    List<RoomFacts> rooms = rooms(causes);
    if (home.isEmpty() && rooms.isEmpty()) {
      return Optional.empty();
    }
    Optional<Figure> unexplained = rooms.isEmpty() ? Optional.empty() : unexplained();
    return Optional.of(
        new Repaired(
            home.map(h -> asIf(repairs)).orElse(List.of()),
            home.map(h -> new BeforeAndAfter(h, basis).rows()).orElse(List.of()),
            rooms.isEmpty() ? List.of() : staying(rooms, unexplained),
            unexplained));
  }

  private static List<String> asIf(List<Studied> repairs) {
    return repairs.stream().map(Studied::candidate).map(Repairs::asIf).toList();
  }

  private static String asIf(Candidate candidate) {
    String place =
        "in the "
            + candidate.rooms().stream()
                .map(RoomFacts::name)
                .collect(Collectors.joining(" and the "));
    return candidate
        .measure()
        .asIf()
        .map(words -> words.replace("{place}", place))
        .orElse("this were done: " + candidate.title());
  }

  /** Rooms with water from elsewhere whose amount nobody knows. */
  private static List<RoomFacts> rooms(List<Candidate> causes) {
    return causes.stream().flatMap(c -> c.rooms().stream()).distinct().toList();
  }

  private static List<String> staying(List<RoomFacts> rooms, Optional<Figure> unexplained) {
    String where = rooms.stream().map(RoomFacts::name).collect(Collectors.joining(" and the "));
    return Stream.of(
            "How much water comes from the ground, the rain or a pipe into the "
                + where
                + " is not known, so what follows is reckoned as if that stayed: mending it can"
                + " only make the air drier than is said here.",
            unexplained
                .map(
                    u ->
                        u.likely() > 0
                            ? "The readings imply more water than the listed sources give; this"
                                + " water may be part of that."
                            : "The listed sources are enough to explain the readings; that does not"
                                + " prove that no such water is there.")
                .orElse("The readings cannot tell what part of the moisture it is."))
        .toList();
  }

  /** What the readings imply beyond the list, never below nothing. */
  private Optional<Figure> unexplained() {
    MoistureResult moisture = today.moisture();
    return moisture.implied().map(i -> unexplained(i, moisture.itemised()));
  }

  private static Figure unexplained(Figure implied, Figure listed) {
    Range rest = implied.value().minus(listed.value());
    return new Figures("repaired")
        .of(
            "unexplained",
            "water that the readings imply and no listed source gives",
            new Range(
                Math.max(0, rest.low()), Math.max(0, rest.likely()), Math.max(0, rest.high())),
            Unit.MASS_RATE,
            "max(0, G implied − G listed)",
            new ArrayList<>(List.of(Input.of("G implied", implied), Input.of("G listed", listed))),
            List.of());
  }
}
