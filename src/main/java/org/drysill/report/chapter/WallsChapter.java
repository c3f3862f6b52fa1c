package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.drysill.assess.elements.WallVariant;
import org.drysill.assess.elements.WallWithin;
import org.drysill.assess.elements.WallYear;
import org.drysill.physics.layers.Iso13788Element.Verdict;
import org.drysill.report.block.Block;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.block.Subhead;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.FindingTable;
import org.drysill.report.words.Words;

/** Water within built-up walls: the year of each, what would change it, what the method omits. */
final class WallsChapter implements Chapter {
  @Override
  public Optional<Section> write(Desk desk) {
    List<WallWithin> walls = desk.subject().elements().walls();
    if (walls.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Prose(
            List.of(),
            "",
            "",
            "Vapour wanders through a wall from the room to the cold. Where there is more of it than"
                + " the air in the wall can hold at its temperature, it turns to water within the"
                + " wall, out of sight. In summer the water may dry; where less dries than settles,"
                + " it grows from year to year."));
    blocks.add(FindingTable.of(desk, "", desk.subject().elements().findings(), List.of()));
    List<String> common = common(walls);
    blocks.add(limits(common));
    walls.forEach(w -> wall(desk, blocks, w, common));
    return Optional.of(new Section("walls", heading(walls), "Within the walls", false, blocks));
  }

  private static String heading(List<WallWithin> walls) {
    int stays = count(walls, y -> y.likely() == Verdict.ACCUMULATES);
    int mayStay = count(walls, y -> y.worst() == Verdict.ACCUMULATES);
    int settles = count(walls, y -> y.likely() == Verdict.DRIES);
    int maySettle = count(walls, y -> y.worst() == Verdict.DRIES);
    if (stays > 0) {
      return "Within " + Words.count(stays, "wall", "walls") + " more water settles than dries";
    }
    if (mayStay > 0) {
      return "Water that settles within "
          + Words.count(mayStay, "wall", "walls")
          + " may not dry within the year";
    }
    if (settles > 0) {
      return "Water settles within "
          + Words.count(settles, "wall", "walls")
          + " in winter and dries again";
    }
    return maySettle > 0
        ? "Likely no water settles within the walls that were looked at"
        : "No water settles within the walls that were looked at";
  }

  private static int count(List<WallWithin> walls, Predicate<WallYear> of) {
    return (int) walls.stream().map(WallWithin::year).filter(of).count();
  }

  /** What the method leaves out at every wall. */
  private static List<String> common(List<WallWithin> walls) {
    return walls.get(0).limits().stream()
        .filter(l -> walls.stream().allMatch(w -> w.limits().contains(l)))
        .toList();
  }

  private static Prose limits(List<String> limits) {
    return new Prose(List.of(), "small", "What this leaves out.", String.join(" ", limits));
  }

  private static void wall(
      Desk desk, List<Block> blocks, WallWithin wall, List<String> saidAlready) {
    WallYear year = wall.year();
    blocks.add(
        new Subhead(List.of(), Words.capital(wall.name()) + ", " + Words.within(wall.roomName())));
    blocks.add(
        new Prose(
            desk.notes(
                List.of(Optional.of(wall.uValue()), year.settling(), Optional.of(year.highest()))),
            "",
            "",
            Words.sentence(wall.accumulation().because())
                + " The wall has a U-value of "
                + desk.numbers().full(wall.uValue())
                + "."));
    List<String> own = wall.limits().stream().filter(l -> !saidAlready.contains(l)).toList();
    if (!own.isEmpty()) {
      blocks.add(limits(own));
    }
    if (year.likely() != Verdict.NONE) {
      blocks.add(ChartBlocks.of("wall-" + wall.id(), WallChart.of(desk, wall)));
      blocks.add(WallTables.months(desk, wall));
    }
    blocks.add(WallTables.variants(desk, wall));
    String remarks = remarks(desk, wall);
    if (!remarks.isEmpty()) {
      String lead = year.likely() == Verdict.NONE ? "How much it bears." : "What would stop it.";
      blocks.add(
          new Prose(desk.notes(List.of(wall.dryBelow(), wall.leakingAir())), "", lead, remarks));
    }
  }

  /** What would keep it dry, and what leaking air could add. */
  private static String remarks(Desk desk, WallWithin wall) {
    List<String> said = new ArrayList<>();
    if (wall.year().likely() != Verdict.NONE) {
      said.add(stopping(wall));
    }
    wall.dryBelow()
        .ifPresent(
            f ->
                said.add(
                    "Nothing settles while the air indoors holds no more than "
                        + desk.numbers().full(f)
                        + " of vapour over that outdoors, at 0\u00a0°C outdoors."));
    wall.leakingAir()
        .ifPresent(
            f ->
                said.add(
                    "Room air that leaks into the wall by gaps, which positive input drives on,"
                        + " could leave "
                        + desk.numbers().full(f)
                        + " a year on top: a bounded estimate, and a reason to seal the room"
                        + " side."));
    return String.join(" ", said);
  }

  private static String stopping(WallWithin wall) {
    List<WallVariant> helping =
        wall.variants().stream()
            .filter(v -> v.kind().helps())
            .filter(
                v ->
                    v.likely().compareTo(wall.year().likely()) < 0
                        || v.worst().compareTo(wall.year().worst()) < 0)
            .toList();
    List<WallVariant> dry = helping.stream().filter(v -> v.worst() == Verdict.NONE).toList();
    if (!dry.isEmpty()) {
      return "No water would settle, even at the unfavourable ends, "
          + Words.list(dry, v -> v.kind().words())
          + ".";
    }
    return helping.isEmpty()
        ? "No change to the wall that was reckoned does; drier air in the room does."
        : "It would be less "
            + Words.list(helping, v -> v.kind().words())
            + ", though not for certain dry.";
  }
}
