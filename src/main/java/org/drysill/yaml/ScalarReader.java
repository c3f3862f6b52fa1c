package org.drysill.yaml;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drysill.yaml.ProblemList.Finding;

/** Reads a text as the type that the record wants: YAML's own guesses about types are not used. */
final class ScalarReader {
  private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
  private static final Pattern MOMENT =
      Pattern.compile("(\\d{4}-\\d{2}-\\d{2})(?:[Tt ] *(\\d{1,2}:\\d{2}(?::\\d{2})?))?");
  private static final Pattern DAY_FIRST =
      Pattern.compile("(\\d{1,2})[./-](\\d{1,2})[./-](\\d{4})(.*)");
  private static final List<String> YES = List.of("yes", "true", "y");
  private static final List<String> NO = List.of("no", "false", "n");

  private final Complaints complaints;
  private final QuantityReader quantities;
  private final TextReader texts;

  ScalarReader(Complaints complaints, TextReader texts) {
    this.complaints = complaints;
    this.quantities = new QuantityReader(complaints);
    this.texts = texts;
  }

  /** A value of the shape; empty after a complaint. */
  Optional<Object> read(Shape shape, String text, Spot spot) {
    return switch (shape.kind()) {
      case TEXT -> texts.read(text, spot);
      case FLAG -> flag(shape, text, spot);
      case WHOLE -> whole(shape, text, spot);
      case DECIMAL -> quantities.exact(shape, text, spot);
      case QUANTITY -> quantities.read(shape, text, spot);
      case DAY -> day(shape, text, spot);
      case MOMENT -> moment(shape, text, spot);
      case WORD -> word(shape, text, spot);
      case RECORD, OPTIONAL, LIST, MAP ->
          complaints.wrong(YamlCode.WRONG_SHAPE, spot, shape, Finding.quote(text));
    };
  }

  private Optional<Object> flag(Shape shape, String text, Spot spot) {
    String word = Nearest.fold(text);
    if (YES.contains(word) || NO.contains(word)) {
      return Optional.of(YES.contains(word));
    }
    return complaints.wrong(YamlCode.UNKNOWN_WORD, spot, shape, Finding.quote(text));
  }

  private Optional<Object> whole(Shape shape, String text, Spot spot) {
    if (!text.matches("[+-]?\\d{1,9}")) {
      return complaints.wrong(YamlCode.NOT_A_NUMBER, spot, shape, Finding.quote(text));
    }
    int number = Integer.parseInt(text);
    return Bounds.isPossible(number, number, number, spot, complaints)
        ? Optional.of(number)
        : Optional.empty();
  }

  private Optional<Object> day(Shape shape, String text, Spot spot) {
    try {
      if (DAY.matcher(text).matches()) {
        LocalDate day = LocalDate.parse(text);
        return Bounds.isPossible(day, spot, complaints) ? Optional.of(day) : Optional.empty();
      }
    } catch (DateTimeException noSuchDay) {
      return complaints.wrong(YamlCode.NOT_A_DATE, spot, shape, Finding.quote(text));
    }
    return notADate(shape, text, spot);
  }

  private Optional<Object> moment(Shape shape, String text, Spot spot) {
    Matcher parts = MOMENT.matcher(text);
    if (!parts.matches()) {
      return notADate(shape, text, spot);
    }
    try {
      Optional<LocalTime> time =
          Optional.ofNullable(parts.group(2))
              .map(t -> t.indexOf(':') == 1 ? "0" + t : t)
              .map(LocalTime::parse);
      LocalDate day = LocalDate.parse(parts.group(1));
      return Bounds.isPossible(day, spot, complaints)
          ? Optional.of(new Moment(day, time))
          : Optional.empty();
    } catch (DateTimeException noSuchMoment) {
      return complaints.wrong(YamlCode.NOT_A_DATE, spot, shape, Finding.quote(text));
    }
  }

  private Optional<Object> notADate(Shape shape, String text, Spot spot) {
    return complaints.wrong(
        YamlCode.NOT_A_DATE, spot, shape, Finding.quote(text), turnedRound(text));
  }

  /** Day, month and year as people write them, year first; only where the day shows itself. */
  private static Optional<String> turnedRound(String text) {
    Matcher parts = DAY_FIRST.matcher(text);
    if (!parts.matches()) {
      return Optional.empty();
    }
    int one = Integer.parseInt(parts.group(1));
    int two = Integer.parseInt(parts.group(2));
    int day = Math.max(one, two);
    int month = Math.min(one, two);
    if (day <= 12 || day > 31 || month == 0) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(Locale.ROOT, "%s-%02d-%02d%s", parts.group(3), month, day, parts.group(4)));
  }

  private Optional<Object> word(Shape shape, String text, Spot spot) {
    String folded = Nearest.fold(text);
    for (Worded word : shape.words()) {
      if (folded.equals(Nearest.fold(word.word()))
          || word.synonyms().stream().anyMatch(s -> folded.equals(Nearest.fold(s)))) {
        return Optional.of(word);
      }
    }
    List<String> all =
        shape.words().stream()
            .flatMap(w -> Stream.concat(Stream.of(w.word()), w.synonyms().stream()))
            .toList();
    return complaints.wrong(
        YamlCode.UNKNOWN_WORD, spot, shape, Finding.quote(text), Nearest.of(text, all));
  }
}
