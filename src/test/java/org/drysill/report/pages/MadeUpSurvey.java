package org.drysill.report.pages;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Random;

/**
 * A survey made up from a seed: 1 to 30 rooms, names of 3 to 300 characters, nothing told of them
 * or everything. Its edition, jurisdiction and size follow from the seed, so that a row of seeds
 * has them all.
 */
final class MadeUpSurvey {
  static final List<String> EDITIONS = List.of("survey", "record", "remediation");

  /** Metric and inch-pound, A4 and letter. */
  static final List<String> JURISDICTIONS =
      List.of(
          "england",
          "ashrae-62-2",
          "germany",
          "canada",
          "irc",
          "scotland",
          "france",
          "new-zealand");

  private static final int[] ROOMS = {1, 6, 3, 12, 2, 8, 30, 4};
  private static final double[] FULLNESS = {0, 1, 0.6, 0.3, 1, 0.8, 0.5};
  private static final int[] NAME_LENGTHS = {3, 14, 40, 9, 300};
  private static final List<String> USES =
      List.of(
          "kitchen",
          "bedroom",
          "bathroom",
          "living",
          "hall",
          "bedroom",
          "wc",
          "utility",
          "dining",
          "study",
          "shower room",
          "store",
          "loft",
          "cellar");
  private static final List<String> FANS =
      List.of(
          "intermittent extract",
          "alternating heat recovery",
          "continuous extract",
          "recirculating hood",
          "positive input",
          "passive stack",
          "fitted but not working",
          "simultaneous heat recovery",
          "extract hood");
  private static final List<String> GLAZING =
      List.of(
          "single",
          "double 12 mm",
          "double",
          "double low-e",
          "triple",
          "unknown",
          "single with secondary glazing",
          "double with failed seal");
  private static final List<String> FRAMES = List.of("timber", "pvc", "metal");
  private static final List<String> SPOTS =
      List.of(
          "external corner",
          "ceiling edge",
          "floor edge",
          "window reveal",
          "lintel",
          "behind furniture",
          "wall",
          "loft hatch",
          "other");
  private static final List<String> MATERIALS =
      List.of("painted plaster", "wallpaper", "timber", "tiles", "concrete");
  private static final List<String> SOURCES =
      List.of(
          "{kind: cooking, fuel: gas, lids_and_hood: no}",
          "{kind: shower, times_per_week: 14}",
          "{kind: clothes drying indoors, loads_per_week: 4}",
          "{kind: house plants, count: 6}",
          "{kind: aquarium, rate: 0.4 kg/day}",
          "{kind: dishwashing}");
  private static final String WORDS =
      "the small back room over the passage beside the old stair with a window to the north and ";

  private final int seed;
  private final Random random;
  private final double fullness;
  private final int rooms;
  private final StringBuilder text = new StringBuilder();
  private boolean logged;

  private MadeUpSurvey(int seed) {
    this.seed = seed;
    this.random = new Random(seed * 7919L);
    this.fullness = FULLNESS[seed % FULLNESS.length];
    this.rooms = ROOMS[seed % ROOMS.length];
  }

  /** Writes the survey with the files that it names into a folder of its own. */
  static Path write(Path folder, int seed) throws IOException {
    Path own = Files.createDirectories(folder.resolve("home-" + seed));
    MadeUpSurvey survey = new MadeUpSurvey(seed);
    String edition = EDITIONS.get(seed % EDITIONS.size());
    boolean twice = edition.equals("remediation") && seed % 2 == 0;
    if (twice) {
      MadeUpSurvey before = new MadeUpSurvey(seed);
      Files.writeString(own.resolve("before.yaml"), before.home("2025-02-11", "survey", ""));
    }
    Path file =
        Files.writeString(
            own.resolve("survey.yaml"),
            survey.home("2026-01-22", edition, twice ? ", previous: before.yaml" : ""));
    if (survey.logged) {
      Files.writeString(own.resolve("log.csv"), log());
    }
    return file;
  }

  private String home(String date, String edition, String more) {
    text.append("drysill: 1\n");
    text.append("visit: {date: ").append(date).append(", edition: ").append(edition).append(more);
    if (told()) {
      text.append(", reference: \"").append(name("V")).append("\"");
      text.append(", surveyor: {name: R. Example, qualification: assessor}");
      text.append(", prepared_for: \"").append(name("Owner ")).append("\"");
      text.append(", not_inspected: [Roof void, ").append("Cellar behind the stair]");
      text.append(
          ", instruments: [{id: th1, kind: thermo-hygrometer, temperature_accuracy: 0.4 K,");
      text.append(" humidity_accuracy: 2.5 %}]");
    }
    if (edition.equals("remediation")) {
      text.append(", timeline: [{date: 2025-02-03, event: reported, by: tenant, note: ");
      text.append("Mould behind the wardrobe}, {date: 2025-02-11, event: investigated},");
      text.append(" {date: 2025-03-20, event: works completed, note: \"").append(name("Fan "));
      text.append("\"}]");
    }
    text.append("}\n");
    dwelling();
    if (told()) {
      text.append("prices: {currency: GBP, electricity: 0.27 /kWh, heat: 0.07 /kWh}\n");
    }
    if (told()) {
      text.append("outdoor_readings: [{at: ").append(date);
      text.append("T09:40, temperature: 3.2 C, humidity: 88 %}]\n");
    }
    text.append("rooms:\n");
    for (int room = 1; room <= rooms; room++) {
      room(room, date);
    }
    return text.toString();
  }

  private void dwelling() {
    text.append("dwelling: {floor_area: ").append(14 * rooms + 8).append(" m2, jurisdiction: ");
    text.append(JURISDICTIONS.get(seed % JURISDICTIONS.size()));
    if (told()) {
      text.append(", address: \"").append(name("Home ")).append("\", type: mid-terrace house");
      text.append(", built: 1931, storeys: ").append(rooms > 4 ? 2 : 1);
      text.append(", bedrooms: ").append(Math.max(1, rooms / 4));
    }
    if (told()) {
      text.append(", occupants: {adults: 2, children: 1, home_by_day: true}");
      text.append(", vulnerable_occupants: unknown, tenure: social rented");
    }
    if (told()) {
      text.append(", airtightness: {n50: 9 /h, basis: measured}, shelter: sheltered");
      text.append(", heating: {fuel: mains gas, efficiency: 85 %, setpoint: 19 C}");
    }
    if (told()) {
      text.append(", combustion_appliances: [{kind: open-flued fire, room: room-1}]");
      text.append(", construction: {walls: solid brick, listed: unknown, asbestos: unknown}");
    }
    text.append("}\n");
  }

  private void room(int number, String date) {
    String use = USES.get((number - 1 + seed) % USES.size());
    text.append("  - id: room-").append(number).append("\n    use: ").append(use).append('\n');
    if (told() || rooms > 20) {
      text.append("    name: \"").append(name(number + " ")).append("\"\n");
    }
    if (told()) {
      text.append("    floor_area: ").append(4 + random.nextInt(14)).append(" m2\n");
      text.append("    height: 2.4 m\n    storey: ")
          .append(rooms > 4 ? number % 2 : 0)
          .append('\n');
    }
    if (told()) {
      text.append("    readings: [{at: ").append(date).append("T10:05, temperature: ");
      text.append(16 + random.nextInt(6)).append(" C, humidity: ").append(50 + random.nextInt(25));
      text.append(" %, co2: ").append(700 + random.nextInt(900)).append(" ppm}]\n");
    }
    if (told() && !logged && fullness > 0.5) {
      logged = true;
      text.append("    logger: {file: log.csv, zone: Europe/London}\n");
    }
    if (number > 1 && told()) {
      text.append("    doors: [{to: room-1, undercut: 5 mm, width: 760 mm}]\n");
    }
    windows(number, date);
    spots(number, date);
    if (number % 3 == 1 && told()) {
      text.append("    walls: [{id: wall-")
          .append(number)
          .append(", name: \"")
          .append(name("Wall "));
      text.append("\", area: 6 m2, layers: [{material: plasterboard, thickness: 12.5 mm},");
      text.append(" {material: mineral wool, thickness: 50 mm},");
      text.append(" {material: brick, thickness: 215 mm}]}]\n");
    }
    if (told()) {
      text.append("    moisture_sources: [").append(SOURCES.get(number % SOURCES.size()));
      text.append("]\n");
    }
    if (number % 2 == 1 && told()) {
      fan(number, date);
    }
  }

  private void windows(int number, String date) {
    if (!told()) {
      return;
    }
    text.append("    windows: [{id: window-").append(number).append(", name: \"");
    text.append(name("Pane ")).append("\", width: 1200 mm, height: 1050 mm, glazing: ");
    text.append(any(GLAZING)).append(", frame: ").append(any(FRAMES));
    if (told()) {
      text.append(", orientation: N, background_ventilator: 2500 mm2");
      text.append(", opening: {kind: side-hung, width: 550 mm, height: 1000 mm, angle: 30 deg}");
      text.append(", readings: [{at: ").append(date).append("T10:10, surface: ");
      text.append(7 + random.nextInt(7)).append(" C, at_point: lower edge}]");
      text.append(", condensation_seen: daily");
    }
    text.append("}]\n");
  }

  private void spots(int number, String date) {
    if (!told()) {
      return;
    }
    text.append("    cold_spots: [{id: spot-").append(number).append(", name: \"");
    text.append(name("Spot ")).append("\", kind: ").append(any(SPOTS));
    text.append(", material: ").append(any(MATERIALS));
    if (told()) {
      text.append(", readings: [{at: ").append(date).append("T10:12, surface: ");
      text.append(10 + random.nextInt(5)).append(" C, air: 19 C, outdoor: 3.2 C}]");
      text.append(", mould_seen: patches, mould_area: 0.15 m2");
    } else {
      text.append(", temperature_factor: 0.6");
    }
    text.append("}]\n");
  }

  private void fan(int number, String date) {
    String kind = any(FANS);
    text.append("    fans: [{id: fan-").append(number).append(", name: \"").append(name("Fan "));
    text.append("\", kind: ").append(kind).append(", declared_flow: 54 m3/h");
    if (told() && !kind.startsWith("fitted")) {
      text.append(", measured_flow: ").append(5 + random.nextInt(15)).append(" l/s, power: 4 W");
    }
    if (told()) {
      text.append(
          ", duct: {diameter: 100 mm, length: 2500 mm, bends: 2, material: slack flexible}");
    }
    if (kind.endsWith("heat recovery") && told()) {
      text.append(", declared_heat_recovery: 85 %, run: continuous, heat_recovery_tests: [{at: ");
      text.append(date).append("T10:30, indoor: 20 C, outdoor: 3 C, supply: 12.2 C,");
      text.append(" extract: 20.1 C, exhaust: 9.8 C, whole_cycle: yes}]");
    }
    text.append("}]\n");
  }

  private boolean told() {
    return random.nextDouble() < fullness;
  }

  private String any(List<String> all) {
    return all.get(random.nextInt(all.size()));
  }

  /** A name of the length that is next; that of 300 is half words and half one long word. */
  private String name(String start) {
    int length = NAME_LENGTHS[random.nextInt(NAME_LENGTHS.length)];
    String words = start + WORDS.repeat(2);
    String name = length > 100 ? words.substring(0, 150) + "x".repeat(150) : words;
    return name.substring(0, Math.max(length, 3)).strip();
  }

  /** Ten days by the half hour. */
  private static String log() {
    StringBuilder rows = new StringBuilder("time,temperature,humidity,co2\n");
    LocalDateTime start = LocalDateTime.of(2026, 1, 10, 0, 0);
    for (int i = 0; i < 480; i++) {
      double day = Math.sin(2 * Math.PI * i / 48);
      rows.append(start.plusMinutes(30L * i)).append(',').append(18 + Math.round(20 * day) / 10.0);
      rows.append(',').append(62 - Math.round(80 * day) / 10.0).append(',');
      rows.append(800 + Math.round(300 * day)).append('\n');
    }
    return rows.toString();
  }
}
