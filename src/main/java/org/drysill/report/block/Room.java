package org.drysill.report.block;

import java.util.List;

/**
 * How much height is asked for where a block begins, so that no heading, title or head of a table
 * is left alone at a page's foot: its own first lines, and what may not be parted from it. An
 * estimate from the number of characters, in mm; a page has 253 mm, letter paper 235 mm.
 */
final class Room {
  /** What a block may ask for at most: no page is left less than half full. */
  static final double MOST = 112;

  private static final double READING = 120;
  private static final double WHOLE = 172;
  private static final double READING_LINE = 4.7;
  private static final double READING_LETTER = 1.75;
  private static final double STEP = 111;
  private static final double MORE_LINE = 4.6;
  private static final double MORE_LETTER = 1.6;
  private static final double CAUTION_LINE = 4.2;
  private static final double CAUTION_LETTER = 1.6;
  private static final double SUBHEAD = 5;
  private static final double HEADING = 16;

  /** What notes in the margin ask for, as print.css says. */
  private static final double NOTES = 21;

  private static final double LONGEST_WHOLE_MAP = 100;

  /** How much of the height small print takes. */
  private static final double COMPACT = 0.85;

  private final List<Block> blocks;
  private final double scale;

  Room(List<Block> blocks, boolean compact) {
    this.blocks = blocks;
    this.scale = compact ? COMPACT : 1;
  }

  /** For the heading of a section, together with what follows it [mm]. */
  double heading(String text) {
    double first = blocks.isEmpty() ? 0 : at(0);
    return Math.min(MOST, HEADING + 6 * lines(text, READING, 2.1) + first);
  }

  /** For a block, together with what follows it where it is a heading [mm]. */
  double at(int index) {
    return Math.min(MOST, scale * asked(index));
  }

  private double asked(int index) {
    Block block = blocks.get(index);
    if (block instanceof Subhead subhead) {
      return SUBHEAD
          + READING_LINE * lines(subhead.text())
          + (index + 1 < blocks.size() ? asked(index + 1) : 0);
    } else if (block instanceof Prose prose) {
      return 1 + READING_LINE * Math.min(3, lines(prose.lead() + prose.text()));
    } else if (block instanceof Grid grid) {
      return new TableRoom(grid).start();
    } else if (block instanceof ChartBlock chart) {
      double width = chart.wide() ? WHOLE : READING;
      double title = lines(chart.spec().text().title(), width, READING_LETTER);
      return Double.parseDouble(chart.heightMm()) + READING_LINE * title + 16;
    } else if (block instanceof Step step) {
      return step(step);
    } else if (block instanceof CautionBlock caution) {
      return caution(caution);
    } else if (block instanceof HeatMap map) {
      double rows = map.rows().stream().mapToDouble(Room::row).sum();
      return 22 + (rows > LONGEST_WHOLE_MAP ? 30 : rows);
    }
    return 22;
  }

  private static double step(Step step) {
    double text = lines(step.title() + " " + step.text(), STEP, READING_LETTER);
    double more = step.more().stream().mapToDouble(m -> lines(m, STEP, MORE_LETTER)).sum();
    double cautions = step.cautions().stream().mapToDouble(Room::caution).sum();
    double notes = step.margin().isEmpty() ? 0 : NOTES;
    return Math.max(notes, READING_LINE * text + MORE_LINE * more + cautions + 6);
  }

  private static double caution(CautionBlock caution) {
    return 5
        + CAUTION_LINE
            * lines(caution.hazard() + " " + caution.text(), READING - 3, CAUTION_LETTER);
  }

  /** The label of a place stands in 43 mm. */
  private static double row(HeatRow row) {
    return 1.8 + 3.6 * lines(row.label(), 41, 1.5);
  }

  private static double lines(String text) {
    return lines(text, READING, READING_LETTER);
  }

  /** Lines of a text in a column, both lengths in mm. */
  static double lines(String text, double width, double letter) {
    return Math.max(1, Math.ceil(text.length() * letter / width));
  }
}
