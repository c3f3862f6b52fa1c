package org.drysill.assess.elements;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drysill.assess.Basis;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working;
import org.drysill.assess.Working.Input;
import org.drysill.physics.Range;
import org.drysill.reference.Sourced;
import org.drysill.reference.elements.ElementDefaults;

/** What changes at a wall would do. */
final class Variants {
  private final WallSubject wall;
  private final ElementDefaults defaults;

  Variants(WallSubject wall, ElementDefaults defaults) {
    this.wall = wall;
    this.defaults = defaults;
  }

  /** All that make sense at this wall. */
  List<WallVariant> all() {
    List<WallVariant> all = new ArrayList<>();
    insulation().ifPresent(at -> atInsulation(all, at));
    Figure raised =
        assumed(
            VariantKind.MOISTER_AIR,
            "moisture on top of that of the indoor air, at 0 °C outdoors",
            defaults.raisedVapour(),
            Unit.PASCAL);
    all.add(variant(VariantKind.MOISTER_AIR, wall.moister(raised.value()), raised));
    return all;
  }

  private void atInsulation(List<WallVariant> all, int insulation) {
    Optional<Integer> sheet = coldSheet(insulation);
    if (sheet.isPresent()) {
      WallLayer layer = wall.layers().get(sheet.get());
      List<WallLayer> without = new ArrayList<>(wall.layers());
      without.remove(sheet.get().intValue());
      List<WallLayer> moved = new ArrayList<>(without);
      moved.add(insulation, layer);
      all.add(variant(VariantKind.SHEET_MOVED, wall.with(moved), layer.airLayer()));
      all.add(variant(VariantKind.SHEET_REMOVED, wall.with(without), layer.airLayer()));
    } else if (warmSideSd(insulation) < defaults.controlLayer().likely()) {
      Figure sd =
          assumed(
              VariantKind.CONTROL_LAYER,
              "still air that lets as little vapour through as a vapour control layer as built",
              defaults.controlLayer(),
              Unit.METRE);
      List<WallLayer> more = new ArrayList<>(wall.layers());
      more.add(insulation, controlLayer(sd));
      all.add(variant(VariantKind.CONTROL_LAYER, wall.with(more), sd));
    }
  }

  /** The first insulating layer from the room. */
  private Optional<Integer> insulation() {
    return IntStream.range(0, wall.layers().size())
        .filter(i -> wall.layers().get(i).kind() == LayerKind.INSULATION)
        .boxed()
        .findFirst();
  }

  /** The tightest sheet beyond the insulation, where one is not open to vapour. */
  private Optional<Integer> coldSheet(int insulation) {
    return IntStream.range(insulation + 1, wall.layers().size())
        .filter(i -> wall.layers().get(i).kind() == LayerKind.MEMBRANE)
        .filter(i -> sd(i) > defaults.openMembrane().likely())
        .boxed()
        .max(Comparator.comparingDouble(this::sd));
  }

  private double sd(int layer) {
    return wall.layers().get(layer).airLayer().likely();
  }

  private double warmSideSd(int insulation) {
    return IntStream.range(0, insulation).mapToDouble(this::sd).sum();
  }

  private WallLayer controlLayer(Figure sd) {
    Figure none =
        new Figure(
            sd.id() + ".resistance",
            "thermal resistance of the vapour control layer",
            Range.exactly(0),
            Unit.RESISTANCE,
            Basis.ASSUMED,
            sd.how());
    return new WallLayer(
        "vapour control layer",
        LayerKind.MEMBRANE,
        Optional.empty(),
        none,
        sd,
        false,
        Optional.empty());
  }

  private Figure assumed(VariantKind kind, String name, Sourced value, Unit unit) {
    return new Figure(
        id(kind) + ".changed",
        name,
        value.range(),
        unit,
        Basis.ASSUMED,
        () ->
            new Working(
                "assumed",
                List.of(Input.of("x", "assumed", value.range(), unit, Basis.ASSUMED)),
                List.of(value.source()),
                Optional.empty()));
  }

  private String id(VariantKind kind) {
    return "element." + wall.id() + "." + kind.name().toLowerCase(Locale.ROOT);
  }

  private WallVariant variant(VariantKind kind, WallSubject changed, Figure by) {
    Runs runs = changed.runs();
    YearFigures figures = new YearFigures(id(kind), changed, runs);
    return new WallVariant(
        kind,
        by,
        runs.likely().year().verdict(),
        runs.worst().year().verdict(),
        figures.highest(),
        figures.left());
  }
}
