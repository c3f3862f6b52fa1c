package org.drysill.assess.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.How;

/** The figures of a fitted home. */
final class ModelFigures {
  private static final Citation FIT =
      new Citation(
          "Regularised least squares",
          Optional.empty(),
          Optional.of("method of Levenberg and Marquardt"),
          How.MEMORY);
  private static final Citation BALANCE =
      Citation.of(
          "ISO 13788", "2012", "Annex A, vapour balance, here of several rooms", How.MEMORY);
  private static final String RULE =
      "x such that Σ z² + Σ ((read − modelled) / error)² is least, z in deviations from x before";
  private static final String BOUNDS =
      "The bounds hold it in 95 of 100 cases, if the home is as it is modelled.";

  private final FittedHome home;

  ModelFigures(FittedHome home) {
    this.home = home;
  }

  /** A positive quantity after the readings. */
  Figure after(
      String id, String name, Unit unit, ToDoubleFunction<double[]> quantity, Figure before) {
    return fitted(id, name, unit, home.positive(quantity), Optional.of(before));
  }

  /** Water that settles on the panes, which may be none. */
  Figure settling() {
    Range value = home.either(home.model()::settling);
    return fitted(
        "model.glass",
        "water that settles on glass",
        Unit.MASS_RATE,
        new Range(Math.max(0, value.low()), value.likely(), value.high()),
        Optional.empty());
  }

  /** What was believed of the doors. */
  static Figure believed(String id, String name, Range value, Citation source) {
    return new Figure(
        id,
        name,
        value,
        Unit.AIRFLOW,
        Basis.ASSUMED,
        () ->
            new Working(
                "as assumed; the mean of several doors is surer than one",
                List.of(),
                List.of(source),
                Optional.of(BOUNDS)));
  }

  /** Water that goes into the air of a room. */
  Figure water(int index, RoomFacts room, Figure ofHome) {
    return fitted(
        "model.room." + room.id() + ".water",
        "water that goes into the air of the " + room.name(),
        Unit.MASS_RATE,
        waterOf(index),
        Optional.of(ofHome));
  }

  private Range waterOf(int index) {
    boolean none = home.posterior().value(z -> home.model().waterOfRooms(z)[index]) == 0;
    return none ? Range.exactly(0) : home.positive(z -> home.model().waterOfRooms(z)[index]);
  }

  /** The excess that the model has in a room, as an instrument would read it. */
  Figure modelled(RoomFacts room, ToDoubleFunction<double[]> excess, List<Figure> from) {
    return new Figure(
        "model.room." + room.id() + ".modelled",
        "vapour excess of the " + room.name() + " by the model",
        home.either(excess),
        Unit.VAPOUR_CONTENT,
        Basis.CALCULATED,
        () ->
            new Working(
                "Σ q(out) Δv = G + Σ q(in) Δv(next room) − g(glass), for all rooms at once",
                IntStream.range(0, from.size())
                    .mapToObj(i -> Input.of("x" + (i + 1), from.get(i)))
                    .toList(),
                List.of(BALANCE),
                Optional.of(
                    "Well-mixed rooms in a steady state, contents over that outdoors and counted at"
                        + " the mean temperature of the home. "
                        + BOUNDS)));
  }

  /** How closely water and air move together. */
  Figure together(double correlation, Figure water, Figure air) {
    return new Figure(
        "model.together",
        "correlation of the logarithms of water and air after the readings",
        Range.exactly(correlation),
        Unit.RATIO,
        Basis.CALCULATED,
        () ->
            new Working(
                "r = cov(ln G, ln Q) / √(var(ln G) var(ln Q))",
                List.of(Input.of("G", water), Input.of("Q", air)),
                List.of(FIT),
                Optional.of(
                    "Covariance of the unknowns: (I + JᵀJ)⁻¹, J the slopes by the errors.")));
  }

  private Figure fitted(String id, String name, Unit unit, Range value, Optional<Figure> before) {
    return new Figure(
        id,
        name,
        value,
        unit,
        Basis.CALCULATED,
        () -> {
          List<Input> inputs = new ArrayList<>();
          before.ifPresent(f -> inputs.add(Input.of("x", f)));
          for (int i = 0; i < home.readings().size(); i++) {
            if (!home.leftOut(i)) {
              inputs.add(Input.of("read", home.readings().get(i).measured()));
            }
          }
          return new Working(RULE, inputs, List.of(FIT), Optional.of(BOUNDS));
        });
  }
}
