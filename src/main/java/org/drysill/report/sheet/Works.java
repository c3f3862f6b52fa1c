package org.drysill.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.cautions.ShownCaution;
import org.drysill.options.FirstThing;
import org.drysill.options.MeasureMoney;
import org.drysill.options.RankedMeasure;
import org.drysill.report.language.LocalNumbers;
import org.drysill.report.language.Names;
import org.drysill.report.language.Phrases;
import org.drysill.report.sheet.SheetStep.SheetCaution;
import org.drysill.report.subject.Subject;
import org.drysill.report.words.Words;

/** What is to be done: what comes before all, then the works of the best package. */
final class Works {
  private static final int MOST = 7;
  private static final int ROOMS = 4;

  private final Subject subject;
  private final Phrases phrases;
  private final LocalNumbers numbers;
  private final Names names;
  private final List<String> warned = new ArrayList<>();

  Works(Subject subject, Phrases phrases, LocalNumbers numbers, Names names) {
    this.subject = subject;
    this.phrases = phrases;
    this.numbers = numbers;
    this.names = names;
  }

  List<SheetStep> steps() {
    List<SheetStep> steps = new ArrayList<>();
    subject.options().first().stream().limit(MOST).map(this::first).forEach(steps::add);
    subject.options().works().stream()
        .limit(MOST - steps.size())
        .map(this::measure)
        .forEach(steps::add);
    return steps;
  }

  /**
   * What a caution asks for, a cause to be dealt with, or a fan to be mended. A measure's title
   * from the reference data names its place; that of a bundle does not.
   */
  private SheetStep first(FirstThing thing) {
    String kind = thing.id().split("\\.", 2)[0];
    Optional<ShownCaution> caution = subject.cautions().caution(thing.id());
    String where = rooms(thing.rooms());
    if (caution.isPresent()) {
      warned.add(thing.id());
      String[] asked = ask(caution.get()).split("(?<=\\.) ", 2);
      String more = asked.length > 1 ? asked[1] + " " : "";
      return new SheetStep(
          unstopped(asked[0]), where, more + hazard(caution.get()), "", cautions(thing.cautions()));
    }
    Optional<String> title = phrases.find("measure." + kind + ".title");
    return new SheetStep(
        title.orElse(thing.title()),
        title.isPresent() ? where : "",
        phrases.find("measure." + kind + ".does").orElseGet(() -> Words.sentence(thing.because())),
        thing.money().map(this::cost).orElse(""),
        cautions(thing.cautions()));
  }

  /** A title without its full stop, which the page sets after the rooms. */
  private static String unstopped(String title) {
    return title.endsWith(".") ? title.substring(0, title.length() - 1) : title;
  }

  private SheetStep measure(RankedMeasure measure) {
    Optional<String> title = phrases.find("measure." + measure.measure() + ".title");
    return new SheetStep(
        title.orElse(measure.title()),
        title.map(own -> rooms(measure.scope().rooms())).orElse(""),
        phrases
            .find("measure." + measure.measure() + ".does")
            .orElseGet(() -> Words.sentence(measure.changes())),
        cost(measure.money()),
        cautions(measure.cautions()));
  }

  private String rooms(List<String> ids) {
    return names.few(ids.stream().map(names::room), ROOMS);
  }

  /** First cost and running cost, each where it is more than nothing. */
  private String cost(MeasureMoney money) {
    Optional<String> once =
        money
            .firstCost()
            .filter(LocalNumbers::counts)
            .map(c -> phrases.say("cost.once", numbers.money(c)));
    Optional<String> running =
        money
            .runningCost()
            .filter(LocalNumbers::counts)
            .map(c -> phrases.say("cost.running", numbers.money(c)));
    return Stream.of(once, running).flatMap(Optional::stream).collect(Collectors.joining(", "));
  }

  /** The gravest caution that no earlier step has shown. */
  private List<SheetCaution> cautions(List<String> ids) {
    Optional<ShownCaution> gravest =
        ids.stream()
            .filter(id -> !warned.contains(id))
            .flatMap(id -> subject.cautions().caution(id).stream())
            .findFirst();
    gravest.ifPresent(c -> warned.add(c.id()));
    return gravest.map(c -> new SheetCaution(hazard(c), ask(c))).stream().toList();
  }

  private String hazard(ShownCaution caution) {
    return phrases
        .find("caution." + caution.id() + ".hazard")
        .orElseGet(() -> caution.caution().hazard());
  }

  private String ask(ShownCaution caution) {
    return phrases
        .find("caution." + caution.id() + ".ask")
        .orElseGet(() -> caution.caution().ask());
  }
}
