package org.drysill.assess;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drysill.physics.Range;
import org.drysill.survey.Airtightness;
import org.drysill.survey.Dwelling;
import org.drysill.survey.Occupants;
import org.drysill.survey.Room;
import org.drysill.survey.RoomUse;
import org.drysill.survey.Survey;
import org.drysill.yaml.ProblemText;
import org.drysill.yaml.Quantity;
import org.drysill.yaml.Reading;
import org.drysill.yaml.RecordReader;
import org.drysill.yaml.Vocabularies;

/**
 * Homes for tests, from the YAML that a surveyor would write. Gaps are filled with plain values
 * that a reader can reckon with: rooms 2.4 m high, 10 m² where no area is given, 19 °C, n50 10 /h,
 * 5 °C and 85 % outdoors all year.
 */
public final class HomeFixtures {
  private HomeFixtures() {}

  /** A home of 84 m² with three bedrooms, and the rooms given as YAML list entries. */
  public static Home home(String rooms) {
    return home("floor_area: 84 m2, storeys: 2, bedrooms: 3, occupants: {adults: 2}", rooms);
  }

  /**
   * A home.
   *
   * @param dwelling the keys of the dwelling in flow style, without its jurisdiction
   * @param rooms the rooms as YAML list entries, such as {@code - {id: wc, use: wc}}
   */
  public static Home home(String dwelling, String rooms) {
    return of(survey("england", dwelling, rooms));
  }

  /** A survey of 22 January 2026 with a flow hood of 5 % and the given parts. */
  public static Survey survey(String jurisdiction, String dwelling, String rooms) {
    return read(
        "drysill: 1\n"
            + "visit: {date: 2026-01-22, instruments: ["
            + "{id: hood, kind: flow hood, flow_accuracy: 5 %},"
            + "{id: th1, kind: thermo-hygrometer, temperature_accuracy: 0.4 K, humidity_accuracy: 2.5 %}]}\n"
            + "dwelling: {jurisdiction: "
            + jurisdiction
            + ", "
            + dwelling
            + "}\n"
            + "rooms:\n"
            + rooms.stripIndent().strip().indent(2));
  }

  /** A survey from its whole text; fails where it has errors. */
  public static Survey read(String text) {
    Reading<Survey> reading =
        RecordReader.read(Survey.class, text, "survey.yaml", Vocabularies.none());
    return reading
        .value()
        .orElseThrow(
            () ->
                new AssertionError(
                    reading.problems().stream()
                        .map(ProblemText::of)
                        .collect(Collectors.joining("\n"))));
  }

  /** The home of a survey. */
  public static Home of(Survey survey) {
    Dwelling d = survey.dwelling();
    long beds = survey.rooms().stream().filter(r -> r.use() == RoomUse.BEDROOM).count();
    int bedrooms = d.bedrooms().orElse((int) beds);
    Range area = d.floorArea().range();
    Range volume = d.volume().map(Quantity::range).orElse(area.times(2.4));
    int people = d.occupants().flatMap(HomeFixtures::people).orElse(bedrooms + 1);
    Range n50 =
        d.airtightness().flatMap(Airtightness::n50).map(Quantity::range).orElse(Range.exactly(10));
    return new Home(
        survey,
        figure("dwelling.floor_area", area, Unit.SQUARE_METRE),
        figure("dwelling.volume", volume, Unit.CUBIC_METRE),
        d.storeys().orElse(2),
        bedrooms,
        figure("dwelling.occupants", Range.exactly(people), Unit.COUNT),
        figure("dwelling.setpoint", Range.exactly(19), Unit.CELSIUS),
        figure("dwelling.n50", n50, Unit.AIR_CHANGE),
        climate(),
        survey.rooms().stream().map(HomeFixtures::room).toList(),
        money(),
        List.of());
  }

  /** Children by themselves tell nothing of how many adults live with them. */
  private static Optional<Integer> people(Occupants who) {
    return who.adults().map(adults -> adults + who.children().orElse(0));
  }

  private static RoomFacts room(Room room) {
    Range area = room.floorArea().map(Quantity::range).orElse(Range.exactly(10));
    Range height = room.height().map(Quantity::range).orElse(Range.exactly(2.4));
    String id = "room." + room.id();
    return new RoomFacts(
        room,
        room.name().orElse(room.id()),
        figure(id + ".floor_area", area, Unit.SQUARE_METRE),
        figure(id + ".height", height, Unit.METRE),
        figure(id + ".volume", area.times(height), Unit.CUBIC_METRE),
        figure(
            id + ".setpoint",
            room.setpoint().map(Quantity::range).orElse(Range.exactly(19)),
            Unit.CELSIUS));
  }

  /** Twelve equal months of 30 days, 5 °C, 85 %, wind 4 m/s. */
  public static OutdoorClimate climate() {
    List<OutdoorClimate.Month> months =
        IntStream.rangeClosed(1, 12)
            .mapToObj(
                n -> new OutdoorClimate.Month(n, 30, 5, Range.around(0.85, 0.03), Optional.of(4.0)))
            .toList();
    return new OutdoorClimate("test", months, Basis.ASSUMED, List.of(), Optional.empty());
  }

  /** Plain prices. */
  public static MoneyFacts money() {
    return new MoneyFacts(
        "GBP",
        figure("money.electricity", Range.exactly(0.27), Unit.ENERGY_PRICE),
        figure("money.heat", Range.exactly(0.07), Unit.ENERGY_PRICE),
        figure("money.efficiency", Range.exactly(0.85), Unit.RATIO),
        figure("money.discount_rate", Range.exactly(0.035), Unit.PERCENT),
        figure("money.horizon", Range.exactly(20), Unit.YEARS));
  }

  /** A figure that stands for itself. */
  public static Figure figure(String id, Range value, Unit unit) {
    return new Figure(
        id,
        id,
        value,
        unit,
        Basis.DECLARED,
        () -> new Working("given", List.of(), List.of(), Optional.empty()));
  }
}
