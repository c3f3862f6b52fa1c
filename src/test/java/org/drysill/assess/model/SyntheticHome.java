package org.drysill.assess.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import org.drysill.physics.Range;
import org.drysill.physics.air.Iso13788Vapour;
import org.drysill.physics.air.MoistAir;
import org.drysill.physics.zones.fit.LogNormal;

/**
 * A home whose air and water are known, because they were drawn: its survey, with readings that its
 * instruments would show.
 *
 * <p>Leaks, water, doors, fans and the water of glass are drawn as they are believed, or, which is
 * harder for the fit, anywhere within the bounds of what is believed. Rooms and the moment of the
 * visit are drawn normal. Each instrument has one error for the whole visit, anywhere within its
 * accuracy. Readings are rounded as displays round.
 */
public final class SyntheticHome {
  private static final double TEMPERATURE_ACCURACY = 0.4;
  private static final double HUMIDITY_ACCURACY = 0.025;

  /** How unknowns are drawn. */
  public enum Draw {
    /** Normal in their logarithms, as the fit believes. */
    BELIEVED,
    /** Every logarithm within the bounds as likely as the next, none beyond. */
    EVEN
  }

  private final Random random;
  private final Draw draw;
  private final List<String> rooms = new ArrayList<>();
  private final List<Double> temperatures = new ArrayList<>();
  private final double outdoorCelsius;
  private final double outdoorHumidity;
  private final String airtightness;
  private final HomeModel truth;
  private final double[] z;
  private final MoistureModelResult result;

  /**
   * Draws a home.
   *
   * @param seed the same seed, the same home
   * @param measured true where its airtightness was measured and its fans with a hood
   * @param draw how its unknowns are drawn
   */
  public SyntheticHome(long seed, boolean measured, Draw draw) {
    this.draw = draw;
    random = new Random(seed);
    outdoorCelsius = rounded(random.nextDouble() * 9);
    outdoorHumidity = 0.75 + 0.2 * random.nextDouble();
    airtightness = measured ? "9 /h" : "5..14 /h";
    build(measured);
    truth = Chain.of(survey(i -> 0.5, 0, 0)).believed();
    z = unknowns();
    double[] excess = truth.excess(z);
    double offset = TEMPERATURE_ACCURACY * within();
    double points = HUMIDITY_ACCURACY * within();
    LogNormal own = new LogNormal(1, Chain.RULES.defaults().momentOfRoom().likely());
    double[] read = new double[excess.length];
    for (int i = 0; i < read.length; i++) {
      read[i] = humidity(excess[i] * own.at(random.nextGaussian()), temperatures.get(i));
    }
    result = Chain.of(survey(i -> read[i], offset, points)).assess();
  }

  /**
   * Homes whose readings can be put together, by rising seeds.
   *
   * @param number how many
   */
  public static List<SyntheticHome> some(int number, boolean measured, Draw draw) {
    return LongStream.iterate(1, seed -> seed + 1)
        .mapToObj(seed -> new SyntheticHome(seed, measured, draw))
        .filter(home -> home.result().silent().isEmpty())
        .limit(number)
        .toList();
  }

  /** What the assessment makes of it. */
  public MoistureModelResult result() {
    return result;
  }

  /** The true value of an unknown of the home: water, air, leaks, doors. */
  public double truth(String id) {
    return quantity(id).applyAsDouble(z);
  }

  private ToDoubleFunction<double[]> quantity(String id) {
    return switch (id) {
      case "model.water" -> truth::water;
      case "model.air" -> truth::outdoorAir;
      case "model.leaks" -> truth::leaks;
      case "model.doors" -> at -> truth.exchange(false, at);
      default -> throw new IllegalArgumentException(id);
    };
  }

  private void build(boolean measured) {
    room("hall", "hall", 6 + random.nextInt(6), "");
    room("kitchen", "kitchen", 8 + random.nextInt(8), window(1.2) + fan("kitchen", measured));
    room("bath", "bathroom", 4 + random.nextInt(4), window(0.6) + fan("bath", measured));
    room("living", "living room", 14 + random.nextInt(10), window(2));
    int bedrooms = 1 + random.nextInt(3);
    for (int i = 1; i <= bedrooms; i++) {
      room("bed" + i, "bedroom", 8 + random.nextInt(8), window(1.5));
    }
  }

  private void room(String id, String use, int area, String more) {
    temperatures.add(rounded(16 + 5 * random.nextDouble()));
    String door = id.equals("hall") ? "" : ", doors: [{to: hall, undercut: 5 mm, width: 760 mm}]";
    rooms.add(
        "- {id: %s, use: %s, floor_area: %d m2, height: 2.4 m%s%s"
            .formatted(id, use, area, door, more));
  }

  private String window(double width) {
    String glass = random.nextInt(3) == 0 ? "single" : "double 12 mm";
    return String.format(
        Locale.ROOT,
        ", windows: [{id: w%d, width: %.2f m, height: 1.2 m, glazing: %s, background_ventilator: 0 mm2}]",
        rooms.size(),
        width,
        glass);
  }

  private String fan(String room, boolean measured) {
    if (random.nextInt(3) == 0) {
      return "";
    }
    String flow =
        measured ? "measured_flow: {value: 9 l/s, instrument: hood}" : "declared_flow: 12 l/s";
    return ", fans: [{id: %s-fan, kind: continuous extract, %s, run: continuous}]"
        .formatted(room, flow);
  }

  private interface Humidity {
    double of(int room);
  }

  private String survey(Humidity read, double offset, double points) {
    StringBuilder text = new StringBuilder(header(offset, points));
    for (int i = 0; i < rooms.size(); i++) {
      text.append(rooms.get(i))
          .append(", readings: [")
          .append(reading(temperatures.get(i) + offset, read.of(i) + points))
          .append("]}\n");
    }
    return text.toString();
  }

  private String header(double offset, double points) {
    return """
        drysill: 1
        visit: {date: 2026-01-22, instruments: [{id: hood, kind: flow hood, flow_accuracy: 5 %%},
          {id: th, kind: thermo-hygrometer, temperature_accuracy: 0.4 K, humidity_accuracy: 2.5 %%}]}
        dwelling: {jurisdiction: england, floor_area: 84 m2, storeys: 2, bedrooms: 3,
          occupants: {adults: 2, children: 1}, airtightness: {n50: %s}}
        outdoor_readings: [%s]
        rooms:
        """
        .formatted(airtightness, reading(outdoorCelsius + offset, outdoorHumidity + points));
  }

  private static String reading(double celsius, double humidity) {
    return String.format(
        Locale.ROOT,
        "{at: 2026-01-22T10:00, temperature: %.1f C, humidity: %.1f %%, instrument: th}",
        celsius,
        100 * Math.min(0.99, Math.max(0.05, humidity)));
  }

  private double[] unknowns() {
    Unknowns places = truth.unknowns();
    double[] drawn = new double[places.count()];
    for (int k = 0; k < drawn.length; k++) {
      drawn[k] = draw == Draw.EVEN ? LogNormal.Z95 * within() : random.nextGaussian();
    }
    drawn[Unknowns.MOMENT] = random.nextGaussian();
    // Errors of instruments are drawn where they are read, not here.
    drawn[Unknowns.OUTDOOR] = 0;
    drawn[Unknowns.INSTRUMENT] = 0;
    for (int i = 0; i < places.rooms(); i++) {
      drawn[places.room(i)] = random.nextGaussian();
    }
    return drawn;
  }

  /** The humidity of a room [ratio] of an excess that is counted at the mean temperature. */
  private double humidity(double excess, double celsius) {
    double volumes = 0;
    double mean = 0;
    for (int i = 0; i < temperatures.size(); i++) {
      double volume = truth.layout().volume(i);
      volumes += volume;
      mean += volume * temperatures.get(i);
    }
    double outdoors =
        outdoorHumidity * Iso13788Vapour.saturationPressureOverWaterPa(outdoorCelsius);
    double pressure = outdoors + excess / MoistAir.vapourContentKgM3(mean / volumes, 1);
    return pressure / Iso13788Vapour.saturationPressureOverWaterPa(celsius);
  }

  /** Anywhere from −1 to 1. */
  private double within() {
    return 2 * random.nextDouble() - 1;
  }

  private static double rounded(double value) {
    return Math.round(10 * value) / 10.0;
  }

  /** True where an interval holds a value. */
  static boolean holds(Range interval, double value) {
    return interval.low() <= value && value <= interval.high();
  }
}
