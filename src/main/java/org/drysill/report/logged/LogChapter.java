package org.drysill.report.logged;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Finding;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.LogsResult;
import org.drysill.assess.logs.air.LoggedAir;
import org.drysill.assess.logs.air.NightAir;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.ChartBlock;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.chapter.Chapter;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;

/** What the loggers recorded. */
public final class LogChapter implements Chapter {
  /** The chapter. */
  public static final Chapter CHAPTER = new LogChapter();

  private static final int CHARTED = 3;
  private static final long DAY_MM = 38;

  private LogChapter() {}

  @Override
  public Optional<Section> write(Desk desk) {
    LogsResult logs = desk.subject().logs();
    if (logs.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    if (!logs.rooms().isEmpty()) {
      blocks.addAll(rooms(desk, logs.rooms()));
    }
    unused(logs).ifPresent(blocks::add);
    if (!logs.accounts().isEmpty()) {
      blocks.add(QualityTable.of(logs.accounts()));
    }
    return Optional.of(
        new Section("logs", heading(desk, logs), "What the loggers recorded", false, blocks));
  }

  private static List<Block> rooms(Desk desk, List<LoggedRoom> rooms) {
    List<LoggedRoom> charted = rooms.stream().limit(CHARTED).toList();
    List<Block> blocks = new ArrayList<>();
    blocks.add(RoomsTable.of(desk, rooms));
    for (LoggedRoom room : charted.stream().filter(LoggedRoom::holdsADay).toList()) {
      blocks.add(wide("log-" + room.room(), TraceChart.of(desk, room)));
    }
    ExcessChart.of(desk, charted).ifPresent(c -> blocks.add(wide("log-excess", c)));
    for (LoggedRoom room : charted) {
      DayChart.of(room).ifPresent(c -> blocks.add(wide("day-" + room.room(), c, DAY_MM)));
    }
    blocks.add(wide("log-above", AboveChart.of(desk, rooms)));
    SurfaceTable.of(desk).ifPresent(blocks::add);
    LoggedAir air = desk.subject().assessment().loggedAir();
    AirTable.of(desk, air).ifPresent(blocks::add);
    air.nights().forEach(n -> blocks.add(night(desk, n)));
    EventTable.of(desk, air).ifPresent(blocks::add);
    air.production().ifPresent(p -> blocks.add(production(desk, p)));
    return blocks;
  }

  private static Block night(Desk desk, NightAir night) {
    return new Prose(
        desk.notes(List.of(Optional.of(night.airPerSleeper()))),
        "",
        "Fresh air by night.",
        "From three to six at night the "
            + Words.within(night.roomName())
            + " held "
            + desk.numbers().full(night.excess())
            + " of CO₂ more than outdoors. That is the air of sleepers who get about "
            + desk.numbers().full(night.airPerSleeper())
            + " each, however many they are; nights without them make it look better.");
  }

  private static Block production(Desk desk, Finding production) {
    return new Prose(
        desk.notes(List.of(production.required(), production.provided())),
        "",
        "Water over the log.",
        production
                .required()
                .map(
                    implied ->
                        "With the air that the home is believed to get, the mean excess means "
                            + desk.numbers().full(implied)
                            + " of water; the list of sources has "
                            + desk.numbers().full(production.provided().orElseThrow())
                            + ". ")
                .orElse("")
            + production.because());
  }

  /** A log that cannot be used is told with its reason; the rest stands. */
  private static Optional<Block> unused(LogsResult logs) {
    return logs.unused().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Bullets(
                List.of(),
                logs.unused().stream()
                    .map(
                        log ->
                            Words.sentence(
                                "The log of the "
                                    + Words.within(log.name())
                                    + " ("
                                    + log.file()
                                    + ") cannot be used: "
                                    + String.join("; ", log.reasons())))
                    .toList()));
  }

  private static String heading(Desk desk, LogsResult logs) {
    return logs.rooms().stream()
        .filter(LoggedRoom::holdsADay)
        .max((a, b) -> Double.compare(a.excess().likely(), b.excess().likely()))
        .map(
            room ->
                "Over "
                    + Math.round(room.days())
                    + " days the "
                    + Words.within(room.roomName())
                    + " held "
                    + desk.numbers().full(room.excess())
                    + " more water than the air outdoors")
        .orElse(
            logs.rooms().isEmpty()
                ? "The loggers could not be read"
                : "The loggers recorded too little to be leaned on");
  }

  private static ChartBlock wide(String id, ChartSpec spec) {
    return wide(id, spec, Math.round(spec.heightMm()));
  }

  private static ChartBlock wide(String id, ChartSpec spec, long heightMm) {
    return new ChartBlock(List.of(), "chart-" + id, spec, Long.toString(heightMm), true);
  }
}
