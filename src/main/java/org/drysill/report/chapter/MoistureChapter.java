package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Unit;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.report.block.Block;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.chart.Axis;
import org.drysill.report.chart.ChartSpec;
import org.drysill.report.chart.ChartText;
import org.drysill.report.chart.SourceBars;
import org.drysill.report.subject.Desk;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Words;

/** Moisture by source, and whether the readings agree with the list. */
final class MoistureChapter implements Chapter {
  /** Sources in the chart; the table under it has all of them. */
  private static final int MOST_ROWS = 16;

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
    blocks.add(ChartBlocks.of("sources", chart(desk, moisture)));
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

  private static ChartSpec chart(Desk desk, MoistureResult moisture) {
    Numbers numbers = desk.numbers();
    List<SourceBars.Row> rows = new ArrayList<>();
    List<MoistureResult.Item> items = sorted(moisture);
    for (MoistureResult.Item item : items.stream().limit(MOST_ROWS).toList()) {
      rows.add(
          new SourceBars.Row(
              Words.capital(Words.shortened(item.label(), 34)),
              numbers.onAxis(item.production().value(), Unit.MASS_RATE),
              numbers.spread(item.production().value(), Unit.MASS_RATE),
              false));
    }
    rows.add(
        new SourceBars.Row(
            "All of them",
            numbers.onAxis(moisture.itemised().value(), Unit.MASS_RATE),
            numbers.spread(moisture.itemised().value(), Unit.MASS_RATE),
            true));
    String title =
        Words.capital(Words.shortened(items.get(0).label(), 50))
            + ": the largest source in the list";
    double most = numbers.onAxis(moisture.itemised().value().high(), Unit.MASS_RATE);
    return new SourceBars(
        new ChartText(
            title,
            numbers.unit(Unit.MASS_RATE),
            "Published rates, scaled to this household"
                + (items.size() > MOST_ROWS
                    ? "; the " + MOST_ROWS + " largest of " + items.size()
                    : ""),
            title + ". " + Words.list(rows, r -> r.label() + " " + r.valueText()) + "."),
        Axis.fromZero(Math.max(most, 0.1), 5),
        rows);
  }

  private static Block table(Desk desk, MoistureResult moisture) {
    Numbers numbers = desk.numbers();
    return new Grid(
            desk.notes(
                sorted(moisture).stream().limit(3).map(i -> Optional.of(i.production())).toList()),
            "",
            List.of(
                Cells.words("source"),
                Cells.words("reckoned from", 50),
                Cells.numbers(numbers.unit(Unit.MASS_RATE), 30)),
            sorted(moisture).stream()
                .map(
                    i ->
                        Cells.row(
                            Cells.text(
                                Words.capital(i.label()), i.room().map(desk::room).orElse("")),
                            Cells.text(i.scaledBy()),
                            Cells.value(numbers, i.production())))
                .toList(),
            "")
        .densely();
  }
}
