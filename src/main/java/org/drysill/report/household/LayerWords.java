package org.drysill.report.household;

import org.drysill.report.words.Words;
import org.drysill.survey.Layer;
import org.drysill.survey.Wall;

/** The layers of a wall in words, room side first. */
final class LayerWords {
  private LayerWords() {}

  static String of(Wall wall) {
    return Words.list(wall.layers(), LayerWords::of);
  }

  private static String of(Layer layer) {
    return layer.material()
        + layer.thickness().map(t -> " " + t.written().replace(' ', '\u00a0')).orElse("");
  }
}
