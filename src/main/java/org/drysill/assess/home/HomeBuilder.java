package org.drysill.assess.home;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.OutdoorClimate;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.physics.Range;
import org.drysill.reference.dwelling.DwellingDefaults;
import org.drysill.reference.prices.MoneyDefaults;
import org.drysill.reference.prices.PriceDefaults;
import org.drysill.survey.Dwelling;
import org.drysill.survey.DwellingType;
import org.drysill.survey.Heating;
import org.drysill.survey.Occupants;
import org.drysill.survey.RoomUse;
import org.drysill.survey.Survey;

/** Makes a {@link Home} of a survey: the one place where gaps are filled. */
public final class HomeBuilder {
  /** Rooms whose areas add up to at least this share of the home's stand for its volume. */
  private static final double NEARLY_ALL = 0.9;

  private final Survey survey;
  private final Dwelling dwelling;
  private final DwellingDefaults defaults;
  private final Facts facts = new Facts();

  private HomeBuilder(Survey survey, DwellingDefaults defaults) {
    this.survey = survey;
    this.dwelling = survey.dwelling();
    this.defaults = defaults;
  }

  /**
   * Fills every gap of a survey.
   *
   * @param survey what was seen
   * @param climate the outdoor climate, already resolved
   * @param climateAssumptions what was taken for granted for it
   * @param defaults what is taken for homes
   * @param money how money is counted
   * @param tariffs default prices of energy by currency
   */
  public static Home build(
      Survey survey,
      OutdoorClimate climate,
      List<Assumption> climateAssumptions,
      DwellingDefaults defaults,
      MoneyDefaults money,
      List<PriceDefaults> tariffs) {
    HomeBuilder builder = new HomeBuilder(survey, defaults);
    builder.facts.noteAll(climateAssumptions);
    return builder.build(climate, new MoneyGaps(survey, money, tariffs, builder.facts));
  }

  private Home build(OutdoorClimate climate, MoneyGaps money) {
    Figure floorArea =
        Facts.stated(
            "dwelling.floor_area", "internal floor area", dwelling.floorArea(), Unit.SQUARE_METRE);
    Figure setpoint = setpoint();
    List<RoomFacts> rooms = new RoomGaps(survey, defaults, facts, setpoint).fill();
    Figure volume = volume(floorArea, rooms);
    int bedrooms = bedrooms();
    return new Home(
        survey,
        floorArea,
        volume,
        storeys(),
        bedrooms,
        occupants(bedrooms),
        setpoint,
        new LeakageGap(dwelling, defaults, facts, volume).fill(),
        climate,
        rooms,
        money.fill(),
        facts.assumptions());
  }

  private Figure setpoint() {
    return dwelling
        .heating()
        .flatMap(Heating::setpoint)
        .map(q -> Facts.stated("dwelling.setpoint", "usual indoor temperature", q, Unit.CELSIUS))
        .orElseGet(
            () ->
                facts.assumed(
                    "dwelling.setpoint",
                    "usual indoor temperature",
                    defaults.setpoint().value().range(),
                    Unit.CELSIUS,
                    Facts.assumption(
                        "dwelling.setpoint",
                        "Usual indoor temperature in winter",
                        defaults.setpoint().value().written(),
                        "The survey does not say.",
                        "Ask, or leave a thermometer for a week.",
                        defaults.setpoint().source())));
  }

  private Figure volume(Figure floorArea, List<RoomFacts> rooms) {
    if (dwelling.volume().isPresent()) {
      return Facts.stated(
          "dwelling.volume", "air volume of the home", dwelling.volume().get(), Unit.CUBIC_METRE);
    }
    List<RoomFacts> heated = rooms.stream().filter(RoomFacts::heated).toList();
    double area = heated.stream().mapToDouble(r -> r.floorArea().likely()).sum();
    Range total =
        heated.stream().map(r -> r.volume().value()).reduce(Range.exactly(0), (a, b) -> a.plus(b));
    Basis basis =
        heated.stream().allMatch(r -> r.volume().basis() == Basis.CALCULATED)
            ? Basis.CALCULATED
            : Basis.ASSUMED;
    if (area >= NEARLY_ALL * floorArea.likely()) {
      return Facts.derived(
          "dwelling.volume",
          "air volume of the home",
          total,
          Unit.CUBIC_METRE,
          basis,
          "V = Σ V(heated room)",
          heated.stream().map(r -> Working.Input.of("V(" + r.name() + ")", r.volume())).toList());
    }
    double height = area > 0 ? total.likely() / area : defaults.roomHeight().value().value();
    Range usual = defaults.roomHeight().value().range();
    Range heights =
        new Range(Math.min(usual.low(), height), height, Math.max(usual.high(), height));
    return Facts.derived(
        "dwelling.volume",
        "air volume of the home",
        floorArea.value().times(heights),
        Unit.CUBIC_METRE,
        Basis.ASSUMED,
        "V = A × mean height of the surveyed rooms",
        List.of(
            Working.Input.of("A", floorArea),
            Working.Input.of("h", "mean height", heights, Unit.METRE, Basis.ASSUMED)));
  }

  private int bedrooms() {
    return dwelling
        .bedrooms()
        .orElseGet(
            () -> {
              int counted =
                  (int) survey.rooms().stream().filter(r -> r.use() == RoomUse.BEDROOM).count();
              noteCount("dwelling.bedrooms", "Number of bedrooms", counted, "bedrooms");
              return counted;
            });
  }

  private int storeys() {
    return dwelling
        .storeys()
        .orElseGet(
            () -> {
              int counted =
                  Math.max(
                      (int)
                          survey.rooms().stream()
                              .flatMap(r -> r.storey().stream())
                              .distinct()
                              .count(),
                      dwelling.type().map(HomeBuilder::usualStoreys).orElse(1));
              noteCount("dwelling.storeys", "Number of storeys", counted, "storeys");
              return counted;
            });
  }

  private static int usualStoreys(DwellingType type) {
    return switch (type) {
      case DETACHED_HOUSE, SEMI_DETACHED_HOUSE, END_TERRACE_HOUSE, MID_TERRACE_HOUSE, MAISONETTE ->
          2;
      case BUNGALOW, GROUND_FLOOR_FLAT, MID_FLOOR_FLAT, TOP_FLOOR_FLAT, STUDIO -> 1;
    };
  }

  private void noteCount(String id, String about, int counted, String key) {
    facts.note(
        Facts.assumption(
            id,
            about,
            Integer.toString(counted),
            "Counted from the surveyed rooms and the kind of home.",
            "Give dwelling." + key + ".",
            defaults.extraOccupants().source()));
  }

  private Figure occupants(int bedrooms) {
    int children = dwelling.occupants().flatMap(Occupants::children).orElse(0);
    return dwelling
        .occupants()
        .flatMap(Occupants::adults)
        .map(adults -> adults + children)
        .filter(people -> people > 0)
        .map(HomeBuilder::counted)
        .orElseGet(() -> assumedOccupants(bedrooms, children));
  }

  private static Figure counted(int people) {
    return Facts.stated(
        "dwelling.occupants",
        "number of occupants",
        Range.exactly(people),
        Unit.COUNT,
        Optional.of(people + " people"));
  }

  /** Children do not live alone: where only they were counted, at least one adult is with them. */
  private Figure assumedOccupants(int bedrooms, int children) {
    Range extra = defaults.extraOccupants().value().range();
    int fewest = children + 1;
    Range people =
        new Range(
            Math.max(fewest, bedrooms + extra.low()),
            Math.max(fewest, bedrooms + extra.likely()),
            Math.max(fewest, bedrooms + extra.high()));
    return facts.assumed(
        "dwelling.occupants",
        "number of occupants",
        people,
        Unit.COUNT,
        Facts.assumption(
            "dwelling.occupants",
            "Number of occupants",
            String.format(Locale.ROOT, "%.0f", people.likely()),
            children == 0
                ? "The number of bedrooms plus one."
                : "The number of bedrooms plus one, at least one more than the children counted.",
            "Ask how many people live in the home.",
            defaults.extraOccupants().source()));
  }
}
