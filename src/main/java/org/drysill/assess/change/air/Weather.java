package org.drysill.assess.change.air;

import java.util.Locale;
import java.util.Optional;
import org.drysill.assess.change.shown.Doubt;
import org.drysill.assess.change.shown.Judgement;
import org.drysill.physics.Range;
import org.drysill.reference.readings.ChangeRules;

/** Whether outdoor air of two visits is alike, by temperature and by vapour, and cold enough. */
final class Weather {
  /** Far below any digit that counts: limits may be reached. */
  private static final double ROUNDING = 1e-9;

  private final ChangeRules rules;

  Weather(ChangeRules rules) {
    this.rules = rules;
  }

  /** What stands against comparing; empty where nothing does. */
  Optional<Judgement> doubt(Outdoors before, Outdoors after) {
    if (apart(before.temperature(), after.temperature()) > rules.alikeWithin().value()) {
      return Optional.of(Judgement.notShown(Doubt.WEATHER_UNLIKE, temperatures(before, after)));
    }
    if (apartInVapour(before, after) > rules.vapourWithin().value()) {
      return Optional.of(Judgement.notShown(Doubt.WEATHER_UNLIKE, vapours(before, after)));
    }
    if (isTooWarm(before, after)) {
      return Optional.of(Judgement.notShown(Doubt.TOO_WARM, tooWarm()));
    }
    return Optional.empty();
  }

  OutdoorLikeness compare(Optional<Outdoors> before, Optional<Outdoors> after) {
    boolean known = before.isPresent() && after.isPresent();
    return new OutdoorLikeness(
        before.map(o -> o.temperature("before")),
        after.map(o -> o.temperature("after")),
        before.flatMap(o -> o.pressure("before")),
        after.flatMap(o -> o.pressure("after")),
        known && doubt(before.get(), after.get()).isEmpty(),
        known
            ? said(before.get(), after.get())
            : "The outdoor temperature was not read at both visits.");
  }

  private String said(Outdoors before, Outdoors after) {
    String warm = isTooWarm(before, after) ? "; " + tooWarm() : "";
    String vapour = bothHumid(before, after) ? "; " + vapours(before, after) : "";
    return "Outdoors " + temperatures(before, after) + vapour + warm + ".";
  }

  private String temperatures(Outdoors before, Outdoors after) {
    return String.format(
            Locale.ROOT,
            "%.1f °C before and %.1f °C after, ",
            before.temperature().likely(),
            after.temperature().likely())
        + held(
            apart(before.temperature(), after.temperature()),
            rules.alikeWithin().value(),
            "%.0f K");
  }

  private String vapours(Outdoors before, Outdoors after) {
    return String.format(
            Locale.ROOT,
            "vapour %.0f Pa and %.0f Pa, ",
            before.pressure().orElseThrow().likely(),
            after.pressure().orElseThrow().likely())
        + held(apartInVapour(before, after), rules.vapourWithin().value(), "%.0f Pa");
  }

  private static String held(double apart, double limit, String pattern) {
    return (apart <= limit ? "within the " : "further apart than the ")
        + String.format(Locale.ROOT, pattern, limit)
        + " up to which weather counts as alike";
  }

  private boolean isTooWarm(Outdoors before, Outdoors after) {
    return Math.max(before.temperature().likely(), after.temperature().likely())
        > rules.warmestOutdoors().value();
  }

  private String tooWarm() {
    return String.format(
        Locale.ROOT,
        "outdoors it was above the %.0f °C up to which homes are heated",
        rules.warmestOutdoors().value());
  }

  private static double apartInVapour(Outdoors before, Outdoors after) {
    return bothHumid(before, after)
        ? apart(before.pressure().orElseThrow(), after.pressure().orElseThrow())
        : 0;
  }

  private static boolean bothHumid(Outdoors before, Outdoors after) {
    return before.pressure().isPresent() && after.pressure().isPresent();
  }

  private static double apart(Range first, Range second) {
    return Math.abs(second.likely() - first.likely()) - ROUNDING;
  }
}
