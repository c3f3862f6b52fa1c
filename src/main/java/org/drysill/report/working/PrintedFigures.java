package org.drysill.report.working;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.physics.Range;
import org.drysill.report.block.Block;
import org.drysill.report.block.Note;
import org.drysill.report.block.Section;
import org.drysill.report.words.Ear;

/**
 * The figures that were put into words since the last section was done, so that each of them leads
 * to its working from the block in which it stands.
 *
 * <p>A value is known to be a figure by being the same number in the same unit, to the last bit,
 * with the same bounds where these are printed too.
 */
public final class PrintedFigures implements Ear {
  private final WorkingIndex index;
  private final Map<Value, Set<Figure>> figures = new HashMap<>();
  private final Map<String, Set<Figure>> heard = new LinkedHashMap<>();

  /** Knows the figures found, and numbers their workings by an index. */
  public PrintedFigures(Found found, WorkingIndex index) {
    this.index = index;
    for (Figure figure : found.figures()) {
      if (!hasNone(figure)) {
        know(figure.value(), figure);
        know(Range.exactly(figure.likely()), figure);
      }
    }
  }

  /** What was read, declared or printed elsewhere, and stands as it was, has no working. */
  static boolean hasNone(Figure figure) {
    return switch (figure.basis()) {
      case MEASURED, DECLARED, PUBLISHED -> figure.working().inputs().isEmpty();
      default -> false;
    };
  }

  private void know(Range value, Figure figure) {
    figures
        .computeIfAbsent(new Value(value, figure.unit()), v -> new LinkedHashSet<>())
        .add(figure);
  }

  private record Value(Range kept, Unit unit) {}

  @Override
  public void heard(Range kept, Unit unit, String text) {
    Set<Figure> same = figures.getOrDefault(new Value(kept, unit), Set.of());
    // A bare nought is the same in every figure, and nobody asks how it came about.
    if (!same.isEmpty() && (kept.likely() != 0 || kept.high() != 0 || kept.low() != 0)) {
      heard.computeIfAbsent(text, t -> new LinkedHashSet<>()).addAll(same);
    }
  }

  /** A section whose blocks lead to the workings of all figures in them; what was heard ends. */
  public Section led(Section section) {
    List<Block> blocks = section.blocks().stream().map(this::led).toList();
    heard.clear();
    return new Section(
        section.id(), section.heading(), section.running(), section.newPage(), blocks);
  }

  private Block led(Block block) {
    PrintedBlock printed = new PrintedBlock(block);
    Set<String> led = new LinkedHashSet<>();
    printed.workings().map(PrintedFigures::family).forEach(led::add);
    List<String> missing = new ArrayList<>();
    // What prints alike may be any of several figures: those that are sure come first.
    heard.entrySet().stream()
        .filter(text -> printed.shows(text.getKey()))
        .map(Map.Entry::getValue)
        .sorted(Comparator.comparingInt(Set::size))
        .forEach(
            alike -> {
              if (alike.stream().noneMatch(figure -> isLed(figure, led))) {
                // Only with its number is it known to belong to a family that is led to already.
                String family = family(index.mark(alike.iterator().next()));
                if (led.add(family)) {
                  missing.add(family);
                }
              }
            });
    return missing.isEmpty() ? block : printed.with(Note.workings(missing));
  }

  private boolean isLed(Figure figure, Set<String> led) {
    return index.known(figure).map(PrintedFigures::family).filter(led::contains).isPresent();
  }

  /** The number of the family of a working: {@code w12} of {@code w12.3}. */
  static String family(String number) {
    int dot = number.indexOf('.');
    return dot < 0 ? number : number.substring(0, dot);
  }
}
