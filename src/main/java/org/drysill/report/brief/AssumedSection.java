package org.drysill.report.brief;

import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.drysill.assess.Assumption;
import org.drysill.report.block.Entries;
import org.drysill.report.block.Entry;
import org.drysill.report.block.Section;

/** What was taken for granted: its name, its value, where the value comes from. */
final class AssumedSection implements BriefChapter {
  private static final Pattern NUMBER = Pattern.compile("(?<![\\p{L}\\d])\\d+(?:[.,]\\d+)*");

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
                            desk.terms().named("assumption", a.id(), a.about()) + ":",
                            value(desk, a) + ".",
                            SourceList.cited(desk, a.source()) + "."))
                .toList(),
            "");
    return Optional.of(
        new Section(
            "assumptions",
            desk.phrases().count("assumed.heading", assumptions.size()),
            desk.say("assumed.running"),
            false,
            List.of(entries)));
  }

  /**
   * The value in the words of the language around its own numbers; as it stands where it is a name,
   * such as that of a climate, or numbers alone.
   */
  private static String value(BriefDesk desk, Assumption assumption) {
    String assumed = assumption.assumed();
    String[] numbers =
        NUMBER.matcher(assumed).results().map(MatchResult::group).toArray(String[]::new);
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = desk.numbers().marked(numbers[i]);
    }
    Optional<Keys> keys =
        Keys.of("taken", assumption.id(), key -> phrase(desk, key, numbers).isPresent());
    return keys.flatMap(k -> phrase(desk, k.key(), numbers))
        .or(() -> desk.phrases().find("value." + assumed.replace(' ', '-')))
        .orElseGet(() -> desk.numbers().marked(assumed));
  }

  /** How a value is said depends on how many numbers it has. */
  private static Optional<String> phrase(BriefDesk desk, String key, String[] numbers) {
    return desk.phrases()
        .find(key + "." + numbers.length, numbers)
        .or(() -> desk.phrases().find(key, numbers));
  }
}
