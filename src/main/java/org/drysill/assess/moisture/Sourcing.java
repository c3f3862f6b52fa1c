package org.drysill.assess.moisture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.moisture.MoistureResult.Item;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.Sourced;
import org.drysill.reference.moisture.MoistureSources;
import org.drysill.reference.moisture.SourceKind;
import org.drysill.reference.moisture.UsualCount;
import org.drysill.survey.MoistureSource;
import org.drysill.survey.YesNo;
import org.drysill.yaml.Quantity;

/** Itemises the sources of a home: those that the survey lists, and those of every home. */
final class Sourcing {
  private final Home home;
  private final MoistureSources table;
  private final Range occupants;
  private final List<Item> items = new ArrayList<>();
  private final List<Assumption> assumptions = new ArrayList<>();

  /**
   * For a home.
   *
   * @param lived whether anybody lives there; if not, nothing is added to what the survey lists
   */
  Sourcing(Home home, MoistureSources table, boolean lived) {
    this.home = home;
    this.table = table;
    this.occupants = home.occupants().value();
    home.rooms().forEach(this::listed);
    if (lived) {
      table.sources().forEach(this::unlisted);
    }
  }

  List<Item> items() {
    return List.copyOf(items);
  }

  List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }

  private void listed(RoomFacts room) {
    int number = 0;
    for (MoistureSource source : room.room().moistureSources()) {
      number++;
      String id = "moisture." + room.id() + ".source_" + number;
      Optional<SourceKind> kind = table.find(source.kind());
      if (source.rate().isPresent()) {
        items.add(stated(id, room, source));
      } else if (kind.filter(k -> !k.rates().isEmpty()).isPresent()) {
        items.add(tabulated(id, room, source, kind.get()));
      } else {
        assumptions.add(withoutRate(id, room, source));
      }
    }
  }

  private void unlisted(SourceKind kind) {
    if (kind.unlisted().isEmpty() || isListed(kind)) {
      return;
    }
    UsualCount count = kind.unlisted().get();
    Counted counted = Counted.usual(kind, Optional.empty(), count, occupants);
    String id = "moisture.unlisted." + kind.kind().replace(' ', '_');
    items.add(
        new Item(
            kind.kind(),
            Optional.empty(),
            kind.kind(),
            CountedFigure.of(id, kind.kind(), counted, Optional.empty()),
            counted.said(),
            counted.loadsPerWeek()));
    assumptions.add(
        new Assumption(
            id,
            Words.capital(kind.kind()),
            counted.said(),
            "the survey does not list it, and most homes have it",
            "Ask, and list it in its room, with a rate of 0 kg/day if there is none.",
            count.source()));
  }

  private boolean isListed(SourceKind kind) {
    Set<String> words =
        home.rooms().stream()
            .flatMap(room -> room.room().moistureSources().stream())
            .map(MoistureSource::kind)
            .collect(Collectors.toSet());
    return words.contains(kind.kind()) || kind.coveredBy().stream().anyMatch(words::contains);
  }

  private Item stated(String id, RoomFacts room, MoistureSource source) {
    return new Item(
        source.kind(),
        Optional.of(room.id()),
        label(source),
        new Figure(
            id,
            "Water given off by " + label(source),
            source.rate().orElseThrow().range(),
            Unit.MASS_RATE,
            Basis.DECLARED,
            () -> new Working("as stated in the survey", List.of(), List.of(), source.note())),
        "as stated",
        source.loadsPerWeek().map(Quantity::range));
  }

  private Item tabulated(String id, RoomFacts room, MoistureSource source, SourceKind kind) {
    Counted counted = Counted.of(kind, source, occupants);
    Optional<Sourced> lids =
        source.lidsAndHood().filter(a -> a == YesNo.YES).flatMap(a -> kind.lidsAndHood());
    if (!counted.told()) {
      assumptions.add(usual(id, source, kind, counted));
    }
    return new Item(
        kind.kind(),
        Optional.of(room.id()),
        label(source),
        CountedFigure.of(id, label(source), counted, lids),
        counted.said() + (lids.isPresent() ? ", with lids and hood" : ""),
        counted.loadsPerWeek());
  }

  private static Assumption usual(
      String id, MoistureSource source, SourceKind kind, Counted counted) {
    return new Assumption(
        id,
        Words.capital(label(source)),
        counted.said(),
        "the survey does not say how often or how much",
        "Ask how often in a week, for how many hours a day, or how much.",
        kind.usual().orElseThrow().source());
  }

  private static Assumption withoutRate(String id, RoomFacts room, MoistureSource source) {
    return new Assumption(
        id,
        Words.capital(label(source)) + " in the " + room.name(),
        "left out of the sum",
        "the survey does not say how much water it gives off, and no table knows it",
        "State its rate in kg/day.",
        new Citation("No published value", Optional.empty(), Optional.empty(), How.ASSUMPTION));
  }

  private static String label(MoistureSource source) {
    return source.kind().equals("other") ? source.note().orElse("other source") : source.kind();
  }
}
