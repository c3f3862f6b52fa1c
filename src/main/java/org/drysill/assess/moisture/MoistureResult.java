package org.drysill.assess.moisture;

import java.util.List;
import java.util.Optional;
import org.drysill.assess.Assumption;
import org.drysill.assess.Figure;
import org.drysill.assess.Finding;
import org.drysill.physics.Range;

/**
 * How much water goes into the air of the home. All rates are kept in kg/s and read as kg a day.
 *
 * @param items what each source and the people give off
 * @param itemised the sum of the items [kg/s]
 * @param implied the production that the readings imply with the air that the home gets [kg/s];
 *     empty where the readings cannot tell
 * @param balance how the two compare
 * @param finding the same as a finding; it names the reading that would settle it
 * @param checks published daily totals for a household of this size, for comparison only
 * @param assumptions what was taken for granted, such as how often people shower
 */
public record MoistureResult(
    List<Item> items,
    Figure itemised,
    Optional<Figure> implied,
    Balance balance,
    Finding finding,
    List<Figure> checks,
    List<Assumption> assumptions) {
  /** Copies the lists. */
  public MoistureResult {
    items = List.copyOf(items);
    checks = List.copyOf(checks);
    assumptions = List.copyOf(assumptions);
  }

  /**
   * One source of water.
   *
   * @param kind an entry of the moisture table, or {@code people}
   * @param room id of the room that it is in; empty for the people, who move about
   * @param label what it is, in words
   * @param production what it gives off, averaged over the week [kg/s]
   * @param scaledBy how the rate became this production, such as {@code 4 loads a week}
   * @param loadsPerWeek loads of washing in a week; empty for what is not counted in loads
   */
  public record Item(
      String kind,
      Optional<String> room,
      String label,
      Figure production,
      String scaledBy,
      Optional<Range> loadsPerWeek) {}

  /** How the list of sources compares with what the readings imply. */
  public enum Balance {
    /** The ranges overlap. */
    AGREE,
    /** More water than the list explains: a hidden source, or less air than believed. */
    MORE_THAN_ITEMISED,
    /** Less water than the list says: more air than believed, sources used less, or buffering. */
    LESS_THAN_ITEMISED,
    /** The readings cannot tell. */
    UNKNOWN
  }
}
