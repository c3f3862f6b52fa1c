package org.drysill.report.chapter;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.drysill.assess.Unit;
import org.drysill.assess.ventilation.ducts.FanAtWork;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.physics.Range;
import org.drysill.report.subject.Desk;
import org.drysill.report.words.Words;

/** What is said of a fan under its name: how it counts, and where its pressure goes. */
final class FanWords {
  private FanWords() {}

  static String under(Desk desk, FanFlow fan) {
    Stream<String> pause =
        fan.inMotion().stream()
            .map(m -> "Pauses leave " + desk.numbers().likely(m) + " of each half cycle.");
    Stream<String> work = fan.atWork().stream().map(w -> atWork(desk, w));
    Stream<String> photos = desk.photos().ofItem(fan.fan().id()).map(Words::sentence).stream();
    return String.join(
        " ", Stream.of(Stream.of(fan.why()), pause, work, photos).flatMap(s -> s).toList());
  }

  private static String atWork(Desk desk, FanAtWork work) {
    List<Part> parts =
        Stream.of(
                new Part("along the duct", work.friction()),
                new Part("in its bends", work.bends()),
                new Part("at its ends", work.ends()))
            .sorted(Comparator.comparingDouble((Part p) -> p.loss().likely()).reversed())
            .toList();
    return "Calculated: it works against "
        + desk.numbers().likely(work.pressure())
        + ", most of it "
        + parts.get(0).place()
        + " ("
        + desk.numbers().one(parts.get(0).loss().likely(), Unit.PASCAL)
        + ").";
  }

  private record Part(String place, Range loss) {}
}
