package org.drysill.options.packs;

import java.util.Locale;
import java.util.Random;

/** Small invented homes as surveys, each from its seed, damp in several ways. */
final class SmallHomes {
  private SmallHomes() {}

  static String of(long seed) {
    Random random = new Random(seed * 7919 + 17);
    // The first numbers of neighbouring seeds are alike.
    random.nextDouble();
    return """
        drysill: 1
        visit: {date: 2026-01-22, instruments: [{id: th, kind: thermo-hygrometer, temperature_accuracy: 0.4 K, humidity_accuracy: 2.5 %%}]}
        dwelling:
          type: mid-floor flat
          jurisdiction: england
          floor_area: 48 m2
          storeys: 1
          bedrooms: 1
          occupants: {adults: 2}
          airtightness: {n50: %s /h, basis: measured}
          climate: {monthly: {temperature: [3.1, 3.6, 5.9, 8.3, 11.6, 14.7, 17.2, 16.8, 13.9, 10.1, 6.4, 4.2], humidity: [88, 86, 82, 77, 75, 75, 74, 76, 80, 84, 87, 89], source: made up}}
          heating: {fuel: mains gas, efficiency: 85 %%, setpoint: 20 C}
        prices: {currency: GBP, electricity: 0.27 /kWh, heat: 0.06 /kWh, discount_rate: 3.5 %%, horizon: 20 y}
        outdoor_readings: [{at: 2026-01-22T09:00, temperature: 4 C, humidity: 85 %%, instrument: th}]
        rooms:
          - id: living
            use: living
            floor_area: 26 m2
            readings: [{at: 2026-01-22T09:10, temperature: 20 C, humidity: %s %%, instrument: th}]
            windows: [{id: living-n, orientation: N, width: 1500 mm, height: 1200 mm, glazing: %s, frame: wood, background_ventilator: 0 mm2}]
            cold_spots: [{id: living-corner, kind: external corner, material: painted plaster, temperature_factor: %s}]
          - id: bedroom
            use: bedroom
            floor_area: 14 m2
            readings: [{at: 2026-01-22T09:20, temperature: 18 C, humidity: %s %%, instrument: th}]
            cold_spots: [{id: bedroom-lintel, kind: lintel, material: painted plaster, temperature_factor: %s}]
          - id: bathroom
            use: bathroom
            floor_area: 4 m2
            readings: [{at: 2026-01-22T09:30, temperature: 20 C, humidity: %s %%, instrument: th}]
            moisture_sources: [{kind: shower, times_per_week: 14}]
          - id: kitchen
            use: kitchen
            floor_area: 8 m2
            readings: [{at: 2026-01-22T09:40, temperature: 20 C, humidity: %s %%, instrument: th}]
            moisture_sources: [{kind: cooking, fuel: electricity, lids_and_hood: no}]
        """
        .formatted(
            number(random, 2, 9),
            number(random, 50, 66),
            random.nextBoolean() ? "single" : "double 16 mm",
            number(random, 0.55, 0.78),
            number(random, 52, 68),
            number(random, 0.5, 0.75),
            number(random, 55, 72),
            number(random, 50, 66));
  }

  private static String number(Random random, double least, double most) {
    return String.format(Locale.ROOT, "%.2f", least + (most - least) * random.nextDouble());
  }
}
