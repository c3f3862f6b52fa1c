package org.drysill.report.pages;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;

/** What each piece of marked content is: a heading, a paragraph, a cell of a table's head. */
final class Structure {
  private final Map<COSDictionary, Map<Integer, Place>> places = new HashMap<>();

  private int blocks;

  /**
   * Where a piece of content stands.
   *
   * @param kinds the structure elements around it, the outermost first
   * @param block a number that all content of one paragraph, heading or cell shares
   */
  record Place(List<String> kinds, int block) {
    static final Place NONE = new Place(List.of(), 0);
  }

  Structure(PDDocument document) {
    PDStructureNode root = document.getDocumentCatalog().getStructureTreeRoot();
    if (root != null) {
      walk(root, Place.NONE, null);
    }
  }

  /** Where a piece of marked content stands. */
  Place place(PDPage page, int mcid) {
    return places.getOrDefault(page.getCOSObject(), Map.of()).getOrDefault(mcid, Place.NONE);
  }

  private void walk(PDStructureNode node, Place above, PDPage pageAbove) {
    Place place = above;
    PDPage page = pageAbove;
    if (node instanceof PDStructureElement element) {
      String kind = element.getStructureType();
      List<String> chain = new ArrayList<>(above.kinds());
      chain.add(kind);
      place = new Place(chain, kind.matches("P|H\\d|T[DH]|LI") ? ++blocks : above.block());
      page = element.getPage() == null ? pageAbove : element.getPage();
    }
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureNode inner) {
        walk(inner, place, page);
      } else if (kid instanceof Integer mcid && page != null) {
        note(page, mcid, place);
      } else if (kid instanceof PDMarkedContentReference reference) {
        note(reference.getPage() == null ? page : reference.getPage(), reference.getMCID(), place);
      }
    }
  }

  private void note(PDPage page, int mcid, Place place) {
    places.computeIfAbsent(page.getCOSObject(), p -> new HashMap<>()).put(mcid, place);
  }
}
