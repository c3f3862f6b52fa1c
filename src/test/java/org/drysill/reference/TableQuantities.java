package org.drysill.reference;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drysill.physics.CheckRow;
import org.drysill.reference.cautions.CautionFile;
import org.drysill.reference.glazing.GlazingCatalogue;
import org.drysill.reference.moisture.MoistureSources;
import org.drysill.reference.moisture.SourceRate;
import org.drysill.reference.readings.Criterion;
import org.drysill.reference.readings.ReadingRules;
import org.drysill.reference.surfaces.SurfaceCatalogue;

/** Where the data files hold what the reference table has from other tables, in its units. */
public final class TableQuantities {
  /** Buildings that are no dwellings, and a spacer of one data sheet that the classes stand for. */
  private static final Set<String> NOT_OURS =
      Set.of("PHY-447", "PHY-448", "PHY-449", "PHY-450", "PHY-566", "PHY-567", "PHY-568");

  /** Heat of a litre of paraffin, as the source of its rate states it [kWh]. */
  private static final double PARAFFIN_KWH_PER_LITRE = 10;

  private TableQuantities() {}

  /** True for a row whose like the data files do not hold. */
  public static boolean isNotOurs(CheckRow row) {
    return NOT_OURS.contains(row.id());
  }

  /** How each quantity is found. */
  public static Map<String, ToDoubleFunction<CheckRow>> all() {
    Map<String, ToDoubleFunction<CheckRow>> all = new LinkedHashMap<>();
    all.put("combustion_water_kWh_gross", r -> heater("mains gas"));
    all.put("combustion_water_per_litre", r -> heater("paraffin") * PARAFFIN_KWH_PER_LITRE);
    all.put("daily_moisture", TableQuantities::daily);
    all.put("fRsi_limit", r -> critical());
    all.put("ADF_RH_limit", r -> criterion(r.text("period")).below().value() * 100);
    all.put("glazing_edge_psi", TableQuantities::psi);
    all.put("radon_action_level", r -> inCaution("radon", "is (\\d+) Bq/m³ as annual mean"));
    all.put("radon_target_level", r -> inCaution("radon", "target (\\d+) Bq/m³"));
    all.put(
        "kitchen_extract_limit_open_flued_gas",
        r -> inCaution("open-flue-with-extract", "gave (\\d+) l/s"));
    return all;
  }

  private static double heater(String fuel) {
    return MoistureSources.bundled().find("unflued heater").orElseThrow().rates().stream()
        .filter(rate -> rate.fuel().filter(fuel::equals).isPresent())
        .map(SourceRate::amount)
        .findFirst()
        .orElseThrow()
        .likely();
  }

  private static double daily(CheckRow row) {
    return MoistureSources.bundled().dailyTotals().stream()
        .filter(totals -> totals.occupancy().equals(row.text("occupancy")))
        .findFirst()
        .orElseThrow()
        .perDay()
        .get((int) row.in("persons") - 1)
        .value();
  }

  private static double critical() {
    return SurfaceCatalogue.bundled().criticalFactor("england").orElseThrow().value().value();
  }

  private static Criterion criterion(String period) {
    String id = period.substring(period.indexOf(' ') + 1);
    return ReadingRules.bundled().criteria().stream()
        .filter(c -> c.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private static double psi(CheckRow row) {
    String spacer =
        row.text("spacer").equals("thermally_improved")
            ? "thermally improved"
            : "aluminium or steel";
    String frame =
        switch (row.text("frame")) {
          case "metal_thermal_break" -> "metal with thermal break";
          case "metal_no_break" -> "metal";
          default -> "timber or pvc";
        };
    String glazing = row.text("glazing").startsWith("low-e") ? "low-e" : "uncoated";
    return GlazingCatalogue.bundled().spacers().stream()
        .filter(s -> s.spacer().equals(spacer) && s.frame().equals(frame))
        .filter(s -> s.glazing().equals(glazing))
        .findFirst()
        .orElseThrow()
        .psi()
        .range()
        .likely();
  }

  /** A number that a caution prints. */
  private static double inCaution(String id, String pattern) {
    String text =
        CautionFile.all().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow().text();
    Matcher found = Pattern.compile(pattern).matcher(text);
    if (!found.find()) {
      throw new AssertionError(id + " does not print " + pattern);
    }
    return Double.parseDouble(found.group(1));
  }
}
