package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.surfaces.ColdPlace;
import org.drysill.assess.surfaces.CondensationResult;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.assess.surfaces.months.Risk;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.Entries;
import org.drysill.report.block.Entry;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;

/** Condensation and mould: every cold spot and window now and by month. */
final class ColdChapter implements Chapter {
  private static final int CHARTS = 2;
  private static final int HEAT_ROWS = 16;
  private static final int NAMED_ROOMS = 5;

  /** Letters of a name in tables; the list of rooms has it whole. */
  private static final int NAME = 60;

  /** How much of it is told. */
  enum Depth {
    /** All in one place. */
    WHOLE,
    /** Where, why, from when, and what would stop it. */
    PLACES,
    /** What stands behind that. */
    TABLES
  }

  private final Depth depth;

  ColdChapter(Depth depth) {
    this.depth = depth;
  }

  @Override
  public Optional<Section> write(Desk desk) {
    CondensationResult cold = desk.subject().condensation();
    return cold.places().isEmpty() ? Optional.empty() : Optional.of(section(desk, cold));
  }

  private Section section(Desk desk, CondensationResult cold) {
    List<Block> blocks = new ArrayList<>();
    if (depth != Depth.PLACES) {
      blocks.add(
          new Prose(
              List.of(),
              "",
              "",
              "The temperature factor says how warm a surface is between outdoors (0) and the room "
                  + "(1). Walls are held against mould, which grows where the air at the surface "
                  + "stays moist for weeks; glass against water on cold nights."));
    }
    if (depth != Depth.TABLES) {
      places(desk, cold, blocks);
    }
    if (depth != Depth.PLACES) {
      tables(desk, cold, blocks);
    }
    return depth == Depth.TABLES
        ? new Section(
            "cold-tables",
            "Condensation and mould, place by place and month by month",
            "Condensation and mould by month",
            false,
            blocks)
        : new Section("cold", heading(cold), "Condensation and mould", false, blocks);
  }

  private static void places(Desk desk, CondensationResult cold, List<Block> blocks) {
    if (ColdPage.hasRows(cold)) {
      blocks.add(ColdPage.of(desk, cold));
    }
    if (!cold.neverDry().isEmpty()) {
      blocks.add(new Bullets(List.of(), cold.neverDry()));
    }
  }

  private static void tables(Desk desk, CondensationResult cold, List<Block> blocks) {
    if (!cold.glazing().isEmpty()) {
      blocks.add(GlazingTable.of(desk, cold.glazing()));
    }
    blocks.add(ColdMonths.table(coldestOfEach(cold)));
    List<ColdPlace> charted =
        cold.coldestFirst().stream().filter(p -> p.surface() == SurfaceClass.OPAQUE).toList();
    List<ColdPlace> shown = charted.isEmpty() ? cold.coldestFirst() : charted;
    shown.stream()
        .limit(CHARTS)
        .forEach(p -> blocks.add(ChartBlocks.of("months-" + p.id(), ColdMonths.chart(desk, p))));
    blocks.add(ColdMonths.bearable(coldestOfEach(cold)));
    blocks.add(ColdTable.of(desk, cold));
    if (!cold.vapour().isEmpty()) {
      blocks.add(vapour(desk, cold));
    }
  }

  /** What the months rest on: rooms that rest on the same are named together. */
  private static Entries vapour(Desk desk, CondensationResult cold) {
    Map<String, List<String>> rooms = new LinkedHashMap<>();
    for (String said : cold.vapour()) {
      String sentence = Words.sentence(said);
      String room =
          desk.subject().home().rooms().stream()
              .map(RoomFacts::name)
              .filter(name -> sentence.startsWith(Words.capital(name) + ": "))
              .max(Comparator.comparingInt(String::length))
              .map(Words::capital)
              .orElse("");
      String rest =
          (room.isEmpty() ? sentence : sentence.substring(room.length() + 2))
              .replaceAll("(?<![\\d.])(\\d)(\\d{3})(?!\\d)", "$1,$2");
      rooms.computeIfAbsent(rest, r -> new ArrayList<>()).add(room);
    }
    return new Entries(
        "The indoor moisture behind the months",
        rooms.entrySet().stream()
            .map(e -> new Entry(few(e.getValue()) + ":", e.getKey(), ""))
            .toList(),
        "");
  }

  private static String few(List<String> rooms) {
    List<String> distinct = rooms.stream().distinct().toList();
    return Words.list(distinct, NAMED_ROOMS, "one more", "more");
  }

  /** Walls first; of a window only its coldest part, since the others differ little by month. */
  private static List<ColdPlace> coldestOfEach(CondensationResult cold) {
    Map<String, ColdPlace> coldest = new LinkedHashMap<>();
    for (SurfaceClass kind : SurfaceClass.values()) {
      cold.coldestFirst().stream()
          .filter(p -> p.surface() == kind)
          .forEach(p -> coldest.putIfAbsent(p.item(), p));
    }
    return coldest.values().stream().limit(HEAT_ROWS).toList();
  }

  private static String heading(CondensationResult cold) {
    long walls = risky(cold, SurfaceClass.OPAQUE);
    long glass = risky(cold, SurfaceClass.GLASS);
    if (walls + glass == 0) {
      return "No surface that was looked at is at risk in an average year";
    }
    List<String> parts = new ArrayList<>();
    if (walls > 0) {
      parts.add(Words.count((int) walls, "surface is", "surfaces are") + " at risk of mould");
    }
    if (glass > 0) {
      parts.add(Words.count((int) glass, "window gets", "windows get") + " wet on cold nights");
    }
    return Words.capital(Words.list(parts));
  }

  private static long risky(CondensationResult cold, SurfaceClass surface) {
    return cold.places().stream()
        .filter(p -> p.surface() == surface && p.months().gravest() != Risk.NONE)
        .map(ColdPlace::item)
        .distinct()
        .count();
  }

  static String named(ColdPlace place) {
    return Words.capital(
        place.name().contains(place.roomName())
            ? Words.shortened(place.name(), 2 * NAME)
            : Words.shortened(place.roomName(), NAME) + ", " + Words.shortened(place.name(), NAME));
  }
}
