package org.drysill.physics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.drysill.physics.network.AirNetwork.Between;
import org.drysill.physics.network.AirNetwork.Outside;

/** What holds of every network of rooms. */
class AirNetworkProperties {
  @Property
  void everyRoomIsInBalance(@ForAll @IntRange(min = 1, max = 30) int rooms, @ForAll long seed) {
    AirNetwork network = network(rooms, seed);
    assertThat(imbalances(network, network.balanced()))
        .allSatisfy(i -> assertThat(i).isCloseTo(0, within(1e-12)));
  }

  @Property
  void theOrderOfRoomsDoesNotMatter(
      @ForAll @IntRange(min = 2, max = 12) int rooms, @ForAll long seed) {
    AirNetwork network = network(rooms, seed);
    List<Double> turned = new ArrayList<>(network.supplyM3S());
    Collections.reverse(turned);
    AirNetwork other =
        new AirNetwork(
            turned,
            network.between().stream()
                .map(w -> new Between(rooms - 1 - w.to(), rooms - 1 - w.from(), w.path()))
                .toList(),
            network.outside().stream()
                .map(w -> new Outside(rooms - 1 - w.room(), w.path(), w.outsidePa()))
                .toList());
    Pressures there = other.balanced();
    Pressures here = network.balanced();
    for (int i = 0; i < rooms; i++) {
      assertThat(there.pa(rooms - 1 - i))
          .isCloseTo(here.pa(i), within(1e-6 + 1e-8 * Math.abs(here.pa(i))));
    }
  }

  @Property
  void moreExtractNeverLowersTheInflowFromOutside(
      @ForAll @IntRange(min = 1, max = 12) int rooms,
      @ForAll long seed,
      @ForAll @DoubleRange(min = 0, max = 0.05) double more,
      @ForAll @IntRange(min = 0, max = 11) int where) {
    AirNetwork network = network(rooms, seed);
    List<Double> supply = new ArrayList<>(network.supplyM3S());
    supply.set(where % rooms, supply.get(where % rooms) - more);
    AirNetwork stronger = new AirNetwork(supply, network.between(), network.outside());
    assertThat(inflow(stronger)).isGreaterThanOrEqualTo(inflow(network) - 1e-10);
  }

  @Property
  void flowsInAnotherUnitKeepThePressures(
      @ForAll @IntRange(min = 1, max = 12) int rooms,
      @ForAll long seed,
      @ForAll @DoubleRange(min = 0.5, max = 2000) double unit) {
    AirNetwork network = network(rooms, seed);
    AirNetwork scaled =
        new AirNetwork(
            network.supplyM3S().stream().map(q -> q * unit).toList(),
            network.between().stream()
                .map(w -> new Between(w.from(), w.to(), scaled(w.path(), unit)))
                .toList(),
            network.outside().stream()
                .map(w -> new Outside(w.room(), scaled(w.path(), unit), w.outsidePa()))
                .toList());
    assertThat(inflow(scaled)).isCloseTo(inflow(network) * unit, within(1e-9 * unit));
  }

  @Property
  void mirrorRoomsBehaveAlike(
      @ForAll @DoubleRange(min = -0.03, max = 0.03) double fan, @ForAll long seed) {
    Random random = new Random(seed);
    AirPath door = path(random);
    AirPath crack = path(random);
    AirNetwork network =
        new AirNetwork(
            List.of(0.0, fan, fan),
            List.of(new Between(0, 1, door), new Between(2, 0, door)),
            List.of(
                new Outside(0, path(random), 0),
                new Outside(1, crack, 1),
                new Outside(2, crack, 1)));
    Pressures pressures = network.balanced();
    assertThat(pressures.pa(1)).isCloseTo(pressures.pa(2), within(1e-6));
  }

  private static AirPath scaled(AirPath path, double unit) {
    return new AirPath(path.coefficient() * unit, path.exponent());
  }

  private static double inflow(AirNetwork network) {
    Pressures pressures = network.balanced();
    return network.outside().stream().mapToDouble(w -> Math.max(0, w.flowM3S(pressures))).sum();
  }

  private static List<Double> imbalances(AirNetwork network, Pressures pressures) {
    return IntStream.range(0, network.supplyM3S().size())
        .mapToObj(
            i -> {
              double sum = network.supplyM3S().get(i);
              for (Outside way : network.outside()) {
                sum += way.room() == i ? way.flowM3S(pressures) : 0;
              }
              for (Between way : network.between()) {
                double flow = way.flowM3S(pressures);
                sum += way.to() == i ? flow : 0;
                sum -= way.from() == i ? flow : 0;
              }
              return sum;
            })
        .toList();
  }

  /** A home of rooms as they are: leaks, doors, some loops, fans here and there, some weather. */
  private static AirNetwork network(int rooms, long seed) {
    Random random = new Random(seed);
    List<Double> supply = new ArrayList<>();
    List<Between> between = new ArrayList<>();
    List<Outside> outside = new ArrayList<>();
    double weather = 4 * random.nextDouble();
    for (int i = 0; i < rooms; i++) {
      supply.add(random.nextInt(3) == 0 ? 0.06 * (random.nextDouble() - 0.5) : 0.0);
      if (i > 0) {
        between.add(new Between(random.nextInt(i), i, path(random)));
      }
      AirPath half = path(random);
      outside.add(new Outside(i, half, weather));
      outside.add(new Outside(i, half, -weather));
    }
    for (int i = 0; i < rooms / 3; i++) {
      int from = random.nextInt(rooms);
      int to = random.nextInt(rooms);
      if (from != to) {
        between.add(new Between(from, to, path(random)));
      }
    }
    return new AirNetwork(supply, between, outside);
  }

  private static AirPath path(Random random) {
    double coefficient = 0.0002 * Math.pow(10, 3 * random.nextDouble());
    return new AirPath(coefficient, random.nextBoolean() ? 0.5 : 0.65);
  }
}
