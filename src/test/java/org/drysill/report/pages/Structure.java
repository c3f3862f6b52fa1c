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
  private final Map<COSDictionary, Map<Integer, List<String>>> kinds = new HashMap<>();

  Structure(PDDocument document) {
    walk(document.getDocumentCatalog().getStructureTreeRoot(), List.of(), null);
  }

  /** The structure elements around a piece of content, the outermost first. */
  List<String> kinds(PDPage page, int mcid) {
    return kinds.getOrDefault(page.getCOSObject(), Map.of()).getOrDefault(mcid, List.of());
  }

  private void walk(PDStructureNode node, List<String> above, PDPage pageAbove) {
    List<String> chain = above;
    PDPage page = pageAbove;
    if (node instanceof PDStructureElement element) {
      chain = new ArrayList<>(above);
      chain.add(element.getStructureType());
      page = element.getPage() == null ? pageAbove : element.getPage();
    }
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureNode inner) {
        walk(inner, chain, page);
      } else if (kid instanceof Integer mcid && page != null) {
        note(page, mcid, chain);
      } else if (kid instanceof PDMarkedContentReference reference) {
        note(reference.getPage() == null ? page : reference.getPage(), reference.getMCID(), chain);
      }
    }
  }

  private void note(PDPage page, int mcid, List<String> chain) {
    kinds.computeIfAbsent(page.getCOSObject(), p -> new HashMap<>()).put(mcid, chain);
  }
}
