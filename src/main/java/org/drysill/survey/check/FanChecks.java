package org.drysill.survey.check;

import static org.drysill.survey.check.CheckList.each;

import java.util.List;
import java.util.Optional;
import org.drysill.survey.CurvePoint;
import org.drysill.survey.Fan;
import org.drysill.survey.FanKind;
import org.drysill.survey.MeasuredFlow;
import org.drysill.survey.RunMode;
import org.drysill.survey.Survey;
import org.drysill.yaml.Quantity;

/** What is said about a fan agrees with itself. */
final class FanChecks {
  /** Measured over declared; outside of these a slip in the unit is likely. Judgement. */
  private static final double FAR_BELOW = 0.15;

  private static final double FAR_ABOVE = 1.6;

  private FanChecks() {}

  static void check(Survey survey, CheckList list) {
    each(
        survey.rooms(),
        "rooms",
        (room, path) -> each(room.fans(), path + ".fans", (fan, at) -> fan(fan, at, list)));
  }

  private static void fan(Fan fan, String path, CheckList list) {
    Optional<Quantity> measured = fan.measuredFlow().map(MeasuredFlow::value);
    measured.ifPresent(flow -> measured(fan, flow, path + ".measured_flow", list));
    curve(fan.fanCurve(), path + ".fan_curve", list);
    pause(fan, path + ".switching_pause", list);
    boolean byHours = fan.run().equals(Optional.of(RunMode.HOURS_PER_DAY));
    if (byHours && fan.hoursPerDay().isEmpty()) {
      list.add(
          SurveyCode.HOURS_MISSING,
          path + ".run",
          "no hours_per_day",
          "the hours a day that it runs");
    }
  }

  private static void curve(List<CurvePoint> curve, String path, CheckList list) {
    if (curve.size() == 1) {
      list.add(SurveyCode.CURVE_NOT_FALLING, path, "one point", "two points or more");
    }
    for (int i = 1; i < curve.size(); i++) {
      CurvePoint before = curve.get(i - 1);
      CurvePoint point = curve.get(i);
      if (point.flow().value() <= before.flow().value()) {
        list.add(
            SurveyCode.CURVE_NOT_FALLING,
            path + "[" + i + "].flow",
            point.flow().written() + " after " + before.flow().written(),
            "points by rising flow");
      } else if (point.pressure().value() > before.pressure().value()) {
        list.add(
            SurveyCode.CURVE_NOT_FALLING,
            path + "[" + i + "].pressure",
            point.pressure().written() + " after " + before.pressure().written(),
            "a pressure that does not rise with the flow");
      }
    }
  }

  private static void pause(Fan fan, String key, CheckList list) {
    fan.switchingPause()
        .filter(p -> fan.halfCycle().map(half -> p.high() >= half.low()).orElse(false))
        .ifPresent(
            p ->
                list.add(
                    SurveyCode.PAUSE_FILLS_CYCLE,
                    key,
                    p.written() + " in each " + fan.halfCycle().orElseThrow().written(),
                    "a pause that is shorter than the half cycle"));
  }

  private static void measured(Fan fan, Quantity flow, String key, CheckList list) {
    if (fan.kind() == FanKind.FITTED_BUT_NOT_WORKING) {
      if (flow.low() > 0) {
        list.add(
            SurveyCode.FLOW_OF_BROKEN_FAN,
            key,
            flow.written() + " at a fan that is said not to work",
            "no flow, or the kind of fan that it is");
      }
      return;
    }
    fan.declaredFlow()
        .filter(declared -> isFarFrom(flow, declared))
        .ifPresent(
            declared ->
                list.add(
                    SurveyCode.FLOWS_FAR_APART,
                    key,
                    flow.written() + " with " + declared.written() + " declared",
                    "flows of one size; the units may be mixed up"));
  }

  private static boolean isFarFrom(Quantity flow, Quantity declared) {
    return flow.high() < declared.low() * FAR_BELOW || flow.low() > declared.high() * FAR_ABOVE;
  }
}
