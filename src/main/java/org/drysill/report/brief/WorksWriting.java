package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drysill.assess.Figure;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.options.FirstThing;
import org.drysill.options.MeasureMoney;
import org.drysill.options.RankedMeasure;
import org.drysill.report.block.Block;
import org.drysill.report.block.CautionBlock;
import org.drysill.report.block.Note;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.block.Step;
import org.drysill.report.block.Subhead;
import org.drysill.report.language.LocalNumbers;
import org.drysill.report.words.Words;

/** Writes the works once: a caution is told where it first belongs and not again. */
final class WorksWriting {
  private static final int ROOMS = 6;

  private final BriefDesk desk;
  private final Set<String> warned = new HashSet<>();

  WorksWriting(BriefDesk desk) {
    this.desk = desk;
  }

  Section section() {
    List<Block> blocks = new ArrayList<>();
    int number = 0;
    for (FirstThing thing : desk.subject().options().first()) {
      blocks.add(first(thing, ++number));
    }
    for (RankedMeasure measure : desk.subject().options().works()) {
      blocks.add(work(measure, ++number));
    }
    if (number == 0) {
      blocks.add(new Prose(List.of(), "", "", desk.say("works.none")));
    }
    List<CautionBlock> others =
        cautions(desk.subject().cautions().shown().stream().map(ShownCaution::id).toList());
    if (!others.isEmpty()) {
      blocks.add(new Subhead(List.of(), desk.say("works.cautions")));
      blocks.addAll(others);
    }
    return new Section(
        "works", desk.say("works.heading"), desk.say("works.running"), false, blocks);
  }

  private Step first(FirstThing thing, int number) {
    String kind = thing.id().split("\\.", 2)[0];
    Optional<ShownCaution> caution = desk.subject().cautions().caution(thing.id());
    if (caution.isPresent()) {
      warned.add(thing.id());
      return step(
          List.of(),
          number,
          sentence(placed(hazard(caution.get()), thing.rooms())),
          ask(caution.get()),
          cautions(thing.cautions()));
    }
    Optional<String> title = desk.phrases().find("measure." + kind + ".title");
    return step(
        thing.money().map(this::costs).orElse(List.of()),
        number,
        title
            .map(t -> sentence(placed(t, thing.rooms())))
            .orElseGet(() -> Words.sentence(english("measure." + kind, thing.title()))),
        desk.phrases()
            .find("measure." + kind + ".does")
            .orElseGet(() -> Words.sentence(english("measure." + kind, thing.because()))),
        cautions(thing.cautions()));
  }

  private Step work(RankedMeasure measure, int number) {
    return step(
        costs(measure.money()),
        number,
        sentence(desk.terms().measure(measure.id(), measure.title())),
        desk.phrases()
            .find("measure." + measure.measure() + ".does")
            .orElseGet(() -> Words.sentence(measure.changes())),
        cautions(measure.cautions()));
  }

  private static Step step(
      List<Note> notes, int number, String title, String text, List<CautionBlock> cautions) {
    return new Step(notes, Integer.toString(number), title, text, List.of(), cautions);
  }

  /** English has its titles in the reference data, and so have measures of a user's own. */
  private String english(String key, String text) {
    return desk.terms().english() ? text : desk.terms().lacking(key, text);
  }

  private String placed(String title, List<String> rooms) {
    return rooms.isEmpty()
        ? title
        : desk.say(
            "place.in",
            title.replaceAll("\\.$", ""),
            desk.names().few(rooms.stream().map(desk.names()::room), ROOMS));
  }

  private static String sentence(String text) {
    return text.endsWith(".") ? text : text + ".";
  }

  /** What it costs once and all in all, each with its working. */
  private List<Note> costs(MeasureMoney money) {
    List<Note> notes = new ArrayList<>();
    money.firstCost().filter(LocalNumbers::counts).ifPresent(f -> notes.add(cost("works.once", f)));
    money.annualCost().ifPresent(f -> notes.add(cost("works.yearly", f)));
    return notes;
  }

  private Note cost(String key, Figure figure) {
    return Note.working(desk.mark(figure), desk.say(key, desk.numbers().full(figure)));
  }

  private List<CautionBlock> cautions(List<String> ids) {
    return ids.stream()
        .filter(warned::add)
        .flatMap(id -> caution(id).stream())
        .map(c -> new CautionBlock(List.of(), hazard(c), ask(c)))
        .toList();
  }

  private Optional<ShownCaution> caution(String id) {
    return desk.subject()
        .cautions()
        .caution(id)
        .or(
            () ->
                desk.subject().options().cautions().stream()
                    .filter(c -> c.id().equals(id))
                    .findFirst());
  }

  private String hazard(ShownCaution caution) {
    String key = "caution." + caution.id() + ".hazard";
    return desk.phrases()
        .find(key)
        .orElseGet(() -> Words.sentence(english(key, caution.caution().hazard())));
  }

  private String ask(ShownCaution caution) {
    String key = "caution." + caution.id() + ".ask";
    return desk.phrases()
        .find(key)
        .orElseGet(() -> Words.sentence(english(key, caution.caution().ask())));
  }
}
