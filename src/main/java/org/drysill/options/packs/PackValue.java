package org.drysill.options.packs;

/**
 * What a package achieves and costs, at the likely values.
 *
 * @param members its members as bits: those of the air side, then those of the fabric side
 * @param size how many they are
 * @param safe true where none needs a safety test first
 * @param stopGap true where one of them is a stop-gap
 * @param lacks air that is still lacking [m³/s]: outdoor air of the home, and extract of wet rooms
 * @param mould months at risk of mould in a year, summed over walls and corners
 * @param wet months with wet glass in a year, summed over windows
 * @param airReserve outdoor air of the home by what is asked [1]; infinite where nothing is
 * @param reserve the least multiple of the indoor vapour at which a month of a wall or corner is at
 *     risk of mould [1]; infinite where there is none
 * @param bill what it costs and takes
 */
record PackValue(
    Bits members,
    int size,
    boolean safe,
    boolean stopGap,
    double lacks,
    int mould,
    int wet,
    double airReserve,
    double reserve,
    Bill bill) {

  /**
   * The members of both sides.
   *
   * @param air bits of the air side
   * @param fabric bits of the fabric side
   */
  record Bits(long air, long fabric) {
    /** True where all members of another package are in this one, and more. */
    boolean isMoreThan(Bits other) {
      return !equals(other)
          && (air & other.air) == other.air
          && (fabric & other.fabric) == other.fabric;
    }
  }
}
