package org.drysill.report.logged;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.TimeAbove;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.SourceBars;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** For how much of the log each room was above the humidities that readings are held against. */
final class AboveChart {
  private AboveChart() {}

  static SourceBars of(Desk desk, List<LoggedRoom> rooms) {
    List<SourceBars.Row> rows = new ArrayList<>();
    for (LoggedRoom room : rooms) {
      room.above().forEach(a -> rows.add(row(desk.numbers(), room, a)));
    }
    String title = title(desk.numbers(), rooms);
    return new SourceBars(
        new ChartText(
            title,
            "share of the time with readings, %",
            "Logs; thin lines: error of the loggers",
            title + ". " + Words.list(rows, r -> r.label() + ": " + r.valueText()) + "."),
        Axis.fromZero(100, 5),
        rows);
  }

  private static SourceBars.Row row(Numbers numbers, LoggedRoom room, TimeAbove above) {
    Figure share = above.share();
    return new SourceBars.Row(
        Words.capital(Words.shortened(room.roomName(), 24))
            + ", above "
            + Math.round(100 * above.limit())
            + Numbers.JOIN
            + "%",
        numbers.onAxis(share.value(), Unit.PERCENT),
        numbers.full(share) + ", " + numbers.likely(above.time()),
        false);
  }

  /** The room that was longest above the middle one of the limits. */
  private static String title(Numbers numbers, List<LoggedRoom> rooms) {
    int middle = rooms.get(0).above().size() / 2;
    LoggedRoom longest =
        rooms.stream()
            .max(Comparator.comparingDouble(r -> r.above().get(middle).share().likely()))
            .orElseThrow();
    TimeAbove above = longest.above().get(middle);
    return "The %s was above %d%s%% for %s of the time"
        .formatted(
            Words.within(longest.roomName()),
            Math.round(100 * above.limit()),
            Numbers.JOIN,
            numbers.likely(above.share()));
  }
}
