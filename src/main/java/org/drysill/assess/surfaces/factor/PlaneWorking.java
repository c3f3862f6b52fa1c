package org.drysill.assess.surfaces.factor;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.reference.surfaces.SurfaceResistance;

/** The workings of factors of plane elements. */
final class PlaneWorking {
  private PlaneWorking() {}

  private static final String NO_MORE_THAN_FILMS =
      "No U-value counts above that of the two films alone.";

  static Working ofU(
      Range u,
      SurfaceResistance within,
      SurfaceResistance film,
      SurfaceResistance outside,
      Citation definition) {
    return new Working(
        "f = 1 - Rsi / (max(1/U; Rsi,U + Rse) - Rsi,U + Rsi)",
        List.of(
            Input.of("U", "U-value", u, Unit.U_VALUE, Basis.DECLARED),
            resistance("Rsi,U", "film within the U-value", within),
            resistance("Rsi", "film of the place", film),
            outside(outside)),
        List.of(definition, film.source(), within.source(), outside.source()),
        Optional.of(NO_MORE_THAN_FILMS));
  }

  static Working ofPane(
      Range u, Basis basis, SurfaceResistance film, SurfaceResistance outside, Citation from) {
    return new Working(
        "f = 1 - min(Ug; 1 / (Rsi + Rse)) · Rsi",
        List.of(
            Input.of("Ug", "U-value of the pane", u, Unit.U_VALUE, basis),
            resistance("Rsi", "film on the pane", film),
            outside(outside)),
        List.of(from, film.source(), outside.source()),
        Optional.of(
            "Middle of the pane, without curtain or blind: both make it colder. "
                + NO_MORE_THAN_FILMS));
  }

  static Working ofFrame(
      Range u, SurfaceResistance film, SurfaceResistance outside, Citation from) {
    return new Working(
        "f = 1 - min(Uf; 1 / (Rsi + Rse)) · Rsi",
        List.of(
            Input.of("Uf", "U-value of the frame", u, Unit.U_VALUE, Basis.PUBLISHED),
            resistance("Rsi", "film on the frame", film),
            outside(outside)),
        List.of(from, film.source(), outside.source()),
        Optional.of(NO_MORE_THAN_FILMS));
  }

  static Working ofLayers(
      Range layers, SurfaceResistance film, SurfaceResistance outside, Citation definition) {
    return new Working(
        "f = 1 - Rsi / (Rsi + Σ d/λ + Rse)",
        List.of(
            Input.of("Σ d/λ", "resistance of the layers", layers, Unit.RESISTANCE, Basis.PUBLISHED),
            resistance("Rsi", "film of the place", film),
            outside(outside)),
        List.of(definition, film.source(), outside.source()),
        Optional.empty());
  }

  private static Input outside(SurfaceResistance film) {
    return resistance("Rse", "film outside", film);
  }

  private static Input resistance(String symbol, String name, SurfaceResistance film) {
    return Input.of(symbol, name, film.range(), Unit.RESISTANCE, Basis.PUBLISHED);
  }
}
