package org.drysill.assess.change.shown;

import org.drysill.assess.Figure;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;

/**
 * A figure of one visit under an id of its own. Both visits give their figures the same ids, so the
 * inputs of its working stand for themselves here: by their ids they would lead to the wrong visit.
 */
public final class OwnId {
  private OwnId() {}

  /** The figure with another id and name. */
  public static Figure of(String id, String name, Figure figure) {
    return new Figure(
        id, name, figure.value(), figure.unit(), figure.basis(), () -> working(figure.working()));
  }

  private static Working working(Working working) {
    return new Working(
        working.formula(),
        working.inputs().stream()
            .map(i -> Input.of(i.symbol(), i.name(), i.value(), i.unit(), i.basis()))
            .toList(),
        working.sources(),
        working.note());
  }
}
