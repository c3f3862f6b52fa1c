package org.drysill.assess.home;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.physics.Range;
import org.drysill.reference.Citation;
import org.drysill.yaml.Quantity;

/** Makes figures of what a survey says, and keeps the list of what it does not. */
final class Facts {
  private final List<Assumption> assumptions = new ArrayList<>();

  /** A fact that the survey states. */
  static Figure stated(String id, String name, Quantity quantity, Unit unit) {
    return stated(id, name, quantity.range(), unit, Optional.of(quantity.written()));
  }

  static Figure stated(String id, String name, Range value, Unit unit, Optional<String> written) {
    return new Figure(
        id,
        name,
        value,
        unit,
        Basis.DECLARED,
        () ->
            new Working(
                "as stated in the survey",
                List.of(),
                List.of(),
                written.map(words -> "The survey says: " + words + ".")));
  }

  /** A fact that follows from others. */
  static Figure derived(
      String id,
      String name,
      Range value,
      Unit unit,
      Basis basis,
      String formula,
      List<Working.Input> from) {
    return new Figure(
        id,
        name,
        value,
        unit,
        basis,
        () -> new Working(formula, from, List.of(), Optional.empty()));
  }

  /** A fact that is taken for granted; the assumption is noted. */
  Figure assumed(String id, String name, Range value, Unit unit, Assumption assumption) {
    note(assumption);
    return new Figure(
        id,
        name,
        value,
        unit,
        Basis.ASSUMED,
        () ->
            new Working(
                "assumed", List.of(), List.of(assumption.source()), Optional.of(assumption.why())));
  }

  /** Notes an assumption once per id. */
  void note(Assumption assumption) {
    if (assumptions.stream().noneMatch(a -> a.id().equals(assumption.id()))) {
      assumptions.add(assumption);
    }
  }

  void noteAll(List<Assumption> more) {
    more.forEach(this::note);
  }

  List<Assumption> assumptions() {
    return List.copyOf(assumptions);
  }

  static Assumption assumption(
      String id, String about, String assumed, String why, String better, Citation source) {
    return new Assumption(id, about, assumed, why, better, source);
  }
}
