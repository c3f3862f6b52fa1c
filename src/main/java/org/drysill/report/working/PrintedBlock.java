package org.drysill.report.working;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.drysill.report.block.Block;
import org.drysill.report.block.Bullets;
import org.drysill.report.block.CautionBlock;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Fact;
import org.drysill.report.block.Facts;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Note;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.block.Step;
import org.drysill.report.words.Numbers;

/** What a block says, where numbers can stand in it, and to which workings it leads. */
final class PrintedBlock {
  private final Block block;
  private final Set<String> alone = new HashSet<>();
  private final List<String> sentences = new ArrayList<>();

  PrintedBlock(Block block) {
    this.block = block;
    if (block instanceof Grid grid) {
      read(grid);
    } else if (block instanceof Prose prose) {
      sentences.addAll(List.of(prose.lead(), prose.text()));
    } else if (block instanceof Bullets bullets) {
      sentences.addAll(bullets.items());
    } else if (block instanceof Facts facts) {
      facts.items().stream().map(Fact::value).forEach(sentences::add);
    } else if (block instanceof Step step) {
      sentences.addAll(List.of(step.title(), step.text()));
      sentences.addAll(step.more());
      step.cautions().stream().map(CautionBlock::text).forEach(sentences::add);
    } else if (block instanceof CautionBlock caution) {
      sentences.add(caution.text());
    }
  }

  private void read(Grid grid) {
    sentences.addAll(List.of(grid.title(), grid.foot()));
    for (Row row : grid.rows()) {
      for (int i = 0; i < row.cells().size(); i++) {
        read(row.cells().get(i), grid.columns().get(i).numbers());
      }
    }
  }

  /** Bounds stand in small type behind the likely value. */
  private void read(Cell cell, boolean numbers) {
    String whole =
        cell.small().startsWith("(") ? cell.text() + Numbers.JOIN + cell.small() : cell.text();
    if (numbers) {
      alone.add(whole);
    }
    sentences.add(whole);
    sentences.add(cell.small());
  }

  /** The numbers of the workings to which it leads. */
  Stream<String> workings() {
    Stream<String> beside =
        block.margin().stream()
            .flatMap(n -> Stream.concat(Stream.of(n.working()), n.also().stream()));
    Stream<String> within =
        block instanceof Grid grid
            ? grid.rows().stream()
                .flatMap(r -> r.cells().stream())
                .flatMap(c -> c.workings().stream())
            : Stream.empty();
    return Stream.concat(beside, within).filter(number -> !number.isEmpty());
  }

  /**
   * Whether a number in words stands in it. A bare number counts where it fills a cell; in
   * sentences it has a unit or bounds.
   */
  boolean shows(String text) {
    return alone.contains(text)
        || (text.contains(Numbers.JOIN) && sentences.stream().anyMatch(s -> holds(s, text)));
  }

  private static boolean holds(String sentence, String text) {
    for (int at = sentence.indexOf(text); at >= 0; at = sentence.indexOf(text, at + 1)) {
      if ((at == 0 || !isOfNumber(sentence.charAt(at - 1)))
          && (at + text.length() == sentence.length()
              || !Character.isLetterOrDigit(sentence.charAt(at + text.length())))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isOfNumber(char character) {
    return Character.isDigit(character) || ".,–−".indexOf(character) >= 0;
  }

  /** The block with one note more. */
  Block with(Note note) {
    List<Note> margin = Stream.concat(block.margin().stream(), Stream.of(note)).toList();
    if (block instanceof Grid grid) {
      return new Grid(
          margin,
          grid.title(),
          grid.columns(),
          grid.rows(),
          grid.foot(),
          grid.wide(),
          grid.dense());
    }
    if (block instanceof Prose prose) {
      return new Prose(margin, prose.style(), prose.lead(), prose.text());
    }
    if (block instanceof Bullets bullets) {
      return new Bullets(margin, bullets.items());
    }
    if (block instanceof Facts facts) {
      return new Facts(margin, facts.items(), facts.wide());
    }
    if (block instanceof Step step) {
      return new Step(
          margin, step.number(), step.title(), step.text(), step.more(), step.cautions());
    }
    if (block instanceof CautionBlock caution) {
      return new CautionBlock(margin, caution.hazard(), caution.text());
    }
    throw new IllegalArgumentException("no numbers are looked for in " + block.kind());
  }
}
