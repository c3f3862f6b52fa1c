package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.options.RankedMeasure;
import org.drysill.report.language.Language;
import org.drysill.report.language.Names;
import org.drysill.report.language.Phrases;
import org.drysill.report.subject.Subject;
import org.drysill.report.words.Words;

/**
 * What things are called, by their ids. An id without words is noted and stands as the results have
 * it, so that a report is never lost for a word; a test fails on each.
 */
final class Terms {
  private static final int LONGEST = 110;

  private final Phrases phrases;
  private final Names names;
  private final Map<String, RankedMeasure> measures;
  private final Set<String> wanting = new TreeSet<>();

  Terms(Subject subject, Phrases phrases, Names names) {
    this.phrases = phrases;
    this.names = names;
    this.measures =
        Stream.of(subject.options().ranked(), subject.options().beyondBudget())
            .flatMap(List::stream)
            .collect(Collectors.toMap(RankedMeasure::id, m -> m, (first, again) -> first));
  }

  /** The keys for which there were no words, in their order. */
  List<String> wanting() {
    return List.copyOf(wanting);
  }

  /** The name of a figure. */
  String figure(Figure figure) {
    return named("figure", figure.id(), figure.name());
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
    RankedMeasure measure = measures.get(id);
    String kind = measure == null ? id.split("\\.", 2)[0] : measure.measure();
    return phrases.find("measure." + kind + ".title");
  }

  private String at(String title, List<String> rooms) {
    return rooms.isEmpty()
        ? title
        : phrases.say("place.in", title, names.few(rooms.stream().map(names::room), 4));
  }

  private List<String> rooms(String id) {
    RankedMeasure measure = measures.get(id);
    return measure == null ? named(id) : measure.scope().rooms();
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
        .or(() -> phrases.find("package." + id))
        .map(name -> Words.shortened(name, LONGEST))
        .orElse(id);
  }

  /** True in English, where reference data speak the language. */
  boolean english() {
    return phrases.language() == Language.ENGLISH;
  }

  String lacking(String key, String otherwise) {
    wanting.add(key);
    return otherwise;
  }
}
