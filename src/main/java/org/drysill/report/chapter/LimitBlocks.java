package org.drysill.report.chapter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.timeline.HeldLimit;
import org.drysill.assess.timeline.HeldLimits;
import org.drysill.assess.timeline.Standing;
import org.drysill.assess.timeline.TimelineResult;
import org.drysill.report.block.Block;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Grid;
import org.drysill.report.block.Note;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Row;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Words;
import org.drysill.report.working.Sources;

/** The days of a timeline against limits of time that the law sets, with what they hang on. */
final class LimitBlocks {
  private LimitBlocks() {}

  static List<Block> of(TimelineResult result) {
    return result
        .held()
        .map(LimitBlocks::of)
        .orElseGet(
            () ->
                result.said().isEmpty()
                    ? List.of()
                    : List.of(new Prose(List.of(), "", "Limits of time.", result.said())));
  }

  private static List<Block> of(HeldLimits held) {
    return List.of(
        new Prose(
            List.of(Note.led("", Sources.of(held.source()))), "", "Limits of time.", said(held)),
        Grid.wide(
            held.binding()
                ? "The days against the limits"
                : "The days beside limits that did not bind yet",
            List.of(
                Cells.words("what"),
                Cells.words("within", 27),
                Cells.words("counted from", 34),
                Cells.words("last day", 27),
                Cells.words("day", 27),
                Cells.words("came", 30)),
            held.limits().stream().map(LimitBlocks::row).toList(),
            foot(held)));
  }

  private static String said(HeldLimits held) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        Words.capital(held.name())
            + " bind "
            + held.binds()
            + " since "
            + Words.date(held.inForce())
            + ". They are about "
            + held.covers()
            + ".");
    if (!held.binding()) {
      sentences.add(
          "This timeline begins on "
              + Words.date(held.begins())
              + ", before that day: the limits did not bind then, and the table is for comparison"
              + " only.");
    }
    sentences.add(
        held.hazardStated()
            ? "The landlord classed the hazard as " + held.hazard() + "."
            : "The survey does not say how the landlord classed the hazard; the limits are those of"
                + " a "
                + held.hazard()
                + " one.");
    sentences.add(held.exceptions());
    sentences.add("Check the law in force; this table does not judge who answers for a day.");
    return String.join(" ", sentences);
  }

  private static String foot(HeldLimits held) {
    return "A limit counts from the day after its event; an investigation counts as ended on the day"
        + " given for it. Working days are all but Saturdays, Sundays and the public holidays of "
        + held.holidaysOf()
        + (held.holidaysKnown() ? "" : ", as far as they are known; a last day may fall later")
        + " ("
        + held.holidays().how().word()
        + "). Later by days of the calendar. Not told: "
        + missing(held)
        + ".";
  }

  private static String missing(HeldLimits held) {
    String reasons =
        String.join(
            "; ",
            held.limits().stream()
                .map(HeldLimit::because)
                .filter(because -> !because.isEmpty())
                .distinct()
                .toList());
    return reasons.isEmpty() ? "none here" : reasons;
  }

  private static Row row(HeldLimit limit) {
    return Cells.row(
        Cells.text(limit.what()),
        Cells.text(limit.length()),
        Cells.text(Words.capital(limit.from()), day(limit.start())),
        Cells.text(day(limit.lastDay())),
        Cells.text(day(limit.done())),
        standing(limit));
  }

  private static String day(Optional<LocalDate> day) {
    return day.map(Words::date).orElse(Cells.NOTHING);
  }

  private static Cell standing(HeldLimit limit) {
    return Cells.text(
        limit.standing() == Standing.LATER
            ? "later by\u00a0" + Words.count(limit.daysLate(), "day", "days").replace(' ', '\u00a0')
            : limit.standing().word());
  }
}
