package org.drysill.assess.ventilation.provided;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.ventilation.RunHours;
import org.drysill.reference.ventilation.RunPattern;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.survey.Fan;
import org.drysill.survey.RunMode;
import org.drysill.yaml.Quantity;

/** The share of the day that a fan runs. */
final class RunTime {
  private static final double HOURS_OF_A_DAY = 24;

  private final VentilationDefaults defaults;
  private final List<Assumption> assumptions = new ArrayList<>();

  RunTime(VentilationDefaults defaults) {
    this.defaults = defaults;
  }

  /** What was taken for granted so far. */
  List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }

  Figure shareOfDay(Fan fan, String name) {
    String id = "fan." + fan.id() + ".share_of_day";
    Optional<Quantity> stated = fan.hoursPerDay();
    if (stated.isPresent()) {
      return figure(id, name, stated.get().range(), Basis.DECLARED, Optional.empty());
    }
    RunPattern pattern = pattern(fan);
    RunHours row = defaults.hours(pattern);
    boolean said = fan.run().filter(run -> run == RunMode.CONTINUOUS).isPresent();
    if (!said) {
      assume(fan, name, row);
    }
    Basis basis = said ? Basis.DECLARED : Basis.ASSUMED;
    return figure(id, name, row.hoursPerDay().range(), basis, Optional.of(row.source()));
  }

  private static RunPattern pattern(Fan fan) {
    return fan.run()
        .map(RunTime::pattern)
        .orElse(
            FanClasses.madeToRunAlways(fan.kind()) ? RunPattern.CONTINUOUS : RunPattern.NOT_STATED);
  }

  private static RunPattern pattern(RunMode run) {
    return switch (run) {
      case CONTINUOUS -> RunPattern.CONTINUOUS;
      case HUMIDITY_CONTROLLED -> RunPattern.HUMIDITY_CONTROLLED;
      case WITH_LIGHT -> RunPattern.WITH_LIGHT;
      case MANUAL -> RunPattern.MANUAL;
      case HOURS_PER_DAY -> RunPattern.NOT_STATED;
    };
  }

  private void assume(Fan fan, String name, RunHours row) {
    assumptions.add(
        new Assumption(
            "fan." + fan.id() + ".hours",
            "hours a day that " + name + " runs",
            row.hoursPerDay().written(),
            fan.run()
                .map(run -> "It runs " + run.word() + "; how long was not recorded.")
                .orElse("The survey does not say when it runs."),
            "Read a plug-in time or energy meter at "
                + name
                + " over a week, or ask for how many hours a day it runs.",
            row.source()));
  }

  private static Figure figure(
      String id, String name, Range hours, Basis basis, Optional<Citation> source) {
    return new Figure(
        id,
        "share of the day that " + name + " runs",
        hours.times(1 / HOURS_OF_A_DAY),
        Unit.PERCENT,
        basis,
        () ->
            new Working(
                "s = h / 24 h",
                List.of(Input.of("h", "hours a day", hours, Unit.COUNT, basis)),
                source.stream().toList(),
                Optional.empty()));
  }
}
