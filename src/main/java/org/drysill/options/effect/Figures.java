package org.drysill.options.effect;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;

/** Makes the figures of a candidate, each with its working. */
public final class Figures {
  private final String prefix;

  /** For a candidate's id. */
  public Figures(String candidate) {
    this.prefix = "options." + candidate + ".";
  }

  /** A calculated figure. */
  public Figure of(
      String id,
      String name,
      Range value,
      Unit unit,
      String formula,
      List<Working.Input> inputs,
      List<Citation> sources) {
    return of(id, name, value, unit, Basis.CALCULATED, formula, inputs, sources);
  }

  /** A figure on a basis. */
  public Figure of(
      String id,
      String name,
      Range value,
      Unit unit,
      Basis basis,
      String formula,
      List<Working.Input> inputs,
      List<Citation> sources) {
    return new Figure(
        prefix + id,
        name,
        value,
        unit,
        basis,
        () -> new Working(formula, inputs, sources, Optional.empty()));
  }
}
