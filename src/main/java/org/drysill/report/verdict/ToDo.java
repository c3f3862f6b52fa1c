package org.drysill.report.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.options.FirstThing;
import org.drysill.options.RankedMeasure;
import org.drysill.report.block.Block;
import org.drysill.report.block.CautionBlock;
import org.drysill.report.block.Note;
import org.drysill.report.block.Step;
import org.drysill.report.chapter.FirstSteps;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;

/** What to do, in order: what comes before every measure, then the works of the best package. */
public final class ToDo {
  private ToDo() {}

  /** The steps of the first page. */
  static List<Block> brief(Desk desk, int most, int textLength) {
    List<Block> steps = new ArrayList<>();
    List<String> warned = new ArrayList<>();
    for (FirstThing first : desk.subject().options().first()) {
      if (steps.size() < most) {
        steps.add(first(desk, first, steps.size() + 1, warned));
      }
    }
    for (RankedMeasure measure : desk.subject().options().works()) {
      if (steps.size() < most) {
        steps.add(measure(desk, measure, steps.size() + 1, textLength, warned));
      }
    }
    return steps;
  }

  private static Step first(Desk desk, FirstThing thing, int number, List<String> warned) {
    warned.addAll(thing.cautions());
    return new Step(
        List.of(),
        Integer.toString(number),
        Words.sentence(Words.shortened(thing.title(), 240)),
        FirstSteps.why(desk, thing),
        List.of(),
        List.of());
  }

  private static Step measure(
      Desk desk, RankedMeasure measure, int number, int textLength, List<String> warned) {
    return new Step(
        margin(desk, measure),
        Integer.toString(number),
        Words.sentence(Words.shortened(measure.title(), 100)),
        Words.sentence(Words.shortened(measure.changes(), textLength)),
        List.of(),
        gravest(desk, measure.cautions(), warned));
  }

  private static List<Note> margin(Desk desk, RankedMeasure measure) {
    List<Note> notes = new ArrayList<>();
    measure
        .money()
        .firstCost()
        .ifPresent(
            cost ->
                notes.add(
                    Note.working(
                        desk.index().mark(cost),
                        desk.numbers().full(cost)
                            + " once"
                            + measure
                                .money()
                                .runningCost()
                                .map(r -> ", " + Words.running(desk.numbers(), r))
                                .orElse("")
                            + ".")));
    return notes;
  }

  /** The gravest caution, where it was not printed with an earlier step. */
  private static List<CautionBlock> gravest(Desk desk, List<String> ids, List<String> warned) {
    Optional<ShownCaution> caution =
        ids.stream()
            .flatMap(id -> desk.subject().cautions().caution(id).stream())
            .filter(c -> !warned.contains(c.id()))
            .findFirst();
    caution.ifPresent(c -> warned.add(c.id()));
    return caution
        .map(
            c ->
                new CautionBlock(
                    List.of(),
                    Words.sentence(c.caution().hazard()),
                    Words.sentence(c.caution().ask())))
        .stream()
        .toList();
  }
}
