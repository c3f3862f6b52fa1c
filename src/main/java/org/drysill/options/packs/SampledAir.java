package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.assess.Assessment;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.model.HomeState;
import org.drysill.assess.model.HomeStates;
import org.drysill.assess.model.ZonedHome;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.options.Sureness.InputKind;
import org.drysill.options.draws.Doubt;
import org.drysill.options.draws.Draws;
import org.drysill.physics.samples.TwoPieceNormal;

/**
 * The air, the water and the doors of the home in each sample: states that its readings leave
 * possible, else the flows within their ranges.
 */
final class SampledAir {
  /** A flow never falls below this part of the likely one. */
  private static final double LEAST = 0.05;

  private final Assessment assessment;
  private final ProvidedAir air;
  private final int samples;
  private final List<ZonedHome> zones = new ArrayList<>();
  private final double[] leaks;
  private final Map<String, double[]> fans = new HashMap<>();
  private final List<Doubt> doubts = new ArrayList<>();
  private final Optional<List<HomeState>> states;

  SampledAir(Assessment assessment, Draws draws) {
    this.assessment = assessment;
    this.air = assessment.ventilation().provided();
    this.samples = draws.samples();
    this.leaks = new double[samples];
    HomeStates known = assessment.model().states();
    if (known.unknowns() > 0) {
      List<HomeState> drawn = drawn(known, draws);
      this.states = Optional.of(drawn);
      take(drawn);
      doubts(known, drawn);
      repaired(known, draws);
    } else {
      this.states = Optional.empty();
      draw(draws);
    }
  }

  /** The zones in a sample. */
  ZonedHome zones(int sample) {
    return zones.get(sample);
  }

  /** The states that the readings leave possible; empty where they could not be put together. */
  Optional<List<HomeState>> states() {
    return states;
  }

  /** Air through leaks and ventilators, by its likely value [1]. */
  double leaks(int sample) {
    return leaks[sample];
  }

  /** The flow of a fan that is there, by its likely value [1]. */
  double fan(FanFlow fan, int sample) {
    return fans.get(fan.fan().id())[sample];
  }

  /** What is not known of them. */
  List<Doubt> doubts() {
    return doubts;
  }

  private List<HomeState> drawn(HomeStates known, Draws draws) {
    double[][] deviates = new double[known.unknowns()][];
    for (int k = 0; k < deviates.length; k++) {
      deviates[k] = draws.of("model." + k);
    }
    return IntStream.range(0, samples)
        .parallel()
        .mapToObj(
            s ->
                known.at(
                    IntStream.range(0, deviates.length).mapToDouble(k -> deviates[k][s]).toArray()))
        .toList();
  }

  private void take(List<HomeState> drawn) {
    for (FanFlow fan : air.fans()) {
      fans.put(fan.fan().id(), drawn.stream().mapToDouble(d -> d.fan(fan.fan().id())).toArray());
    }
    for (int s = 0; s < samples; s++) {
      zones.add(drawn.get(s).zones());
      leaks[s] = drawn.get(s).leaks();
    }
  }

  /** Without readings that tell rooms apart: one zone, its flows within their ranges. */
  private void draw(Draws draws) {
    double[] z = draws.of("leaks");
    for (int s = 0; s < samples; s++) {
      leaks[s] = ratio(air.infiltration(), z[s]);
    }
    doubts.add(leaksDoubt());
    for (FanFlow fan : air.fans()) {
      Figure mean = fan.extract().likely() > 0 ? fan.extract() : fan.supply();
      double[] ratios = new double[samples];
      double[] of = draws.of("fan." + fan.fan().id());
      for (int s = 0; s < samples; s++) {
        ratios[s] = ratio(mean, of[s]);
      }
      fans.put(fan.fan().id(), ratios);
      if (mean.value().isSpread()) {
        doubts.add(fanDoubt(fan));
      }
    }
    for (int s = 0; s < samples; s++) {
      double supply = air.supply().likely();
      double extract = air.extract().likely();
      for (FanFlow fan : air.fans()) {
        supply += fan.supply().likely() * (fan(fan, s) - 1);
        extract += fan.extract().likely() * (fan(fan, s) - 1);
      }
      zones.add(
          HomeZones.one(
              Math.max(0, supply), Math.max(0, extract), air.infiltration().likely() * leaks[s]));
    }
  }

  private static double ratio(Figure figure, double z) {
    double likely = figure.likely();
    return likely > 0 ? Math.max(LEAST, TwoPieceNormal.at(figure.value(), z) / likely) : 1;
  }

  private void doubts(HomeStates known, List<HomeState> drawn) {
    doubts.add(leaksDoubt());
    for (FanFlow fan : air.fans()) {
      if (known.isDoubtful(fan.fan().id())) {
        doubts.add(fanDoubt(fan));
      }
    }
    doubts.add(
        home(
            "water",
            InputKind.WATER,
            "water of all sources",
            Basis.DECLARED,
            "the list of what gives off water and the readings of all rooms",
            drawn.stream().map(HomeState::water).toList()));
    if (known.hasDoors()) {
      doubts.add(
          home(
              "doors",
              InputKind.DOORS,
              "air that passes both ways through doors",
              Basis.ASSUMED,
              "how long doors stand open, which was not recorded",
              drawn.stream().map(HomeState::doors).toList()));
    }
    if (known.hasPanes()) {
      doubts.add(
          home(
              "glass",
              InputKind.GLASS,
              "water that panes take out of the air",
              Basis.ASSUMED,
              "the part of glass in a window and the film of air at it, as is usual",
              drawn.stream().map(HomeState::glass).toList()));
    }
    doubts.add(
        home(
            "moment",
            InputKind.MOMENT,
            "the moment of the visit against the mean of days",
            Basis.ASSUMED,
            "readings of a moment",
            drawn.stream().map(HomeState::moment).toList()));
    doubts.add(
        home(
            "hygrometer",
            InputKind.INSTRUMENT,
            "the error of the hygrometer indoors",
            Basis.MEASURED,
            "the accuracy of the instrument",
            drawn.stream().map(HomeState::hygrometer).toList()));
    doubts.add(
        home(
            "outdoor_reading",
            InputKind.INSTRUMENT,
            "the error of the reading outdoors",
            Basis.MEASURED,
            "the accuracy of the instrument",
            drawn.stream().map(HomeState::outdoors).toList()));
  }

  /** The deviates of what is put in order first come after those of the readings. */
  private void repaired(HomeStates known, Draws draws) {
    List<Optional<String>> names = known.repaired();
    for (int i = 0; i < names.size(); i++) {
      String unknown = "model." + (known.unknowns() - names.size() + i);
      names.get(i).map(name -> repair(unknown, name, draws.of(unknown))).ifPresent(doubts::add);
    }
  }

  private static Doubt repair(String id, String name, double[] values) {
    return home(
        id,
        InputKind.REPAIR,
        name,
        Basis.DECLARED,
        "what the survey says of its size",
        Arrays.stream(values).boxed().toList());
  }

  private Doubt leaksDoubt() {
    Figure n50 = assessment.home().n50();
    return home(
        "leaks",
        InputKind.LEAKS,
        "air through leaks and ventilators",
        n50.basis(),
        n50.basis() == Basis.MEASURED
            ? "the airtightness test and the rule that turns it into air"
            : "an airtightness that was not measured",
        IntStream.range(0, samples).mapToObj(s -> leaks[s]).toList());
  }

  private Doubt fanDoubt(FanFlow fan) {
    Basis basis = fan.running().basis();
    return new Doubt(
        "fan." + fan.fan().id(),
        InputKind.FAN,
        Optional.of(fan.fan().id()),
        "the flow of " + (fan.name().startsWith("the ") ? "" : "the ") + fan.name(),
        basis,
        switch (basis) {
          case MEASURED -> "the flow that was measured at it";
          case DECLARED -> "the flow that its maker declares";
          case CALCULATED -> "its curve and its duct";
          case PUBLISHED, ASSUMED -> "what such a fan usually moves";
        },
        IntStream.range(0, samples).mapToObj(s -> fan(fan, s)).toList());
  }

  private static Doubt home(
      String id, InputKind kind, String name, Basis basis, String restsOn, List<Double> values) {
    return new Doubt(id, kind, Optional.empty(), name, basis, restsOn, values);
  }
}
