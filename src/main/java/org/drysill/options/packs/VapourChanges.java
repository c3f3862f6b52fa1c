package org.drysill.options.packs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.drysill.assess.RoomFacts;
import org.drysill.assess.moisture.MoistureResult.Item;
import org.drysill.assess.ventilation.provided.FanFlow;
import org.drysill.options.effect.Studied;
import org.drysill.options.site.Candidate;
import org.drysill.reference.measures.AirEffect;
import org.drysill.reference.measures.AirMove;
import org.drysill.reference.measures.MeasurePlace;
import org.drysill.reference.measures.MoistureEffect;
import org.drysill.survey.FanKind;

/**
 * Where in the home a measure moves air and spares water.
 *
 * @param zones the home
 * @param items its sources of water
 * @param water all the water that it gives off, as the single study takes it [kg/s]
 */
record VapourChanges(HomeZones zones, List<Item> items, double water) {
  VapourChanges {
    items = List.copyOf(items);
  }

  VapourChange of(Studied studied) {
    VapourChange change = new VapourChange(zones.size());
    Candidate candidate = studied.candidate();
    candidate
        .measure()
        .air()
        .ifPresent(air -> studied.running().ifPresent(r -> move(change, candidate, air, mean(r))));
    studied.replaced().forEach(fan -> remove(change, fan));
    candidate.measure().moisture().ifPresent(m -> dry(change, studied, m));
    return change;
  }

  /** What goes with a fan that is there. */
  VapourChange without(FanFlow fan) {
    VapourChange change = new VapourChange(zones.size());
    remove(change, fan);
    return change;
  }

  private static double mean(Studied.Running running) {
    return running.flow().likely() * running.shareOfDay().likely();
  }

  private void move(VapourChange change, Candidate candidate, AirEffect air, double flow) {
    switch (air.moves()) {
      case EXTRACT -> add(change.extract, outOf(candidate), flow);
      case SUPPLY -> add(change.supply, into(candidate, air), flow);
      case EXCHANGE -> {
        add(change.supply, into(candidate, air), flow);
        add(change.extract, isDucted(air) ? zones.wet() : into(candidate, air), flow);
      }
      case INFILTRATION -> add(change.openings, outOf(candidate), flow);
      case TRANSFER -> {}
    }
  }

  private double[] outOf(Candidate candidate) {
    return candidate.rooms().isEmpty() ? zones.wet() : of(candidate.rooms());
  }

  /** Air that is only blown in comes into the hall; that of exchangers into the rooms. */
  private double[] into(Candidate candidate, AirEffect air) {
    if (!candidate.rooms().isEmpty()) {
      return of(candidate.rooms());
    }
    return air.moves() == AirMove.SUPPLY ? hub() : zones.habitable();
  }

  private static boolean isDucted(AirEffect air) {
    return air.fan().filter(FanKind.BALANCED_HEAT_RECOVERY.word()::equals).isPresent();
  }

  private double[] hub() {
    double[] parts = new double[zones.size()];
    parts[zones.home().hub()] = 1;
    return parts;
  }

  private double[] of(List<RoomFacts> rooms) {
    double[] parts = new double[zones.size()];
    rooms.forEach(r -> parts[zones.zoneOf(r.id())] += 1.0 / rooms.size());
    return parts;
  }

  private static void add(double[] to, double[] parts, double flow) {
    for (int i = 0; i < to.length; i++) {
      to[i] += parts[i] * flow;
    }
  }

  private void remove(VapourChange change, FanFlow fan) {
    if (fan.fan().kind() == FanKind.BALANCED_HEAT_RECOVERY) {
      add(change.supplyGone, zones.habitable(), fan.supply().likely());
      add(change.extractGone, zones.wet(), fan.extract().likely());
    } else {
      double[] here = new double[zones.size()];
      here[zones.zoneOf(fan.room())] = 1;
      add(change.supplyGone, here, fan.supply().likely());
      add(change.extractGone, here, fan.extract().likely());
    }
  }

  /**
   * Water that a measure spares comes off the rooms of the sources that it touches; where those are
   * not known to be anywhere, and for machines, off all rooms alike.
   */
  private void dry(VapourChange change, Studied studied, MoistureEffect effect) {
    double share = water > 0 ? Math.min(1, studied.water().likely() / water) : 0;
    List<Integer> where = where(studied.candidate(), effect);
    double here = where.stream().mapToDouble(this::part).sum();
    if (here < share || where.isEmpty()) {
      Arrays.fill(change.waterLeft, 1 - share);
    } else if (share > 0) {
      where.forEach(i -> change.waterLeft[i] = 1 - share / here);
    }
  }

  private List<Integer> where(Candidate candidate, MoistureEffect effect) {
    if (candidate.measure().place() != MeasurePlace.HOME) {
      List<Integer> sources =
          candidate.measure().endsSources() ? sources(candidate, effect) : List.of();
      return sources.isEmpty()
          ? candidate.rooms().stream().map(r -> zones.zoneOf(r.id())).distinct().toList()
          : sources;
    }
    List<Integer> rooms = new ArrayList<>();
    for (Item item : items) {
      if (effect.shareAvoided().isPresent() && effect.sources().contains(item.kind())) {
        if (item.room().isEmpty()) {
          return List.of();
        }
        rooms.add(zones.zoneOf(item.room().get()));
      }
    }
    return rooms.stream().distinct().toList();
  }

  /** Of several rooms only those that list a source which comes to an end. */
  private List<Integer> sources(Candidate candidate, MoistureEffect effect) {
    List<String> rooms = candidate.scope().rooms();
    return items.stream()
        .filter(i -> effect.sources().contains(i.kind()))
        .flatMap(i -> i.room().filter(rooms::contains).stream())
        .map(zones::zoneOf)
        .distinct()
        .toList();
  }

  /** The part of a zone in all the water. */
  private double part(int zone) {
    double all = zones.home().zones().stream().mapToDouble(z -> z.waterKgS()).sum();
    return all > 0 ? zones.home().zones().get(zone).waterKgS() / all : 0;
  }
}
