package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.options.FirstThing;
import org.drysill.options.RankedMeasure;
import org.drysill.report.language.Language;
import org.drysill.report.language.Names;
import org.drysill.report.language.Phrases;
import org.drysill.report.subject.Subject;
import org.drysill.report.words.Words;
import org.drysill.survey.MoistureSource;
import org.drysill.survey.Room;

/**
 * What things are called, by their ids. An id without words is noted and stands as the results have
 * it, so that a report is never lost for a word; a test fails on each.
 */
final class Terms {
  private static final int LONGEST = 110;
  private static final Pattern COST = Pattern.compile("options\\.(.+)\\.((?:first|annual)_cost)");
  private static final Pattern LISTED = Pattern.compile("moisture\\.(.+)\\.source_(\\d{1,3})");
  private static final Pattern UNLISTED = Pattern.compile("moisture\\.unlisted\\.(.+)");

  private final Phrases phrases;
  private final Names names;
  private final Map<String, Deed> deeds;
  private final Map<String, List<MoistureSource>> sources;
  private final Set<String> wanting = new TreeSet<>();

  Terms(Subject subject, Phrases phrases, Names names) {
    this.phrases = phrases;
    this.names = names;
    this.deeds =
        Stream.of(
                subject.options().first().stream().map(Deed::of),
                subject.options().ranked().stream().map(Deed::of),
                subject.options().beyondBudget().stream().map(Deed::of))
            .flatMap(all -> all)
            .collect(Collectors.toMap(Deed::id, d -> d, (first, again) -> first));
    this.sources =
        subject.survey().rooms().stream()
            .collect(Collectors.toMap(Room::id, Room::moistureSources));
  }

  /** The keys for which there were no words, in their order. */
  List<String> wanting() {
    return List.copyOf(wanting);
  }

  /** The name of a figure. */
  String figure(Figure figure) {
    return cost(figure.id())
        .or(() -> water("figure", figure.id()))
        .orElseGet(() -> named("figure", figure.id(), figure.name()));
  }

  /** The name of an assumption. */
  String assumption(Assumption assumption) {
    return water("assumption", assumption.id())
        .orElseGet(() -> named("assumption", assumption.id(), assumption.about()));
  }

  /** What a measure costs, called by its title and its place. */
  private Optional<String> cost(String id) {
    Matcher cost = COST.matcher(id);
    return cost.matches() && deeds.containsKey(cost.group(1))
        ? Optional.of(
            phrases.say(
                "figure.options.*." + cost.group(2),
                measureInTable(cost.group(1), deeds.get(cost.group(1)).title())))
        : Optional.empty();
  }

  /** What a source of moisture gives off, or how often, called by what it is. */
  private Optional<String> water(String group, String id) {
    Matcher listed = LISTED.matcher(id);
    if (listed.matches()) {
      List<MoistureSource> here = sources.getOrDefault(listed.group(1), List.of());
      int number = Integer.parseInt(listed.group(2));
      return number > here.size()
          ? Optional.empty()
          : phrases.find(
              group + ".moisture.listed",
              source(here.get(number - 1).kind()),
              names.room(listed.group(1)));
    }
    Matcher unlisted = UNLISTED.matcher(id);
    return unlisted.matches()
        ? phrases.find(group + ".moisture.unlisted", source(unlisted.group(1)))
        : Optional.empty();
  }

  /** What a finding compares. */
  String finding(Finding finding) {
    return named("finding", finding.id(), finding.subject());
  }

  /** The places alone of what a finding compares. */
  String about(Finding finding) {
    return Keys.of("finding", finding.id(), key -> phrases.find(key).isPresent())
        .map(keys -> keys.named().stream().map(this::part).collect(Collectors.joining(" – ")))
        .filter(about -> !about.isEmpty())
        .orElseGet(() -> finding(finding));
  }

  /** A source of moisture within a name; German nouns keep their capital. */
  private String source(String kind) {
    String word = word("source", kind);
    return english() ? Words.within(word) : word;
  }

  /** The words for an id, with the names of its parts in their gaps. */
  String named(String group, String id, String otherwise) {
    return find(group, id).orElseGet(() -> lacking(group + "." + id, otherwise));
  }

  /** The same; empty where there are none. */
  Optional<String> find(String group, String id) {
    return Keys.of(group, id, key -> phrases.find(key).isPresent())
        .map(
            keys ->
                phrases.say(
                    keys.key(), keys.named().stream().map(this::part).toArray(String[]::new)));
  }

  /** The word of an enumeration, such as {@code basis.measured}. */
  String word(String group, String word, String... gaps) {
    String key = group + "." + word.toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
    return phrases.find(key, gaps).orElseGet(() -> lacking(key, word));
  }

  /** The word of a constant. */
  String word(String group, Enum<?> constant) {
    return word(group, constant.name());
  }

  /** A measure at its place, by its id of this home. */
  String measure(String id, String otherwise) {
    return title(id).map(title -> at(title, rooms(id))).orElse(otherwise);
  }

  /** The same in a table: several rooms by their number. */
  String measureInTable(String id, String otherwise) {
    List<String> rooms = rooms(id);
    return title(id)
        .map(
            title ->
                rooms.size() > 1
                    ? phrases.say("packages.rooms", title, Integer.toString(rooms.size()))
                    : at(title, rooms))
        .orElse(otherwise);
  }

  /** English takes titles from the reference data; those of a user's own file are in its words. */
  private Optional<String> title(String id) {
    Deed deed = deeds.get(id);
    String kind = deed == null ? id.split("\\.", 2)[0] : deed.kind();
    return phrases.find("measure." + kind + ".title");
  }

  private String at(String title, List<String> rooms) {
    return rooms.isEmpty()
        ? title
        : phrases.say("place.in", title, names.few(rooms.stream().map(names::room), 4));
  }

  private List<String> rooms(String id) {
    Deed deed = deeds.get(id);
    return deed == null ? named(id) : deed.rooms();
  }

  private List<String> named(String id) {
    List<String> rooms = new ArrayList<>(List.of(id.split("\\.")));
    rooms.remove(0);
    rooms.removeIf(part -> names.room(part).equals(part));
    return rooms;
  }

  /** A room, a place or one of its parts, a fan, or a measure. */
  String place(String id) {
    return part(part(id).equals(id) ? id.split("\\.", 2)[0] : id);
  }

  private String part(String id) {
    String room = names.room(id);
    if (!room.equals(id)) {
      return room;
    }
    return names
        .place(id)
        .or(() -> phrases.find("measure." + id + ".title"))
        .or(() -> titled(id))
        .or(() -> phrases.find("package." + id))
        .map(name -> Words.shortened(name, LONGEST))
        .orElse(id);
  }

  /** The title that reference data give a kind of measure, with its place in this home. */
  private Optional<String> titled(String kind) {
    return deeds.values().stream()
        .filter(deed -> deed.kind().equals(kind))
        .map(Deed::title)
        .min(Comparator.naturalOrder());
  }

  /** True in English, where reference data speak the language. */
  boolean english() {
    return phrases.language() == Language.ENGLISH;
  }

  String lacking(String key, String otherwise) {
    wanting.add(key);
    return otherwise;
  }

  /** Something that can be done, by its id in this home. */
  private record Deed(String id, String kind, String title, List<String> rooms) {
    static Deed of(RankedMeasure measure) {
      return new Deed(measure.id(), measure.measure(), measure.title(), measure.scope().rooms());
    }

    static Deed of(FirstThing thing) {
      return new Deed(thing.id(), thing.id().split("\\.", 2)[0], thing.title(), thing.rooms());
    }
  }
}
