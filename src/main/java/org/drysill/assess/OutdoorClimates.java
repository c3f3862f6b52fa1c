package org.drysill.assess;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drysill.assess.OutdoorClimate.Month;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.reference.Citation;
import org.drysill.reference.How;
import org.drysill.reference.climate.ClimateCatalogue;
import org.drysill.reference.climate.ClimateDefaults;
import org.drysill.reference.climate.HumidityOver;
import org.drysill.reference.climate.NearClimate;
import org.drysill.reference.climate.ReferenceClimate;
import org.drysill.survey.ClimateChoice;
import org.drysill.survey.MonthlyClimate;
import org.drysill.survey.Survey;
import org.drysill.yaml.Quantity;

/** Finds the outdoor climate of a home: named, tabulated, from a weather file, or assumed. */
public final class OutdoorClimates {
  private static final int MONTHS = 12;

  private OutdoorClimates() {}

  /**
   * A climate with what was taken for granted to find it.
   *
   * @param climate the climate
   * @param assumptions that a climate was assumed, or that its humidity is
   */
  public record Resolved(OutdoorClimate climate, List<Assumption> assumptions) {
    /** Copies the list. */
    public Resolved {
      assumptions = List.copyOf(assumptions);
    }
  }

  /**
   * Finds the climate.
   *
   * @param survey what was seen
   * @param catalogue the bundled climates
   * @param suggested the climate that the rule set suggests where the survey names none
   * @param weather the weather file, where the survey names one
   * @throws IllegalArgumentException where the survey names a climate that the catalogue lacks, or
   *     a weather file that was not read: readers refuse such a survey beforehand
   */
  public static Resolved resolve(
      Survey survey,
      ClimateCatalogue catalogue,
      Optional<String> suggested,
      Optional<MonthlyWeather> weather) {
    Optional<ClimateChoice> choice = survey.dwelling().climate();
    if (choice.flatMap(ClimateChoice::location).isPresent()) {
      return named(find(catalogue, choice.flatMap(ClimateChoice::location).get()));
    }
    if (choice.flatMap(ClimateChoice::monthly).isPresent()) {
      return new Resolved(ownTable(choice.flatMap(ClimateChoice::monthly).get()), List.of());
    }
    if (choice.flatMap(ClimateChoice::file).isPresent()) {
      return new Resolved(
          ofFile(weather.orElseThrow(() -> new IllegalArgumentException("weather file not read"))),
          List.of());
    }
    return near(survey, catalogue)
        .orElseGet(
            () ->
                suggested
                    .map(id -> suggested(find(catalogue, id)))
                    .orElseGet(() -> assumed(survey, catalogue)));
  }

  /** The nearest climate, where the survey says where the home stands and one is near enough. */
  private static Optional<Resolved> near(Survey survey, ClimateCatalogue catalogue) {
    Optional<Quantity> latitude = survey.dwelling().latitude();
    Optional<Quantity> longitude = survey.dwelling().longitude();
    if (latitude.isEmpty() || longitude.isEmpty()) {
      return Optional.empty();
    }
    return catalogue.near(latitude.get().value(), longitude.get().value()).stream()
        .findFirst()
        .filter(near -> near.kilometres() * 1000 <= catalogue.defaults().nearestWithin().value())
        .map(OutdoorClimates::nearest);
  }

  private static Resolved nearest(NearClimate near) {
    ReferenceClimate reference = near.climate();
    Assumption assumption =
        new Assumption(
            "dwelling.climate",
            "Outdoor climate",
            "%s, about %d km away".formatted(reference.name(), Math.round(near.kilometres())),
            "the survey names no climate but says where the home stands; this is the nearest one",
            "Name the climate that suits the place and its height, or give a weather file of it.",
            reference.temperatureSource());
    return new Resolved(
        of(reference, Basis.ASSUMED),
        Stream.concat(Stream.of(assumption), humidityAssumption(reference)).toList());
  }

  private static Resolved named(ReferenceClimate reference) {
    return new Resolved(of(reference, Basis.PUBLISHED), humidityAssumption(reference).toList());
  }

  private static Resolved suggested(ReferenceClimate reference) {
    return assumed(
        reference,
        of(reference, Basis.ASSUMED),
        "the survey names no climate; the rule set suggests this one",
        reference.temperatureSource());
  }

  private static Resolved assumed(Survey survey, ClimateCatalogue catalogue) {
    ClimateDefaults defaults = catalogue.defaults();
    ReferenceClimate reference = find(catalogue, defaults.fallback());
    OutdoorClimate north = of(reference, Basis.ASSUMED);
    return assumed(
        reference,
        isSouthern(survey, defaults) ? turned(north) : north,
        "neither the survey nor the rule set names a climate",
        defaults.source());
  }

  private static Resolved assumed(
      ReferenceClimate reference, OutdoorClimate climate, String why, Citation source) {
    Assumption assumption =
        new Assumption(
            "dwelling.climate",
            "Outdoor climate",
            climate.name(),
            why,
            "Name the nearest climate under dwelling.climate, or give a weather file of the place.",
            source);
    return new Resolved(
        climate, Stream.concat(Stream.of(assumption), humidityAssumption(reference)).toList());
  }

  /** By its latitude where the survey gives one, else by its rule set. */
  private static boolean isSouthern(Survey survey, ClimateDefaults defaults) {
    return survey
        .dwelling()
        .latitude()
        .map(latitude -> latitude.value() < 0)
        .orElseGet(
            () ->
                survey
                    .dwelling()
                    .jurisdiction()
                    .rules()
                    .filter(defaults.southern()::contains)
                    .isPresent());
  }

  /** A climate of the north for a home in the south: its July in January. */
  private static OutdoorClimate turned(OutdoorClimate north) {
    return new OutdoorClimate(
        north.name() + ", turned by half a year",
        IntStream.range(0, MONTHS)
            .mapToObj(i -> north.months().get((i + MONTHS / 2) % MONTHS).as(i + 1, days(i)))
            .toList(),
        north.basis(),
        north.sources(),
        north.note());
  }

  private static Stream<Assumption> humidityAssumption(ReferenceClimate reference) {
    if (reference.humiditySource().how() != How.ASSUMPTION) {
      return Stream.empty();
    }
    return Stream.of(
        new Assumption(
            "dwelling.climate.humidity",
            "Outdoor humidity by month",
            "the estimated humidities of " + reference.name(),
            "no published table of humidity goes with these temperatures",
            "Read temperature and humidity outdoors at each visit, or give a weather file.",
            reference.humiditySource()));
  }

  private static OutdoorClimate of(ReferenceClimate reference, Basis basis) {
    return new OutdoorClimate(
        reference.name(),
        IntStream.range(0, 12).mapToObj(month -> month(reference, month)).toList(),
        basis,
        Stream.concat(
                Stream.of(reference.temperatureSource(), reference.humiditySource()),
                reference.windSource().stream())
            .distinct()
            .toList(),
        reference.note());
  }

  private static Month month(ReferenceClimate reference, int index) {
    double temperature = reference.temperature().get(index).value();
    double humidity =
        overWater(reference.humidity().get(index).value(), temperature, reference.humidityOver());
    double uncertainty = reference.humidityUncertainty().value();
    return new Month(
        index + 1,
        days(index),
        temperature,
        new Range(
            Math.max(0, humidity - uncertainty), humidity, Math.min(1, humidity + uncertainty)),
        at(reference.wind(), index));
  }

  /** Over water, at most 1: supersaturation over ice is saturation over water. */
  private static double overWater(double humidity, double temperature, HumidityOver over) {
    return switch (over) {
      case WATER -> humidity;
      case ICE -> Math.min(1, humidity / Iso13788Vapour.humidityOverIce(temperature, 1));
    };
  }

  private static OutdoorClimate ownTable(MonthlyClimate table) {
    return new OutdoorClimate(
        "own monthly table",
        IntStream.range(0, 12)
            .mapToObj(
                i ->
                    new Month(
                        i + 1,
                        days(i),
                        table.temperature().get(i).value(),
                        table.humidity().get(i).range(),
                        at(table.wind(), i)))
            .toList(),
        Basis.MEASURED,
        List.of(own(table.source().orElse("Monthly table of the survey"))),
        Optional.empty());
  }

  private static OutdoorClimate ofFile(MonthlyWeather weather) {
    return new OutdoorClimate(
        weather.place(),
        IntStream.range(0, 12).mapToObj(i -> month(weather.months().get(i), i)).toList(),
        Optional.of(weather.year()),
        Basis.MEASURED,
        List.of(own("Weather file " + weather.fileName())),
        Optional.of(
            "Monthly means of an hourly file; the humidity of a month is its mean vapour pressure"
                + " at its mean temperature."
                + (weather.supersaturated() == 0
                    ? ""
                    : " Humidities above 100 % taken as 100 %: " + weather.supersaturated() + ".")
                + (weather.filled() == 0
                    ? ""
                    : " Hours that the file lacks, filled between their neighbours: "
                        + weather.filled()
                        + ".")));
  }

  private static Month month(MonthlyWeather.Means means, int index) {
    return new Month(
        index + 1,
        days(index),
        means.temperature(),
        Range.exactly(means.relativeHumidity()),
        means.wind());
  }

  private static ReferenceClimate find(ClimateCatalogue catalogue, String id) {
    return catalogue.find(id).orElseThrow(() -> new IllegalArgumentException("no climate " + id));
  }

  private static Citation own(String document) {
    return new Citation(document, Optional.empty(), Optional.empty(), How.SEEN);
  }

  private static Optional<Double> at(List<Quantity> values, int index) {
    return values.isEmpty() ? Optional.empty() : Optional.of(values.get(index).value());
  }

  private static int days(int index) {
    return java.time.Month.of(index + 1).length(false);
  }
}
