package org.drysill.report.pdf.economy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;

/** The way back from marked content to the element of the structure that holds it. */
final class ParentTree {
  private static final COSName STRUCT_PARENTS = COSName.STRUCT_PARENTS;

  private final Map<Integer, COSArray> pages = new HashMap<>();

  private ParentTree() {}

  static ParentTree of(PDStructureTreeRoot root) {
    ParentTree tree = new ParentTree();
    COSDictionary top = root.getCOSObject().getCOSDictionary(COSName.getPDFName("ParentTree"));
    if (top != null) {
      tree.read(top);
    }
    return tree;
  }

  private void read(COSDictionary node) {
    COSArray kids = node.getCOSArray(COSName.KIDS);
    for (int i = 0; kids != null && i < kids.size(); i++) {
      read((COSDictionary) kids.getObject(i));
    }
    COSArray numbers = node.getCOSArray(COSName.NUMS);
    for (int i = 0; numbers != null && i + 1 < numbers.size(); i += 2) {
      COSBase holders = numbers.getObject(i + 1);
      if (holders instanceof COSArray array) {
        pages.put(numbers.getInt(i), array);
        // An object of its own can stand near the elements that it lists.
        numbers.set(i + 1, new COSObject(array));
      }
    }
  }

  /** The content of that number on that page is held by another element from now on. */
  void set(COSDictionary page, int content, COSDictionary holder) {
    holders(page, content).set(content, holder);
  }

  /**
   * Gives the contents of a page their new numbers.
   *
   * @param numbers the new ones by the old ones; contents without one go
   * @return who held the contents, in the order of the old numbers
   */
  List<COSDictionary> renumbered(COSDictionary page, Map<Integer, Integer> numbers) {
    COSArray holders = pages.get(page.getInt(STRUCT_PARENTS));
    if (holders == null) {
      return List.of();
    }
    COSDictionary[] byNumber = new COSDictionary[numbers.size()];
    List<COSDictionary> all = new ArrayList<>();
    for (int content = 0; content < holders.size(); content++) {
      if (holders.getObject(content) instanceof COSDictionary holder) {
        all.add(holder);
        if (numbers.containsKey(content)) {
          byNumber[numbers.get(content)] = holder;
        }
      }
    }
    holders.clear();
    for (COSDictionary holder : byNumber) {
      holders.add(holder);
    }
    return all;
  }

  private COSArray holders(COSDictionary page, int content) {
    COSArray holders = pages.get(page.getInt(STRUCT_PARENTS));
    if (holders == null || content >= holders.size()) {
      throw new IllegalStateException("content " + content + " has no holder");
    }
    return holders;
  }
}
