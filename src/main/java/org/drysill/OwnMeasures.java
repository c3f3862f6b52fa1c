package org.drysill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drysill.reference.ReferenceData;
import org.drysill.reference.cautions.Caution;
import org.drysill.reference.cautions.Trigger;
import org.drysill.reference.measures.AirEffect;
import org.drysill.reference.measures.AirMove;
import org.drysill.reference.measures.Measure;
import org.drysill.reference.measures.MeasureCatalogue;
import org.drysill.survey.ColdSpotKind;
import org.drysill.survey.FanKind;
import org.drysill.survey.SurveyFile;
import org.drysill.yaml.Places;
import org.drysill.yaml.Problem;
import org.drysill.yaml.Reading;
import org.drysill.yaml.RecordReader;
import org.drysill.yaml.TextFile;
import org.drysill.yaml.Vocabularies;
import org.drysill.yaml.Worded;
import org.drysill.yaml.YamlCode;

/** Reads the measures of a user, with the checks that hold for the bundled ones. */
final class OwnMeasures {
  private final ReferenceData bundled;
  private final List<Problem> problems;

  OwnMeasures(ReferenceData bundled, List<Problem> problems) {
    this.bundled = bundled;
    this.problems = problems;
  }

  /** The words of a survey that brings measures of its own: theirs beside the bundled ones. */
  static Vocabularies words(Vocabularies words, String text) {
    List<String> own = draft(text).measures().stream().map(Measure::name).toList();
    return words.with("measure", both(words.of("measure"), own));
  }

  /** The bundled measures with those of the file; only the bundled ones where it has errors. */
  MeasureCatalogue read(SurveyFile file, String path) {
    TextFile source = TextFile.decode(file.files().get(path), path);
    problems.addAll(source.problems());
    return source.text().map(text -> read(text, path)).orElseGet(bundled::measures);
  }

  private MeasureCatalogue read(String text, String path) {
    Reading<MeasureCatalogue> reading =
        RecordReader.read(MeasureCatalogue.class, text, path, words(text));
    problems.addAll(reading.problems());
    MeasureCatalogue all = bundled.measures().with(reading.value().orElse(none()));
    reading.value().ifPresent(own -> check(own, all, reading.places()));
    return all;
  }

  private static MeasureCatalogue none() {
    return new MeasureCatalogue(List.of());
  }

  private static MeasureCatalogue draft(String text) {
    return RecordReader.read(MeasureCatalogue.class, text, "", Vocabularies.none())
        .draft()
        .orElse(none());
  }

  private Vocabularies words(String text) {
    List<String> fans = worded(FanKind.values());
    return new Vocabularies(
        Map.of(
            "caution",
            bundled.cautions().stream().map(Caution::id).toList(),
            "measure id",
            both(ids(bundled.measures()), ids(draft(text))),
            "kind of fan",
            fans,
            "kind of cold spot or fan",
            both(worded(ColdSpotKind.values()), fans),
            "glazing",
            bundled.glazing().words(),
            "moisture source",
            bundled.moisture().kinds()));
  }

  private static List<String> ids(MeasureCatalogue catalogue) {
    return catalogue.measures().stream().map(Measure::id).toList();
  }

  private static List<String> worded(Worded[] kinds) {
    return Stream.of(kinds).map(Worded::word).toList();
  }

  private static List<String> both(List<String> some, List<String> more) {
    return Stream.concat(some.stream(), more.stream()).distinct().toList();
  }

  private void check(MeasureCatalogue own, MeasureCatalogue all, Places places) {
    List<String> names = new ArrayList<>(all.names());
    for (int i = 0; i < own.measures().size(); i++) {
      Measure measure = own.measures().get(i);
      String key = "measures[" + i + "]";
      if (names.stream().filter(measure.name()::equals).count() > 1) {
        refuse(places, key + ".name", measure.name(), "a name that no other measure has");
      }
      if (takesAirOut(measure) && flues().noneMatch(measure.cautions()::contains)) {
        refuse(
            places,
            key + ".cautions",
            String.join(", ", measure.cautions()),
            "the caution about open flues beside a fan that takes air out: "
                + flues().findFirst().orElseThrow());
      }
    }
  }

  private static boolean takesAirOut(Measure measure) {
    return measure.air().map(AirEffect::moves).equals(Optional.of(AirMove.EXTRACT));
  }

  private Stream<String> flues() {
    return bundled.cautions().stream()
        .filter(c -> c.trigger() == Trigger.OPEN_FLUE_WITH_EXTRACT)
        .map(Caution::id);
  }

  private void refuse(Places places, String key, String found, String expected) {
    problems.add(
        new Problem(
            YamlCode.REFUSED.severity(),
            YamlCode.REFUSED.code(),
            places.of(key),
            key,
            '"' + found + '"',
            expected,
            Optional.empty(),
            places.line(places.of(key).line())));
  }
}
