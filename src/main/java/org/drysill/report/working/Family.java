package org.drysill.report.working;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.physics.Range;

/** Figures by one formula, each value with the same inputs once. */
final class Family {
  private final int number;
  private final Map<Content, Member> members = new LinkedHashMap<>();

  Family(int number) {
    this.number = number;
  }

  /** The number of its first figure. */
  String number() {
    return "w" + number;
  }

  /** Takes a figure in and tells its number: that of an equal one, or the next free one. */
  String take(Figure figure, Working working) {
    return members
        .computeIfAbsent(
            Content.of(figure, working), c -> new Member(next(members.size()), figure, working))
        .number();
  }

  List<Member> members() {
    return new ArrayList<>(members.values());
  }

  private String next(int before) {
    return before == 0 ? number() : number() + "." + (before + 1);
  }

  /** A figure with its number and its working. */
  record Member(String number, Figure figure, Working working) {}

  /** What makes two figures one for a reader, whatever their ids. */
  private record Content(
      String name,
      Range value,
      Unit unit,
      Basis basis,
      List<Working.Input> inputs,
      Optional<String> note) {
    static Content of(Figure figure, Working working) {
      return new Content(
          figure.name(),
          figure.value(),
          figure.unit(),
          figure.basis(),
          working.inputs().stream().map(Content::withoutId).toList(),
          working.note());
    }

    private static Working.Input withoutId(Working.Input input) {
      return Working.Input.of(
          input.symbol(), input.name(), input.value(), input.unit(), input.basis());
    }
  }
}
