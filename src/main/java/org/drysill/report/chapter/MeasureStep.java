package org.drysill.report.chapter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.options.RankedMeasure;
import org.drysill.report.block.CautionBlock;
import org.drysill.report.block.Note;
import org.drysill.report.block.Step;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;

/** A ranked measure in full: what it changes, why here, what it costs, cautions beside it. */
final class MeasureStep {
  private MeasureStep() {}

  static Step of(Desk desk, RankedMeasure measure, int number) {
    List<String> why = new ArrayList<>(List.of(measure.because()));
    why.addAll(measure.reasons());
    List<String> more = new ArrayList<>();
    more.add(paragraph(why));
    if (!measure.prerequisites().isEmpty()) {
      more.add("First: " + Words.sentence(Words.list(measure.prerequisites())));
    }
    if (!measure.exclusions().isEmpty()) {
      more.add("Not together with: " + Words.sentence(Words.list(measure.exclusions())));
    }
    List<String> besides = new ArrayList<>(measure.effect().notes());
    benefits(measure).ifPresent(besides::add);
    if (!besides.isEmpty()) {
      more.add(paragraph(besides));
    }
    return new Step(
        margin(desk, measure),
        Integer.toString(number),
        Words.sentence(measure.title()),
        Words.sentence(measure.changes()),
        more,
        cautions(desk, measure.cautions()));
  }

  private static String paragraph(List<String> sentences) {
    return String.join(" ", sentences.stream().map(Words::sentence).distinct().toList());
  }

  private static Optional<String> benefits(RankedMeasure measure) {
    List<String> all = new ArrayList<>(measure.benefits().comfort());
    all.addAll(measure.benefits().health());
    all.addAll(measure.benefits().fabric());
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of("Not counted in money: " + Words.sentence(Words.list(all, Words::within)));
  }

  private static List<Note> margin(Desk desk, RankedMeasure measure) {
    List<Note> notes = new ArrayList<>();
    var money = measure.money();
    money
        .firstCost()
        .ifPresent(
            f ->
                notes.add(
                    Note.working(
                        desk.index().mark(f),
                        desk.numbers().full(f)
                            + " once"
                            + money.price().map(p -> " (" + p.standing() + ")").orElse("")
                            + ".")));
    money
        .annualCost()
        .ifPresent(
            f ->
                notes.add(
                    Note.working(desk.index().mark(f), desk.numbers().full(f) + ", all in all.")));
    notes.add(Note.led("Payback.", Words.sentence(money.againstNothing().words())));
    money
        .againstSameAir()
        .ifPresent(p -> notes.add(Note.led("Against the same air.", Words.sentence(p.words()))));
    money.notTold().ifPresent(n -> notes.add(Note.led("Not told.", Words.sentence(n))));
    return notes;
  }

  /** The cautions that belong to something to be done, the gravest first. */
  static List<CautionBlock> cautions(Desk desk, List<String> ids) {
    return ids.stream()
        .flatMap(id -> desk.subject().cautions().caution(id).stream())
        .map(MeasureStep::caution)
        .toList();
  }

  private static CautionBlock caution(ShownCaution shown) {
    return new CautionBlock(
        List.of(), Words.sentence(shown.caution().hazard()), Words.sentence(shown.caution().ask()));
  }
}
