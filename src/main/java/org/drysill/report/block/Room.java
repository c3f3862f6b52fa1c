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

  private static final double MARGIN = 44;
  private static final double NOTE_LINE = 3.75;

  /** Steps above may be cut by a page's end. */
  private static final double TALL_STEP = 45;

  private static final double LONGEST_WHOLE_MAP = 100;

  /** Columns that begin in the last lines of a page are not carried over to the next. */
  private static final double COLUMNS = 36;

  private static final double COLUMN = 83;

  /** Lines of 3.5 mm, before what small print takes of all heights. */
  private static final double COLUMN_LINE = 4.1;

  private static final double COLUMN_LETTER = 1.45;

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
    } else if (block instanceof Workings workings) {
      return Math.max(COLUMNS, first(workings.families().get(0)));
    } else if (block instanceof Entries || block instanceof Listing) {
      return COLUMNS;
    }
    return 22;
  }

  /** The layout library cuts what its first column begins with where that is a piece too high. */
  private static double first(WorkingFamily family) {
    WorkingEntry entry = family.items().get(0);
    double formula = family.formula().length() + family.note().length();
    for (String source : family.sources()) {
      formula += source.length() + 2;
    }
    double figure =
        entry.number().length()
            + entry.name().length()
            + entry.value().length()
            + entry.basis().length()
            + entry.inputs().length()
            + entry.note().length()
            + 6;
    return 6
        + COLUMN_LINE
            * (Math.ceil(formula * COLUMN_LETTER / COLUMN)
                + Math.ceil(figure * COLUMN_LETTER / (COLUMN - 4)));
  }

  private static double step(Step step) {
    double whole = whole(step);
    if (whole <= TALL_STEP) {
      return whole;
    }
    double begins = title(step) + MORE_LINE * Math.min(2, more(step));
    return Math.max(notes(step.margin()), begins) + 6;
  }

  /** Whether a step is higher than what may stay empty at a page's foot for its sake. */
  static boolean isTall(Step step) {
    return whole(step) > TALL_STEP;
  }

  private static double whole(Step step) {
    double cautions = step.cautions().stream().mapToDouble(Room::caution).sum();
    return Math.max(notes(step.margin()), title(step) + MORE_LINE * more(step) + cautions + 6);
  }

  private static double title(Step step) {
    return READING_LINE * lines(step.title() + " " + step.text(), STEP, READING_LETTER);
  }

  private static double more(Step step) {
    return step.more().stream().mapToDouble(m -> lines(m, STEP, MORE_LETTER)).sum();
  }

  /** Notes in the margin are not parted from what they belong to. */
  private static double notes(List<Note> notes) {
    double height = 2;
    for (Note note : notes) {
      height += 1.4 + NOTE_LINE * lines(note.lead() + " " + note.text() + " w100", MARGIN, 1.45);
    }
    return notes.isEmpty() ? 0 : Math.max(NOTES, height);
  }

  private static double caution(CautionBlock caution) {
    return 5
        + CAUTION_LINE
            * lines(caution.hazard() + " " + caution.text(), READING - 3, CAUTION_LETTER);
  }

  /** The label of a place stands in 85 mm. */
  private static double row(HeatRow row) {
    return 1.8 + 3.6 * lines(row.label(), 83, 1.5);
  }

  private static double lines(String text) {
    return lines(text, READING, READING_LETTER);
  }

  /** Lines of a text in a column, both lengths in mm. */
  static double lines(String text, double width, double letter) {
    return Math.max(1, Math.ceil(text.length() * letter / width));
  }
}
