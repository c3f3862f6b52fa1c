package org.drysill.assess.logs.air;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Basis;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.physics.Range;
import org.drysill.physics.moisture.VapourBalance;
import org.drysill.physics.tracer.balance.Balance;
import org.drysill.physics.tracer.balance.BalanceLimits;
import org.drysill.physics.tracer.balance.PeriodMean;
import org.drysill.physics.tracer.balance.QuasiSteadyBalance;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/**
 * The production that the mean excess of the logs implies with the air that the home gets, G = q
 * Δv, against the list of sources. The logged heated rooms, weighted by volume, stand for the home.
 *
 * <p>The flow is counted at indoor temperature, so outdoor air is taken as warmed to it: Δv = Δp /
 * (461.5 Ti), as where readings imply a production.
 */
final class LoggedProduction {
  private static final Citation SOURCE =
      Citation.of("ISO 13788", "2012", "Annex A, G = q Δv", How.MEMORY);
  private static final double RECTANGULAR = Math.sqrt(3);
  private final Home home;
  private final Figure provided;
  private final Figure itemised;
  private final BalanceLimits limits;

  LoggedProduction(Home home, Figure provided, Figure itemised, BalanceLimits limits) {
    this.home = home;
    this.provided = provided;
    this.itemised = itemised;
    this.limits = limits;
  }

  /** Empty where no heated room was logged beside outdoor air of its own time. */
  Optional<Finding> of(List<LoggedRoom> rooms) {
    List<LoggedRoom> paired =
        rooms.stream()
            .filter(r -> r.source().simultaneous())
            .filter(r -> home.room(r.room()).orElseThrow().heated())
            .toList();
    if (paired.isEmpty()) {
      return Optional.empty();
    }
    Balance balance = QuasiSteadyBalance.production(provided.value(), mean(paired), limits);
    return Optional.of(
        balance instanceof Balance.Found found
            ? compared(paired, found.range())
            : finding(Verdict.UNKNOWN, Optional.empty(), refused((Balance.Refused) balance)));
  }

  private PeriodMean mean(List<LoggedRoom> rooms) {
    double volume = rooms.stream().mapToDouble(this::volume).sum();
    double excess = 0;
    double error = 0;
    double days = Double.POSITIVE_INFINITY;
    double span = 0;
    for (LoggedRoom room : rooms) {
      double weight = volume(room) / volume;
      Range warmed = warmed(room);
      excess += weight * warmed.likely();
      error += weight * (warmed.high() - warmed.likely());
      days = Math.min(days, room.days());
      span = Math.max(span, room.trace().size() * room.trace().stepS() / 86_400.0);
    }
    return new PeriodMean(excess, error / RECTANGULAR, span, Math.min(days, span));
  }

  /** Vapour excess of a room over outdoor air as warm as it [kg/m³]. */
  private static Range warmed(LoggedRoom room) {
    double celsius = room.temperature().likely();
    return room.excessPressure()
        .value()
        .times(VapourBalance.contentExcessKgM3(1, celsius, celsius));
  }

  private double volume(LoggedRoom room) {
    return home.room(room.room()).orElseThrow().volume().likely();
  }

  private Finding compared(List<LoggedRoom> rooms, Range implied) {
    Figure figure =
        new Figure(
            "log.production",
            "Water production that the logs imply",
            implied,
            Unit.MASS_RATE,
            Basis.CALCULATED,
            () ->
                new Working(
                    "G = q Σ V Δp / (461.5 × (T + 273.15)) / Σ V over the logged rooms",
                    Stream.concat(
                            Stream.of(Input.of("q", provided)),
                            rooms.stream().flatMap(this::inputs))
                        .toList(),
                    List.of(SOURCE),
                    Optional.of(
                        "The logged rooms stand for the home. Outdoor air counted at indoor"
                            + " temperature, as the flow is. Bounds: twice the standard uncertainty"
                            + " of the mean excess.")));
    Range listed = itemised.value();
    if (implied.low() > listed.high()) {
      return finding(
          Verdict.SHORT,
          Optional.of(figure),
          "Over the log more water went into the air than the list of sources explains, or the home"
              + " gets less air than believed.");
    }
    return finding(
        Verdict.MEETS,
        Optional.of(figure),
        implied.high() < listed.low()
            ? "Over the log less water went into the air than the list of sources says, or the home"
                + " gets more air than believed."
            : "Over the log the list of sources and the air that the home is believed to get agree"
                + " within their ranges.");
  }

  private Stream<Input> inputs(LoggedRoom room) {
    String name = "(" + room.roomName() + ")";
    return Stream.of(
        Input.of("Δp" + name, room.excessPressure()),
        Input.of("T" + name, room.temperature()),
        Input.of("V" + name, home.room(room.room()).orElseThrow().volume()));
  }

  private Finding finding(Verdict verdict, Optional<Figure> implied, String because) {
    return new Finding(
        "moisture.balance_logged",
        "List of moisture sources against the logs",
        Optional.empty(),
        verdict,
        Direction.AGREES,
        Optional.of(itemised),
        implied,
        because,
        verdict == Verdict.MEETS
            ? Optional.empty()
            : Optional.of("Measure the flow of each fan, and log for longer in colder weather."),
        List.of(SOURCE));
  }

  private static String refused(Balance.Refused refused) {
    return switch (refused.reason()) {
      case PERIOD_TOO_SHORT ->
          "The log is too short for a balance: walls and furniture take up and give back vapour for"
              + " days.";
      case TOO_MANY_GAPS -> "The log has too many gaps for a balance.";
      case EXCESS_TOO_SMALL, EXCESS_TOO_UNCERTAIN ->
          "Over the log the air indoors held so little more vapour than outdoors that the loggers'"
              + " error decides.";
    };
  }
}
