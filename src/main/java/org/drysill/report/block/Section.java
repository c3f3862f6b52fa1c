package org.drysill.report.block;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A section of the report.
 *
 * @param id a stable id, for links
 * @param heading its heading, a sentence that carries the finding
 * @param running its name in the running head and the contents
 * @param newPage whether it begins on a new page where the one before is half full
 * @param blocks what stands in it
 * @param compact true for the small print of those who check
 */
public record Section(
    String id,
    String heading,
    String running,
    boolean newPage,
    List<Block> blocks,
    boolean compact) {
  /** Copies the lists. */
  public Section {
    blocks = List.copyOf(blocks);
  }

  /** A section in the usual type. */
  public Section(String id, String heading, String running, boolean newPage, List<Block> blocks) {
    this(id, heading, running, newPage, blocks, false);
  }

  /** The same in small print, beginning wherever there is room for its first lines. */
  public Section compactly() {
    return new Section(id, heading, running, false, blocks, true);
  }

  /** The height that its heading asks for, so that it is not left alone [mm]. */
  public String room() {
    double asked = new Room(blocks, compact).heading(heading);
    return whole(newPage ? Room.MOST : asked);
  }

  /** The height that each of its blocks asks for where it begins [mm]. */
  public List<String> rooms() {
    Room room = new Room(blocks, compact);
    return IntStream.range(0, blocks.size()).mapToObj(i -> whole(room.at(i))).toList();
  }

  private static String whole(double mm) {
    return Long.toString(Math.round(mm));
  }
}
