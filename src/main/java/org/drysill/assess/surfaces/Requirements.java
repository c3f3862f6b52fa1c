package org.drysill.assess.surfaces;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.assess.surfaces.factor.TemperatureFactor;
import org.drysill.assess.surfaces.months.Criterion;
import org.drysill.assess.surfaces.months.MonthNames;
import org.drysill.assess.surfaces.months.MonthRow;
import org.drysill.assess.surfaces.months.MonthTable;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.physics.Range;
import org.drysill.reference.surfaces.CriticalFactor;

/** Compares temperature factors with what the year, and with what national documents ask. */
final class Requirements {
  private static final String READ_SURFACE =
      "On a cold day, at least 10 K colder outdoors, read the surface, the room's air beside it and"
          + " the outdoor air within an hour.";
  private static final String READ_AIR =
      "Read or log temperature and humidity of the room and of the outdoor air together, in cold"
          + " weather.";

  private Requirements() {}

  /**
   * Against the factor that the critical month needs. A month that is hardly colder outdoors needs
   * none; where the air alone makes the surface too humid in it, no factor helps and meeting the
   * other months tells nothing of it.
   */
  static Finding ofYear(
      String id,
      String subject,
      RoomFacts room,
      TemperatureFactor factor,
      MonthTable months,
      Criterion criterion,
      boolean vapourAssumed) {
    Verdict compared = months.requiredFactor().map(r -> compare(factor, r)).orElse(Verdict.MEETS);
    List<Integer> mild = mildAtRisk(months);
    boolean beyondFactors = compared == Verdict.MEETS && !mild.isEmpty();
    Verdict verdict = beyondFactors ? Verdict.UNKNOWN : compared;
    return new Finding(
        "surface." + id,
        subject,
        Optional.of(room.id()),
        verdict,
        Direction.AT_LEAST,
        Optional.of(factor.figure()),
        months.requiredFactor(),
        beyondFactors ? byAirAlone(mild) : because(verdict, factor, months, criterion),
        verdict == Verdict.UNKNOWN
            ? Optional.of(settle(factor, vapourAssumed, beyondFactors))
            : Optional.empty(),
        List.of(criterion.source()));
  }

  private static String settle(TemperatureFactor factor, boolean vapourAssumed, boolean byAir) {
    return byAir || (vapourAssumed && !needsSurface(factor)) ? READ_AIR : READ_SURFACE;
  }

  /** Months at risk, at the likely values, in which no factor is required. */
  private static List<Integer> mildAtRisk(MonthTable months) {
    return months.rows().stream()
        .filter(r -> r.requiredFactor().isEmpty() && r.risk() != Risk.NONE)
        .map(MonthRow::month)
        .toList();
  }

  private static String byAirAlone(List<Integer> months) {
    return "It is hardly colder outdoors than indoors in %s, so that no temperature factor helps:"
            .formatted(MonthNames.of(months))
        + " the air itself makes the surface too humid.";
  }

  /** Even the least favourable factor must reach even the highest that is asked. */
  private static Verdict compare(TemperatureFactor factor, Figure required) {
    Range spare = factor.figure().value().minus(required.value());
    return Verdict.atLeast(spare, 0);
  }

  private static boolean needsSurface(TemperatureFactor factor) {
    return factor.weak() || factor.figure().basis() == Basis.ASSUMED;
  }

  private static String because(
      Verdict verdict, TemperatureFactor factor, MonthTable months, Criterion criterion) {
    if (months.criticalMonth().isEmpty()) {
      return "It is never cold enough outdoors for a temperature factor to be required.";
    }
    String when =
        (criterion.coldNights() ? "on cold nights in " : "in ")
            + MonthNames.of(months.criticalMonth().get());
    String actual = Words.factor(factor.figure().likely());
    String required = Words.factor(months.requiredFactor().orElseThrow().likely());
    return switch (verdict) {
      case MEETS ->
          "Its factor of %s is enough even %s, which needs %s.".formatted(actual, when, required);
      case SHORT ->
          "Its factor of %s is too low %s, which needs %s.".formatted(actual, when, required);
      case UNKNOWN ->
          "Its factor is %s, %s would need %s, and the two cannot be told apart."
              .formatted(actual, MonthNames.of(months.criticalMonth().get()), required);
    };
  }

  /** Against the critical factor of a national document, for comparison. */
  static Finding ofDocument(
      String id, String subject, RoomFacts room, TemperatureFactor factor, CriticalFactor printed) {
    Verdict verdict = Verdict.atLeast(factor.figure().value(), printed.value().value());
    return new Finding(
        "surface." + id + ".published",
        subject + ", for comparison with " + printed.source().document(),
        Optional.of(room.id()),
        verdict,
        Direction.AT_LEAST,
        Optional.of(factor.figure()),
        Optional.of(printedFigure(id, printed)),
        "The document sees little risk of mould from %s up; the place has %s."
            .formatted(
                Words.factor(printed.value().value()), Words.factor(factor.figure().likely())),
        verdict == Verdict.UNKNOWN ? Optional.of(READ_SURFACE) : Optional.empty(),
        List.of(printed.source()));
  }

  private static Figure printedFigure(String id, CriticalFactor printed) {
    Range value = printed.value().range();
    return new Figure(
        "surface." + id + ".published_factor",
        "critical temperature factor of " + printed.source().document(),
        value,
        Unit.RATIO,
        Basis.PUBLISHED,
        () ->
            new Working(
                "f as printed",
                List.of(Input.of("f", "printed", value, Unit.RATIO, Basis.PUBLISHED)),
                List.of(printed.source()),
                Optional.empty()));
  }
}
