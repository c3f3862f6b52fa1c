package org.drysill.options.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assessment;
import org.drysill.assess.Figure;
import org.drysill.assess.Unit;
import org.drysill.assess.Working.Input;
import org.drysill.assess.moisture.MoistureResult;
import org.drysill.assess.moisture.MoistureResult.Item;
import org.drysill.options.OptionsBasis;
import org.drysill.options.effect.EffectStudy;
import org.drysill.options.effect.Figures;
import org.drysill.options.effect.Studied;
import org.drysill.physics.Range;

/**
 * The water that goes into the air of a home with its defects mended: what the list and the
 * readings together give today, less what is ended. It is no longer held against the readings,
 * which were taken with the defects.
 */
final class RepairedWater {
  private RepairedWater() {}

  static MoistureResult of(Assessment today, OptionsBasis basis, List<Studied> repairs) {
    EffectStudy study = new EffectStudy(today, basis);
    List<Item> items = today.moisture().items();
    double gone = 0;
    for (Studied repair : repairs) {
      List<Item> touched = study.sources(repair.candidate());
      items = less(items, touched, repair.water().likely() / study.believed());
      gone += repair.water().likely();
    }
    MoistureResult m = today.moisture();
    return gone > 0
        ? new MoistureResult(
            items,
            left(study.water(), gone),
            Optional.empty(),
            m.balance(),
            m.finding(),
            m.checks(),
            m.assumptions())
        : m;
  }

  private static Figure left(Figure water, double gone) {
    double left = Math.max(0, 1 - gone / water.likely());
    return new Figures("repaired")
        .of(
            "water",
            "water given off with the defects mended",
            water.value().times(left),
            Unit.MASS_RATE,
            "G − what is ended, in proportion",
            List.of(
                Input.of("G", water),
                Input.of(
                    "ended",
                    "water that is ended, likely",
                    Range.exactly(gone),
                    Unit.MASS_RATE,
                    water.basis())),
            List.of());
  }

  /** The touched sources share in what is gone by what each gives. */
  private static List<Item> less(List<Item> items, List<Item> touched, double gone) {
    double all = touched.stream().mapToDouble(i -> i.production().likely()).sum();
    if (all <= 0) {
      return items;
    }
    List<String> ids = touched.stream().map(i -> i.production().id()).toList();
    double left = Math.max(0, 1 - gone / all);
    List<Item> less = new ArrayList<>();
    for (Item item : items) {
      less.add(ids.contains(item.production().id()) ? times(item, left) : item);
    }
    return less;
  }

  private static Item times(Item item, double left) {
    Figure p = item.production();
    return new Item(
        item.kind(),
        item.room(),
        item.label(),
        new Figure(p.id(), p.name(), p.value().times(left), p.unit(), p.basis(), p.how()),
        item.scaledBy(),
        item.loadsPerWeek());
  }
}
