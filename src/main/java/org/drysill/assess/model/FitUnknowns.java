package org.drysill.assess.model;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.physics.zones.fit.Posterior;
import org.drysill.reference.model.ModelDefaults;

/** What was not known of a home, before and after its readings. */
final class FitUnknowns {
  /** An interval that shrinks by less does not show in print. */
  private static final double NARROWED = 0.9;

  private final FittedHome home;
  private final ModelFigures figures;
  private final Posterior believed;
  private final List<FittedUnknown> all = new ArrayList<>();

  FitUnknowns(FittedHome home, ModelFigures figures) {
    this.home = home;
    this.figures = figures;
    this.believed = Posterior.before(home.model().unknowns().count());
  }

  /** All of them: water, air, leaks, fans, doors. */
  List<FittedUnknown> all(Figure water, Figure air, Figure leaks) {
    HomeModel model = home.model();
    List<FanInModel> fans = model.fans();
    Layout layout = model.layout();
    add("Water of all sources", "model.water", water, model::water);
    add("Outdoor air of the home", "model.air", air, model::outdoorAir);
    add("Leaks and ventilators", "model.leaks", leaks, model::leaks);
    for (int i = 0; i < fans.size(); i++) {
      int fan = i;
      FanInModel one = fans.get(i);
      if (one.factor().spread() > 0) {
        add(one.name(), "model.fan." + one.id(), one.mean(), z -> model.fan(fan, z));
      }
    }
    if (layout.ways().stream().anyMatch(way -> !way.open())) {
      ToDoubleFunction<double[]> doors = z -> model.exchange(false, z);
      add("Air both ways through a door", "model.doors", doors(layout.defaults(), doors), doors);
    }
    return List.copyOf(all);
  }

  private Figure doors(ModelDefaults defaults, ToDoubleFunction<double[]> doors) {
    return ModelFigures.believed(
        "model.doors.before",
        "air that passes both ways through a door",
        believed.positive(doors).range(),
        defaults.door().source());
  }

  private void add(String name, String id, Figure before, ToDoubleFunction<double[]> quantity) {
    Unit unit = before.unit();
    double now = home.posterior().positive(quantity).spread();
    all.add(
        new FittedUnknown(
            name,
            before,
            figures.after(id, before.name() + ", with the readings", unit, quantity, before),
            now < NARROWED * believed.positive(quantity).spread()));
  }
}
