package org.drysill.reference.surfaces;

import java.util.List;
import java.util.Optional;
import org.drysill.reference.DataFiles;
import org.drysill.reference.Sourced;
import org.drysill.yaml.Key;

/**
 * How hours are made from months, and what is taken for granted of surfaces hour by hour.
 *
 * @param weather how hours are made from months
 * @param memory hours over which walls and the moisture of rooms follow what is outdoors [h]
 * @param mouldDecline share of the decline of the mould model
 * @param visibleFilm film of water on a pane that is seen [kg/m²]
 * @param clingingFilm the most that clings to a pane [kg/m²]
 * @param morningHour hour of the day at which people look at panes
 * @param sensitivities how readily mould grows on materials
 * @param unknownSurface the same where the survey does not say
 */
public record HourDefaults(
    @Key(about = "How hours are made from months") MadeWeather weather,
    @Key(about = "Hours over which walls and the moisture of rooms follow what is outdoors, h")
        Sourced memory,
    @Key(about = "Share of the decline of the mould model") Sourced mouldDecline,
    @Key(about = "Film of water on a pane that is seen, kg/m²") Sourced visibleFilm,
    @Key(about = "The most that clings to a pane, kg/m²") Sourced clingingFilm,
    @Key(about = "Hour of the day at which people look at panes") Sourced morningHour,
    @Key(about = "How readily mould grows on materials", required = true)
        List<MaterialSensitivity> sensitivities,
    @Key(about = "The same where the survey does not say") MaterialSensitivity unknownSurface) {
  /** Copies the list. */
  public HourDefaults {
    sensitivities = List.copyOf(sensitivities);
  }

  /** Reads the bundled values. */
  public static HourDefaults bundled() {
    return DataFiles.read("defaults/hours.yaml", HourDefaults.class);
  }

  /**
   * How readily mould grows on a material.
   *
   * @param material its word in a survey; that of an unknown surface where empty
   * @throws IllegalArgumentException for a material that the table lacks
   */
  public MaterialSensitivity sensitivity(Optional<String> material) {
    return material
        .map(
            word ->
                sensitivities.stream()
                    .filter(s -> s.material().equals(word))
                    .findFirst()
                    .orElseThrow(
                        () -> new IllegalArgumentException("no mould sensitivity: " + word)))
        .orElse(unknownSurface);
  }
}
