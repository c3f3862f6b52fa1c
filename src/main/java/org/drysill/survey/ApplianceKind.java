package org.drysill.survey;

import java.util.List;
import org.drysill.yaml.Worded;

/** A combustion appliance. */
public enum ApplianceKind implements Worded {
  /** Takes its air from the room; gas or solid fuel. */
  OPEN_FLUED_FIRE("open-flued fire", "open flued fire", "open fire", "gas fire"),
  /** A boiler that takes its air from the room. */
  OPEN_FLUED_BOILER("open-flued boiler", "open flued boiler", "back boiler"),
  /** Wood or coal. */
  SOLID_FUEL_STOVE(
      "solid-fuel stove", "solid fuel stove", "wood stove", "log burner", "solid-fuel fire"),
  /** Takes its air from outside. */
  ROOM_SEALED_BOILER("room-sealed boiler", "room sealed boiler", "balanced-flue boiler"),
  /** Gives its fumes to the room. */
  UNFLUED_HEATER("unflued heater", "unflued gas heater", "paraffin heater", "bottled gas heater"),
  /** Cooks with gas. */
  GAS_HOB("gas hob", "gas cooker");

  private final String word;
  private final List<String> synonyms;

  ApplianceKind(String word, String... synonyms) {
    this.word = word;
    this.synonyms = List.of(synonyms);
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> synonyms() {
    return synonyms;
  }
}
