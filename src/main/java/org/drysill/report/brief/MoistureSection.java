package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Unit;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.assess.moisture.MoistureResult.Item;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.table.Cells;

/** Water that goes into the air, by source, and whether the readings agree. */
final class MoistureSection implements BriefChapter {
  private static final Comparator<Item> GREATEST_FIRST =
      Comparator.comparingDouble((Item i) -> i.production().likely()).reversed();

  @Override
  public Optional<Section> write(BriefDesk desk) {
    MoistureResult moisture = desk.subject().moisture();
    if (moisture.items().isEmpty()) {
      return Optional.empty();
    }
    List<Item> items = moisture.items().stream().sorted(GREATEST_FIRST).toList();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Prose(
            desk.notes(Stream.concat(Stream.of(moisture.itemised()), moisture.implied().stream())),
            "",
            "",
            balance(desk, moisture)));
    blocks.add(
        new Grid(
                List.of(),
                "",
                List.of(
                    desk.words("moisture.source", 0),
                    desk.words("moisture.room", 44),
                    desk.numbers("moisture.water", Unit.MASS_RATE, 38)),
                items.stream().map(i -> row(desk, i)).toList(),
                "")
            .densely());
    return Optional.of(
        new Section(
            "moisture",
            desk.say("moisture.heading", desk.numbers().full(moisture.itemised())),
            desk.say("moisture.running"),
            false,
            blocks));
  }

  private static String balance(BriefDesk desk, MoistureResult moisture) {
    String word = desk.terms().word("balance", moisture.balance());
    return moisture
        .implied()
        .map(
            implied ->
                desk.say(
                    "moisture.implied",
                    desk.numbers().full(moisture.itemised()),
                    desk.numbers().full(implied),
                    word))
        .orElseGet(() -> desk.say("moisture.only", desk.numbers().full(moisture.itemised()), word));
  }

  private static Row row(BriefDesk desk, Item item) {
    return Cells.row(
        Cells.text(desk.terms().word("source", item.kind())),
        Cells.text(item.room().map(desk.names()::room).orElse("")),
        desk.value(item.production()));
  }
}
