package org.drysill.report.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drysill.reference.ReferenceData;
import org.drysill.reference.cautions.Caution;
import org.drysill.reference.measures.Measure;
import org.drysill.survey.ColdSpotKind;
import org.drysill.survey.RoomUse;
import org.drysill.yaml.Worded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each language says everything, with the same gaps. */
class WordsTest {
  private static final Pattern GAP = Pattern.compile("\\{\\d+}");

  /** The bundles by their files, without ending. */
  private static final List<String> BUNDLES =
      List.of("language/common", "sheet/words", "brief/words", "brief/terms");

  private static void load(Properties words, String name) {
    try (InputStream in = Phrases.class.getResourceAsStream("../" + name + ".properties");
        InputStreamReader text = new InputStreamReader(in, StandardCharsets.UTF_8)) {
      words.load(text);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** The words of all bundles; a key that two of them have is told apart by its bundle. */
  private static Properties of(Language language) {
    Properties all = new Properties();
    for (String bundle : BUNDLES) {
      Properties words = new Properties();
      load(words, bundle + (language == Language.ENGLISH ? "" : "_" + language.tag()));
      String before = bundle.startsWith("language") ? "" : bundle + ":";
      words.stringPropertyNames().forEach(k -> all.put(before + k, words.getProperty(k)));
    }
    return all;
  }

  private static Set<String> gaps(String phrase) {
    return GAP.matcher(phrase).results().map(MatchResult::group).collect(Collectors.toSet());
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void every_phrase_of_English_is_said_with_its_gaps(Language language) {
    Properties english = of(Language.ENGLISH);
    Properties words = of(language);
    for (String key : new TreeSet<>(english.stringPropertyNames())) {
      String phrase = words.getProperty(key, "");
      assertThat(phrase).as(key).isNotBlank();
      // One thing may be said without its number.
      if (!key.endsWith(".one")) {
        assertThat(gaps(phrase)).as(key).isEqualTo(gaps(english.getProperty(key)));
      }
    }
  }

  /** English takes these names from the reference data itself. */
  @ParameterizedTest
  @EnumSource(value = Language.class, mode = EnumSource.Mode.EXCLUDE, names = "ENGLISH")
  void every_measure_caution_room_and_place_has_a_name(Language language) {
    Set<String> names = of(language).stringPropertyNames();
    ReferenceData data = ReferenceData.bundled();
    assertThat(names)
        .containsAll(
            keys("measure.", data.measures().measures().stream().map(Measure::id), ".title"))
        .containsAll(
            keys("measure.", data.measures().measures().stream().map(Measure::id), ".does"))
        .containsAll(keys("caution.", data.cautions().stream().map(Caution::id), ".hazard"))
        .containsAll(keys("caution.", data.cautions().stream().map(Caution::id), ".ask"))
        .containsAll(keys("room.", words(RoomUse.values()), ""))
        .containsAll(keys("spot.", words(ColdSpotKind.values()), ""));
  }

  /** What the reference data no longer has is not kept. */
  @ParameterizedTest
  @EnumSource(value = Language.class, mode = EnumSource.Mode.EXCLUDE, names = "ENGLISH")
  void no_name_is_left_over(Language language) {
    ReferenceData data = ReferenceData.bundled();
    Set<String> used = new TreeSet<>(of(Language.ENGLISH).stringPropertyNames());
    Stream.of(".title", ".does")
        .forEach(
            e ->
                used.addAll(
                    keys("measure.", data.measures().measures().stream().map(Measure::id), e)));
    Stream.of(".hazard", ".ask")
        .forEach(e -> used.addAll(keys("caution.", data.cautions().stream().map(Caution::id), e)));
    used.addAll(keys("room.", words(RoomUse.values()), ""));
    used.addAll(keys("spot.", words(ColdSpotKind.values()), ""));
    // Symbols of units are those of English where a language has none of its own.
    used.addAll(
        of(language).stringPropertyNames().stream().filter(k -> k.startsWith("unit.")).toList());
    assertThat(of(language).stringPropertyNames()).isSubsetOf(used);
  }

  private static Stream<String> words(Worded[] constants) {
    Function<String, String> key = w -> w.replace(' ', '-');
    return Arrays.stream(constants).map(Worded::word).map(key);
  }

  private static List<String> keys(String before, Stream<String> middle, String after) {
    return middle.map(m -> before + m + after).toList();
  }

  @Test
  void a_date_is_written_as_its_language_does() {
    LocalDate day = LocalDate.of(2026, 3, 1);
    assertThat(Phrases.of(Language.ENGLISH).date(day)).isEqualTo("1 March 2026");
    assertThat(Phrases.of(Language.GERMAN).date(day)).isEqualTo("1. März 2026");
  }

  @Test
  void one_and_many_are_told_apart() {
    Phrases german = Phrases.of(Language.GERMAN, "org.drysill.report.sheet.words");
    assertThat(german.count("row.glass.none", 1)).startsWith("Das untersuchte Fenster");
    assertThat(german.count("row.glass.none", 3)).startsWith("Die drei untersuchten Fenster");
    assertThat(german.count("row.glass.none", 2)).startsWith("Beide untersuchten Fenster");
    assertThat(german.count("row.glass.none", 14)).startsWith("Die 14 untersuchten Fenster");
  }
}
