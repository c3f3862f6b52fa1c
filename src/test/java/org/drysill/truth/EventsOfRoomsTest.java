package org.drysill.truth;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.drysill.physics.tracer.event.EventKind;
import org.drysill.physics.tracer.event.Events;
import org.drysill.physics.tracer.event.RoomAirSeries;
import org.drysill.physics.tracer.event.VapourEvent;
import org.drysill.reference.logs.LogRules;
import org.junit.jupiter.api.Test;

/** Showers of made-up rooms against those that are found. */
class EventsOfRoomsTest {
  private static final int DAYS = 7;
  private static final int STEP_MINUTES = 5;

  /** Each room has one shower a day, of 160 to 600 g; weak ones in large rooms may be missed. */
  @Test
  void nine_of_ten_showers_are_found_when_they_happen_and_few_are_invented() {
    int hits = 0;
    int invented = 0;
    int rooms = 60;
    for (int seed = 1; seed <= rooms; seed++) {
      RoomAir air = new RoomAir(RoomTruth.of(seed), DAYS);
      for (VapourEvent event : found(air, seed)) {
        if (event.kind() == EventKind.SHOWER) {
          boolean happened = showering(air, event);
          hits += happened ? 1 : 0;
          invented += happened ? 0 : 1;
        }
      }
    }
    assertThat(hits).isBetween((int) (0.9 * rooms * DAYS), rooms * DAYS);
    assertThat(invented).isLessThan(rooms * DAYS / 20);
  }

  private static List<VapourEvent> found(RoomAir air, long seed) {
    Random dice = RoomTruth.dice(seed, 5);
    int[] minutes =
        IntStream.range(0, air.gM3.length / STEP_MINUTES).map(i -> i * STEP_MINUTES).toArray();
    double scatter = 0.1e-3;
    RoomAirSeries series =
        RoomAirSeries.of(
            IntStream.of(minutes).mapToDouble(m -> m / 60.0).toArray(),
            IntStream.of(minutes)
                .mapToDouble(m -> air.gM3[m] / 1000 + scatter * dice.nextGaussian())
                .toArray(),
            IntStream.of(minutes).mapToDouble(m -> air.life.indoorCelsius[m]).toArray());
    return Events.find(series, scatter, LogRules.bundled().events().rules());
  }

  /** Water ran for a shower between the event's start, less a step, and its peak. */
  private static boolean showering(RoomAir air, VapourEvent event) {
    int from = Math.max(0, (int) (event.startHours() * 60) - STEP_MINUTES);
    int to = (int) (event.peakHours() * 60);
    return IntStream.rangeClosed(from, to).anyMatch(m -> air.life.vapourGH[m] > 1100);
  }
}
