package org.drysill.report.compared;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.change.ChangeResult;
import org.drysill.assess.change.air.AirChange;
import org.drysill.assess.change.device.FanChange;
import org.drysill.assess.change.device.RecoveryChange;
import org.drysill.assess.change.place.ColdSpotChange;
import org.drysill.assess.change.place.MouldChange;
import org.drysill.assess.change.place.SameAirChange;
import org.drysill.assess.change.shown.ChangeWords;
import org.drysill.report.compared.ComparedRow.Value;
import org.drysill.report.words.Numbers;
import org.drysill.report.words.Rounding;
import org.drysill.report.words.Words;
import org.drysill.survey.FanKind;

/** Everything that two visits have in common, group by group. */
public final class Comparison {
  private static final String NOTHING = "–";

  private final ChangeResult change;
  private final Numbers numbers;
  private final Function<String, String> rooms;

  private Comparison(ChangeResult change, Numbers numbers, Function<String, String> rooms) {
    this.change = change;
    this.numbers = numbers;
    this.rooms = rooms;
  }

  /**
   * The groups that have rows.
   *
   * @param change two visits compared
   * @param numbers numbers in the units of the readers
   * @param rooms the name of a room by its id
   */
  public static List<ComparedGroup> of(
      ChangeResult change, Numbers numbers, Function<String, String> rooms) {
    Comparison rows = new Comparison(change, numbers, rooms);
    return Stream.of(
            rows.excess(),
            rows.humidity(),
            rows.places(),
            rows.mould(),
            rows.fans(),
            rows.recovery())
        .filter(group -> !group.rows().isEmpty())
        .toList();
  }

  private ComparedGroup excess() {
    return new ComparedGroup(
        "Vapour added to outdoor air, " + numbers.unit(Unit.PASCAL),
        airs().map(this::excess).toList());
  }

  private ComparedRow excess(AirChange air) {
    return new ComparedRow(
        Words.capital(air.name()),
        new Value(
            numbers.plain(air.excess().before()), numbers.likely(air.excess().contentBefore())),
        new Value(numbers.plain(air.excess().after()), numbers.likely(air.excess().contentAfter())),
        new Value(
            signed(air.excess().change()),
            air.excess().relative().map(r -> ChangeWords.share(r.likely())).orElse("")),
        air.excess().judgement(),
        List.of(air.excess().change(), air.excess().contentChange()));
  }

  private ComparedGroup humidity() {
    return new ComparedGroup("Relative humidity, %", airs().map(this::humidity).toList());
  }

  private ComparedRow humidity(AirChange air) {
    return new ComparedRow(
        Words.capital(air.name()),
        new Value(numbers.plain(air.humidity().before()), numbers.likely(air.temperatureBefore())),
        new Value(numbers.plain(air.humidity().after()), numbers.likely(air.temperatureAfter())),
        new Value(
            points(air.humidity().points()),
            air.humidity().relative().map(r -> ChangeWords.share(r.likely())).orElse("")),
        air.humidity().judgement(),
        List.of(air.humidity().points(), air.humidity().fromTemperature()));
  }

  /** The rooms, and the home where it is more than one room. */
  private Stream<AirChange> airs() {
    return Stream.concat(
        change.rooms().stream(), change.rooms().size() > 1 ? change.home().stream() : Stream.of());
  }

  private ComparedGroup places() {
    List<ComparedRow> rows = new ArrayList<>();
    for (ColdSpotChange place : change.coldSpots()) {
      place.sameAir().filter(SameAirChange::read).ifPresent(same -> rows.add(place(place, same)));
    }
    return new ComparedGroup(
        "Humidity at cold surfaces in the same air, % (f: temperature factor)", rows);
  }

  private ComparedRow place(ColdSpotChange place, SameAirChange same) {
    return new ComparedRow(
        label(place.name(), place.room()),
        new Value(surface(same.humidityBefore()), factor(same.factorBefore())),
        new Value(surface(same.humidityAfter()), factor(same.factorAfter())),
        new Value(points(same.change()), ""),
        same.judgement(),
        List.of(same.change()));
  }

  private static String factor(Figure factor) {
    return "f " + ChangeWords.twoDecimals(factor.likely());
  }

  /** No air holds more than 100 %: what is above is water. */
  private String surface(Figure humidity) {
    return humidity.likely() >= 1 ? "wet" : numbers.plain(humidity);
  }

  private ComparedGroup mould() {
    List<ComparedRow> rows = new ArrayList<>();
    for (ColdSpotChange place : change.coldSpots()) {
      place.mould().ifPresent(m -> rows.add(mould(label(place.name(), place.room()), m)));
    }
    if (rows.size() > 1) {
      change.mould().ifPresent(m -> rows.add(mould("All of these places", m)));
    }
    return new ComparedGroup("Area with mould, " + numbers.unit(Unit.SQUARE_METRE), rows);
  }

  private ComparedRow mould(String label, MouldChange mould) {
    return new ComparedRow(
        label,
        new Value(numbers.plain(mould.before()), ""),
        new Value(numbers.plain(mould.after()), ""),
        new Value(signed(mould.change()), ""),
        mould.judgement(),
        List.of(mould.change()));
  }

  private ComparedGroup fans() {
    return new ComparedGroup(
        "Air through fans, " + numbers.unit(Unit.AIRFLOW),
        change.fans().stream().map(this::fan).toList());
  }

  private ComparedRow fan(FanChange fan) {
    return new ComparedRow(
        label(fan.name(), fan.room()),
        flow(fan.flowBefore(), kind(fan, fan.kindBefore())),
        flow(fan.flowAfter(), kind(fan, fan.kindAfter())),
        new Value(fan.change().map(this::signed).orElse(NOTHING), ""),
        fan.judgement(),
        fan.change().stream().toList());
  }

  /** What kind of fan it was, where it is another now. */
  private static String kind(FanChange fan, Optional<FanKind> kind) {
    if (kind.isEmpty()) {
      return "not there";
    }
    return fan.kindBefore().equals(fan.kindAfter()) ? "" : kind.get().word();
  }

  private Value flow(Optional<Figure> flow, String kind) {
    String basis =
        flow.filter(f -> f.basis() != Basis.MEASURED)
            .map(f -> Words.basis(f.basis()) + " only")
            .orElse("");
    return new Value(
        flow.map(numbers::plain).orElse(NOTHING),
        basis + (basis.isEmpty() || kind.isEmpty() ? "" : ", ") + kind);
  }

  private ComparedGroup recovery() {
    return new ComparedGroup(
        "Heat kept by heat recovery, %", change.recovery().stream().map(this::recovery).toList());
  }

  private ComparedRow recovery(RecoveryChange unit) {
    return new ComparedRow(
        label(unit.name(), unit.room()),
        new Value(percent(unit.before()), ""),
        new Value(percent(unit.after()), ""),
        new Value(points(unit.change()), ""),
        unit.judgement(),
        List.of(unit.change()));
  }

  private String percent(Figure ratio) {
    return numbers.plain(ratio.likely(), Unit.PERCENT, Rounding.NEAREST);
  }

  private String label(String name, String room) {
    return Words.capital(name) + ", " + Words.within(rooms.apply(room));
  }

  private String points(Figure points) {
    return signed(points) + Numbers.JOIN + "points";
  }

  /** With a plus where it rose; the minus comes with the number. */
  private String signed(Figure change) {
    String number = numbers.plain(change);
    boolean rose = change.likely() > 0 && !number.matches("[0.]+");
    return rose ? "+" + number : number;
  }
}
