package org.drysill.assess.surfaces.logged;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.LogsResult;
import org.drysill.assess.logs.Trace;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.surface.TemperatureFactor;
import org.drysill.reference.Sourced;

/**
 * Counts the hours of a log in which cold places were moist or wet. The surface follows the air of
 * the same step, Tsi = Te + f (Ti − Te): right for panes and thin walls; a heavy wall lags by
 * hours, which moves its hours more than it changes their number.
 */
public final class LoggedSurfaces {
  private static final double WET = 1;
  private final LogsResult logs;
  private final Sourced moist;

  private LoggedSurfaces(LogsResult logs, Sourced moist) {
    this.logs = logs;
    this.moist = moist;
  }

  /**
   * The places in rooms that were logged beside outdoor air of the same time.
   *
   * @param moist humidity at a surface from which mould may grow where it lasts [ratio]
   */
  public static List<LoggedSurface> of(List<ColdPlace> places, LogsResult logs, Sourced moist) {
    LoggedSurfaces surfaces = new LoggedSurfaces(logs, moist);
    return places.stream().flatMap(surfaces::of).toList();
  }

  private Stream<LoggedSurface> of(ColdPlace place) {
    return logs.room(place.room()).filter(r -> r.source().simultaneous()).stream()
        .map(room -> of(place, room));
  }

  private LoggedSurface of(ColdPlace place, LoggedRoom room) {
    return new LoggedSurface(
        place.id(),
        place.room(),
        place.name(),
        place.surface(),
        room.trace().hours(room.trace()::isPaired),
        hours(place, room, moist.likely(), "moist", List.of(moist)),
        hours(place, room, WET, "wet", List.of()));
  }

  private static Figure hours(
      ColdPlace place, LoggedRoom room, double limit, String word, List<Sourced> sources) {
    Range factor = place.factor().figure().value();
    double error = room.relativeHumidity().value().high() - room.relativeHumidity().likely();
    Trace trace = room.trace();
    Range hours =
        new Range(
            hours(
                trace,
                i -> Math.max(surface(trace, i, factor.low()), surface(trace, i, factor.high())),
                -error,
                limit),
            hours(trace, i -> surface(trace, i, factor.likely()), 0, limit),
            hours(
                trace,
                i -> Math.min(surface(trace, i, factor.low()), surface(trace, i, factor.high())),
                error,
                limit));
    String percent = String.format(Locale.ROOT, "%.0f %%", 100 * limit);
    return new Figure(
        "log.surface." + place.id() + "." + word,
        "Time at or above "
            + percent
            + " at the surface: "
            + place.roomName()
            + ", "
            + place.name(),
        hours,
        Unit.HOURS,
        Basis.CALCULATED,
        () ->
            new Working(
                "Σ t where pi ≥ limit × psat(Te + f (Ti − Te))",
                List.of(
                    Input.of("f", place.factor().figure()),
                    Input.of(
                        "limit",
                        "Relative humidity at the surface",
                        Range.exactly(limit),
                        Unit.RELATIVE_HUMIDITY,
                        Basis.PUBLISHED)),
                sources.stream().map(Sourced::source).toList(),
                Optional.of(
                    "Step by step over the log of the room against "
                        + room.outdoorSaid()
                        + ". Bounds: bounds of f and the hygrometer's error together.")));
  }

  private static double hours(
      Trace trace, IntToDoubleFunction surface, double error, double limit) {
    return trace.hours(
        i -> trace.isPaired(i) && reaches(trace, i, surface.applyAsDouble(i), error, limit));
  }

  /** Where it is warmer outdoors than in the room a higher factor makes a surface colder [°C]. */
  private static double surface(Trace trace, int i, double factor) {
    return TemperatureFactor.surfaceCelsius(factor, trace.celsius(i), trace.outdoorCelsius(i));
  }

  private static boolean reaches(Trace trace, int i, double surface, double error, double limit) {
    double pressure =
        trace.pressurePa(i) * Math.max(0, trace.humidity(i) + error) / trace.humidity(i);
    return pressure >= limit * Iso13788Vapour.saturationPressurePa(surface);
  }
}
