package org.drysill.assess.logs.air;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.drysill.assess.logs.LoggedRoom;
import org.drysill.assess.logs.Trace;
import org.drysill.assess.logs.air.RoomEvents.Group;
import org.drysill.physics.tracer.event.EventKind;
import org.drysill.physics.tracer.event.Events;
import org.drysill.physics.tracer.event.RoomAirSeries;
import org.drysill.physics.tracer.event.VapourEvent;
import org.drysill.reference.logs.LogRules;

/** Finds the events of a room's log and groups them by kind. */
final class EventGroups {
  private static final double HOURS_A_DAY = 24;
  private static final double DAYS_A_WEEK = 7;
  private final LogRules rules;

  EventGroups(LogRules rules) {
    this.rules = rules;
  }

  RoomEvents of(LoggedRoom room) {
    Trace trace = room.trace();
    int[] steps = IntStream.range(0, trace.size()).toArray();
    RoomAirSeries series =
        RoomAirSeries.of(
            IntStream.of(steps).mapToDouble(i -> AirChanges.hour(trace, i)).toArray(),
            IntStream.of(steps).mapToDouble(trace::contentKgM3).toArray(),
            IntStream.of(steps).mapToDouble(trace::celsius).toArray());
    List<VapourEvent> events =
        Events.find(series, rules.errors().vapour().likely(), rules.events().rules());
    List<Group> groups = new ArrayList<>();
    for (EventKind kind : EventKind.values()) {
      List<VapourEvent> own = events.stream().filter(e -> e.kind() == kind).toList();
      if (kind != EventKind.OTHER && !own.isEmpty()) {
        groups.add(group(kind, own, room.days()));
      }
    }
    return new RoomEvents(room.room(), room.roomName(), groups);
  }

  private static Group group(EventKind kind, List<VapourEvent> events, double days) {
    double[] recoveries =
        events.stream()
            .map(VapourEvent::hoursToRecover)
            .flatMapToDouble(OptionalDouble::stream)
            .toArray();
    return new Group(
        kind,
        events.size() * DAYS_A_WEEK / days,
        median(events.stream().mapToDouble(VapourEvent::change).toArray()),
        recoveries.length > 0 ? OptionalDouble.of(median(recoveries)) : OptionalDouble.empty(),
        events.stream().map(e -> e.startHours() / HOURS_A_DAY).toList());
  }

  /** Of at least one value. */
  private static double median(double[] values) {
    double[] sorted = DoubleStream.of(values).sorted().toArray();
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1
        ? sorted[middle]
        : Arrays.stream(sorted, middle - 1, middle + 1).average().orElseThrow();
  }
}
