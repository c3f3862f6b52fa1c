package org.drysill.reference.ventilation;

import java.util.List;
import org.drysill.reference.Citation;
import org.drysill.yaml.Dimension;
import org.drysill.yaml.Key;
import org.drysill.yaml.Quantity;

/**
 * What ducts lose.
 *
 * @param surfaces roughness and slackness by what a duct is made of
 * @param bends loss coefficients of bends
 * @param ends loss coefficients of ends and of what stands in a duct
 */
public record DuctTables(
    @Key(about = "Roughness by what a duct is made of", required = true) List<Surface> surfaces,
    @Key(about = "Loss coefficients of bends", required = true) List<Bend> bends,
    @Key(about = "Loss coefficients of ends", required = true) List<End> ends) {
  /** Copies the lists; refuses a table that leaves a case out. */
  public DuctTables {
    surfaces = List.copyOf(surfaces);
    bends = List.copyOf(bends);
    ends = List.copyOf(ends);
    Rows.every("surfaces", DuctSurface.values(), surfaces.stream().map(Surface::duct).toList());
    Rows.every("bends", DuctBend.values(), bends.stream().map(Bend::bend).toList());
    Rows.every("ends", DuctEnd.values(), ends.stream().map(End::end).toList());
  }

  /**
   * The inside of a duct.
   *
   * @param duct what it is made of
   * @param roughness its roughness
   * @param slackness how many times the friction of a taut duct it loses
   * @param source where it comes from
   */
  public record Surface(
      @Key(about = "What it is made of", example = "metal") DuctSurface duct,
      @Key(
              about = "Its roughness",
              dimension = Dimension.LENGTH,
              unit = "mm",
              min = 0,
              max = 10,
              example = "0.09 mm")
          Quantity roughness,
      @Key(
              about = "How many times the friction of a taut duct it loses",
              min = 1,
              example = "4..10")
          Quantity slackness,
      @Key(about = "Where it comes from") Citation source) {}

  /**
   * A bend.
   *
   * @param bend how it bends
   * @param loss loss coefficient K
   * @param source where it comes from
   */
  public record Bend(
      @Key(about = "How it bends", example = "swept") DuctBend bend,
      @Key(about = "Loss coefficient K", min = 0, example = "0.15..0.25") Quantity loss,
      @Key(about = "Where it comes from") Citation source) {}

  /**
   * An end of a duct, or what stands in it.
   *
   * @param end what it is
   * @param loss loss coefficient K
   * @param source where it comes from
   */
  public record End(
      @Key(about = "What it is", example = "wall grille") DuctEnd end,
      @Key(about = "Loss coefficient K", min = 0, example = "1.5..4") Quantity loss,
      @Key(about = "Where it comes from") Citation source) {}

  /** The inside of a duct of a material. */
  public Surface surface(DuctSurface duct) {
    return surfaces.stream().filter(row -> row.duct() == duct).findFirst().orElseThrow();
  }

  /** A bend. */
  public Bend bend(DuctBend bend) {
    return bends.stream().filter(row -> row.bend() == bend).findFirst().orElseThrow();
  }

  /** An end. */
  public End end(DuctEnd end) {
    return ends.stream().filter(row -> row.end() == end).findFirst().orElseThrow();
  }
}
