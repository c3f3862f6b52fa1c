package org.drysill.report.pages;

import java.awt.geom.Rectangle2D;

/**
 * A letter on a page.
 *
 * @param text what it reads as
 * @param box from its baseline to the height of a capital; points from the top left of the page
 * @param bold whether its font is bold
 * @param upright false where it is turned
 * @param clipped whether part of it is cut off by the area it is painted in
 * @param place the structure elements that it stands in; none for what is no content, such as the
 *     running head, and for charts
 */
record Glyph(
    String text,
    Rectangle2D box,
    boolean bold,
    boolean upright,
    boolean clipped,
    Structure.Place place) {
  double baseline() {
    return box.getMaxY();
  }

  /** The size of its type [pt]. */
  double size() {
    return (upright ? box.getHeight() : box.getWidth()) / PageReader.CAPITAL;
  }

  boolean within(String kind) {
    return place.kinds().contains(kind);
  }
}
