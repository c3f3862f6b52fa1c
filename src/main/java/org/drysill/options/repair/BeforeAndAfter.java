package org.drysill.options.repair;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.surfaces.PlaceRisk;
import org.drysill.assess.surfaces.SurfaceClass;
import org.drysill.options.OptionsBasis;
import org.drysill.options.Repaired;
import org.drysill.options.effect.EffectStudy;
import org.drysill.options.effect.Figures;
import org.drysill.physics.Range;

/** What mending the defects of a home changes, row by row; what stays alike has no row. */
record BeforeAndAfter(RepairedHome home, OptionsBasis basis) {
  List<Repaired.Row> rows() {
    Assessment today = home.today();
    Assessment then = home.then();
    List<Repaired.Row> rows = new ArrayList<>();
    add(rows, new EffectStudy(today, basis).water(), new EffectStudy(then, basis).water());
    add(
        rows,
        today.ventilation().provided().wholeHome(),
        then.ventilation().provided().wholeHome());
    today
        .humidity()
        .home()
        .ifPresent(air -> add(rows, air.excess(), then.humidity().home().orElseThrow().excess()));
    months(
        rows,
        SurfaceClass.OPAQUE,
        "mould",
        "months likely at risk of mould, summed over the places");
    months(
        rows,
        SurfaceClass.GLASS,
        "wet_glass",
        "months likely with wet glass, summed over the windows");
    return rows;
  }

  private static void add(List<Repaired.Row> rows, Figure today, Figure then) {
    if (!today.value().equals(then.value())) {
      rows.add(new Repaired.Row(today, then));
    }
  }

  private void months(List<Repaired.Row> rows, SurfaceClass surface, String id, String name) {
    Figure today = months(surface, id + ".today", name + ", today", home.today());
    Figure then = months(surface, id + ".then", name + ", with the defects mended", home.then());
    if (today.value().high() > 0) {
      rows.add(new Repaired.Row(today, then));
    }
  }

  private static Figure months(
      SurfaceClass surface, String id, String name, Assessment assessment) {
    List<PlaceRisk> places =
        assessment.condensation().places().stream()
            .filter(p -> p.surface() == surface)
            .map(PlaceRisk::of)
            .toList();
    return new Figures("repaired")
        .of(
            id,
            name,
            Range.exactly(likely(places)),
            Unit.COUNT,
            "Σ months at risk of each place at the likely values, its worst part standing for it",
            List.of(),
            List.of());
  }

  private static int likely(List<PlaceRisk> places) {
    Map<String, Integer> worst = new LinkedHashMap<>();
    places.forEach(p -> worst.merge(p.item(), p.months().likely(), Math::max));
    return worst.values().stream().mapToInt(m -> m).sum();
  }
}
