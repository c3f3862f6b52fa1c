package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.report.block.Block;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Section;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Bars;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** Moisture by source, and whether the readings agree with the list. */
final class MoistureChapter implements Chapter {
  private static final Comparator<MoistureResult.Item> GREATEST_FIRST =
      Comparator.comparingDouble((MoistureResult.Item i) -> i.production().likely()).reversed();

  @Override
  public Optional<Section> write(Desk desk) {
    MoistureResult moisture = desk.subject().moisture();
    if (moisture.items().isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Prose(
            desk.notes(List.of(Optional.of(moisture.itemised()), moisture.implied())),
            "",
            "",
            Words.sentence(moisture.finding().because())));
    blocks.add(table(desk, moisture));
    blocks.addAll(new TogetherBlocks(desk).all());
    return Optional.of(
        new Section("moisture", heading(desk, moisture), "Moisture sources", false, blocks));
  }

  private static List<MoistureResult.Item> sorted(MoistureResult moisture) {
    return moisture.items().stream().sorted(GREATEST_FIRST).toList();
  }

  private static String heading(Desk desk, MoistureResult moisture) {
    String sum = "About " + desk.numbers().full(moisture.itemised()) + " of water go into the air";
    return switch (moisture.balance()) {
      case AGREE -> sum + ", and the readings agree";
      case MORE_THAN_ITEMISED -> sum + ", and the readings imply more";
      case LESS_THAN_ITEMISED -> sum + ", though the readings imply less";
      case UNKNOWN -> sum + " by the list of sources";
    };
  }

  /** Each source with a bar, all on the scale of their sum. */
  private static Block table(Desk desk, MoistureResult moisture) {
    Numbers numbers = desk.numbers();
    List<MoistureResult.Item> items = sorted(moisture);
    double most =
        items.stream()
            .mapToDouble(i -> i.production().value().high())
            .reduce(moisture.itemised().value().high(), Math::max);
    List<Row> rows = new ArrayList<>();
    for (MoistureResult.Item item : items) {
      rows.add(
          Cells.row(
              Cells.text(Words.capital(item.label()), item.room().map(desk::room).orElse("")),
              Cells.text(item.scaledBy()),
              Cells.value(numbers, item.production()),
              bar(numbers, item.production(), most)));
    }
    rows.add(
        Cells.strong(
            Cells.text("All of them"),
            Cells.text(""),
            Cells.value(numbers, moisture.itemised()),
            bar(numbers, moisture.itemised(), most)));
    return new Grid(
            desk.notes(items.stream().limit(3).map(i -> Optional.of(i.production())).toList()),
            Words.capital(Words.shortened(items.get(0).label(), 50))
                + ": the largest source in the list",
            List.of(
                Cells.words("source"),
                Cells.words("reckoned from", 36),
                Cells.numbers(numbers.unit(Unit.MASS_RATE), 25),
                Cells.words("range", 24)),
            rows,
            "Published rates, scaled to this household.")
        .densely();
  }

  private static Cell bar(Numbers numbers, Figure figure, double most) {
    return Cells.bar(Bars.among(figure.value(), most, numbers.full(figure)));
  }
}
