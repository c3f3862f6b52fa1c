package org.drysill.reference.climate;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.climate.EpwProblems.Spot;

/**
 * What the header lines of a weather file say.
 *
 * @param place city and country
 * @param recordsPerHour how many records an hour has
 * @param rest the text after the header
 */
record EpwHeader(String place, int recordsPerHour, String rest) {
  private static final String FIRST = "LOCATION";
  private static final String LAST = "DATA PERIODS";

  /** Reads the header; empty, with a problem, where it is none. */
  static Optional<EpwHeader> of(String text, int lines, EpwProblems problems) {
    List<String> header = text.lines().limit(lines).toList();
    if (header.isEmpty() || !header.get(0).startsWith(FIRST)) {
      problems.add(EpwCode.NOT_EPW, spot(1, header), first(header), "a line LOCATION,…");
      return Optional.empty();
    }
    if (header.size() < lines || !header.get(lines - 1).startsWith(LAST)) {
      problems.add(
          EpwCode.NOT_EPW,
          spot(header.size(), header),
          "a header without its last line",
          "a line DATA PERIODS,… as line " + lines);
      return Optional.empty();
    }
    return recordsPerHour(header, problems)
        .map(perHour -> new EpwHeader(place(header.get(0)), perHour, rest(text, lines)));
  }

  private static Optional<Integer> recordsPerHour(List<String> header, EpwProblems problems) {
    String line = header.get(header.size() - 1);
    String[] fields = line.split(",", -1);
    String written = fields.length > 2 ? fields[2].strip() : "";
    if (written.matches("[1-9]|[1-5][0-9]|60")) {
      return Optional.of(Integer.valueOf(written));
    }
    problems.add(
        EpwCode.NOT_A_NUMBER,
        spot(header.size(), header),
        '"' + written + '"',
        "the number of records per hour, 1 to 60, as third field");
    return Optional.empty();
  }

  private static String place(String line) {
    String[] fields = line.split(",", -1);
    String city = fields.length > 1 ? fields[1].strip() : "";
    String country = fields.length > 3 ? fields[3].strip() : "";
    return country.isEmpty() ? city : city + ", " + country;
  }

  private static String rest(String text, int lines) {
    int at = 0;
    for (int line = 0; line < lines && at < text.length(); line++) {
      at = nextLine(text, at);
    }
    return text.substring(at);
  }

  private static int nextLine(String text, int from) {
    int at = from;
    while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
      at++;
    }
    boolean pair = at + 1 < text.length() && text.charAt(at) == '\r' && text.charAt(at + 1) == '\n';
    return Math.min(text.length(), at + (pair ? 2 : 1));
  }

  private static String first(List<String> header) {
    return header.isEmpty() ? "nothing" : "another first line";
  }

  private static Spot spot(int line, List<String> header) {
    return new Spot(
        Math.max(1, line), 1, "", header.isEmpty() ? "" : header.get(Math.max(1, line) - 1));
  }
}
