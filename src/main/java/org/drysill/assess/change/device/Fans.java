package org.drysill.assess.change.device;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.change.shown.Doubt;
import org.drysill.assess.change.shown.Judgement;
import org.drysill.assess.change.shown.Pair;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.physics.Range;
import org.drysill.reference.readings.Accuracy;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;
import org.drysill.yaml.Quantity;

/** Compares the fans of two visits, by their ids. */
public final class Fans {
  private static final double LITRES_PER_CUBIC_METRE = 1000;

  private final Accuracy accuracy;

  /** Compares with these accuracies where nobody states one. */
  public Fans(Accuracy accuracy) {
    this.accuracy = accuracy;
  }

  /** Every fan of either visit, those of the later survey first. */
  public List<FanChange> compare(Home before, Home after) {
    Map<String, Placed> earlier = fans(before);
    Map<String, Placed> later = fans(after);
    List<FanChange> all = new ArrayList<>();
    later.forEach(
        (id, fan) -> all.add(change(Optional.ofNullable(earlier.get(id)), Optional.of(fan))));
    earlier.forEach(
        (id, fan) -> {
          if (!later.containsKey(id)) {
            all.add(change(Optional.of(fan), Optional.empty()));
          }
        });
    return all;
  }

  private record Placed(RoomFacts room, Fan fan, InstrumentErrors errors) {}

  private Map<String, Placed> fans(Home home) {
    InstrumentErrors errors = new InstrumentErrors(home.survey(), accuracy);
    Map<String, Placed> fans = new LinkedHashMap<>();
    home.rooms()
        .forEach(
            room ->
                room.room()
                    .fans()
                    .forEach(fan -> fans.put(fan.id(), new Placed(room, fan, errors))));
    return fans;
  }

  private FanChange change(Optional<Placed> before, Optional<Placed> after) {
    Placed any = after.or(() -> before).orElseThrow();
    Optional<Figure> flowBefore = before.flatMap(fan -> flow(fan, "before"));
    Optional<Figure> flowAfter = after.flatMap(fan -> flow(fan, "after"));
    return new FanChange(
        any.fan().id(),
        any.room().id(),
        any.fan().name().orElse(any.fan().kind().word() + " in the " + any.room().name()),
        before.map(fan -> fan.fan().kind()),
        after.map(fan -> fan.fan().kind()),
        flowBefore,
        flowAfter,
        change(any, flowBefore, flowAfter),
        before.isPresent() && after.isPresent()
            ? judgement(flowBefore, flowAfter)
            : Judgement.notShown(Doubt.AT_ONE_VISIT, "it was there at one visit only"),
        said(before, "Before", flowBefore) + " " + said(after, "After", flowAfter));
  }

  /** After less before; only what was measured at both visits can be held against each other. */
  private static Optional<Figure> change(
      Placed fan, Optional<Figure> before, Optional<Figure> after) {
    return measured(before, after)
        .map(
            pair ->
                pair.change(
                    id(fan) + ".flow_change", "Change of the measured flow", Unit.AIRFLOW, "q"));
  }

  private static Judgement judgement(Optional<Figure> before, Optional<Figure> after) {
    return measured(before, after)
        .map(
            pair ->
                Judgement.byError(
                    pair.difference(),
                    pair.error(),
                    String.format(
                        Locale.ROOT,
                        "plus or minus %.1f l/s",
                        pair.error() * LITRES_PER_CUBIC_METRE)))
        .orElse(Judgement.notShown(Doubt.NOT_MEASURED, "its flow was not measured at both visits"));
  }

  private static Optional<Pair> measured(Optional<Figure> before, Optional<Figure> after) {
    return before
        .filter(f -> f.basis() == Basis.MEASURED)
        .flatMap(
            first ->
                after
                    .filter(f -> f.basis() == Basis.MEASURED)
                    .map(second -> new Pair(first, second)));
  }

  private static String id(Placed fan) {
    return "change.fan." + fan.fan().id();
  }

  private static String said(Optional<Placed> fan, String when, Optional<Figure> flow) {
    if (fan.isEmpty()) {
      return when + ": not there.";
    }
    if (fan.get().fan().kind() == FanKind.FITTED_BUT_NOT_WORKING) {
      return when + ": fitted but not working.";
    }
    return flow.map(
            f ->
                String.format(
                    Locale.ROOT,
                    "%s: %s, %.1f l/s %s.",
                    when,
                    fan.get().fan().kind().word(),
                    f.likely() * LITRES_PER_CUBIC_METRE,
                    f.basis() == Basis.MEASURED ? "measured" : "declared, not measured"))
        .orElse(when + ": flow not known.");
  }

  private Optional<Figure> flow(Placed placed, String when) {
    if (placed.fan().kind() == FanKind.FITTED_BUT_NOT_WORKING) {
      return Optional.of(figure(placed, when, Range.exactly(0), Basis.MEASURED));
    }
    return placed
        .fan()
        .measuredFlow()
        .map(flow -> placed.errors().flow(flow.value(), flow.instrument()))
        .map(range -> figure(placed, when, range, Basis.MEASURED))
        .or(
            () ->
                placed
                    .fan()
                    .declaredFlow()
                    .map(Quantity::range)
                    .map(range -> figure(placed, when, range, Basis.DECLARED)));
  }

  private static Figure figure(Placed placed, String when, Range flow, Basis basis) {
    return new Figure(
        id(placed) + ".flow_" + when,
        "Flow of the fan " + when,
        flow,
        Unit.AIRFLOW,
        basis,
        () ->
            new Working(
                basis == Basis.MEASURED ? "as measured" : "as declared by the maker",
                List.of(),
                List.of(),
                Optional.empty()));
  }
}
