package org.drysill.report.brief;

import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drysill.assess.Assumption;
import org.drysill.assess.Unit;
import org.drysill.reference.How;
import org.drysill.report.block.Entries;
import org.drysill.report.block.Entry;
import org.drysill.report.block.Section;
import org.drysill.report.words.Typeset;
import org.drysill.report.words.Words;

/** What was taken for granted: its name, its value, where the value comes from. */
final class AssumedSection implements BriefChapter {
  private static final String PLAIN = "\\d+(?:[.,]\\d+)*";

  /** A number, one with its error or with its bounds behind it, or both ends of a range. */
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?<![\\p{L}\\d])%1$s(?:(?:\\.\\.|\\s±\\s)%1$s| \\(%1$s to %1$s\\))?".formatted(PLAIN));

  @Override
  public Optional<Section> write(BriefDesk desk) {
    List<Assumption> assumptions = desk.desk().found().assumptions();
    if (assumptions.isEmpty()) {
      return Optional.empty();
    }
    Entries entries =
        new Entries(
            "",
            assumptions.stream()
                .map(
                    a ->
                        new Entry(
                            desk.terms().assumption(a) + ":",
                            value(desk, a) + ".",
                            source(desk, a)))
                .toList(),
            assumptions.stream().anyMatch(AssumedSection::isPlanned)
                ? desk.say("assumed.foot")
                : "");
    return Optional.of(
        new Section(
                "assumptions",
                Words.capital(desk.phrases().count("assumed.heading", assumptions.size())),
                desk.say("assumed.running"),
                false,
                List.of(entries))
            .compactly());
  }

  /** Most are planning assumptions, which is said once for all. */
  private static String source(BriefDesk desk, Assumption assumption) {
    return isPlanned(assumption) ? "" : Words.capital(Cited.one(desk, assumption.source())) + ".";
  }

  private static boolean isPlanned(Assumption assumption) {
    return assumption.source().how() == How.ASSUMPTION;
  }

  /**
   * The value in the words of the language around its own numbers, after which comes the sign of
   * the currency; as it stands where it is a name, such as that of a climate, or numbers alone.
   */
  private static String value(BriefDesk desk, Assumption assumption) {
    Stream<String> numbers =
        NUMBER
            .matcher(assumption.assumed())
            .results()
            .map(MatchResult::group)
            .map(number -> spanned(desk, number));
    String currency = desk.numbers().unit(Unit.MONEY);
    String[] gaps = Stream.concat(numbers, Stream.of(currency)).toArray(String[]::new);
    return Keys.of("taken", assumption.id(), key -> desk.phrases().find(key).isPresent())
        .map(keys -> desk.say(keys.key(), gaps))
        .or(() -> desk.phrases().find("value." + slug(assumption.assumed()), gaps))
        .orElseGet(() -> spanned(desk, assumption.assumed()));
  }

  /** Such as {@code #-loads-a-week}: values that differ in their numbers share their words. */
  private static String slug(String assumed) {
    return NUMBER.matcher(assumed).replaceAll("#").replace(' ', '-');
  }

  /**
   * A range is written with two dots in data files, bounds with a word; some hold at a pressure.
   */
  private static String spanned(BriefDesk desk, String written) {
    return desk.numbers()
        .marked(
            Typeset.units(written)
                .replaceAll("(?<![\\d.,])(\\d{1,3})(\\d{3})(?=\\.\\.| ± |$)", "$1,$2")
                .replaceAll("(?<=\\.\\.)(\\d{1,3})(\\d{3})(?!\\d)", "$1,$2")
                .replaceAll("(?<=\\d)(?:\\.\\.| to )(?=\\d)", " " + desk.say("number.to") + " ")
                .replace(" at ", " " + desk.say("number.at") + " "));
  }
}
