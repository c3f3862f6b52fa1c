package org.drysill.assess.ventilation.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.drysill.physics.Airflow;
import org.drysill.physics.Range;
import org.drysill.reference.rules.ReportUnits;

/**
 * Flows and areas as words. What is there is rounded down and what is asked is rounded up, so that
 * no rounding makes a home look better than it is. A whole number has no decimals: 13 l/s.
 *
 * @param units the units that the reader is used to
 */
public record FlowText(ReportUnits units) {
  private static final double MM2_PER_M2 = 1e6;
  private static final double SQUARE_INCH_M2 = 0.0254 * 0.0254;

  /** A digit far beyond what is printed; keeps 30.0 from being printed as 29.9 or 30.1. */
  private static final double CRUMB = 1e-9;

  private static final double WHOLE_FROM = 10;

  /** A flow [m³/s] that is there, such as {@code 9.5 l/s}. */
  public String provided(double m3PerSecond) {
    return number(flow(m3PerSecond) + CRUMB, flowDigits(), RoundingMode.FLOOR) + flowUnit();
  }

  /** A flow [m³/s] that is asked. */
  public String required(double m3PerSecond) {
    return number(flow(m3PerSecond) - CRUMB, flowDigits(), RoundingMode.CEILING) + flowUnit();
  }

  /** A range of flows that are there, such as {@code 8.1 to 9.5 l/s}. */
  public String provided(Range range) {
    BigDecimal low = rounded(flow(range.low()) + CRUMB, flowDigits(), RoundingMode.FLOOR);
    BigDecimal high = rounded(flow(range.high()) + CRUMB, flowDigits(), RoundingMode.FLOOR);
    return between(low, high, Math.max(decimals(low), decimals(high)));
  }

  /**
   * A range of flows that are there as tables print its ends, without decimals from 10 on, where
   * the printed ends still hold what is asked between them.
   */
  public String provided(Range range, double asked) {
    int digits = flow(range.likely()) >= WHOLE_FROM ? 0 : flowDigits();
    BigDecimal low = rounded(flow(range.low()), digits, RoundingMode.HALF_UP);
    BigDecimal high = rounded(flow(range.high()), digits, RoundingMode.HALF_UP);
    BigDecimal limit = BigDecimal.valueOf(flow(asked));
    return low.compareTo(limit) < 0 && high.compareTo(limit) > 0
        ? between(low, high, digits)
        : provided(range);
  }

  private String between(BigDecimal low, BigDecimal high, int digits) {
    String from = low.setScale(digits, RoundingMode.UNNECESSARY).toPlainString();
    String to = high.setScale(digits, RoundingMode.UNNECESSARY).toPlainString();
    return from.equals(to) ? from + flowUnit() : from + " to " + to + flowUnit();
  }

  /** A ventilator's area [m²] that is there, such as {@code 4000 mm²}. */
  public String ventilator(double m2) {
    return number(ventArea(m2) + CRUMB, ventDigits(), RoundingMode.FLOOR) + ventUnit();
  }

  /** A ventilator's area [m²] that is asked. */
  public String ventilatorRequired(double m2) {
    return number(ventArea(m2) - CRUMB, ventDigits(), RoundingMode.CEILING) + ventUnit();
  }

  /** An opening's area [m²] that is there, such as {@code 0.55 m²}. */
  public String opening(double m2) {
    return number(openingArea(m2) + CRUMB, 2, RoundingMode.FLOOR) + openingUnit();
  }

  /** An opening's area [m²] that is asked. */
  public String openingRequired(double m2) {
    return number(openingArea(m2) - CRUMB, 2, RoundingMode.CEILING) + openingUnit();
  }

  private double flow(double m3PerSecond) {
    Airflow flow = Airflow.m3PerSecond(m3PerSecond);
    return switch (units) {
      case METRIC -> flow.litresPerSecond();
      case METRIC_HOURLY -> flow.m3PerHour();
      case INCH_POUND -> flow.cubicFeetPerMinute();
    };
  }

  private int flowDigits() {
    return units == ReportUnits.INCH_POUND ? 0 : 1;
  }

  private String flowUnit() {
    return switch (units) {
      case METRIC -> " l/s";
      case METRIC_HOURLY -> " m³/h";
      case INCH_POUND -> " cfm";
    };
  }

  private double ventArea(double m2) {
    return units == ReportUnits.INCH_POUND ? m2 / SQUARE_INCH_M2 : m2 * MM2_PER_M2;
  }

  private int ventDigits() {
    return units == ReportUnits.INCH_POUND ? 1 : 0;
  }

  private String ventUnit() {
    return units == ReportUnits.INCH_POUND ? " in²" : " mm²";
  }

  private double openingArea(double m2) {
    return units == ReportUnits.INCH_POUND ? m2 / (144 * SQUARE_INCH_M2) : m2;
  }

  private String openingUnit() {
    return units == ReportUnits.INCH_POUND ? " ft²" : " m²";
  }

  private static String number(double value, int digits, RoundingMode mode) {
    BigDecimal rounded = rounded(value, digits, mode);
    return rounded.setScale(decimals(rounded), RoundingMode.UNNECESSARY).toPlainString();
  }

  private static BigDecimal rounded(double value, int digits, RoundingMode mode) {
    return BigDecimal.valueOf(Math.max(0, value)).setScale(digits, mode);
  }

  /** How many decimals say something: none of a whole number of tenths; areas keep hundredths. */
  private static int decimals(BigDecimal rounded) {
    boolean whole = rounded.scale() == 1 && rounded.stripTrailingZeros().scale() <= 0;
    return whole ? 0 : rounded.scale();
  }
}
