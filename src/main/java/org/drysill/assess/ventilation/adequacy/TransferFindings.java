package org.drysill.assess.ventilation.adequacy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drysill.assess.Basis;
import org.drysill.assess.Direction;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.assess.Home;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.Unit;
import org.drysill.assess.Verdict;
import org.drysill.assess.Working.Input;
import org.drysill.assess.ventilation.words.FlowText;
import org.drysill.physics.Range;
import org.drysill.reference.rules.RuleSet;
import org.drysill.reference.rules.TransferRule;
import org.drysill.reference.ventilation.SourcedLength;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.survey.Door;
import org.drysill.yaml.Quantity;

/** The gap under each internal door against the free area that a rule set prints. */
public final class TransferFindings {
  private static final double MM_PER_M = 1000;

  private final TransferRule rule;
  private final Home home;
  private final SourcedLength doorWidth;
  private final FlowText text;

  private TransferFindings(TransferRule rule, RuleSet rules, Home home, SourcedLength doorWidth) {
    this.rule = rule;
    this.home = home;
    this.doorWidth = doorWidth;
    this.text = new FlowText(rules.units());
  }

  /** One for each door between heated rooms; none where the rule set prints nothing about it. */
  public static List<Finding> of(RuleSet rules, Home home, VentilationDefaults defaults) {
    return rules
        .transfer()
        .map(rule -> new TransferFindings(rule, rules, home, defaults.doorWidth()).all())
        .orElse(List.of());
  }

  /** Of a door that both of its rooms list, the entry with a gap counts. */
  private List<Finding> all() {
    Map<Set<String>, Between> doors = new LinkedHashMap<>();
    for (RoomFacts room : home.rooms()) {
      for (Door door : room.room().doors()) {
        home.room(door.to())
            .filter(other -> !other.equals(room) && room.heated() && other.heated())
            .ifPresent(
                other ->
                    doors.merge(
                        Set.of(room.id(), other.id()),
                        new Between(room, other, door),
                        Between::measured));
      }
    }
    return doors.values().stream().map(this::finding).toList();
  }

  private record Between(RoomFacts room, RoomFacts other, Door door) {
    Between measured(Between again) {
      return door.undercut().isPresent() ? this : again;
    }
  }

  private Finding finding(Between rooms) {
    RoomFacts room = rooms.room();
    RoomFacts other = rooms.other();
    Door door = rooms.door();
    String id = "door." + room.id() + "." + other.id();
    String name = "door between " + room.name() + " and " + other.name();
    Range width = door.width().map(Quantity::range).orElse(doorWidth.value().range());
    double asked = rule.freeArea().value();
    Optional<Figure> provided = door.undercut().map(gap -> area(id, name, gap, door, width));
    Verdict compared = provided.map(f -> Verdict.atLeast(f.value(), asked)).orElse(Verdict.UNKNOWN);
    Verdict verdict = Asked.sure(compared, rule.confidence());
    return new Finding(
        id + ".transfer",
        Asked.capital(name),
        Optional.of(room.id()),
        verdict,
        Direction.AT_LEAST,
        provided,
        Optional.of(
            Asked.printed(
                id + ".required",
                "free area asked at doors",
                asked,
                Unit.VENT_AREA,
                rule.source())),
        because(provided, width),
        verdict == Verdict.UNKNOWN ? Optional.of(settle(door, name)) : Optional.empty(),
        List.of(rule.source()));
  }

  private static Figure area(String id, String name, Quantity gap, Door door, Range width) {
    return Asked.computed(
        id + ".free_area",
        "free area under the " + name,
        gap.range().times(width),
        Unit.VENT_AREA,
        "A = g × w",
        List.of(
            Input.of("g", "gap", gap.range(), Unit.METRE, Basis.MEASURED),
            Input.of(
                "w",
                "width",
                width,
                Unit.METRE,
                door.width().isPresent() ? Basis.MEASURED : Basis.ASSUMED)),
        List.of());
  }

  private String because(Optional<Figure> provided, Range width) {
    String asked = text.ventilatorRequired(rule.freeArea().value());
    double gap = undercutM(rule, width.likely());
    String need =
        asked
            + " asked, a gap of "
            + (int) Math.ceil(gap * MM_PER_M - 1e-9)
            + " mm under a door of this width.";
    return provided
        .map(f -> text.ventilator(f.value().low()) + " free under it, " + need)
        .orElse("The gap was not measured; " + need);
  }

  /** The gap that a door of a width needs for the free area [m]. */
  static double undercutM(TransferRule rule, double widthM) {
    return rule.freeArea().value() / widthM;
  }

  private String settle(Door door, String name) {
    if (Asked.doubtful(rule.confidence())) {
      return Asked.lookUp(rule.source());
    }
    return door.undercut().isEmpty()
        ? "Measure the gap under the " + name + " and the width of its leaf."
        : "Measure the width of the leaf of the " + name + ".";
  }
}
