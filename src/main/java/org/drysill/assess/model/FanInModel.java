package org.drysill.assess.model;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.drysill.assess.Figure;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.assess.ventilation.provided.OutdoorAir.Source;
import org.drysill.physics.zones.fit.LogNormal;
import org.drysill.survey.FanKind;

/**
 * A fan, with the rooms that its air comes into and goes out of: its own; of a ducted system for
 * the whole home the rooms that people stay in, by floor area, and the wet rooms in equal parts.
 */
final class FanInModel {
  private final FanFlow flow;
  private final Figure mean;
  private final LogNormal factor;
  private final double[] supplyShares;
  private final double[] extractShares;

  private FanInModel(Layout layout, FanFlow flow, Figure mean) {
    this.flow = flow;
    this.mean = mean;
    factor = LogNormal.of(mean.value().times(1 / mean.likely()));
    supplyShares = shares(layout, flow, true);
    extractShares = shares(layout, flow, false);
  }

  static List<FanInModel> all(Layout layout, List<FanFlow> fans) {
    List<FanInModel> all = new ArrayList<>();
    for (FanFlow fan : fans) {
      Figure mean = fan.extract().likely() > 0 ? fan.extract() : fan.supply();
      if (mean.likely() > 0) {
        all.add(new FanInModel(layout, fan, mean));
      }
    }
    return all;
  }

  /** Its mean flow as was believed before the readings. */
  Figure mean() {
    return mean;
  }

  /** Its name in sentences. */
  String name() {
    return flow.name();
  }

  /** The survey's id. */
  String id() {
    return flow.fan().id();
  }

  /** Adds what it brings into each room and takes out of it, at a factor [m³/s]. */
  void addTo(double[] supply, double[] extract, double factor) {
    for (int i = 0; i < supply.length; i++) {
      supply[i] += source(factor).meanSupply() * supplyShares[i];
      extract[i] += source(factor).meanExtract() * extractShares[i];
    }
  }

  /** How it may differ from what was believed: a factor around 1. */
  LogNormal factor() {
    return factor;
  }

  /** What it does while it runs, at a factor. */
  Source source(double factor) {
    double running = flow.running().likely() * factor;
    return new Source(
        running * flow.counting().supplyShare(),
        running * flow.counting().extractShare(),
        flow.shareOfDay().likely());
  }

  private static double[] shares(Layout layout, FanFlow fan, boolean supply) {
    List<RoomFacts> rooms = layout.rooms();
    double[] shares = new double[rooms.size()];
    List<Integer> served =
        fan.fan().kind() == FanKind.BALANCED_HEAT_RECOVERY
            ? IntStream.range(0, shares.length)
                .filter(i -> supply ? rooms.get(i).habitable() : rooms.get(i).wet())
                .boxed()
                .toList()
            : List.of();
    double all = served.stream().mapToDouble(i -> weight(rooms.get(i), supply)).sum();
    served.forEach(i -> shares[i] = weight(rooms.get(i), supply) / all);
    if (served.isEmpty()) {
      shares[layout.indexOf(fan.room())] = 1;
    }
    return shares;
  }

  private static double weight(RoomFacts room, boolean supply) {
    return supply ? room.floorArea().likely() : 1;
  }
}
