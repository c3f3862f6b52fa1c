package org.drysill.survey.log.read;

import java.time.LocalDate;
import java.time.YearMonth;
import org.drysill.survey.log.DateOrder;

/**
 * Reads dates and times in place, without making a text of each: three numbers, or two and the name
 * of a month, in a known order with anything between them; then hours, minutes, seconds and parts
 * of them, a.m. or p.m., an offset from UTC. Dates in one piece (20260122) and seconds or
 * milliseconds since 1970 are understood as well.
 */
final class ClockText {
  private static final long MS_PER_DAY = 86_400_000L;
  private static final long MS_PER_HOUR = 3_600_000L;
  private static final long MS_PER_MINUTE = 60_000L;
  private static final String[] MONTHS = {
    "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"
  };

  private final DateOrder order;
  private final int[] parts = new int[3];
  private char[] text;
  private int at;
  private int end;
  private int digits;
  private long dayKey = -1;
  private long dayMs;
  private long ms;
  private boolean absolute;
  private boolean timed;

  ClockText(DateOrder order) {
    this.order = order;
  }

  /** What was read last [ms since 1970], of the clock or, where it {@link #isAbsolute}, of UTC. */
  long ms() {
    return ms;
  }

  /** True where what was read last is a moment whatever the zone. */
  boolean isAbsolute() {
    return absolute;
  }

  /** True where what was read last had a time of day. */
  boolean isTimed() {
    return timed;
  }

  /** The three numbers of the date that was read last, in the order in which they stand. */
  int part(int index) {
    return parts[index];
  }

  /** Reads a date, with a time of day or without. */
  boolean read(char[] field, int from, int to) {
    begin(field, from, to);
    ms = 0;
    absolute = false;
    timed = false;
    return date() && (at == end || absolute || (gap() && time()));
  }

  /** Reads a time of day and adds it to the date that was read before. */
  boolean readTimeOfDay(char[] field, int from, int to) {
    begin(field, from, to);
    return at < end && !timed && time();
  }

  private void begin(char[] field, int from, int to) {
    text = field;
    at = from;
    end = to;
    while (at < end && DecimalText.isSpace(text[at])) {
      at++;
    }
    while (end > at && DecimalText.isSpace(text[end - 1])) {
      end--;
    }
  }

  private boolean date() {
    long first = number();
    if (digits >= 8) {
      return inOnePiece(first);
    }
    parts[0] = (int) (digits > 0 ? first : monthByName());
    if (parts[0] < 0 || !separator()) {
      return false;
    }
    long second = number();
    parts[1] = (int) (digits > 0 ? second : monthByName());
    if (parts[1] < 0 || !separator()) {
      return false;
    }
    parts[2] = (int) number();
    return digits > 0 && day(parts[order.year()], parts[order.month()], parts[order.day()]);
  }

  /** 20260122, 202601221005, 20260122100500, seconds or milliseconds since 1970. */
  private boolean inOnePiece(long number) {
    return switch (digits) {
      case 8 ->
          order == DateOrder.YEAR_MONTH_DAY
              && day((int) (number / 10_000), (int) (number / 100 % 100), (int) (number % 100));
      case 10 -> moment(number * 1000);
      case 12 -> inOnePiece8(number / 10_000) && clock(number % 10_000 / 100, number % 100, 0);
      case 13 -> moment(number);
      case 14 ->
          inOnePiece8(number / 1_000_000)
              && clock(number / 10_000 % 100, number / 100 % 100, number % 100);
      default -> false;
    };
  }

  private boolean inOnePiece8(long number) {
    digits = 8;
    return inOnePiece(number);
  }

  private boolean moment(long msSince1970) {
    ms = msSince1970;
    absolute = true;
    timed = true;
    return at == end;
  }

  private boolean day(int writtenYear, int month, int day) {
    int year = writtenYear < 100 ? 2000 + writtenYear : writtenYear;
    long key = (year * 100L + month) * 100 + day;
    if (key != dayKey) {
      boolean exists = year >= 1900 && year < 2200 && month >= 1 && month <= 12 && day >= 1;
      if (!exists || day > YearMonth.of(year, month).lengthOfMonth()) {
        return false;
      }
      dayKey = key;
      dayMs = LocalDate.of(year, month, day).toEpochDay() * MS_PER_DAY;
    }
    ms = dayMs;
    return true;
  }

  private boolean time() {
    long hour = number();
    if (digits == 0 || digits > 2 || at == end || !isClockMark(text[at])) {
      return false;
    }
    at++;
    long minute = number();
    if (digits != 2) {
      return false;
    }
    long second = 0;
    long fraction = 0;
    if (at < end && isClockMark(text[at])) {
      at++;
      second = number();
      fraction = digits == 0 ? -1 : fraction();
    }
    return fraction >= 0 && clock(halfOfDay(hour), minute, second) && offset(fraction);
  }

  private long fraction() {
    if (at == end || (text[at] != '.' && text[at] != ',')) {
      return 0;
    }
    at++;
    long parts = number();
    long scaled = parts * 1000;
    for (int i = 0; i < digits; i++) {
      scaled /= 10;
    }
    return scaled;
  }

  private boolean clock(long hour, long minute, long second) {
    if (hour < 0 || hour > 24 || minute > 59 || second > 60) {
      return false;
    }
    ms += hour * MS_PER_HOUR + minute * MS_PER_MINUTE + second * 1000;
    timed = true;
    return true;
  }

  /** The hour of the day, where a.m. or p.m. stands behind it; −1 where that does not fit. */
  private long halfOfDay(long hour) {
    skipSpaces();
    if (at == end || (lower(at) != 'a' && lower(at) != 'p')) {
      return hour;
    }
    boolean afternoon = lower(at) == 'p';
    while (at < end
        && (lower(at) == 'a' || lower(at) == 'p' || lower(at) == 'm' || text[at] == '.')) {
      at++;
    }
    return hour < 1 || hour > 12 ? -1 : hour % 12 + (afternoon ? 12 : 0);
  }

  /** Z, +01:00, +0100, +01 or nothing. */
  private boolean offset(long fraction) {
    ms += fraction;
    skipSpaces();
    if (at == end) {
      return true;
    }
    absolute = true;
    if (lower(at) == 'z') {
      return ++at == end;
    }
    int sign = text[at] == '+' ? -1 : text[at] == '-' ? 1 : 0;
    at++;
    long hours = number();
    long minutes = 0;
    if (digits == 4) {
      minutes = hours % 100;
      hours /= 100;
    } else if (at < end && text[at] == ':') {
      at++;
      minutes = number();
    }
    ms += sign * (hours * MS_PER_HOUR + minutes * MS_PER_MINUTE);
    return sign != 0 && at == end && hours <= 18;
  }

  /** A whole number from here on, with how many digits it has. */
  private long number() {
    long number = 0;
    int begin = at;
    while (at < end && text[at] >= '0' && text[at] <= '9' && at - begin < 18) {
      number = number * 10 + (text[at++] - '0');
    }
    digits = at - begin;
    return number;
  }

  private boolean separator() {
    int begin = at;
    while (at < end && isDateMark(text[at])) {
      at++;
    }
    return at > begin;
  }

  private boolean gap() {
    int begin = at;
    while (at < end && (text[at] == 'T' || text[at] == 't' || text[at] == ',' || isGap(text[at]))) {
      at++;
    }
    return at > begin;
  }

  private int monthByName() {
    if (at + 3 > end) {
      return -1;
    }
    for (int month = 0; month < MONTHS.length; month++) {
      String name = MONTHS[month];
      if (lower(at) == name.charAt(0)
          && lower(at + 1) == name.charAt(1)
          && lower(at + 2) == name.charAt(2)) {
        while (at < end && Character.isLetter(text[at])) {
          at++;
        }
        return month + 1;
      }
    }
    return -1;
  }

  private void skipSpaces() {
    while (at < end && isGap(text[at])) {
      at++;
    }
  }

  private char lower(int index) {
    return Character.toLowerCase(text[index]);
  }

  private static boolean isClockMark(char c) {
    return c == ':' || c == '.' || c == 'h' || c == 'H';
  }

  private static boolean isDateMark(char c) {
    return c == '-' || c == '/' || c == '.' || c == ',' || isGap(c);
  }

  private static boolean isGap(char c) {
    return c == ' ' || c == '_' || c == '\u00A0' || c == '\u202F';
  }
}
