package org.drysill.options.effect;

import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Basis;
import org.drysill.options.OptionsBasis;
import org.drysill.options.site.Candidate;
import org.drysill.physics.Airflow;
import org.drysill.physics.Range;
import org.drysill.reference.measures.AirEffect;
import org.drysill.reference.measures.MeasurePlace;
import org.drysill.reference.rules.ExtractMode;
import org.drysill.reference.rules.Terminal;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;

/** The flow that a measure moves, from the rule set, from the measure's data or from the fan. */
record NewFlows(Assessment assessment, OptionsBasis basis) {
  private static final double HOURS_PER_DAY = 24;

  /** Empty where the rule set prints no rate for such a room, or the fan declares none. */
  Optional<NewFlow> of(Candidate candidate, AirEffect air) {
    return switch (air.rate()) {
      case INTERMITTENT_RATE_OF_THE_ROOM -> ofRoom(candidate, air, ExtractMode.INTERMITTENT);
      case CONTINUOUS_RATE_OF_THE_ROOM -> ofRoom(candidate, air, ExtractMode.CONTINUOUS);
      case WHOLE_HOME_RATE -> wholeHome(candidate, air);
      case STATED -> stated(candidate, air);
      case DECLARED_FLOW_OF_THE_FAN -> declared(candidate, air);
    };
  }

  private Optional<NewFlow> ofRoom(Candidate candidate, AirEffect air, ExtractMode mode) {
    Terminal terminal =
        candidate.measure().place() == MeasurePlace.KITCHEN ? Terminal.HOOD : Terminal.ELSEWHERE;
    return candidate
        .room()
        .flatMap(r -> ExtractRates.of(assessment.ventilation().rules(), r, mode, terminal))
        .map(
            a ->
                new NewFlow(
                    Range.exactly(a.flow()),
                    share(candidate, air),
                    Basis.PUBLISHED,
                    a.rate().source(),
                    Optional.of(a.flow())));
  }

  private Optional<NewFlow> wholeHome(Candidate candidate, AirEffect air) {
    return assessment
        .ventilation()
        .wholeHome()
        .required()
        .map(
            f ->
                new NewFlow(
                    f.value(), share(candidate, air), f.basis(), air.source(), Optional.empty()));
  }

  private Optional<NewFlow> stated(Candidate candidate, AirEffect air) {
    return air.litresPerSecond()
        .map(l -> l.range().times(Airflow.litresPerSecond(1).m3PerSecond()))
        .map(r -> r.times(candidate.sites().size()))
        .map(
            r ->
                new NewFlow(
                    r, share(candidate, air), Basis.ASSUMED, air.source(), Optional.empty()));
  }

  private Optional<NewFlow> declared(Candidate candidate, AirEffect air) {
    return candidate.sites().stream()
        .flatMap(s -> s.fan().stream())
        .filter(f -> f.declaredFlow().isPresent())
        .map(f -> declared(candidate, air, f))
        .findFirst();
  }

  private NewFlow declared(Candidate candidate, AirEffect air, Fan fan) {
    return new NewFlow(
        atLeastToday(
            fan,
            fan.declaredFlow()
                .orElseThrow()
                .range()
                .times(basis.defaults().repairedFlow().range())),
        share(candidate, air),
        Basis.DECLARED,
        air.source(),
        candidate
            .room()
            .flatMap(r -> ExtractRates.of(assessment.ventilation().rules(), r, mode(fan), at(fan)))
            .map(ExtractRates.Asked::flow));
  }

  /** What stands in the way of the air is taken away: no fan moves less for that than it did. */
  private Range atLeastToday(Fan fan, Range mended) {
    return assessment
        .ventilation()
        .fan(fan.id())
        .map(today -> today.running().value())
        .map(
            today ->
                new Range(
                    Math.max(today.low(), mended.low()),
                    Math.max(today.likely(), mended.likely()),
                    Math.max(today.high(), mended.high())))
        .orElse(mended);
  }

  private static ExtractMode mode(Fan fan) {
    return fan.kind() == FanKind.CONTINUOUS_EXTRACT
        ? ExtractMode.CONTINUOUS
        : ExtractMode.INTERMITTENT;
  }

  private static Terminal at(Fan fan) {
    return fan.kind() == FanKind.EXTRACT_HOOD ? Terminal.HOOD : Terminal.ELSEWHERE;
  }

  private Range share(Candidate candidate, AirEffect air) {
    return air.hoursPerDay()
        .map(h -> h.range().times(1 / HOURS_PER_DAY))
        .or(() -> ofFan(candidate))
        .orElse(Range.exactly(1));
  }

  private Optional<Range> ofFan(Candidate candidate) {
    return candidate.sites().stream()
        .flatMap(s -> s.fan().map(Fan::id).flatMap(assessment.ventilation()::fan).stream())
        .map(f -> f.shareOfDay().value())
        .findFirst();
  }
}
