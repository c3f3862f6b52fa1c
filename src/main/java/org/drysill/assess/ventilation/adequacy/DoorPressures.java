package org.drysill.assess.ventilation.adequacy;

import java.util.ArrayList;
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
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.ProvidedAir;
import org.drysill.physics.Range;
import org.drysill.physics.flow.Orifice;
import org.drysill.reference.ventilation.DoorPressureLimit;
import org.drysill.reference.ventilation.VentilationDefaults;
import org.drysill.survey.Door;
import org.drysill.yaml.Quantity;

/**
 * Where fans take air out of a room behind closed doors: the pressure across them if all of it came
 * through their gaps, Δp = (ρ/2)·(q / (Cd·A))².
 */
public final class DoorPressures {
  private final Home home;
  private final VentilationDefaults defaults;
  private final DoorPressureLimit rule;

  private DoorPressures(Home home, VentilationDefaults defaults) {
    this.home = home;
    this.defaults = defaults;
    rule = defaults.doorPressure();
  }

  /** One for each room with extract and a door to another heated room. */
  public static List<Finding> of(Home home, ProvidedAir air, VentilationDefaults defaults) {
    DoorPressures pressures = new DoorPressures(home, defaults);
    List<Finding> findings = new ArrayList<>();
    for (RoomFacts room : home.rooms()) {
      Range drawn = drawn(air.fansIn(room.id()));
      List<Door> doors = pressures.doors(room);
      if (drawn.high() > 0 && !doors.isEmpty()) {
        findings.add(pressures.finding(room, drawn, doors));
      }
    }
    return findings;
  }

  /** What the fans take out more than they bring in while all of them run [m³/s]. */
  private static Range drawn(List<FanFlow> fans) {
    return fans.stream()
        .filter(f -> f.counting() == FanFlow.Counting.EXTRACT)
        .map(f -> f.extractAtBoost().orElse(f.extractWhileRunning()))
        .reduce(Range.exactly(0), Range::plus);
  }

  /** Of a door that both of its rooms list, the entry with a gap counts. */
  private List<Door> doors(RoomFacts room) {
    Map<Set<String>, Door> doors = new LinkedHashMap<>();
    for (RoomFacts from : home.rooms()) {
      for (Door door : from.room().doors()) {
        boolean ours = from.id().equals(room.id()) != door.to().equals(room.id());
        boolean inside =
            from.heated() && home.room(door.to()).filter(RoomFacts::heated).isPresent();
        if (ours && inside) {
          doors.merge(
              Set.of(from.id(), door.to()), door, (a, b) -> a.undercut().isPresent() ? a : b);
        }
      }
    }
    return List.copyOf(doors.values());
  }

  private Finding finding(RoomFacts room, Range drawn, List<Door> doors) {
    String id = "room." + room.id() + ".door_pressure";
    Range area = doors.stream().map(this::area).reduce(Range.exactly(0), Range::plus);
    Range pressure =
        new Range(
            pressure(drawn.low(), area.high()),
            pressure(drawn.likely(), area.likely()),
            pressure(drawn.high(), area.low()));
    double limit = rule.limit().value();
    Verdict verdict = Verdict.atMost(pressure, limit);
    String theirs = doors.size() == 1 ? "its door" : "its doors";
    Figure found =
        Asked.computed(
            id + ".provided",
            "pressure across the closed doors of the " + room.name(),
            pressure,
            Unit.PASCAL,
            "Δp = ρ/2 × (q / (Cd × A))²",
            List.of(
                Input.of("q", "air drawn out of the room", drawn, Unit.AIRFLOW, Basis.CALCULATED),
                Input.of(
                    "A", "gaps under and around " + theirs, area, Unit.VENT_AREA, Basis.ASSUMED),
                Input.of(
                    "Cd",
                    "discharge coefficient",
                    Range.exactly(rule.discharge()),
                    Unit.RATIO,
                    Basis.PUBLISHED),
                Input.of(
                    "ρ",
                    "density of air in kg/m³",
                    Range.exactly(defaults.ventilators().airDensity()),
                    Unit.RATIO,
                    Basis.PUBLISHED)),
            List.of(rule.source()));
    return new Finding(
        id,
        Asked.capital(room.name()) + " behind closed doors",
        Optional.of(room.id()),
        verdict,
        Direction.AT_MOST,
        Optional.of(found),
        Optional.of(
            Asked.printed(
                id + ".limit",
                "most pressure across closed doors",
                limit,
                Unit.PASCAL,
                rule.source())),
        because(verdict, theirs),
        verdict == Verdict.UNKNOWN ? Optional.of(settle(room, doors)) : Optional.empty(),
        List.of(rule.source()));
  }

  private static String because(Verdict verdict, String theirs) {
    return switch (verdict) {
      case MEETS -> "The gaps of " + theirs + " let enough air to the fan.";
      case SHORT ->
          "With "
              + theirs
              + " shut the fan gets too little air: it draws from gaps in the fabric, or moves less.";
      case UNKNOWN -> "Whether the gaps of " + theirs + " let enough air to the fan is not known.";
    };
  }

  private static String settle(RoomFacts room, List<Door> doors) {
    boolean measured = doors.stream().allMatch(d -> d.undercut().isPresent());
    return measured
        ? "Run the fan of the " + room.name() + " and read its flow with the door open and shut."
        : "Measure the gap under each door of the " + room.name() + ".";
  }

  /** Under the leaf and around it [m²]. */
  private Range area(Door door) {
    Range gap = door.undercut().map(Quantity::range).orElse(rule.undercut().range());
    Range width = door.width().map(Quantity::range).orElse(defaults.doorWidth().value().range());
    return gap.times(width).plus(rule.cracks().range());
  }

  private double pressure(double flowM3S, double areaM2) {
    return new Orifice(rule.discharge(), areaM2)
        .pressurePa(flowM3S, defaults.ventilators().airDensity());
  }
}
