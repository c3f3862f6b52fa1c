package org.drysill.assess.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.readings.InstrumentErrors;
import org.drysill.reference.logs.LogRules;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.survey.log.Log;
import org.drysill.survey.log.LogContent;
import org.drysill.survey.log.Logs;
import org.drysill.yaml.Problem;

/** Reads out of the logs of a visit what they say about moisture in the air. */
public final class LogsAssessor {
  private static final String OUTDOORS = "outdoor air";
  private final Home home;
  private final Logs logs;
  private final RoomLogs rooms;
  private final LogErrors errors;

  private LogsAssessor(Home home, Logs logs, LogRules rules, ReadingRules readings) {
    this.home = home;
    this.logs = logs;
    this.errors = new LogErrors(new InstrumentErrors(home.survey(), readings.accuracy()));
    double coverage = rules.balance().coverage().likely();
    Outdoors outdoors =
        new Outdoors(home, logs.outdoor().flatMap(Log::content), readings, coverage);
    this.rooms = new RoomLogs(outdoors, logs.outdoor(), errors, readings, coverage);
  }

  /** Assesses the logs of a home. */
  public static LogsResult assess(Home home, Logs logs, LogRules rules, ReadingRules readings) {
    return new LogsAssessor(home, logs, rules, readings).all();
  }

  private LogsResult all() {
    List<LogAccount> accounts = new ArrayList<>();
    List<UnusedLog> unused = new ArrayList<>();
    List<LoggedRoom> logged = new ArrayList<>();
    for (RoomFacts room : home.rooms()) {
      Optional<Log> log = logs.room(room.id());
      log.ifPresent(l -> account(Optional.of(room.id()), room.name(), l, accounts, unused));
      log.flatMap(l -> rooms.of(room, l)).ifPresent(logged::add);
    }
    logs.outdoor().ifPresent(l -> account(Optional.empty(), OUTDOORS, l, accounts, unused));
    return new LogsResult(accounts, unused, logged, errors.assumptions());
  }

  private static void account(
      Optional<String> room,
      String name,
      Log log,
      List<LogAccount> accounts,
      List<UnusedLog> unused) {
    if (log.content().isPresent()) {
      LogContent content = log.content().get();
      accounts.add(
          new LogAccount(
              room,
              name,
              log.file(),
              content.layout().zone().getId(),
              content.layout().zoneStated(),
              content.figures(),
              content.quality().notes()));
    } else {
      List<String> reasons = log.problems().stream().map(LogsAssessor::said).toList();
      unused.add(new UnusedLog(room, name, log.file(), reasons));
    }
  }

  private static String said(Problem problem) {
    int line = problem.place().line();
    return (line > 0 ? "line " + line + ": " : "")
        + problem.found()
        + (problem.expected().isEmpty() ? "" : "; expected " + problem.expected());
  }
}
