package org.drysill.survey.share;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.drysill.survey.CycleLogger;
import org.drysill.survey.SurveyFile;
import org.drysill.survey.log.CycleLog;
import org.drysill.survey.log.Log;
import org.drysill.survey.log.Logs;
import org.drysill.yaml.Moment;
import org.drysill.yaml.Place;
import org.drysill.yaml.Problem;
import org.drysill.yaml.Problem.Severity;
import org.drysill.yaml.Quantity;
import org.drysill.yaml.RecordChange;
import org.drysill.yaml.RecordParts;

/**
 * Makes the share copy of a survey, of the earlier one, and of their logs, with the same neutral
 * words in all of them. Numbers, dates, kinds and entries of published tables stay as they are.
 */
public final class ShareCopy {
  private final Aliases aliases;

  /** A copy for a survey and the earlier one that it names. */
  public ShareCopy(SurveyFile file) {
    this.aliases =
        new Aliases(
            Stream.concat(Stream.of(file), file.previous().stream())
                .map(SurveyFile::survey)
                .toList());
  }

  /** The survey for the copy; its text is kept for its hash alone. */
  public SurveyFile of(SurveyFile file) {
    return shared(file, "the survey");
  }

  /** The earlier survey for the copy. */
  public SurveyFile ofEarlier(SurveyFile file) {
    return shared(file, "the earlier survey");
  }

  private SurveyFile shared(SurveyFile file, String name) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    file.files().forEach((path, bytes) -> files.put(name + ", " + aliases.file(path), bytes));
    return new SurveyFile(
        changed(file.survey()),
        file.previous().map(this::ofEarlier),
        name,
        file.text(),
        file.marked(),
        List.of(),
        files,
        Map.of(),
        file.folder(),
        true);
  }

  /** The logs for the copy; why one cannot be used may quote it and is left out. */
  public Logs of(Logs logs) {
    Map<String, Log> rooms = new LinkedHashMap<>();
    logs.rooms().forEach((room, log) -> rooms.put(aliases.id(room), changed(log)));
    Map<CycleLogger, CycleLog> cycles = new LinkedHashMap<>();
    logs.cycles().forEach((logger, log) -> cycles.put(changed(logger), changed(log)));
    return new Logs(rooms, logs.outdoor().map(this::changed), cycles);
  }

  private CycleLog changed(CycleLog log) {
    return new CycleLog(
        changed(log.logger()), log.sha256(), log.samples(), log.account(), untold(log.problems()));
  }

  private Log changed(Log log) {
    return new Log(changed(log.logger()), log.sha256(), log.content(), untold(log.problems()));
  }

  private static List<Problem> untold(List<Problem> problems) {
    return problems.stream().map(Problem::code).distinct().map(ShareCopy::untold).toList();
  }

  private static Problem untold(String code) {
    return new Problem(
        Severity.WARNING,
        code,
        new Place("", 0, 0),
        "",
        "for a reason that may quote the file and is left out of a copy to share",
        "",
        Optional.empty(),
        "");
  }

  private <T extends Record> T changed(T record) {
    return RecordChange.of(record, (component, value) -> value(component, value, record));
  }

  private Object value(RecordComponent component, Object value, Record in) {
    if (component.isAnnotationPresent(LeftOut.class)) {
      return nothing(component);
    }
    Renamed renamed = component.getAnnotation(Renamed.class);
    UnaryOperator<Object> inner =
        renamed == null ? this::within : text -> renamed((String) text, renamed.value(), in);
    return each(value, inner);
  }

  private static Object nothing(RecordComponent component) {
    if (component.getType() == Optional.class) {
      return Optional.empty();
    }
    if (component.getType() == List.class) {
      return List.of();
    }
    throw new IllegalStateException("cannot be left out: " + component);
  }

  private static Object each(Object value, UnaryOperator<Object> inner) {
    if (value instanceof Optional<?> optional) {
      return optional.map(v -> inner.apply(v));
    }
    if (value instanceof List<?> list) {
      return list.stream().map(v -> inner.apply(v)).toList();
    }
    return inner.apply(value);
  }

  private Object within(Object value) {
    boolean own =
        value instanceof Record && !(value instanceof Quantity || value instanceof Moment);
    return own ? changed((Record) value) : value;
  }

  private String renamed(String text, Renamed.As as, Record in) {
    return switch (as) {
      case ID -> aliases.id(text);
      case NAME -> aliases.name(idOf(in));
      case INSTRUMENT -> aliases.instrument(text);
      case FILE -> aliases.file(text);
      case ADDRESS -> aliases.address(text);
    };
  }

  private static String idOf(Record record) {
    return RecordParts.of(record).stream()
        .filter(part -> part.name().equals("id"))
        .map(part -> (String) part.in(record))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("a name without an id: " + record.getClass()));
  }
}
