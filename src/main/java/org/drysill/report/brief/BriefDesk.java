package org.drysill.report.brief;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.report.block.Cell;
import org.drysill.report.block.Column;
import org.drysill.report.block.Note;
import org.drysill.report.language.Language;
import org.drysill.report.language.LocalNumbers;
import org.drysill.report.language.Names;
import org.drysill.report.language.Phrases;
import org.drysill.report.subject.Desk;
import org.drysill.report.subject.Subject;
import org.drysill.report.table.Cells;
import org.drysill.report.words.Rounding;

/**
 * What every chapter of the short report is written with.
 *
 * @param desk what the long report is written with: the results and the numbers of workings
 * @param phrases the words
 * @param numbers the numbers
 * @param names rooms and places
 * @param terms what has an id
 */
record BriefDesk(Desk desk, Phrases phrases, LocalNumbers numbers, Names names, Terms terms) {
  private static final String WORDS = "org.drysill.report.brief.words";
  private static final String TERMS = "org.drysill.report.brief.terms";

  static BriefDesk of(Subject subject, Language language) {
    Phrases phrases = Phrases.of(language, WORDS, TERMS);
    Names names = new Names(subject.survey(), phrases);
    return new BriefDesk(
        Desk.of(subject),
        phrases,
        new LocalNumbers(Desk.numbers(subject.assessment()), phrases),
        names,
        new Terms(subject, phrases, names));
  }

  Subject subject() {
    return desk.subject();
  }

  String say(String key, String... gaps) {
    return phrases.say(key, gaps);
  }

  /** The number of a figure's working. */
  String mark(Figure figure) {
    return desk.index().mark(figure);
  }

  /** A column of words. */
  Column words(String key, int widthMm) {
    return Cells.words(say(key), widthMm);
  }

  /** A column of numbers with its unit. */
  Column numbers(String key, Unit unit, int widthMm) {
    String symbol = numbers.unit(unit);
    return Cells.numbers(symbol.isEmpty() ? say(key) : say(key) + ", " + symbol, widthMm);
  }

  /** A figure without its unit, its bounds in small type, with the number of its working. */
  Cell value(Figure figure) {
    return value(figure, Rounding.NEAREST);
  }

  /** The same, rounded to a side. */
  Cell value(Figure figure, Rounding rounding) {
    return plain(figure, rounding).with(List.of(mark(figure)));
  }

  /** The same without the number of its working. */
  Cell plain(Figure figure) {
    return plain(figure, Rounding.NEAREST);
  }

  private Cell plain(Figure figure, Rounding rounding) {
    String bounds = numbers.bounds(figure.value(), figure.unit());
    return Cells.text(
        numbers.plain(figure.likely(), figure.unit(), rounding),
        bounds.isEmpty() ? "" : "(" + bounds + ")");
  }

  /** A figure, or a dash. */
  Cell value(Optional<Figure> figure) {
    return figure.map(this::value).orElse(Cells.text(Cells.NOTHING));
  }

  /** Notes that lead to workings, by the names of their figures, each once. */
  List<Note> notes(Stream<Figure> figures) {
    return figures
        .map(f -> Note.working(mark(f), terms.figure(f) + "; " + basis(f) + "."))
        .distinct()
        .toList();
  }

  /** On what a figure rests. */
  String basis(Figure figure) {
    return terms.word("basis", figure.basis());
  }
}
