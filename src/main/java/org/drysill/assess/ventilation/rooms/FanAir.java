package org.drysill.assess.ventilation.rooms;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.survey.FanKind;

/**
 * Where the air of each fan comes and goes: its own room; of a ducted system for the whole home the
 * rooms that people stay in and the wet rooms; of a fan outside the heated rooms the hall.
 */
final class FanAir {
  private final Layout layout;
  private final List<FanFlow> fans;

  FanAir(Layout layout, List<FanFlow> fans) {
    this.layout = layout;
    this.fans = fans.stream().filter(f -> f.counting() != FanFlow.Counting.NOTHING).toList();
  }

  /** Outdoor air blown into each place [m³/s]. */
  List<Double> supply(ToDoubleFunction<FanFlow> flow) {
    return spread(flow, true);
  }

  /** Air taken out of each place to the outside [m³/s]. */
  List<Double> extract(ToDoubleFunction<FanFlow> flow) {
    return spread(flow, false);
  }

  List<FanFlow> forWholeHome() {
    return fans.stream().filter(FanAir::isForWholeHome).toList();
  }

  /** Fans in lofts and cellars, which blow into the home or draw from it. */
  List<FanFlow> outsideHeatedRooms() {
    return fans.stream()
        .filter(fan -> !isForWholeHome(fan) && layout.find(fan.room()).isEmpty())
        .toList();
  }

  private static boolean isForWholeHome(FanFlow fan) {
    return fan.fan().kind() == FanKind.BALANCED_HEAT_RECOVERY;
  }

  private List<Double> spread(ToDoubleFunction<FanFlow> flow, boolean supply) {
    double[] sums = new double[layout.places().size()];
    for (FanFlow fan : fans) {
      double all = flow.applyAsDouble(fan);
      shares(fan, supply).forEach((place, share) -> sums[place] += all * share);
    }
    return Arrays.stream(sums).boxed().toList();
  }

  private Map<Integer, Double> shares(FanFlow fan, boolean supply) {
    List<Integer> served = isForWholeHome(fan) ? served(supply) : List.of();
    if (served.isEmpty()) {
      return Map.of(layout.indexOf(fan.room()), 1.0);
    }
    double area = served.stream().mapToDouble(i -> layout.places().get(i).floorAreaM2()).sum();
    Map<Integer, Double> shares = new LinkedHashMap<>();
    for (int i : served) {
      double byArea = layout.places().get(i).floorAreaM2() / area;
      shares.put(i, supply ? byArea : 1.0 / served.size());
    }
    return shares;
  }

  private List<Integer> served(boolean supply) {
    return IntStream.range(0, layout.places().size())
        .filter(
            i ->
                layout.places().get(i).facts().stream()
                    .anyMatch(supply ? RoomFacts::habitable : RoomFacts::wet))
        .boxed()
        .toList();
  }
}
