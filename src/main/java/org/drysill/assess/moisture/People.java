package org.drysill.assess.moisture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.moisture.MoistureResult.Item;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.Sourced;
import org.drysill.reference.moisture.PeopleRates;
import org.drysill.survey.Occupants;
import org.drysill.survey.YesNo;

/** What the people of a home give off: asleep, and awake at home. */
final class People {
  private final Home home;
  private final PeopleRates rates;
  private final Optional<Occupants> occupants;

  People(Home home, PeopleRates rates) {
    this.home = home;
    this.rates = rates;
    this.occupants = home.survey().dwelling().occupants();
  }

  Item item() {
    Range perAdult =
        rates
            .hoursAsleep()
            .range()
            .times(rates.asleep().range())
            .plus(hoursAwake().times(rates.awake().range()));
    Range perDay = perAdult.times(adultsCounted());
    return new Item(
        "people",
        Optional.empty(),
        "people",
        new Figure(
            "moisture.people",
            "Water given off by people",
            Rates.perDay(perDay),
            Unit.MASS_RATE,
            Basis.ASSUMED,
            this::working),
        count() + ", " + habit(),
        Optional.empty());
  }

  List<Assumption> assumptions() {
    List<Assumption> all = new ArrayList<>();
    if (!live()) {
      all.add(
          new Assumption(
              "moisture.people",
              "What people do at home",
              "no water: nobody cooks, washes or dries there",
              "the survey counts nobody who lives there",
              "State who will live there, to see what the home needs then.",
              new Citation(
                  "The survey as it stands", Optional.empty(), Optional.empty(), How.ASSUMPTION)));
    } else if (byDay().isEmpty()) {
      all.add(
          new Assumption(
              "moisture.people.home_by_day",
              "Whether somebody is at home by day",
              "unknown: between hardly ever and always",
              "the survey does not say",
              "Ask whether somebody is usually at home by day.",
              rates.hoursAwakeHome().source()));
    }
    return all;
  }

  /** False where the survey says how many people live there and that is none. */
  boolean live() {
    return occupants.flatMap(Occupants::adults).orElse(1) + children() > 0;
  }

  /** Adults, children counted by their share. */
  private Range adultsCounted() {
    Optional<Integer> adults = occupants.flatMap(Occupants::adults);
    return adults
        .map(Range::exactly)
        .orElseGet(() -> home.occupants().value().minus(Range.exactly(children())))
        .plus(rates.childShare().range().times(children()));
  }

  private int children() {
    return occupants.flatMap(Occupants::children).orElse(0);
  }

  private String count() {
    return occupants
        .flatMap(Occupants::adults)
        .map(number -> number + (number == 1 ? " adult" : " adults") + childrenSaid())
        .orElse(
            children() == 0
                ? "occupants as assumed for this home"
                : "adults as assumed for this home" + childrenSaid());
  }

  private String childrenSaid() {
    return children() == 0 ? "" : " and " + children() + (children() == 1 ? " child" : " children");
  }

  private Optional<Boolean> byDay() {
    return occupants
        .flatMap(Occupants::homeByDay)
        .filter(answer -> answer != YesNo.UNKNOWN)
        .map(answer -> answer == YesNo.YES);
  }

  private String habit() {
    return byDay()
        .map(answer -> answer ? "somebody at home by day" : "nobody at home by day")
        .orElse("not told whether somebody is at home by day");
  }

  private Range hoursAwake() {
    Range away = rates.hoursAwakeAway().range();
    Range stays = rates.hoursAwakeHome().range();
    return byDay()
        .map(answer -> answer ? somebodyAtHome() : away)
        .orElse(new Range(away.low(), (away.likely() + stays.likely()) / 2, stays.high()));
  }

  /** At least one person is, at most all of them; likely half way between. */
  private Range somebodyAtHome() {
    Range away = rates.hoursAwakeAway().range();
    Range stays = rates.hoursAwakeHome().range();
    double one = 1 / Math.max(1, home.occupants().likely());
    Range oneStays = away.times(1 - one).plus(stays.times(one));
    return new Range(oneStays.low(), (oneStays.likely() + stays.likely()) / 2, stays.high());
  }

  private Working working() {
    return new Working(
        "G = N (ha ga + hw gw) a day, a child counting as a share of an adult",
        List.of(
            Input.of(
                "N",
                "Adults, children by their share",
                adultsCounted(),
                Unit.COUNT,
                Basis.DECLARED),
            Input.of("ha", "Hours asleep", rates.hoursAsleep().range(), Unit.COUNT, Basis.ASSUMED),
            Input.of(
                "hw",
                "Hours awake at home, mean of all people",
                hoursAwake(),
                Unit.COUNT,
                Basis.ASSUMED),
            Input.of(
                "ga", "Adult asleep", perHour(rates.asleep()), Unit.MASS_RATE, Basis.PUBLISHED),
            Input.of("gw", "Adult awake", perHour(rates.awake()), Unit.MASS_RATE, Basis.PUBLISHED)),
        List.of(rates.asleep().source(), rates.hoursAsleep().source()),
        Optional.of(habit() + "; averaged over the day."));
  }

  private static Range perHour(Sourced kgPerHour) {
    return kgPerHour.range().times(1.0 / 3600);
  }
}
