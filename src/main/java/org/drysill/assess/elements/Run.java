package org.drysill.assess.elements;

import java.util.List;
import org.drysill.physics.layers.Element;
import org.drysill.physics.layers.Iso13788Element;
import org.drysill.physics.layers.MonthClimate;
import org.drysill.physics.layers.Slice;

/**
 * One year of a wall at one choice of its layers.
 *
 * @param slices its layers, one slice each
 * @param element the element of them
 * @param year what the year does to it
 */
record Run(List<Slice> slices, Element element, Iso13788Element.Year year) {
  Run {
    slices = List.copyOf(slices);
  }

  static Run of(List<Slice> slices, Films films, List<MonthClimate> months) {
    Element element = Element.of(slices, films.inside(), films.outside());
    return new Run(slices, element, Iso13788Element.year(element, months));
  }
}
