package org.drysill.assess.model;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The states in which the readings of all rooms leave the home possible: water, air, doors and
 * errors as they may be together.
 */
public final class HomeStates {
  private static final HomeStates NONE = new HomeStates(Optional.empty(), Optional.empty());

  private final Optional<FittedHome> home;
  private final Optional<Repairs> repairs;

  private HomeStates(Optional<FittedHome> home, Optional<Repairs> repairs) {
    this.home = home;
    this.repairs = repairs;
  }

  /** Those of a home whose readings were put together. */
  static HomeStates of(FittedHome home) {
    return new HomeStates(Optional.of(home), Optional.empty());
  }

  /** What is put in order in a home before anything else is studied. */
  public interface Repairs {
    /**
     * What is not known of each, in an order that stays and each with a deviate; empty where it is
     * the flow of a fan, which has a name of its own.
     */
    List<Optional<String>> names();

    /** Whether the flow of a fan is not known for sure; empty for a fan that stays as it is. */
    Optional<Boolean> isDoubtful(String fan);

    /**
     * A state of the home with them done.
     *
     * @param today the state as it is
     * @param z a deviate of each, normal with mean 0 and deviation 1
     */
    HomeState after(HomeState today, double[] z);
  }

  /** The same states once something is put in order; none where none is known today. */
  public HomeStates after(Repairs done) {
    return new HomeStates(home, Optional.of(done));
  }

  /** What is not known of each thing that is taken as put in order; empty for flows of fans. */
  public List<Optional<String>> repaired() {
    return repairs.map(Repairs::names).orElse(List.of());
  }

  /** None: the readings could not be put together. */
  public static HomeStates none() {
    return NONE;
  }

  /** How many deviates make a state; 0 where none is known. */
  public int unknowns() {
    return home.map(h -> h.posterior().unknowns() + repaired().size()).orElse(0);
  }

  /** True where the flow of this fan is not known for sure. */
  public boolean isDoubtful(String fan) {
    return repairs
        .flatMap(r -> r.isDoubtful(fan))
        .orElseGet(
            () ->
                home.stream()
                    .flatMap(h -> h.model().fans().stream())
                    .anyMatch(f -> f.id().equals(fan) && f.factor().spread() > 0));
  }

  /** True where any two rooms are joined by a door that is not always open. */
  public boolean hasDoors() {
    return home.stream()
        .flatMap(h -> h.model().layout().ways().stream())
        .anyMatch(way -> !way.open());
  }

  /** True where vapour settles on panes. */
  public boolean hasPanes() {
    return home.filter(h -> h.model().hasPanes()).isPresent();
  }

  /**
   * A state; the most likely one for deviates of 0.
   *
   * @param z as many deviates as there are unknowns, each normal with mean 0 and deviation 1
   */
  public HomeState at(double[] z) {
    int readings = z.length - repaired().size();
    HomeState today = today(Arrays.copyOf(z, readings));
    return repairs
        .map(r -> r.after(today, Arrays.copyOfRange(z, readings, z.length)))
        .orElse(today);
  }

  private HomeState today(double[] z) {
    FittedHome fitted = home.orElseThrow();
    HomeModel model = fitted.model();
    double[] likely = fitted.posterior().at(new double[z.length]);
    double[] state = fitted.posterior().at(z);
    Map<String, Double> fans = new HashMap<>();
    for (int f = 0; f < model.fans().size(); f++) {
      int fan = f;
      fans.put(model.fans().get(f).id(), ratio(s -> model.fan(fan, s), state, likely));
    }
    return new HomeState(
        model.zoned(state),
        ratio(model::leaks, state, likely),
        fans,
        ratio(model::water, state, likely),
        ratio(s -> model.exchange(false, s), state, likely),
        model.glass(state),
        model.moment(state),
        state[Unknowns.INSTRUMENT],
        state[Unknowns.OUTDOOR],
        excess(model, state, likely));
  }

  private static double ratio(ToDoubleFunction<double[]> of, double[] state, double[] likely) {
    return of.applyAsDouble(state) / of.applyAsDouble(likely);
  }

  /** Without the moment of the visit, which is no part of the mean. */
  private static List<Double> excess(HomeModel model, double[] state, double[] likely) {
    double[] then = model.excess(state);
    double[] most = model.excess(likely);
    double moment = model.moment(likely) / model.moment(state);
    return IntStream.range(0, then.length)
        .mapToObj(i -> most[i] > 0 ? then[i] / most[i] * moment : 1)
        .toList();
  }
}
