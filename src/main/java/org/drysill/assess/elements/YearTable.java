package org.drysill.assess.elements;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.drysill.physics.Range;
import org.drysill.physics.layers.Iso13788Element;
import org.drysill.physics.layers.MonthWater;

/** The year of a wall month by month and place by place. */
final class YearTable {
  private static final int MONTHS = 12;

  private final Runs runs;
  private final List<WallLayer> layers;

  /** The case that the places and the order of the months are of. */
  private final Run shown;

  YearTable(Runs runs, List<WallLayer> layers) {
    this.runs = runs;
    this.layers = layers;
    boolean likelyDry = runs.likely().year().verdict() == Iso13788Element.Verdict.NONE;
    this.shown = likelyDry ? runs.worst() : runs.likely();
  }

  List<WaterMonth> months() {
    return IntStream.range(0, MONTHS)
        .mapToObj(i -> month((shown.year().first() + i) % MONTHS))
        .toList();
  }

  private WaterMonth month(int index) {
    MonthWater likely = at(runs.likely(), index);
    double stored = likely.storedKgM2();
    return new WaterMonth(
        index + 1,
        likely.climate().outdoorCelsius(),
        likely.condensedKgM2(),
        IntStream.range(0, likely.planes())
            .mapToDouble(k -> Math.max(0, -likely.gainedKgM2(k)))
            .sum(),
        new Range(
            Math.min(stored, at(runs.best(), index).storedKgM2()),
            stored,
            Math.max(stored, at(runs.worst(), index).storedKgM2())));
  }

  private static MonthWater at(Run run, int index) {
    return run.year().months().get((index - run.year().first() + MONTHS) % MONTHS);
  }

  /** The places that hold water at the end of some month, the wettest first. */
  List<WetPlace> wet() {
    Places places = Places.of(shown.slices());
    Map<Integer, List<Integer>> planes = new TreeMap<>();
    for (int k = 0; k < shown.element().planes(); k++) {
      int plane = k;
      if (shown.year().months().stream().anyMatch(m -> m.storedKgM2(plane) > 0)) {
        planes.computeIfAbsent(places.key(k), key -> new ArrayList<>()).add(k);
      }
    }
    return planes.entrySet().stream()
        .map(e -> place(e.getKey(), e.getValue()))
        .sorted(Comparator.comparingDouble(WetPlace::highestKgM2).reversed())
        .toList();
  }

  private WetPlace place(int key, List<Integer> planes) {
    List<Double> stored =
        shown.year().months().stream()
            .map(m -> planes.stream().mapToDouble(m::storedKgM2).sum())
            .toList();
    int inner = key % 2 == 1 ? key / 2 : key / 2 - 1;
    boolean absorbed = layers.subList(inner, key / 2 + 1).stream().allMatch(WallLayer::absorbing);
    return new WetPlace(Places.words(key, layers), absorbed, stored);
  }

  /** The month in which most water settles, or which comes closest to it. */
  WallProfile profile() {
    List<MonthWater> months = runs.likely().year().months();
    int worst =
        IntStream.range(0, MONTHS)
            .boxed()
            .max(
                Comparator.comparingDouble((Integer i) -> months.get(i).condensedKgM2())
                    .thenComparingDouble(i -> nearest(months.get(i))))
            .orElseThrow();
    MonthWater month = months.get(worst);
    Places places = Places.of(runs.likely().slices());
    return new WallProfile(
        (runs.likely().year().first() + worst) % MONTHS + 1,
        month.climate().indoorCelsius(),
        month.climate().outdoorCelsius(),
        month.climate().indoorPa(),
        month.climate().outdoorPa(),
        IntStream.range(0, month.planes()).mapToObj(k -> point(places, month, k)).toList());
  }

  /** How close the vapour comes to saturation [1]. */
  private static double nearest(MonthWater month) {
    return IntStream.range(1, month.planes() - 1)
        .mapToDouble(k -> month.line().pressurePa(k) / month.saturationPa(k))
        .max()
        .orElse(0);
  }

  private ProfilePoint point(Places places, MonthWater month, int plane) {
    return new ProfilePoint(
        places.layer(plane),
        places.share(plane),
        runs.likely()
            .element()
            .celsius(plane, month.climate().indoorCelsius(), month.climate().outdoorCelsius()),
        month.saturationPa(plane),
        month.line().pressurePa(plane),
        month.line().rateKgM2S(plane) > 0);
  }
}
