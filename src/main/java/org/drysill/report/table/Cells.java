package org.drysill.report.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.change.shown.Doubt;
import org.drysill.assess.change.shown.Judgement;
import org.drysill.physics.Range;
import org.drysill.report.block.Bar;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Column;
import org.drysill.report.block.Row;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;

/** Makes the cells of tables. */
public final class Cells {
  /** What stands where nothing is known. */
  public static final String NOTHING = "–";

  private Cells() {}

  /** Words. */
  public static Cell text(String text) {
    return new Cell(text, "", "", Optional.empty(), List.of());
  }

  /** Words, with more in small type. */
  public static Cell text(String text, String small) {
    return new Cell(text, small, "", Optional.empty(), List.of());
  }

  /** A figure without its unit, its bounds in small type. */
  public static Cell value(Numbers numbers, Figure figure) {
    return value(numbers, figure.value(), figure.unit(), Rounding.NEAREST);
  }

  /** A figure, or a dash. */
  public static Cell value(Numbers numbers, Optional<Figure> figure) {
    return figure.map(f -> value(numbers, f)).orElse(text(NOTHING));
  }

  /** A value without its unit, rounded to a side, its bounds in small type. */
  public static Cell value(Numbers numbers, Range value, Unit unit, Rounding rounding) {
    String[] parts = numbers.spread(value, unit, rounding).split(Numbers.JOIN, 2);
    return text(parts[0], parts.length == 1 ? "" : parts[1]);
  }

  /** The mark of a verdict and its word. */
  public static Cell verdict(Verdict verdict) {
    String mark =
        switch (verdict) {
          case MEETS -> "meets";
          case SHORT -> "short";
          case UNKNOWN -> "unknown";
        };
    return new Cell(Words.verdict(verdict), "", mark, Optional.empty(), List.of());
  }

  /** Whether a change is shown: its mark, its word, and why not in small type. */
  public static Cell shown(Judgement judgement) {
    return new Cell(
        judgement.words(),
        judgement.doubt().map(Doubt::words).orElse(""),
        judgement.isShown() ? "seen" : "unseen",
        Optional.empty(),
        List.of());
  }

  /** A bar. */
  public static Cell bar(Optional<Bar> bar) {
    return new Cell("", "", "", bar, List.of());
  }

  /** A column of words that shares what width is left. */
  public static Column words(String head) {
    return new Column(head, false, 0);
  }

  /** A column of words of a fixed width [mm]. */
  public static Column words(String head, int widthMm) {
    return new Column(head, false, widthMm);
  }

  /** A column of numbers of a fixed width [mm]. */
  public static Column numbers(String head, int widthMm) {
    return new Column(head, true, widthMm);
  }

  /** A row of cells. */
  public static Row row(Cell... cells) {
    return new Row(List.of(cells), false);
  }

  /** A row that heads a group of rows, for a table of so many columns. */
  public static Row part(String title, int columns) {
    List<Cell> cells = new ArrayList<>(Collections.nCopies(columns, text("")));
    cells.set(0, text(title));
    return new Row(cells, false, true);
  }

  /** A row that is set apart: a sum, or what governs. */
  public static Row strong(Cell... cells) {
    return new Row(List.of(cells), true);
  }
}
